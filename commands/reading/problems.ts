// The wordings of what can be wrong when readings are joined with what is known, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const tooFewConfirmed = (found: number, fewest: number): Problem => ({
  code: "reading/too-few-confirmed", at: "labels", what: found === 0 ? "no row of a photo has been settled yet" : `only ${found} rows of photos have been settled so far`, why: `fewer than ${fewest} say too little of how often the reader is right`,
  fix: "settle rows of photos while you examine, the right ones too, and try again",
});

export const noRowsGiven = (): Problem => ({
  code: "reading/no-rows", at: "rows", what: "no row is given", why: "there are no words to look at", fix: "send the rows of a label as they were read, one text a row",
});

export const unknownKind = (kind: string, kinds: readonly string[]): Problem => ({
  code: "reading/unknown-kind", at: "label", what: `none of the makers' books lists a label kind “${kind}”`, why: "its layout could not help to read the rows", fix: `choose one of ${kinds.slice(0, 20).join(", ")}, or leave it out`,
});

export const noPhotos = (at: string): Problem => ({
  code: "reading/no-photos", at, what: "there is no photo in this folder", why: "there is nothing to read", fix: "name a photo, or a folder with photos as JPEG, PNG, WebP or AVIF",
});

export const readerBusy = (waiting: number): Problem => ({
  code: "reading/busy", at: "photo", what: `${waiting} photos wait to be read already`, why: "they are read one after the other, and more would only wait longer", fix: "send this photo again in a moment",
});
