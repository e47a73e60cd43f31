// The wordings of what can be wrong with an archive, or with the rack that it is to be restored to, to be read in a row.
import type {Problem} from "../../engine/problem.ts";

const untouched = "nothing was restored";

export const unreadable = (archive: string, reason: string): Problem => ({
  code: "archive/unreadable", at: archive, what: `this is no archive that can be read (${reason})`, why: untouched, fix: "copy it again from where it was made, or take another archive",
});

export const notOurs = (archive: string, reason: string): Problem => ({
  code: "archive/not-ours", at: archive, what: `this is a zip file, but no archive of a rack (${reason})`, why: untouched, fix: "choose a file that ticking rack archive made",
});

export const newer = (archive: string, version: number, known: number): Problem => ({
  code: "archive/newer", at: archive, what: `the archive was made by a newer ticking (form ${version})`, why: `this one knows forms up to ${known}; ${untouched}`, fix: "install the newer ticking, then restore",
});

export const strangeEntry = (archive: string, entry: string): Problem => ({
  code: "archive/strange-entry", at: archive, what: `the archive holds “${entry}”, which has no place on a rack`, why: `files of other names could be meant to land elsewhere on this machine; ${untouched}`, fix: "take the archive as ticking made it",
});

export const entryTwice = (archive: string, entry: string): Problem => ({
  code: "archive/entry-twice", at: archive, what: `the archive holds “${entry}” twice`, why: `it cannot be told which one counts; ${untouched}`, fix: "take the archive as ticking made it",
});

export const entryMissing = (archive: string, entry: string): Problem => ({
  code: "archive/entry-missing", at: archive, what: `“${entry}” is missing from the archive`, why: `the rack would not be whole; ${untouched}`, fix: "copy it again from where it was made, or take another archive",
});

export const entryChanged = (archive: string, entry: string): Problem => ({
  code: "archive/entry-changed", at: archive, what: `“${entry}” is not what it was when the archive was made`, why: `it was damaged or changed since; ${untouched}`, fix: "copy it again from where it was made, or take another archive",
});

export const unpacksTooLarge = (archive: string, entry: string): Problem => ({
  code: "archive/unpacks-too-large", at: archive, what: `“${entry}” unpacks to far more than it should`, why: `such files are made to fill a disk; ${untouched}`, fix: "take the archive as ticking made it",
});

export const noRoom = (archive: string, needed: number, free: number): Problem => ({
  code: "archive/no-room", at: archive, what: `unpacked, the archive needs ${needed} MB, and ${free} MB are free`, why: untouched, fix: "make room on the disk, or restore to a folder on another one",
});

export const badLine = (archive: string, entry: string, line: number, reason: string): Problem => ({
  code: "archive/bad-line", at: `${archive} ${entry}:${line}`, what: `this line cannot be kept (${reason})`, why: untouched, fix: "take the archive as ticking made it",
});

export const contradiction = (archive: string): Problem => ({
  code: "archive/contradiction", at: archive, what: "the garments are not those that their history leads to", why: `one of the two was changed by hand; ${untouched}`, fix: "take the archive as ticking made it",
});

export const rackNotEmpty = (folder: string): Problem => ({
  code: "archive/rack-not-empty", at: folder, what: "garments or sales are, or were, kept on this rack", why: "an archive is restored as a whole, and would mix with them", fix: "restore to a new folder with --data, or empty the rack first",
});

export const otherBook = (book: string, edition: number): Problem => ({
  code: "archive/other-book", at: `book ${book}`, what: `edition ${edition} is on this rack already, with another text`, why: "an edition is never written over", fix: "restore to a new folder with --data",
});
