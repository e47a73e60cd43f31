// The wordings of problems with a file as such, before it is known what it should hold; one function each, to be read in a row.
import type {Problem} from "../engine/problem.ts";
import {clip, show} from "./place.ts";

export const notFound = (at: string): Problem => ({
  code: "file/not-found", at, what: "there is no such file or folder", why: "nothing can be read from it", fix: "look at the spelling and at the folder you are in",
});

export const notReadable = (at: string, reason: string): Problem => ({
  code: "file/not-readable", at, what: `the file cannot be opened (${clip(reason, 120)})`, why: "the system refuses to hand it over", fix: "look at its permissions, or close the program that holds it",
});

export const tooLarge = (at: string, bytes: number, most: number): Problem => ({
  code: "file/too-large", at, what: `the file holds ${bytes} bytes`, why: `files above ${most} bytes are not read, so that a wrong file cannot hold everything up`, fix: "pick the right file, or split the book into subject files",
});

export const notUtf8 = (at: string): Problem => ({
  code: "file/not-utf-8", at, what: "the file is not UTF-8 text", why: "other encodings would turn letters into wrong ones without a word", fix: "save it again as plain text with the encoding UTF-8",
});

export const nothingInside = (at: string): Problem => ({
  code: "file/empty", at, what: "the file holds nothing", why: "there is nothing to read", fix: "pick another file, or start from a copy of an existing one",
});

export const tooManyEntries = (at: string, most: number): Problem => ({
  code: "file/too-many-entries", at, what: `the file holds more than ${most} words and signs`, why: "reading it would hold everything up", fix: "split it into several files",
});

export const tooDeep = (at: string, most: number): Problem => ({
  code: "file/too-deep", at, what: `entries stand inside each other more than ${most} deep`, why: "no book or garment needs that, so it is a slip or a trap", fix: "look for brackets that are never closed, or indent less",
});

export const severalDocuments = (at: string): Problem => ({
  code: "yaml/several-documents", at, what: "a second document begins here with ---", why: "one file holds one thing", fix: "take the line --- out, or move what follows into a file of its own",
});

export const aliasUsed = (at: string, name: string): Problem => ({
  code: "yaml/repeat-sign", at, what: `*${clip(name, 40)} stands for something written elsewhere`, why: "a rule must be readable where it stands, and nested repeats can grow without end", fix: "write the value out again",
});

export const tagUsed = (at: string): Problem => ({
  code: "yaml/tag", at, what: "a word with ! gives the value a type of its own", why: "books and garments hold plain text, numbers, lists and named entries only", fix: "take the word with ! out, or put the whole text in quotes",
});

export const keyNotText = (at: string): Problem => ({
  code: "yaml/key-not-text", at, what: "a name before the colon is missing, or is a list or a group", why: "every entry needs a plain name", fix: 'write the name as text, in quotes when it holds signs such as { [ ? * &',
});

export const keyReserved = (at: string, key: string): Problem => ({
  code: "yaml/key-reserved", at, what: `${show(key)} cannot be the name of an entry`, why: "computers keep this name for themselves and would drop the entry", fix: "choose another name",
});

export const duplicateKey = (at: string, key: string, first: number): Problem => ({
  code: "yaml/duplicate-key", at, what: `${show(key)} is written twice, first on line ${first}`, why: "only one of the two could count, and nobody could tell which", fix: "take one of them out, or give it a name of its own",
});

export const tooManyProblems = (at: string, more: number): Problem => ({
  code: "file/more-problems", at, what: `${more} more problems are not shown`, why: "so many usually have one cause", fix: "mend those above first, then look again",
});

const yamlSlips: Record<string, readonly [what: string, fix: string]> = {
  BAD_INDENT: ["the line is indented differently from its neighbours", "let entries of one group begin in the same column, and close every bracket and quote above"],
  TAB_AS_INDENT: ["the line begins with a tab", "indent with blanks only"],
  MISSING_CHAR: ["a closing bracket, quote, comma or colon is missing", "close every bracket and quote, put commas between entries in brackets, and a blank after each colon"],
  BLOCK_AS_IMPLICIT_KEY: ["a second colon stands in one line", "put a text that holds ': ' in quotes"],
  BLOCK_IN_FLOW: ["an entry on a line of its own stands inside brackets", "close the bracket above, or write the entry inside it"],
  MULTILINE_IMPLICIT_KEY: ["a name before a colon runs over several lines", "put a colon and a blank after each name, and close every quote"],
  KEY_OVER_1024_CHARS: ["a name before a colon is longer than 1024 characters", "shorten the name, or look for a quote that is not closed"],
  BAD_DQ_ESCAPE: ["a backslash in double quotes is followed by a sign that means nothing there", "write two backslashes, or use single quotes"],
  BAD_SCALAR_START: ["a text begins with a sign that YAML keeps for itself", "put the text in quotes"],
  UNEXPECTED_TOKEN: ["a sign stands where nothing can stand", "look for a bracket, comma or quote too many, and put texts with such signs in quotes"],
  BAD_DIRECTIVE: ["the line begins with %, which YAML keeps for itself", "put the text in quotes, or take the line out"],
};

export const notYaml = (at: string, yamlCode: string, message: string): Problem => {
  const [what, fix] = yamlSlips[yamlCode === "BAD_INDENT" && message.startsWith("Flow") ? "MISSING_CHAR" : yamlCode] ?? [`this is not YAML (${clip(message, 160)})`, "compare with a line that works, and put texts with signs in quotes"];
  return {code: "yaml/not-readable", at, what, why: "the file cannot be taken apart here", fix};
};
