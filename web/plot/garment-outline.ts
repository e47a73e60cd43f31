// Outlines of garments, front and back side by side on a sheet of 340 by 380, and where each place sits.
import {kindOf, type GarmentKind} from "../../state/garment-kind.ts";

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Outline {
  readonly name: string;
  /** Cut edges. */
  readonly lines: readonly string[];
  /** Rows of stitches. */
  readonly stitches: readonly string[];
  readonly captions: readonly [front: string, back: string];
  readonly spots: Readonly<Record<string, Spot>>;
}

const trousers: Outline = {
  name: "trousers",
  lines: [
    "M40 34H128L140 96L146 350H100L86 150H82L68 350H22L28 96Z", "M38 50H130", "M84 50V112C84 124 78 128 72 130", "M46 50C48 70 58 82 76 84", "M122 50C120 70 110 82 92 84",
    "M212 34H300L312 96L318 350H272L258 150H254L240 350H194L200 96Z", "M210 50H302", "M210 64C236 84 276 84 302 64", "M256 78V150", "M214 92H244V124L229 136L214 124Z", "M268 92H298V124L283 136L268 124Z",
  ],
  stitches: ["M40 43H128", "M24 340H66M102 340H144", "M212 43H300", "M196 340H238M274 340H316", "M216 97H242M270 97H296"],
  captions: ["front, inside out", "back"],
  spots: {
    "top-button": {x: 80, y: 42}, "top-button-back": {x: 108, y: 42}, waistband: {x: 52, y: 40}, zip: {x: 83, y: 76}, "zip-pull": {x: 83, y: 104}, rivets: {x: 48, y: 68}, "pocket-bag": {x: 111, y: 99}, "care-label-face": {x: 130, y: 70}, "care-label-back": {x: 138, y: 97}, "union-label": {x: 38, y: 110}, inseam: {x: 78, y: 220}, "side-seam": {x: 142, y: 210}, hem: {x: 46, y: 340}, patch: {x: 290, y: 44}, "main-label": {x: 256, y: 44}, "back-pocket": {x: 229, y: 112}, seams: {x: 256, y: 118}, cloth: {x: 218, y: 230}, lining: {x: 112, y: 126},
  },
};

const jacket: Outline = {
  name: "jacket",
  lines: [
    "M60 44L84 36L108 44L138 58L156 200L136 206L126 120V262H42V120L32 206L12 200L30 58Z", "M68 41L84 66L100 41", "M84 66V262", "M52 96H78V126H52Z", "M90 96H116V126H90Z", "M42 246H126", "M12 190L33 196M156 190L135 196",
    "M232 44L256 40L280 44L310 58L328 200L308 206L298 120V262H214V120L204 206L184 200L202 58Z", "M240 43C248 50 264 50 272 43", "M214 92H298", "M236 92L240 246M276 92L272 246", "M214 246H298",
  ],
  stitches: ["M80 70V244", "M52 102H78M90 102H116", "M42 252H126", "M214 252H298", "M216 96H296"],
  captions: ["front, open", "back"],
  spots: {
    "main-label": {x: 84, y: 50}, "care-label-face": {x: 54, y: 188}, "care-label-back": {x: 54, y: 216}, "top-button": {x: 98, y: 80}, "top-button-back": {x: 70, y: 80}, zip: {x: 84, y: 153}, "zip-pull": {x: 78, y: 125}, rivets: {x: 133, y: 110}, "pocket-bag": {x: 51, y: 112}, "back-pocket": {x: 106, y: 112}, "union-label": {x: 112, y: 190}, patch: {x: 256, y: 70}, "side-seam": {x: 298, y: 180}, hem: {x: 256, y: 254}, waistband: {x: 84, y: 254}, seams: {x: 238, y: 150}, cloth: {x: 256, y: 190}, lining: {x: 112, y: 222}, inseam: {x: 20, y: 150},
  },
};

