// Two changes of one garment that started from the same content become one.
import fc from "fast-check";
import {expect, test} from "vitest";
import {contentSchema, type Content} from "../../../store/model.ts";
import {mergeContent, same, takeTheirs} from "../../../web/offline/merge.ts";

const base: Content = contentSchema.parse({garment: {garment: "12", title: "Trousers", saw: {label: "green", zip: "metal"}}, place: "bench", tags: ["old", "blue"]});
const saw = (more: Record<string, string>): Content => ({...base, garment: {...base.garment, saw: {...base.garment.saw, ...more}}});

test("what only one side touched is taken from that side", () => {
  const {content, clashes} = mergeContent(base, {...base, place: "window"}, {...base, asked: {cents: 12000, currency: "EUR"}});
  expect(clashes).toEqual([]);
  expect(content).toEqual({...base, place: "window", asked: {cents: 12000, currency: "EUR"}});
});

test("marks are merged one by one, and a mark that both changed is asked about", () => {
  const {content, clashes} = mergeContent(base, saw({zip: "brass", hem: "chain"}), saw({zip: "nylon", button: "21"}));
  expect(content.garment.saw).toEqual({label: "green", zip: "brass", hem: "chain", button: "21"});
  expect(clashes).toEqual([{path: ["garment", "saw", "zip"], mine: "brass", theirs: "nylon"}]);
  expect(takeTheirs(content, clashes[0]!).garment.saw["zip"]).toBe("nylon");
});

test("a mark taken away by one side is gone, unless the other changed it", () => {
  const {zip: _, ...less} = base.garment.saw;
  const without: Content = {...base, garment: {...base.garment, saw: less}};
  expect(mergeContent(base, without, saw({hem: "chain"})).content.garment.saw).toEqual({label: "green", hem: "chain"});
  const {clashes, content} = mergeContent(base, saw({zip: "brass"}), without);
  expect(clashes).toHaveLength(1);
  expect(takeTheirs(content, clashes[0]!).garment.saw).toEqual({label: "green"});
});

test("tags and photos come and go one by one", () => {
  const a = "a".repeat(64);
  const b = "b".repeat(64);
  const photo = (hash: string, caption = "") => ({photo: hash, place: "", caption});
  const before: Content = {...base, photos: [photo(a)]};
  const merged = mergeContent(before, {...before, tags: ["old", "mine"], photos: [photo(a), photo(b)]}, {...before, tags: ["old", "blue", "theirs"], photos: [photo(a, "label")]});
  expect(merged.content.tags).toEqual(["old", "mine", "theirs"]);
  expect(merged.content.photos).toEqual([photo(a, "label"), photo(b)]);
  expect(merged.clashes).toEqual([]);
});

test("without a known start everything that differs is asked about", () => {
  expect(mergeContent(null, {...base, place: "here"}, {...base, place: "there"}).clashes.map(({path}) => path)).toEqual([["place"]]);
});

test("a side that changed nothing adds nothing, whatever the other did", () => {
  const word = fc.constantFrom("one", "two", "three");
  const some = fc.record({place: word, title: word, zip: fc.option(word), tags: fc.uniqueArray(word)}).map(
    ({place, title, zip, tags}): Content => ({...base, place, tags, garment: {...base.garment, title, saw: zip === null ? {label: "green"} : {label: "green", zip}}}),
  );
  fc.assert(
    fc.property(some, some, (start, other) => {
      for (const merged of [mergeContent(start, other, start), mergeContent(start, start, other)]) {
        expect(merged.clashes).toEqual([]);
        expect(same({...merged.content, tags: [...merged.content.tags].sort()}, {...other, tags: [...other.tags].sort()})).toBe(true);
      }
    }),
  );
});

test("one measures while another looks it over, and nothing clashes", () => {
  const length = (point: string, typed: string) => ({point, length: {typed, unit: "in" as const}});
  const flaw = (place: string) => ({kind: "hole", place, side: "front" as const, x: null, y: null, size: null, severity: "plain" as const, mended: false, note: ""});
  const looked = contentSchema.parse({...base, sizes: {measures: [length("waist", "17")]}, state: {wear: "light", flaws: [flaw("left knee")]}});
  const mine: Content = {...looked, sizes: {...looked.sizes!, measures: [length("waist", "17"), length("hip", "21")]}, state: {...looked.state!, flaws: [flaw("left knee"), flaw("seat")]}};
  const theirs: Content = {...looked, sizes: {...looked.sizes!, measures: [length("waist", "17"), length("inseam", "32")]}, state: {...looked.state!, clean: "washed", flaws: []}};
  const {content, clashes} = mergeContent(looked, mine, theirs);
  expect(clashes).toEqual([]);
  expect(content.sizes!.measures.map(({point}) => point).sort()).toEqual(["hip", "inseam", "waist"]);
  expect(content.state).toMatchObject({clean: "washed", wear: "light", flaws: [{place: "seat"}]});
});

test("a length that both laid anew is asked about, and their answer keeps what only I laid", () => {
  const length = (point: string, typed: string) => ({point, length: {typed, unit: "in" as const}});
  const laid = (...measures: ReturnType<typeof length>[]): Content => contentSchema.parse({...base, sizes: {measures}});
  const {content, clashes} = mergeContent(laid(length("waist", "17")), laid(length("waist", "16 3/4"), length("hip", "21")), laid(length("waist", "17 1/4")));
  expect(clashes.map(({path}) => path)).toEqual([["sizes", "measures"]]);
  expect(content.sizes!.measures).toEqual([length("waist", "16 3/4"), length("hip", "21")]);
  expect(takeTheirs(content, clashes[0]!).sizes!.measures).toEqual([length("waist", "17 1/4"), length("hip", "21")]);
});
