// The wordings of what can be wrong with a wish about the rack, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const noGarment = (id: string): Problem => ({
  code: "rack/no-garment", at: "id", what: `no garment with the id ${id} is on the rack`, why: "there is nothing to show or to change", fix: "look for it on the rack; ids are made by ticking and never used twice",
});

export const savedBetween = (number: string, who: string, at: string): Problem => ({
  code: "rack/saved-between", at: "base", what: `${number} was saved by ${who} at ${at} after you opened it`, why: "saving now would wipe out that change without a word",
  fix: "compare the two, take over what you want to keep, and save again",
});

export const noStep = (rev: number): Problem => ({
  code: "rack/no-step", at: "rev", what: `the garment has no step ${rev}`, why: "there is nothing to go back to", fix: "choose one of the steps in its history",
});

export const noPhoto = (at: string, photo: string): Problem => ({
  code: "rack/no-photo", at, what: `the photo ${photo.slice(0, 12)}… has not been added`, why: "the garment would point at nothing", fix: "add the photo first, then tie it to the garment",
});

export const noSetting = (name: string, names: readonly string[]): Problem => ({
  code: "rack/no-setting", at: "name", what: `there is no setting “${name}”`, why: "nothing could ever be read from it", fix: `choose one of ${names.join(", ")}`,
});

export const settingSavedBetween = (name: string, who: string, at: string): Problem => ({
  code: "rack/setting-saved-between", at: "base", what: `the setting ${name} was saved by ${who} at ${at} after you opened it`, why: "saving now would wipe out that change without a word",
  fix: "look at what stands there now, take over what you want to keep, and save again",
});

export const changesNothing = (): Problem => ({
  code: "rack/changes-nothing", at: "change", what: "nothing is to be changed", why: "every garment would stay as it is", fix: "say at least one of place, standing, asked, addTags, removeTags",
});

export const busyGarments = (): Problem => ({
  code: "rack/busy", at: "ids", what: "somebody kept changing these garments meanwhile", why: "all of them are changed together or none", fix: "try again in a moment",
});

export const tooManyTags = (number: string, most: number): Problem => ({
  code: "rack/too-many-tags", at: `garment ${number}`, what: `it would carry more than ${most} tags`, why: "so many tags tell nothing apart", fix: "take some of its tags away first",
});

export const noEdition = (book: string, edition: number): Problem => ({
  code: "rack/no-edition", at: "edition", what: `there is no edition ${edition} of the book ${book}`, why: "nothing can be shown of it", fix: "choose one of the editions that the list of books names",
});

export const editionTaken = (book: string): Problem => ({
  code: "rack/edition-taken", at: "yaml", what: `somebody kept saving editions of ${book} meanwhile`, why: "an edition that is there is never written over", fix: "try again in a moment",
});

export const numberTaken = (at: string, number: string): Problem => ({
  code: "rack/number-taken", at, what: `a garment with the number ${number} is on the rack already`, why: "the same garment would hang there twice", fix: "take the line out, or give it another number",
});

export const numberTwice = (at: string, number: string, first: string): Problem => ({
  code: "rack/number-twice", at, what: `the number ${number} stands at ${first} already`, why: "two garments of one number cannot be told apart", fix: "take one out, or give it another number",
});

export const noNumber = (at: string): Problem => ({
  code: "rack/no-number", at, what: "no number is given for the garment", why: "it could not be found again", fix: "fill the cell of the column that is taken as the garment's number",
});

export const noNumberColumn = (): Problem => ({
  code: "rack/no-number-column", at: "mapping", what: "no column is taken as the garment's number", why: "the garments could not be found again", fix: "say which column holds the number",
});

export const mappedTwice = (target: string, columns: readonly string[]): Problem => ({
  code: "rack/mapped-twice", at: "mapping", what: `${columns.map((name) => `“${name}”`).join(", ")} are all taken as ${target}`, why: "only one of them could count", fix: "leave out all but one",
});

export const noSuchColumn = (name: string): Problem => ({
  code: "rack/no-such-column", at: "mapping", what: `the table has no column “${name}”`, why: "nothing can be taken from it", fix: "use the names of the first line, exactly as they stand there",
});

export const noSuchTarget = (column: string, target: string): Problem => ({
  code: "rack/no-such-target", at: `mapping ${column}`, what: `“${target}” is neither an entry of a garment nor a mark of the rule books at hand`, why: "what stands in the column would be lost",
  fix: "choose one of the entries offered, or leave the column out",
});

export const badMoney = (at: string, text: string): Problem => ({
  code: "rack/bad-money", at, what: `“${text}” is no amount of money`, why: "money is kept exactly", fix: "write figures with a point before the cents and the three letters of the currency, like 120.00 EUR",
});

export const nothingToImport = (at: string): Problem => ({
  code: "rack/nothing-to-import", at, what: "no garment stands here", why: "there is nothing to take over", fix: "give a table with a line of column names, or garments as JSON",
});

export const notJson = (at: string, reason: string): Problem => ({
  code: "rack/not-json", at, what: `this is not JSON (${reason})`, why: "the garments cannot be read", fix: "give one list of garments, or choose the form with one garment a line",
});

export const tooManyLines = (most: number): Problem => ({
  code: "rack/too-many-lines", at: "text", what: `more than ${most} garments stand here`, why: "all of them are taken over in one step, and that step would take too long", fix: "cut the list into parts",
});
