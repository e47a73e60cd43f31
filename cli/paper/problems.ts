// The wordings of what can be wrong with a wish for paper on the command line.
import type {Problem} from "../../engine/index.ts";

export const notPhotos = (given: string, most: number): Problem => ({
  code: "cli/photos", at: "--photos", what: `“${given}” is no number of photos`, why: "a sheet shows the first ones", fix: `give a whole number from 0 to ${most}`,
});

export const pageOfMany = (count: number): Problem => ({
  code: "cli/page-of-many", at: "-o", what: `a web page shows one sheet, and ${count} garments are chosen`, why: "each sheet is a page of its own", fix: "choose one garment, or give a file that ends with .pdf",
});
