// The wordings of what can be wrong with a wish for paper, to be read in a row.
import type {Problem} from "../engine/index.ts";

export const notCode = (given: string): Problem => ({
  code: "paper/not-code", at: "code", what: `“${given.length > 60 ? `${given.slice(0, 60)}…` : given}” is no code of a dating sheet`, why: "there is nothing to compare",
  fix: "scan the square code on the sheet, or type the twelve letters and figures below it",
});

export const needsGarment = (): Problem => ({
  code: "paper/needs-garment", at: "code", what: "the letters alone do not say which sheet they are of", why: "only the square code holds the garment and the day", fix: "give the garment's number and the day of the sheet, too",
});

export const noSuchGarment = (number: string): Problem => ({
  code: "paper/no-such-garment", at: "code", what: `the garment ${number} of the sheet is neither on the rack nor in the file`, why: "there is nothing to compare the sheet with", fix: "look whether the sheet comes from another rack; a file taken out of that one can be given instead",
});

export const notRecord = (reason: string): Problem => ({
  code: "paper/not-record", at: "record", what: `this is no garment taken out of a rack (${reason})`, why: "the sheet cannot be compared with it", fix: "give a file that ticking wrote: an export as JSON, or a garment as it is kept",
});

export const noTagFormat = (given: string, formats: readonly string[]): Problem => ({
  code: "paper/no-tag-format", at: "format", what: `there is no format of tags called “${given}”`, why: "the tags cannot be laid out", fix: `choose one of ${formats.join(", ")}`,
});

export const nothingChosen = (): Problem => ({
  code: "paper/nothing-chosen", at: "ids", what: "no garment is chosen", why: "there is nothing to print", fix: "choose at least one garment",
});

export const fileGone = (name: string): Problem => ({
  code: "paper/file-gone", at: "name", what: `the file ${name} is not here any more`, why: "finished papers are kept for an hour", fix: "have it made again",
});
