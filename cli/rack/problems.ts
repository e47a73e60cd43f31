// The wordings of what can be wrong when the rack is used from a terminal, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const noRack = (folder: string): Problem => ({
  code: "cli/no-rack", at: folder, what: "there is no rack in this folder", why: "there is nothing to show", fix: "name another folder with --data, or begin a rack with ticking rack add, ticking rack import or ticking serve",
});

export const noSuchGarment = (number: string): Problem => ({
  code: "cli/no-such-garment", at: number, what: "no garment has this number", why: "there is nothing to show or to change", fix: "look for it with ticking rack list; with --removed it lists the removed ones",
});

export const notStep = (given: string): Problem => ({
  code: "cli/not-step", at: "step", what: `“${given}” is no step`, why: "there is nothing to go back to", fix: "give a number that ticking rack history names",
});

export const notYear = (at: string, given: string): Problem => ({
  code: "cli/not-year", at, what: `“${given}” is no year`, why: "garments cannot be compared with it", fix: "write it with four figures, like 1968",
});

export const notShare = (at: string, given: string): Problem => ({
  code: "cli/not-share", at, what: `“${given}” is no probability`, why: "garments cannot be compared with it", fix: "give a number from 0 to 1, like 0.8",
});

export const notCount = (at: string, given: string): Problem => ({
  code: "cli/not-count", at, what: `“${given}” is no number of garments`, why: "so many cannot be shown", fix: "give a whole number from 1 to 500",
});

export const photoOfSeveral = (): Problem => ({
  code: "cli/photo-of-several", at: "--photo", what: "photos are given together with several garments", why: "it cannot be told which garment they show", fix: "add the garments one by one",
});

export const fileThere = (at: string): Problem => ({
  code: "cli/file-there", at, what: "a file of this name is there already", why: "it would be written over", fix: "choose another name, or move the file away",
});

export const notTaken = (given: string): Problem => ({
  code: "cli/not-taken", at: "--take", what: `“${given}” does not say what a column is taken as`, why: "the column would be guessed", fix: "write the column's name, =, and an entry or a mark, like --take shelf=place; nothing behind the = leaves the column out",
});

export const photoUnsound = (at: string, why: string): Problem => ({
  code: "cli/photo-unsound", at, what: "the original of this photo is gone or damaged", why, fix: "add the photo again from your camera, or copy its file from a backup of the folder",
});

export const unsound = (folder: string, said: string): Problem => ({
  code: "cli/unsound", at: folder, what: `the database finds itself damaged (${said})`, why: "what is kept there can no longer be trusted to last", fix: "keep a copy of the folder as it is, then put the newest sound backup in the place of ticking.sqlite",
});
