// Settings by name over HTTP: the usual value, saving on top of a revision, values and names that do not fit.
import {expect, test} from "vitest";
import {settingKey, settingNames, settings} from "../../commands/rack/settings.ts";
import {testApp} from "./test-app.ts";

interface Shown {
  readonly rev: number;
  readonly value: Record<string, unknown>;
  readonly changedBy: string | null;
  readonly fits: boolean;
}

test("every setting has a usual value that fits its own shape", async () => {
  const t = testApp();
  expect(settingNames).toContain("terms");
  for (const name of settingNames) {
    const shown = await t.expectJson<Shown>(200, "GET", `/api/settings/${name}`);
    expect([name, shown]).toMatchObject([name, {rev: 0, changedBy: null, fits: true}]);
    expect(settings[name].schema.parse(shown.value)).toEqual(shown.value);
  }
});

test("a saved setting is there again, a revision further", async () => {
  const t = testApp();
  const saved = await t.expectJson<Shown>(200, "PUT", "/api/settings/terms", {base: 0, value: {margin: 0.5, currency: "EUR"}});
  expect(saved).toMatchObject({rev: 1, changedBy: "owner", value: {margin: 0.5, currency: "EUR", daysToSell: 60}});
  expect(await t.expectJson(200, "GET", "/api/settings/terms")).toEqual(saved);
  expect(await t.expectJson(200, "PUT", "/api/settings/terms", {base: 1, value: {margin: 0.3}})).toMatchObject({rev: 2, value: {margin: 0.3, currency: "USD"}});
});

test("a change made on top of an older revision is refused, and tells what stands there now", async () => {
  const t = testApp();
  await t.expectJson(200, "PUT", "/api/settings/owner", {base: 0, value: {name: "Ash Lane Clothing"}});
  const refused = await t.expectJson<{now: Shown}>(409, "PUT", "/api/settings/owner", {base: 0, value: {name: "Another"}});
  expect(refused).toMatchObject({problems: [{code: "rack/setting-saved-between"}], now: {rev: 1, value: {name: "Ash Lane Clothing"}}});
  expect((await t.expectJson<Shown>(200, "GET", "/api/settings/owner")).value.name).toBe("Ash Lane Clothing");
});

test("an unknown name, even one that every object has, is not found; a value that does not fit is named by its place", async () => {
  const t = testApp();
  for (const name of ["colour", "constructor", "__proto__"]) expect(await t.expectJson(404, "GET", `/api/settings/${name}`)).toMatchObject({problems: [{code: "rack/no-setting"}]});
  await t.expectJson(404, "PUT", "/api/settings/colour", {base: 0, value: {}});
  const refused = await t.expectJson<{problems: {at: string}[]}>(422, "PUT", "/api/settings/terms", {base: 0, value: {margin: 2, feeShare: -1}});
  expect(refused.problems.map(({at}) => at).sort()).toEqual(["value feeShare", "value margin"]);
  expect(await t.expectJson(200, "GET", "/api/settings/terms")).toMatchObject({rev: 0});
});

test("what no longer fits gives way to the usual value, says so, and can be saved over", async () => {
  const t = testApp();
  const old = {rev: 4, changedAt: "2026-01-01T00:00:00.000Z", changedBy: "owner", value: {margin: "much"}};
  await t.options.store.setSetting(settingKey("terms"), JSON.stringify(old));
  expect(await t.expectJson(200, "GET", "/api/settings/terms")).toMatchObject({rev: 4, fits: false, value: {margin: 0.4}});
  expect(await t.expectJson(200, "PUT", "/api/settings/terms", {base: 4, value: {}})).toMatchObject({rev: 5, fits: true});
});
