// The points of measure by kind of garment. How tapes are laid, usual lengths and hands are common practice, no source; names after ISO 8559-1 are in point-shape.ts.
import type {GarmentKind} from "./garment-kind.ts";
import type {Point} from "./point-shape.ts";

type Line = readonly [id: string, name: string, also: string, how: string, laid: "flat" | "once", body: Point["body"], low: number, high: number, handMm: number];

const waistband: Line = ["waist", "waist", "waist laid flat, waist across", "button it up, lay front and back edges level, straight across the top of the waistband", "flat", "waist", 300, 620, 5];
const hip: Line = ["hip", "hip", "seat, hip across", "straight across at the foot of the fly", "flat", "hip", 380, 720, 6];
const frontRise: Line = ["front-rise", "front rise", "rise", "from the crotch seam up the front to the top of the waistband", "once", null, 190, 380, 5];
const backRise: Line = ["back-rise", "back rise", "seat length", "from the crotch seam up the back to the top of the waistband", "once", null, 280, 500, 6];
const thigh: Line = ["thigh", "thigh", "upper leg", "straight across the leg at the crotch, square to the leg", "flat", "thigh", 220, 440, 6];
const knee: Line = ["knee", "knee", "", "straight across the leg, halfway down the inseam", "flat", null, 160, 330, 6];
const legHem: Line = ["hem", "hem", "leg opening, bottom", "straight across the leg at the hem", "flat", null, 130, 360, 4];
const inseam: Line = ["inseam", "inseam", "inside leg", "along the inside seam from the crotch to the hem", "once", "inside-leg", 560, 950, 6];
const outseam: Line = ["outseam", "outseam", "side seam, outside leg", "along the side seam from the top of the waistband to the hem", "once", "outside-leg", 820, 1260, 7];

const chest: Line = ["chest", "chest", "pit to pit", "button it up, straight across from armpit seam to armpit seam", "flat", "chest", 380, 780, 6];
const bodyWaist: Line = ["waist", "waist", "waist across", "straight across at the narrowest, about 40 cm below the collar seam", "flat", "waist", 360, 760, 7];
const bodyHem: Line = ["hem", "hem", "bottom, hem across", "straight across at the bottom, ribs at rest", "flat", null, 340, 780, 6];
const shoulder: Line = ["shoulder", "shoulder", "across the shoulders", "across the back from shoulder seam to shoulder seam, where the sleeves are set in", "once", "shoulder", 340, 640, 6];
const sleeve: Line = ["sleeve", "sleeve", "sleeve length", "from the shoulder seam along the outside to the end of the cuff", "once", "arm", 440, 720, 6];
const centreSleeve: Line = ["centre-sleeve", "sleeve from the centre back", "centre back to cuff", "from the middle of the back below the collar, over the shoulder seam, to the end of the cuff", "once", null, 660, 980, 8];
const cuff: Line = ["cuff", "cuff", "sleeve opening", "straight across the closed cuff", "flat", null, 75, 200, 4];
const length: Line = ["length", "length", "back length, body length", "down the middle of the back from the collar seam to the hem", "once", null, 450, 1200, 7];

const lines: Readonly<Record<GarmentKind, readonly Line[]>> = {
  trousers: [waistband, hip, frontRise, backRise, thigh, knee, legHem, inseam, outseam],
  jacket: [chest, bodyWaist, bodyHem, shoulder, sleeve, cuff, length],
  shirt: [["neck", "collar", "neck", "open the collar and lay it flat: from the middle of the button to the far end of the buttonhole", "once", "neck", 330, 520, 4], chest, bodyWaist, bodyHem, shoulder, sleeve, centreSleeve, cuff, length],
  overalls: [
    ["bib-width", "bib width", "", "across the top edge of the bib", "once", null, 170, 400, 5], ["bib-height", "bib height", "", "down the middle of the bib from its top edge to the waist seam", "once", null, 200, 420, 6],
    ["waist", "waist", "waist across", "close the side buttons, straight across at the waist seam", "flat", "waist", 340, 720, 7], hip,
    ["front-rise", "front rise", "rise", "from the crotch seam up the front to the waist seam", "once", null, 190, 420, 6], thigh, knee, legHem, inseam,
    ["outseam", "outseam", "side seam, outside leg", "along the side seam from the waist seam to the hem", "once", "outside-leg", 820, 1300, 8],
  ],
  sweatshirt: [chest, bodyHem, shoulder, ["sleeve", "sleeve", "sleeve length", "from the shoulder seam along the outside to the end of the cuff", "once", "arm", 140, 720, 6], cuff, ["neck", "neck opening", "", "straight across the opening from seam to seam", "once", null, 120, 280, 5], length],
};

export const pointTable: Readonly<Record<GarmentKind, readonly Point[]>> = Object.fromEntries(
  Object.entries(lines).map(([kind, of]) => [kind, of.map(([id, name, also, how, laid, body, low, high, handMm]) => ({id, name, also: also === "" ? [] : also.split(", "), how, flat: laid === "flat", body, usual: [low, high] as const, handMm}))]),
) as unknown as Record<GarmentKind, readonly Point[]>;
