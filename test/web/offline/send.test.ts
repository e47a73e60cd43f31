// Sending a change: what the server answers, told apart by what has to be done next.
import {afterEach, expect, test, vi} from "vitest";
import {contentSchema, type Content} from "../../../store/model.ts";
import {send} from "../../../web/offline/send.ts";

const content = (more: Record<string, unknown> = {}): Content => contentSchema.parse({garment: {garment: "1", saw: {}}, ...more});
const dating = {at: "2026-06-01T10:00:00.000Z", books: [], kind: "one date", words: "1968", sentence: "", sureness: "sure", probability: 1, best: "1968-01", noEarlier: "1968-01", noLater: "1968-12", maker: null, plant: null, odd: 0, years: {first: 1968, shares: [1]}};
const record = (rev: number, body: Content) => ({id: "abcdefghijkl", rev, createdAt: "", changedAt: "", changedBy: "x", removed: false, content: body});
const change = {garment: "abcdefghijkl", base: 1, was: content(), content: content({place: "attic"}), what: "changed"};

/** Answers in turn, and notes what was asked. */
function answers(...all: [status: number, body: unknown][]): unknown[] {
  const asked: unknown[] = [];
  vi.stubGlobal("localStorage", {getItem: () => null});
  vi.stubGlobal("fetch", async (path: string, request?: {body: string}) => {
    asked.push(request ? JSON.parse(request.body) : path);
    const [status, answer] = all.shift()!;
    return new Response(JSON.stringify(answer), {status});
  });
  return asked;
}
afterEach(() => vi.unstubAllGlobals());

test("a change that was only overtaken by the tool's own dating goes on top of it", async () => {
  const asked = answers([409, {now: record(2, content({dating})), base: content()}], [200, record(3, change.content)]);
  expect((await send(change, false)).saved?.rev).toBe(3);
  expect(asked).toMatchObject([{base: 1}, {base: 2, content: {place: "attic"}}]);
});

test("a change that somebody else overtook is a conflict", async () => {
  const asked = answers([409, {now: record(2, content({tags: ["sold?"]})), base: content()}]);
  expect((await send(change, false)).conflict).toMatchObject({now: {rev: 2}, base: {place: ""}});
  expect(asked).toHaveLength(1);
});

test("a change that is there already is saved", async () => {
  answers([409, {now: record(2, change.content), base: content()}]);
  expect((await send(change, true)).saved?.rev).toBe(2);
});

test("a server that says no is told from one that is not there", async () => {
  answers([422, {problems: [{code: "x", at: "a", what: "b", why: "c", fix: "d"}]}], [503, {}]);
  expect((await send(change, false)).problems?.[0]?.code).toBe("x");
  expect(await send(change, false)).toEqual({unreachable: true, unanswered: false});
  vi.stubGlobal("fetch", () => Promise.reject(new TypeError("no network")));
  expect(await send(change, false)).toEqual({unreachable: true, unanswered: true});
});

test("a new garment whose answer was lost is found on the rack, dated meanwhile, and not added twice", async () => {
  const asked = answers([200, {rows: [{id: "abcdefghijkl", number: "1"}, {id: "mnopqrstuvwx", number: "12"}]}], [200, record(2, content({dating}))]);
  expect((await send({garment: "new-1", base: 0, was: null, content: content(), what: "added"}, true)).saved?.id).toBe("abcdefghijkl");
  expect(asked).toEqual(["/api/rack?text=1&limit=20", "/api/garments/abcdefghijkl"]);
});
