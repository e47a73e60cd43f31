// The wordings of what can be wrong on the command line and around it, to be read in a row.
import type {Problem} from "../engine/index.ts";

export const notFound = (at: string): Problem => ({
  code: "cli/not-found", at, what: "there is no such file", why: "nothing can be read from it", fix: "look at the spelling and at the folder you are in",
});

export const notOpened = (at: string, reason: string): Problem => ({
  code: "cli/not-opened", at, what: `the file cannot be opened (${reason})`, why: "the system refuses to hand it over", fix: "look at its permissions, or choose another file",
});

export const notWritten = (at: string, reason: string): Problem => ({
  code: "cli/not-written", at, what: `the file cannot be written (${reason})`, why: "the result would be lost", fix: "look at the folder, its permissions and the free space, or choose another file with -o",
});

export const sameFile = (at: string): Problem => ({
  code: "cli/same-file", at, what: "the result would go into the file that is being read", why: "the table would be overwritten while it is read", fix: "choose another name with -o",
});

export const nothingToExamine = (): Problem => ({
  code: "cli/nothing-given", at: "ticking examine", what: "no garment is given", why: "there is nothing to examine", fix: "name a garment file, or give marks with --saw and rows with --row; ticking ask leads you through the looks",
});

export const noBooksInFolder = (at: string): Problem => ({
  code: "cli/no-books", at, what: "the folder holds no rule book", why: "there is nothing to load", fix: "name a .yaml file, a folder with a book.yaml, or a folder of book files",
});

export const notWorkers = (at: string, given: string): Problem => ({
  code: "cli/workers", at, what: `“${given}” is no number of workers`, why: "the work is shared out among whole workers", fix: "give a whole number from 1 to 64",
});
