// Everything that the store says about a folder, a photo or a file that it cannot take, one function a wording.
import type {Problem} from "../engine/problem.ts";

export const newerData = (folder: string, shape: number, known: number): Problem => ({
  code: "store/newer-data",
  at: folder,
  what: `the rack was written by a newer ticking (shape ${shape})`,
  why: `this one knows shapes up to ${known}, and guessing at the rest could lose what you kept`,
  fix: "install the newer ticking again, or restore a backup from before",
});

export const dataDamaged = (database: string, reason: string): Problem => ({
  code: "store/data-damaged",
  at: database,
  what: `the database of the rack is damaged (${reason})`,
  why: "it cannot be read as it is, and writing on could spoil what is left; nothing was changed",
  fix: "leave the folder as it is, and make a new rack of the newest of its backups: ticking rack restore <backup> --data <new folder>",
  see: "docs/guide/rack.md#backups",
});

export const rackThere = (folder: string): Problem => ({
  code: "store/rack-there",
  at: folder,
  what: "a rack is kept in this folder already",
  why: "it would be lost under the backup",
  fix: "name a new folder with --data; when all is well there, use it instead of the old one",
});

export const folderClosed = (folder: string, reason: string): Problem => ({
  code: "store/folder-closed",
  at: folder,
  what: `the folder of the rack cannot be used (${reason})`,
  why: "garments and photos are kept there",
  fix: "check that the folder exists, that you may write there and that the disk is not full, or choose another with --data",
});

export const diskFull = (folder: string): Problem => ({
  code: "store/disk-full",
  at: folder,
  what: "the disk is full",
  why: "the change could not be kept; everything that was kept before is still there",
  fix: "make room on the disk and save again",
});

export const diskFailing = (folder: string): Problem => ({
  code: "store/disk-failing",
  at: folder,
  what: "the disk gives errors, or the file of the rack is damaged",
  why: "what is kept there can no longer be trusted to last",
  fix: "copy the folder to another disk, run ticking rack check, and restore the newest backup that is sound",
});

export const photoHeic = (name: string): Problem => ({
  code: "store/photo-heic",
  at: name,
  what: "this is a HEIC photo",
  why: "it cannot be read here; JPEG, PNG, WebP and AVIF can",
  fix: "let the phone take photos in the most compatible form (JPEG), or convert it first",
});

export const photoUnknown = (name: string): Problem => ({
  code: "store/photo-unknown",
  at: name,
  what: "this is no photo that can be read",
  why: "JPEG, PNG, WebP and AVIF files are taken; drawings that can carry programs (SVG) are not",
  fix: "take the photo again, or save it as a JPEG",
});

export const photoBroken = (name: string): Problem => ({
  code: "store/photo-broken",
  at: name,
  what: "the photo is damaged or was cut off",
  why: "it cannot be shown as a whole",
  fix: "copy it again from where it came from",
});

export const photoTooLarge = (name: string, megabytes: number, most: number): Problem => ({
  code: "store/photo-too-large",
  at: name,
  what: `the file has ${megabytes} MB`,
  why: `photos of up to ${most} MB are taken`,
  fix: "save it at a lower quality",
});

export const photoTooManyPixels = (name: string, megapixels: number, most: number): Problem => ({
  code: "store/photo-too-many-pixels",
  at: name,
  what: `the picture has ${megapixels} million pixels`,
  why: `pictures of up to ${most} million are taken, since larger ones can fill the memory`,
  fix: "make the picture smaller and add it again",
});
