// The routes of garments: put on the rack, change, remove, put back, go back, and what happens when two change the same one.
import {expect, test} from "vitest";
import type {GarmentRecord, Step} from "../../store/model.ts";
import {testApp} from "./test-app.ts";

const seen = (label: string) => ({garment: {garment: "7", maker: "wickerlow", saw: {label, rows: ["3 8 21"]}}});

test("a garment put on the rack is dated, and comes back as it was kept", async () => {
  const {expectJson} = testApp();
  const added = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  expect(added.rev).toBe(1);
  expect(added.content.dating).toMatchObject({words: "March 1968", best: "1968-03", books: [{book: "wickerlow", edition: 1}], maker: "wickerlow", plant: "21"});
  expect(added.content.dating!.years.shares.reduce((a, b) => a + b)).toBeCloseTo(1, 4);
  expect(await expectJson(200, "GET", `/api/garments/${added.id}`)).toEqual(added);
});

test("a dating that is sent along does not count: the server makes its own", async () => {
  const {expectJson} = testApp();
  const {content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  const forged = {...content, dating: {...content.dating!, words: "July 1899"}};
  const again = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: forged});
  expect(again.content.dating!.words).toBe("March 1968");
});

test("a garment that cannot be dated is kept all the same, undated", async () => {
  const {expectJson} = testApp();
  const {content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: {garment: {garment: "8", maker: "nobody-knows", saw: {"no-such-mark": "x"}}}});
  expect(content.dating).toBeNull();
});

