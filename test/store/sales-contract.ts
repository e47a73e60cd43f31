// What every driver of the store must do with sales: those written down, and those of garments that were sold.
import {expect} from "vitest";
import {saleSchema, type Sale, type SaleRecord} from "../../worth/model.ts";
import {saleQuerySchema} from "../../store/model.ts";
import type {SaleSave, Store} from "../../store/store.ts";
import {at, content, dated} from "./body.ts";

export const sale = (more: Record<string, unknown> = {}): Sale => saleSchema.parse({soldOn: "2026-03-02", price: {cents: 12000, currency: "USD"}, kind: "trousers", ...more});
export const saleSave = (id: string | null, base: number, body: Sale, more: Partial<SaleSave> = {}): SaleSave => ({id, base, sale: body, who: "owner", what: id ? "changed" : "added", at, ...more});

const sold = {on: "2026-04-01", price: {cents: 22000, currency: "USD"}, fees: {cents: 2000, currency: "USD"}, channel: "market stall", grade: "good"};
const query = (given: Record<string, unknown> = {}) => saleQuerySchema.parse({sort: "sold", descending: false, ...given});

export function salesContract(using: (name: string, run: (store: Store) => Promise<void>) => void): void {
  const added = async (store: Store, ...bodies: readonly Sale[]) => (await store.saveSales(bodies.map((body) => saleSave(null, 0, body)))).map((one) => one.saved!);
  const hung = async (store: Store, number: string, more: Record<string, unknown>) => (await store.save({id: null, base: 0, content: content(number, more), who: "owner", what: "added", at})).saved!;
  const prices = async (store: Store, given: Record<string, unknown> = {}) => (await store.findSales(query(given))).rows.map(({sale: {price}}) => price.cents);

  using("a written sale is there again, field for field", async (store) => {
    const body = sale({maker: "marrowfield", madeFrom: "1967-01", madeUntil: "1969-12", size: "W 34 L 32", grade: "very good", channel: "auction", note: "one of two", fees: {cents: 900, currency: "USD"}});
    const [record] = await added(store, body);
    expect(record).toEqual({id: record!.id, rev: 1, changedAt: at, changedBy: "owner", removed: false, garment: null, sale: body});
    expect(await store.sale(record!.id)).toEqual(record);
    expect(await store.sale("nothing0here0")).toBeNull();
  });

  using("a sale is changed on top of its newest revision alone, and both sides are told otherwise", async (store) => {
    const [{id}] = (await added(store, sale())) as [SaleRecord];
    expect((await store.saveSales([saleSave(id, 1, sale({note: "first"}))]))[0]!.saved).toMatchObject({rev: 2, sale: {note: "first"}});
    const [late] = await store.saveSales([saleSave(id, 1, sale({note: "late"}))]);
    expect(late!.conflict).toMatchObject({now: {rev: 2, sale: {note: "first"}}, base: {note: ""}});
    expect(await store.saveSales([saleSave("nothing0here0", 1, sale())])).toEqual([{unknown: true}]);
    expect((await store.sale(id))!.rev).toBe(2);
  });

  using("of many sales, one that cannot be saved stops all", async (store) => {
    const [first] = await added(store, sale());
    const answers = await store.saveSales([saleSave(first!.id, 1, sale({note: "x"})), saleSave("nothing0here0", 1, sale()), saleSave(null, 0, sale())]);
    expect(answers.map((answer) => Object.keys(answer)[0])).toEqual(["held", "unknown", "held"]);
    expect([(await store.findSales(query())).total, (await store.sale(first!.id))!.rev]).toEqual([1, 1]);
    await expect(store.saveSales([saleSave(first!.id, 1, sale()), saleSave(first!.id, 1, sale())])).rejects.toThrow("one sale twice");
  });

  using("every save of a sale is a step of its history, its removal too", async (store) => {
    const [{id}] = (await added(store, sale())) as [SaleRecord];
    await store.saveSales([saleSave(id, 1, sale({note: "x"}), {who: "second hand"})]);
    await store.saveSales([saleSave(id, 2, sale({note: "x"}), {removed: true, what: "removed"})]);
    expect((await store.saleHistory(id)).map(({rev, who, what, removed, sale: {note}}) => [rev, who, what, removed, note])).toEqual([[1, "owner", "added", false, ""], [2, "second hand", "changed", false, "x"], [3, "owner", "removed", true, "x"]]);
    expect([await prices(store), await prices(store, {removed: true})]).toEqual([[], [12000]]);
    expect((await store.saveSales([saleSave(id, 3, sale(), {removed: false})]))[0]!.saved).toMatchObject({rev: 4, removed: false});
  });

  using("a garment that is sold is a sale at once, changes with it, and is one no more when it is not sold after all", async (store) => {
    const {id} = await hung(store, "0147", {standing: "sold", money: {sold}, dating: dated([1], 1968), garment: {garment: "0147", title: "Work trousers", type: "trousers", saw: {}}, sizes: {tag: {text: "W 34"}}});
    const own = {soldOn: "2026-04-01", price: sold.price, fees: sold.fees, kind: "trousers", maker: "marrowfield", lot: null, madeFrom: "1967-01", madeUntil: "1969-12", size: "W 34", grade: "good", channel: "market stall", note: "Work trousers"};
    expect((await store.findSales(query())).rows).toEqual([{id, rev: 1, changedAt: at, changedBy: "owner", removed: false, garment: id, sale: own}]);
    await store.save({id, base: 1, content: content("0147", {standing: "sold", money: {sold: {...sold, price: {cents: 25000, currency: "USD"}}}}), who: "owner", what: "changed", at});
    expect([await prices(store), (await store.sale(id))!.rev]).toEqual([[25000], 2]);
    await store.save({id, base: 2, content: content("0147", {standing: "for sale", money: {sold}}), who: "owner", what: "changed", at});
    expect(await prices(store)).toEqual([]);
    await store.save({id, base: 3, content: content("0147", {standing: "sold", money: {sold}}), who: "owner", what: "changed", at});
    await store.save({id, base: 4, content: content("0147", {standing: "sold", money: {sold}}), removed: true, who: "owner", what: "removed", at});
    expect([await prices(store), await prices(store, {removed: true})]).toEqual([[], []]);
    expect(await store.check()).toEqual([]);
  });

  using("the sale of a garment cannot be saved past the garment", async (store) => {
    const {id} = await hung(store, "1", {standing: "sold", money: {sold}});
    expect(await store.saveSales([saleSave(id, 1, sale())])).toEqual([{unknown: true}]);
    expect(await prices(store)).toEqual([22000]);
  });

  using("a garment said to be sold without a price, or with one but not sold, is no sale", async (store) => {
    await hung(store, "1", {standing: "sold"});
    await hung(store, "2", {standing: "sold", money: {}});
    await hung(store, "3", {standing: "for sale", money: {sold}});
    expect(await prices(store)).toEqual([]);
  });

  using("each filter of sales keeps what fits and leaves out what does not", async (store) => {
    await added(store, sale({price: {cents: 1, currency: "USD"}, soldOn: "2025-01-31", maker: "marrowfield", grade: "good", channel: "Auction", note: "Café rail"}), sale({price: {cents: 2, currency: "EUR"}, soldOn: "2025-02-01", kind: "jacket", lot: "412", size: "W 34"}));
    await hung(store, "1", {standing: "sold", money: {sold}});
    const cases: [Record<string, unknown>, number[]][] = [
      [{}, [1, 2, 22000]], [{kind: "jacket"}, [2]], [{maker: "marrowfield"}, [1]], [{grade: "good"}, [1, 22000]], [{channel: "Auction"}, [1]], [{own: true}, [22000]], [{own: false}, [1, 2]],
      [{from: "2025-02-01"}, [2, 22000]], [{until: "2025-01-31"}, [1]], [{from: "2025-01-01", until: "2025-12-31"}, [1, 2]],
      [{text: "cafe"}, [1]], [{text: "CAFÉ auct"}, [1]], [{text: "412"}, [2]], [{text: "w 34"}, [2]], [{text: "%"}, []], [{text: "nothing"}, []],
    ];
    for (const [given, wanted] of cases) expect([given, await prices(store, given)]).toEqual([given, wanted]);
    expect((await store.findSales(query())).values).toEqual({kinds: ["jacket", "trousers"], makers: ["marrowfield"], channels: ["Auction", "market stall"]});
  });

  using("sorts sales by each order, both ways; pages do not overlap", async (store) => {
    await added(store, sale({price: {cents: 3, currency: "USD"}, soldOn: "2025-01-01", kind: "b", maker: "x"}), sale({price: {cents: 1, currency: "USD"}, soldOn: "2025-01-02", kind: "A", maker: "Y"}), sale({price: {cents: 2, currency: "USD"}, soldOn: "2025-01-03", kind: "c", maker: "z"}));
    for (const [sort, up] of [["sold", [3, 1, 2]], ["price", [1, 2, 3]], ["kind", [1, 3, 2]], ["maker", [3, 1, 2]], ["changed", [3, 1, 2]]] as const) {
      expect([sort, await prices(store, {sort})]).toEqual([sort, up]);
      expect([sort, await prices(store, {sort, descending: true})]).toEqual([sort, up.toReversed()]);
    }
    const page = await store.findSales(query({offset: 1, limit: 1}));
    expect([page.total, page.rows.map((row) => row.sale.price.cents)]).toEqual([3, [1]]);
  });

  using("walking in pages meets every sale once, of either kind, removed ones too", async (store) => {
    const ids = (await added(store, ...Array.from({length: 5}, () => sale()))).map(({id}) => id);
    ids.push((await hung(store, "1", {standing: "sold", money: {sold}})).id);
    await store.saveSales([saleSave(ids[2]!, 1, sale(), {removed: true})]);
    const met: string[] = [];
    for (let after: string | null = null, page; (page = await store.walkSales(after, 2)).length > 0; after = page.at(-1)!.id) met.push(...page.map(({id}) => id));
    expect(met).toEqual([...ids].sort());
  });

  using("who keeps sales in memory is told what changed since, and no more", async (store) => {
    const [one, two] = await added(store, sale({note: "one"}), sale({note: "two"}));
    const first = await store.salesSince(null);
    expect([first.whole, first.sales.map(({id, sale: {note}}) => [id, note])]).toEqual([true, [[one!.id, "one"], [two!.id, "two"]]]);
    expect(await store.salesSince(first.mark)).toEqual({mark: first.mark, whole: false, sales: []});
    await store.saveSales([saleSave(one!.id, 1, sale({note: "one"}), {removed: true})]);
    const {id} = await hung(store, "1", {standing: "sold", money: {sold}});
    const next = await store.salesSince(first.mark);
    expect([next.whole, next.sales.map((told) => [told.id, told.garment, told.removed])]).toEqual([false, [[one!.id, null, true], [id, id, false]]]);
    expect((await store.salesSince(null)).sales.map((told) => told.id).sort()).toEqual([two!.id, id].sort());
    expect(next.mark).toBeGreaterThan(first.mark);
  });
}
