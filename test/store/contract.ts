// What every driver of the store must do: one suite, run over each of them.
import {expect, test} from "vitest";
import {rackQuerySchema, type Content, type GarmentRecord} from "../../store/model.ts";
import type {Save, Store} from "../../store/store.ts";
import {at, content, dated} from "./body.ts";
import {salesContract} from "./sales-contract.ts";

const change = (id: string | null, base: number, body: Content, more: Partial<Save> = {}): Save => ({id, base, content: body, who: "owner", what: id ? "changed" : "added", at, ...more});
const query = (given: Record<string, unknown> = {}) => rackQuerySchema.parse({sort: "number", descending: false, ...given});

async function added(store: Store, body: Content): Promise<GarmentRecord> {
  const {saved} = await store.save(change(null, 0, body));
  return saved!;
}

/** @param open  a new empty store; closed by the suite */
export function contract(open: () => Promise<Store>): void {
  const using = (name: string, run: (store: Store) => Promise<void>) =>
    test(name, async () => {
      const store = await open();
      try {
        await run(store);
      } finally {
        await store.close();
      }
    });
  const numbers = async (store: Store, given: Record<string, unknown>) => (await store.search(query(given))).rows.map(({number}) => number);

  using("what was saved is there again, field for field", async (store) => {
    const body = content("0147", {place: "rail 3", paid: {cents: 1250, currency: "EUR"}, tags: ["worn", "repaired"], dating: dated([0.1, 0.1, 0.8])}, {label: "green-satin", rows: ["412-0318", {text: "3 8 21", at: "back"}]});
    const record = await added(store, body);
    expect(record).toMatchObject({rev: 1, removed: false, createdAt: at, changedBy: "owner", content: body});
    expect(await store.get(record.id)).toEqual(record);
    expect(await store.byNumber("0147")).toEqual(record);
    expect(await store.get("nothing0here0")).toBeNull();
  });

  using("a change on top of the newest revision counts one up", async (store) => {
    const {id} = await added(store, content("1"));
    const {saved} = await store.save(change(id, 1, content("1", {place: "attic"})));
    expect(saved).toMatchObject({id, rev: 2, content: {place: "attic"}});
  });

  using("a change on top of an older revision changes nothing, and tells both sides", async (store) => {
    const {id} = await added(store, content("1"));
    await store.save(change(id, 1, content("1", {place: "attic"})));
    const late = await store.save(change(id, 1, content("1", {place: "cellar"})));
    expect(late.saved).toBeUndefined();
    expect(late.conflict).toMatchObject({now: {rev: 2, content: {place: "attic"}}, base: {place: ""}});
    expect((await store.get(id))!.content.place).toBe("attic");
    expect(await store.history(id)).toHaveLength(2);
  });

  using("a change of a garment that is not there says so", async (store) => {
    expect(await store.save(change("nothing0here0", 1, content("1")))).toEqual({unknown: true});
  });

  using("of many changes, one that cannot be saved stops all", async (store) => {
    const first = await added(store, content("1"));
    const second = await added(store, content("2"));
    const answers = await store.saveAll([change(first.id, 1, content("1", {place: "attic"})), change(second.id, 7, content("2")), change(null, 0, content("3"))]);
    expect(answers.map((answer) => Object.keys(answer)[0])).toEqual(["held", "conflict", "held"]);
    expect((await store.get(first.id))!.rev).toBe(1);
    expect(await numbers(store, {})).toEqual(["1", "2"]);
    expect((await store.saveAll([change(first.id, 1, content("1b")), change(null, 0, content("3"))])).map(({saved}) => saved?.rev)).toEqual([2, 1]);
  });

  using("one garment twice among changes that are saved together is refused", async (store) => {
    const {id} = await added(store, content("1"));
    await expect(store.saveAll([change(id, 1, content("2")), change(id, 1, content("3"))])).rejects.toThrow("one garment twice");
    expect((await store.get(id))!.rev).toBe(1);
  });

  using("every save is a step of the history, oldest first, contents kept", async (store) => {
    const {id} = await added(store, content("1"));
    await store.save(change(id, 1, content("1", {place: "attic"}), {who: "second hand", what: "moved", at: "2026-06-02T00:00:00.000Z"}));
    await store.save(change(id, 2, content("1", {place: "attic"}), {removed: true, what: "removed"}));
    expect((await store.history(id)).map(({rev, who, what, removed, content: {place}}) => [rev, who, what, removed, place])).toEqual([
      [1, "owner", "added", false, ""],
      [2, "second hand", "moved", false, "attic"],
      [3, "owner", "removed", true, "attic"],
    ]);
  });

  using("a removed garment is out of sight until asked for, and stays removed when changed", async (store) => {
    const {id} = await added(store, content("1"));
    await store.save(change(id, 1, content("1"), {removed: true}));
    expect(await numbers(store, {})).toEqual([]);
    expect(await numbers(store, {removed: true})).toEqual(["1"]);
    expect(await store.byNumber("1")).toBeNull();
    expect(await store.count()).toBe(0);
    expect((await store.save(change(id, 2, content("1", {place: "x"})))).saved!.removed).toBe(true);
    expect((await store.save(change(id, 3, content("1"), {removed: false}))).saved!.removed).toBe(false);
    expect(await store.count()).toBe(1);
  });

  using("words, beginnings of words and codes are found, wherever they stand", async (store) => {
    await added(store, content("0147", {place: "Dachboden"}, {label: "green-satin", rows: ["412-0318", "3 (8:80/3:20) 21"], "button-stamp": "21"}));
    await added(store, content("0152", {tags: ["repaired"], garment: {garment: "0152", title: "Narrow trousers", note: "hem let down", saw: {rows: ["418-0324"]}}}));
    for (const text of ["412", "0318", "412-0318", "0147", "dach", "green-sat", "GREEN", "38 21", "3 8 21", "button"]) {
      expect([text, await numbers(store, {text})]).toEqual([text, text === "38 21" ? [] : ["0147"]]);
    }
    for (const text of ["narrow hem", "repair", "418-03"]) expect([text, await numbers(store, {text})]).toEqual([text, ["0152"]]);
    for (const text of ["418-0318", "nothing", '"', "*", "AND OR", "0318 Narrow"]) expect([text, await numbers(store, {text})]).toEqual([text, text === '"' || text === "*" ? ["0147", "0152"] : []]);
  });

  using("a changed word is no longer found", async (store) => {
    const {id} = await added(store, content("1", {place: "attic"}));
    await store.save(change(id, 1, content("1", {place: "cellar"})));
    expect(await numbers(store, {text: "attic"})).toEqual([]);
    expect(await numbers(store, {text: "cellar"})).toEqual(["1"]);
  });

  using("each filter keeps what fits and leaves out what does not", async (store) => {
    await added(store, content("a", {place: "rail 1", standing: "for sale", asked: {cents: 5000, currency: "EUR"}, tags: ["x"], dating: dated([1], 1968), garment: {garment: "a", type: "trousers", saw: {}}}));
    await added(store, content("b", {place: "rail 2", standing: "sold", asked: {cents: 9000, currency: "EUR"}, dating: dated([0.5, 0.5], 1968, {maker: null, sureness: "open", odd: 2}), garment: {garment: "b", type: "jacket", saw: {}}}));
    await added(store, content("c"));
    const cases: [Record<string, unknown>, string[]][] = [
      [{place: "rail 1"}, ["a"]], [{standing: "sold"}, ["b"]], [{standing: "to examine"}, ["c"]], [{type: "jacket"}, ["b"]], [{maker: "marrowfield"}, ["a"]], [{tag: "x"}, ["a"]], [{tag: "y"}, []],
      [{askedFrom: 5001}, ["b"]], [{askedUntil: 5000}, ["a"]], [{askedFrom: 5000, askedUntil: 9000}, ["a", "b"]], [{sureness: "open"}, ["b"]], [{sureness: "undated"}, ["c"]], [{odd: true}, ["b"]], [{odd: false}, ["a", "c"]],
    ];
    for (const [given, wanted] of cases) expect([given, await numbers(store, given)]).toEqual([given, wanted]);
  });

  using("a date range takes the garments that lie in it with the probability asked for", async (store) => {
    await added(store, content("a", {dating: dated([0.2, 0.5, 0.3], 1967)}));
    await added(store, content("b", {dating: dated([1], 1980)}));
    await added(store, content("undated"));
    const cases: [Record<string, unknown>, string[]][] = [
      [{from: 1968, until: 1968}, ["a"]], [{from: 1968, until: 1968, atLeast: 0.6}, []], [{from: 1967, until: 1969, atLeast: 1}, ["a"]], [{from: 1970}, ["b"]], [{until: 1979}, ["a"]], [{from: 1950, until: 1990}, ["a", "b"]], [{from: 1950, until: 1960, atLeast: 0.01}, []],
    ];
    for (const [given, wanted] of cases) expect([given, await numbers(store, given)]).toEqual([given, wanted]);
  });

  using("the years of what fits are summed, changes and removals included", async (store) => {
    const {id} = await added(store, content("a", {dating: dated([0.25, 0.75], 1967)}));
    await added(store, content("b", {dating: dated([1], 1968)}));
    expect((await store.search(query())).years).toEqual({first: 1967, garments: [0.25, 1.75]});
    await store.save(change(id, 1, content("a", {dating: dated([1], 1970)})));
    expect((await store.search(query())).years).toEqual({first: 1968, garments: [1, 0, 1]});
    await store.save(change(id, 2, content("a")));
    expect((await store.search(query())).years).toEqual({first: 1968, garments: [1]});
  });

  using("sorts by each order, both ways, garments without a value last; pages do not overlap", async (store) => {
    await added(store, content("b", {place: "2", asked: {cents: 100, currency: "EUR"}, dating: dated([1], 1968, {best: "1968-01", probability: 0.5})}));
    await added(store, content("A", {place: "1", asked: {cents: 200, currency: "EUR"}, dating: dated([1], 1960, {best: "1960-01", probability: 0.9})}));
    await added(store, content("c", {place: "3"}));
    expect(await numbers(store, {sort: "number"})).toEqual(["A", "b", "c"]);
    expect(await numbers(store, {sort: "place", descending: true})).toEqual(["c", "b", "A"]);
    for (const [sort, up] of [["date", ["A", "b", "c"]], ["asked", ["b", "A", "c"]], ["sureness", ["b", "A", "c"]]] as const) {
      expect(await numbers(store, {sort})).toEqual(up);
      expect(await numbers(store, {sort, descending: true})).toEqual([up[1], up[0], up[2]]);
    }
    const page = await store.search(query({offset: 1, limit: 1}));
    expect([page.total, page.rows.map(({number}) => number)]).toEqual([3, ["b"]]);
  });

  using("filters can be set to what is on the rack", async (store) => {
    await added(store, content("a", {place: "attic", tags: ["t"], dating: dated([1]), garment: {garment: "a", type: "shirt", saw: {}}}));
    const {id} = await added(store, content("b", {place: "cellar", tags: ["gone"], garment: {garment: "b", type: "coat", saw: {}}}));
    expect((await store.search(query({text: "nothing"}))).values).toEqual({makers: ["marrowfield"], types: ["coat", "shirt"], places: ["attic", "cellar"], tags: ["gone", "t"]});
    await store.save(change(id, 1, (await store.get(id))!.content, {removed: true}));
    expect((await store.search(query())).values).toEqual({makers: ["marrowfield"], types: ["shirt"], places: ["attic"], tags: ["t"]});
  });

  using("walking in pages meets every garment once, removed ones too", async (store) => {
    const ids = [];
    for (let i = 0; i < 7; i++) ids.push((await added(store, content(String(i)))).id);
    await store.save(change(ids[3]!, 1, content("3"), {removed: true}));
    const met: string[] = [];
    for (let after: string | null = null, page; (page = await store.walk(after, 3)).length > 0; after = page.at(-1)!.id) met.push(...page.map(({id}) => id));
    expect(met).toEqual([...ids].sort());
  });

  using("a photo is noted once, and found again", async (store) => {
    const photo = {photo: "ab".repeat(32), mime: "image/jpeg" as const, bytes: 12, width: 3, height: 4, addedAt: at};
    await store.addPhoto(photo);
    await store.addPhoto({...photo, addedAt: "2027-01-01T00:00:00.000Z"});
    expect(await store.photos(null, 10)).toEqual([photo]);
    expect(await store.photo(photo.photo)).toEqual(photo);
    expect(await store.photo("00".repeat(32))).toBeNull();
  });

  using("editions of a book are added, never replaced", async (store) => {
    const edition = {book: "mine", edition: 1, title: "Mine", yaml: "book: mine", savedAt: at, savedBy: "owner"};
    expect(await store.addEdition(edition)).toBe(true);
    expect(await store.addEdition({...edition, yaml: "other"})).toBe(false);
    await store.addEdition({...edition, edition: 2});
    await store.addEdition({...edition, book: "other"});
    expect((await store.editions("mine")).map(({edition: e, yaml}) => [e, yaml])).toEqual([[1, "book: mine"], [2, "book: mine"]]);
    expect(await store.editions()).toHaveLength(3);
  });

  using("settings are kept, changed and taken away", async (store) => {
    expect(await store.setting("a")).toBeNull();
    await store.setSetting("a", "1");
    await store.setSetting("a", "2");
    expect(await store.setting("a")).toBe("2");
    await store.setSetting("a", null);
    expect(await store.setting("a")).toBeNull();
  });

  using("a setting is swapped only while it stands as it was seen", async (store) => {
    expect(await store.swapSetting("a", "0", "1")).toBe(false);
    expect(await store.swapSetting("a", null, "1")).toBe(true);
    expect(await store.swapSetting("a", null, "2")).toBe(false);
    expect(await store.swapSetting("a", "0", "2")).toBe(false);
    expect(await store.setting("a")).toBe("1");
    expect(await store.swapSetting("a", "1", "2")).toBe(true);
    expect(await store.setting("a")).toBe("2");
  });

  salesContract(using);

  using("is sound", async (store) => {
    await added(store, content("1"));
    expect(await store.check()).toEqual([]);
  });
}