test("a change that leaves the marks as they are keeps the dating; one of the marks dates anew", async () => {
  const {expectJson} = testApp();
  const {id, content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  const moved = await expectJson<GarmentRecord>(200, "PUT", `/api/garments/${id}`, {base: 1, content: {...content, place: "shelf 4", dating: null}});
  expect(moved.content.dating).toEqual(content.dating);
  const other = await expectJson<GarmentRecord>(200, "PUT", `/api/garments/${id}`, {base: 2, content: {...content, garment: {...content.garment, saw: {label: "blue-satin", rows: ["3 8 38"]}}}});
  expect(other.content.dating!.words).toBe("March 1978; March 1988");
});

test("the later of two saves is refused with what stands now and what both started from, and nothing is lost", async () => {
  const {expectJson, ask} = testApp();
  const {id, content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  const mine = {...content, place: "window"};
  const first = await expectJson<GarmentRecord>(200, "PUT", `/api/garments/${id}`, {base: 1, content: mine});
  const response = await ask("PUT", `/api/garments/${id}`, {base: 1, content: {...content, place: "cellar"}}, {"x-ticking-who": "Ana"});
  expect(response.status).toBe(409);
  expect(response.headers.get("content-type")).toBe("application/problem+json");
  const problem = (await response.json()) as {now: GarmentRecord; base: unknown; problems: {code: string}[]};
  expect(problem).toMatchObject({title: "Conflict", status: 409, now: first, base: content});
  expect(problem.problems[0]!.code).toBe("rack/saved-between");
  expect((await expectJson<GarmentRecord>(200, "GET", `/api/garments/${id}`)).content.place).toBe("window");
});

test("of twenty saves at the same moment on the same revision one wins", async () => {
  const {expectJson, ask} = testApp();
  const {id, content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  const statuses = await Promise.all(Array.from({length: 20}, async (_, i) => (await ask("PUT", `/api/garments/${id}`, {base: 1, content: {...content, place: `shelf ${i}`}})).status));
  expect(statuses.filter((status) => status === 200)).toHaveLength(1);
  expect(statuses.filter((status) => status === 409)).toHaveLength(19);
});

test("a removed garment is off the rack, keeps its history, and can be put back", async () => {
  const {expectJson} = testApp();
  const {id} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  expect((await expectJson<GarmentRecord>(200, "DELETE", `/api/garments/${id}?base=1`)).removed).toBe(true);
  expect(await expectJson(200, "GET", "/api/rack")).toMatchObject({total: 0});
  expect(await expectJson(200, "GET", "/api/rack?removed=true")).toMatchObject({total: 1});
  await expectJson(409, "DELETE", `/api/garments/${id}?base=1`);
  expect((await expectJson<GarmentRecord>(200, "POST", `/api/garments/${id}/put-back`, {base: 2})).removed).toBe(false);
  const steps = await expectJson<Step[]>(200, "GET", `/api/garments/${id}/history`);
  expect(steps.map(({what}) => what)).toEqual(["added", "removed", "put back"]);
});

test("going back to a step makes a new step: what was in between stays in the history", async () => {
  const {expectJson} = testApp();
  const {id, content} = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  await expectJson(200, "PUT", `/api/garments/${id}`, {base: 1, content: {...content, place: "window"}, what: "hung in the window"});
  const back = await expectJson<GarmentRecord>(200, "POST", `/api/garments/${id}/undo`, {base: 2, rev: 1});
  expect(back).toMatchObject({rev: 3, content});
  const steps = await expectJson<Step[]>(200, "GET", `/api/garments/${id}/history`);
  expect(steps.map(({what}) => what)).toEqual(["added", "hung in the window", "undone to step 1"]);
  await expectJson(404, "POST", `/api/garments/${id}/undo`, {base: 3, rev: 9});
});

test("the history names who changed what; a name may have any letters", async () => {
  const {ask, expectJson} = testApp();
  const added = (await (await ask("POST", "/api/garments", {content: seen("grey-tape")}, {"x-ticking-who": encodeURIComponent("Zoë Ł.")})).json()) as GarmentRecord;
  expect(added.changedBy).toBe("Zoë Ł.");
  const plain = await expectJson<GarmentRecord>(201, "POST", "/api/garments", {content: seen("grey-tape")});
  expect(plain.changedBy).toBe("owner");
});

test("unknown garments are not found; misshapen ids, numbers and contents are told all at once", async () => {
  const {expectJson} = testApp();
  for (const [method, path, body] of [
    ["GET", "/api/garments/aaaaaaaaaaaa"], ["GET", "/api/garments/aaaaaaaaaaaa/history"], ["DELETE", "/api/garments/aaaaaaaaaaaa?base=1"],
    ["PUT", "/api/garments/aaaaaaaaaaaa", {base: 1, content: seen("grey-tape")}], ["POST", "/api/garments/aaaaaaaaaaaa/undo", {base: 1, rev: 1}], ["POST", "/api/garments/aaaaaaaaaaaa/put-back", {base: 1}],
  ] as const) expect(await expectJson(404, method, path, body)).toMatchObject({problems: [{code: "rack/no-garment"}]});
  await expectJson(422, "GET", "/api/garments/no");
  await expectJson(422, "DELETE", "/api/garments/aaaaaaaaaaaa");
  await expectJson(422, "DELETE", "/api/garments/aaaaaaaaaaaa?base=one");
  const {problems} = await expectJson<{problems: {at: string}[]}>(422, "POST", "/api/garments", {content: {garment: {garment: "", saw: {}}, standing: "lost", tags: 3}});
  expect(problems.map(({at}) => at)).toEqual(["content.garment.garment", "content.standing", "content.tags"]);
});

test("a photo that was never added cannot be tied to a garment", async () => {
  const {expectJson} = testApp();
  const problem = await expectJson<{problems: {code: string}[]}>(422, "POST", "/api/garments", {content: {...seen("grey-tape"), photos: [{photo: "ab".repeat(32)}]}});
  expect(problem.problems.map(({code}) => code)).toEqual(["rack/no-photo"]);
});

test("examining keeps nothing", async () => {
  const {expectJson} = testApp();
  const finding = await expectJson<{verdict: {words: string}; trace: string[]}>(200, "POST", "/api/examine", {...seen("grey-tape"), trace: true});
  expect(finding.verdict.words).toBe("March 1968");
  expect(finding.trace.length).toBeGreaterThan(3);
  await expectJson(422, "POST", "/api/examine", {garment: {garment: "7", saw: {"no-such-mark": "x"}}});
  expect(await expectJson(200, "GET", "/api/rack")).toMatchObject({total: 0});
});
