// The wordings of what can be wrong with a garment's observations, to be read in a row.
import type {Problem} from "../problem.ts";

const list = (names: readonly string[], most = 12) => names.slice(0, most).join(", ") + (names.length > most ? ` and ${names.length - most} more` : "");
const didYouMean = (near: string | null) => (near ? `did you mean ${near}? ` : "");

export const unknownMark = (at: string, id: string, near: string | null): Problem => ({
  code: "garment/unknown-mark",
  at,
  what: `no rule book at hand knows a mark called ${id}`,
  why: "what was seen there would silently count for nothing",
  fix: `${didYouMean(near)}List the marks with: ticking books show, or name the maker whose book has this mark`,
  see: "docs/guide/examine.md#marks",
});

export const otherMakersMark = (at: string, id: string): Problem => ({
  code: "garment/other-makers-mark",
  at,
  what: `${id} is a mark of a maker that the garment does not name`,
  why: "without that maker's rule book it cannot be read",
  fix: "name the maker under maker, or several that are possible; or leave the mark out",
  see: "docs/guide/examine.md#maker",
});

export const unknownValue = (at: string, value: string, values: readonly string[], near: string | null): Problem => ({
  code: "garment/unknown-value",
  at,
  what: `${value} is not one of the values of this mark`,
  why: "the book says nothing about it, so it could not be dated",
  fix: `${didYouMean(near)}Use one of: ${list([...values, "other", "none"])}`,
  see: "docs/guide/examine.md#marks",
});

export const notPresence = (at: string, value: string): Problem => ({
  code: "garment/not-presence",
  at,
  what: `${value} does not say whether the mark is there`,
  why: "this mark is either there or not",
  fix: "write present or absent; leave the line out when you did not look",
});

export const notNumber = (at: string, value: string): Problem => ({
  code: "garment/not-a-number",
  at,
  what: `${value} has no number in it`,
  why: "this mark is a running number and is dated by its size",
  fix: "write the number as printed, for example 13942, or none when you looked and there is none",
});

export const rowSlip = (at: string, slip: string): Problem => ({
  code: "garment/row-not-read",
  at,
  what: slip,
  why: "a doubtful character must say what it may be",
  fix: "write ? for an unreadable character, (3/8) for 3 or 8, (8:80/3:20) with weights",
  see: "docs/guide/examine.md#doubt",
});

export const emptyText = (at: string): Problem => ({
  code: "garment/no-characters",
  at,
  what: "no figure or letter stands here",
  why: "there is nothing to read",
  fix: "write what is printed, ? for unreadable characters, or none when there is nothing",
});

export const noWeight = (at: string): Problem => ({
  code: "garment/no-weight",
  at,
  what: "none of the alternatives has a weight above 0",
  why: "one of them must be possible",
  fix: "give each alternative a positive weight",
});

export const unknownMaker = (at: string, maker: string, makers: readonly string[], near: string | null): Problem => ({
  code: "garment/unknown-maker",
  at,
  what: `there is no rule book for a maker called ${maker}`,
  why: "its labels and codes could not be read",
  fix: `${didYouMean(near)}Use one of: ${list([...makers, "unlisted"])}, or leave the maker out`,
});

export const notPossible = (at: string): Problem => ({
  code: "garment/no-month-left",
  at,
  what: "no month is left in which a garment of this maker could have been made",
  why: "the maker's book covers no month of the time considered",
  fix: "check the maker, or the months that its book covers",
});
