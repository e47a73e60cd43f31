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

export const portTaken = (port: number): Problem => ({
  code: "cli/port-taken", at: "--port", what: `something else listens on port ${port} already`, why: "two programs cannot share a port", fix: "end the other program, perhaps another ticking serve, or choose another port",
});

export const notAddress = (address: string, reason: string): Problem => ({
  code: "cli/not-address", at: "--listen", what: `the server cannot listen on ${address} (${reason})`, why: "nobody could reach it", fix: "give an address of this machine, like 127.0.0.1 or 0.0.0.0, and a port above 1023",
});

export const notPort = (given: string): Problem => ({
  code: "cli/port", at: "--port", what: `“${given}” is no port`, why: "a browser could not find the server", fix: "give a whole number from 0 to 65535; 0 takes any free one",
});

export const passphraseNeeded = (address: string): Problem => ({
  code: "cli/passphrase-needed", at: "--listen", what: `others than this machine can reach ${address}, and no passphrase is given`, why: "anybody in the same network could read and change the rack", fix: "give a file that holds a passphrase with --passphrase-file",
});

export const passphraseShort = (at: string, fewest: number): Problem => ({
  code: "cli/passphrase-short", at, what: `the passphrase has fewer than ${fewest} characters`, why: "short ones can be guessed", fix: "take four or five words that do not belong together",
});
