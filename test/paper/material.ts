// Garments of the demo with everything that a paper can tell, gathered from a rack in memory; and their photos, drawn for the tests.
import sharp from "sharp";
import {openRack} from "../../commands/rack/open-rack.ts";
import type {Rack} from "../../commands/rack/rack.ts";
import {month} from "../../engine/index.ts";
import {gather} from "../../paper/gather.ts";
import type {Material} from "../../paper/sheet/material.ts";
import {loadGarment, shippedBooks} from "../../rulebooks/load.ts";
import {contentSchema, type Content, type GarmentRecord} from "../../store/model.ts";
import {openDatabase} from "../../store/sqlite/database.ts";
import {migrate} from "../../store/sqlite/migrate.ts";
import {sqliteStore} from "../../store/sqlite/sqlite-store.ts";

export const now = "2026-11-25T12:00:00.000Z";
export const today = now.slice(0, 10);

const hash = (sign: string) => sign.repeat(64);

/** What was measured and seen of trousers, in the shapes in which it is kept. */
export const rich = {
  asked: {cents: 8500, currency: "EUR"},
  photos: [{photo: hash("1"), place: "front", caption: ""}, {photo: hash("2"), place: "back of the care label", caption: "the rows are bunched up"}, {photo: hash("3"), place: "", caption: "top button"}],
  state: {
    flaws: [{kind: "hole", place: "left knee", side: "front", size: 12, severity: "slight", mended: true, note: "darned by hand"}, {kind: "stain", place: "right thigh", severity: "plain", size: 30}],
    wear: "even", fading: ["whiskers"], clean: "washed", alterations: [{kind: "shortened-hem", note: "by 4 cm"}], missing: ["button"],
  },
  sizes: {
    measures: [{point: "waist", length: {typed: "16 1/4", unit: "in"}}, {point: "inseam", length: {typed: "30 1/2", unit: "in"}}, {point: "outseam", length: {typed: "101", unit: "cm"}}],
    tag: {text: "W 34 L 32"},
    cloth: {weight: 13.75, unit: "oz/yd2"},
  },
};

export async function newRack(): Promise<Rack> {
  const db = openDatabase(":memory:");
  migrate(db, "memory", "memory");
  const books = shippedBooks();
  if (books.problems) throw new Error("the books that are shipped do not load");
  return openRack({store: sqliteStore(db), shipped: books.books, now, who: "owner", today: month(2026, 11)});
}

export const contentOf = (number: string, more: object = rich): Content => contentSchema.parse({garment: loadGarment(`rulebooks/demo/garments/${number}.yaml`).garment!, ...more});

export async function hung(content: Content, rack: Rack): Promise<GarmentRecord> {
  const {saved} = await rack.store.save({id: null, base: 0, content, who: "owner", what: "added", at: now});
  return saved!;
}

export async function materialOf(number: string, rack: Rack, more: object = rich): Promise<Material> {
  const {material, problems} = await gather(await hung(contentOf(number, more), rack), rack, {on: today});
  if (problems) throw new Error(JSON.stringify(problems));
  return material;
}

/** JPEGs of three sizes by the hashes of `rich`. */
export async function photos(): Promise<Map<string, Uint8Array>> {
  const one = (width: number, height: number, background: string) => sharp({create: {width, height, channels: 3, background}}).jpeg().toBuffer();
  return new Map([[hash("1"), await one(600, 800, "#3a5a7a")], [hash("2"), await one(800, 600, "#7a6a4a")], [hash("3"), await one(500, 500, "#5a7a5a")]]);
}