const shirt: Outline = {
  name: "shirt",
  lines: [
    "M62 46L84 40L106 46L136 60L154 210L136 214L124 124V270C104 284 64 284 44 270V124L32 214L14 210L32 60Z", "M66 45L84 62L102 45L84 40Z", "M84 62V278", "M92 100H116V128L104 134L92 128Z",
    "M234 46L256 42L278 46L308 60L326 210L308 214L296 124V270C276 284 236 284 216 270V124L204 214L186 210L204 60Z", "M216 84H296", "M256 84V278",
  ],
  stitches: ["M79 64V276M89 64V276", "M46 262C66 276 102 276 122 262", "M218 88H294"],
  captions: ["front", "back"],
  spots: {
    "main-label": {x: 84, y: 51}, "care-label-face": {x: 50, y: 218}, "care-label-back": {x: 50, y: 246}, "top-button": {x: 90, y: 79}, "top-button-back": {x: 62, y: 84}, "back-pocket": {x: 104, y: 114}, hem: {x: 84, y: 272}, "side-seam": {x: 124, y: 190}, seams: {x: 256, y: 91}, cloth: {x: 256, y: 180}, "union-label": {x: 118, y: 236}, inseam: {x: 22, y: 160}, waistband: {x: 296, y: 230}, patch: {x: 256, y: 63}, lining: {x: 228, y: 66}, rivets: {x: 284, y: 66}, "pocket-bag": {x: 108, y: 146}, zip: {x: 80, y: 148}, "zip-pull": {x: 84, y: 176},
  },
};

const overalls: Outline = {
  name: "overalls",
  lines: [
    "M58 92H110L114 150L132 156L146 360H100L86 210H82L68 360H22L36 156L54 150Z", "M60 92L52 34M108 92L116 34", "M68 104H100V132H68Z", "M36 156H132", "M84 156V200",
    "M230 110L256 84L282 110L286 150L304 156L318 360H272L258 210H254L240 360H194L208 156L226 150Z", "M256 84L232 34M256 84L280 34", "M208 156H304", "M220 180H246V214H220ZM266 180H292V214H266Z",
  ],
  stitches: ["M60 98H108", "M24 350H66M102 350H144", "M196 350H238M274 350H316", "M222 185H244M268 185H290"],
  captions: ["front", "back"],
  spots: {
    "main-label": {x: 84, y: 118}, "top-button": {x: 56, y: 96}, "top-button-back": {x: 112, y: 96}, patch: {x: 256, y: 112}, "care-label-face": {x: 117, y: 175}, "care-label-back": {x: 122, y: 203}, waistband: {x: 62, y: 160}, "pocket-bag": {x: 46, y: 194}, rivets: {x: 35, y: 166}, zip: {x: 90, y: 173}, "zip-pull": {x: 84, y: 201}, "side-seam": {x: 136, y: 240}, inseam: {x: 76, y: 262}, hem: {x: 46, y: 350}, "back-pocket": {x: 231, y: 198}, "union-label": {x: 256, y: 150}, seams: {x: 258, y: 190}, cloth: {x: 218, y: 270}, lining: {x: 100, y: 146},
  },
};

const sweatshirt: Outline = {
  name: "sweatshirt or tee",
  lines: [
    "M62 52C72 66 96 66 106 52L136 64L154 214L134 218L124 128V262H44V128L34 218L14 214L32 64Z", "M60 55C72 74 96 74 108 55", "M44 248H124", "M14 204L35 208M154 204L133 208",
    "M234 52C244 58 268 58 278 52L308 64L326 214L306 218L296 128V262H216V128L206 218L186 214L204 64Z", "M232 55C244 64 268 64 280 55", "M216 248H296",
  ],
  stitches: ["M62 60C74 76 94 76 106 60", "M44 254H124", "M216 254H296"],
  captions: ["front", "back"],
  spots: {
    "main-label": {x: 256, y: 64}, "care-label-face": {x: 56, y: 198}, "care-label-back": {x: 56, y: 226}, "union-label": {x: 284, y: 70}, hem: {x: 84, y: 256}, "side-seam": {x: 124, y: 180}, seams: {x: 35, y: 92}, cloth: {x: 80, y: 139}, inseam: {x: 22, y: 150}, waistband: {x: 256, y: 254}, zip: {x: 90, y: 83}, "zip-pull": {x: 84, y: 111}, lining: {x: 256, y: 130}, patch: {x: 108, y: 150}, "top-button": {x: 84, y: 56}, "top-button-back": {x: 63, y: 83}, rivets: {x: 64, y: 166}, "pocket-bag": {x: 84, y: 200}, "back-pocket": {x: 256, y: 180},
  },
};

export const outlines: Readonly<Record<GarmentKind, Outline>> = {trousers, jacket, shirt, overalls, sweatshirt};

/** The outline of a type of garment. */
export const outlineOf = (type: string | undefined): Outline => outlines[kindOf(type)];
