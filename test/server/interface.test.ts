// The OpenAPI document: well formed, complete, true of what the server answers; and no request made from it, however odd, upsets the server.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {rackCommands} from "../../commands/rack/list.ts";
import {settingNames} from "../../commands/rack/settings.ts";
import {openApi} from "../../server/openapi.ts";
import {arbitraryOf} from "./arbitrary.ts";
import {testApp, type TestApp} from "./test-app.ts";

type Json = Record<string, unknown>;
interface Operation {
  readonly operationId: string;
  readonly parameters?: readonly {readonly name: string; readonly in: string; readonly required: boolean; readonly schema: Json}[];
  readonly requestBody?: {readonly content: Record<string, {readonly schema?: Json}>};
  readonly responses: Record<string, {readonly description: string; readonly content?: Json}>;
}
interface Document {
  readonly openapi: string;
  readonly info: Json;
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: {readonly schemas: Record<string, Json>};
}

const documentOf = (t: TestApp) => t.expectJson<Document>(200, "GET", "/api/openapi.json");
const operationsOf = ({paths}: Document) => Object.entries(paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, operation]) => ({path, method, operation})));
const refsIn = (value: unknown): string[] => (Array.isArray(value) ? value.flatMap(refsIn) : typeof value === "object" && value !== null ? Object.entries(value).flatMap(([key, inner]) => (key === "$ref" ? [String(inner)] : refsIn(inner))) : []);

// Source: OpenAPI Specification 3.1.1: sections "OpenAPI Object", "Paths Object", "Operation Object", "Parameter Object", "Responses Object".
test("the document keeps the rules of OpenAPI 3.1", async () => {
  const document = await documentOf(testApp());
  expect(document.openapi).toMatch(/^3\.1\.\d+$/);
  expect(document.info).toMatchObject({title: expect.any(String), version: "1.2.3"});
  const operations = operationsOf(document);
  expect(new Set(operations.map(({operation}) => operation.operationId)).size).toBe(operations.length);
  for (const {path, method, operation} of operations) {
    expect(path).toMatch(/^\/api(\/[\w-]+(\.json)?|\/\{\w+\})+$/);
    const named = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    const inPath = (operation.parameters ?? []).filter((one) => one.in === "path");
    expect(inPath.map(({name}) => name).sort()).toEqual(named.sort());
    expect(inPath.every(({required}) => required)).toBe(true);
    expect(new Set((operation.parameters ?? []).map((one) => `${one.in} ${one.name}`)).size).toBe((operation.parameters ?? []).length);
    if (method === "get") expect(operation.requestBody).toBeUndefined();
    expect(Object.keys(operation.responses).every((status) => /^[1-5]\d\d$/.test(status))).toBe(true);
    expect(Object.keys(operation.responses).filter((status) => status.startsWith("2"))).toHaveLength(1);
    for (const {description} of Object.values(operation.responses)) expect(description.length).toBeGreaterThan(0);
  }
  for (const ref of new Set(refsIn(document))) expect(document.components.schemas, ref).toHaveProperty([ref.replace("#/components/schemas/", "")]);
  for (const name of Object.keys(document.components.schemas)) expect(name).toMatch(/^[A-Za-z0-9._-]+$/);
});

test("every command on the rack is in the document under its route, and names stay unique", async () => {
  const {paths} = await documentOf(testApp());
  for (const {name, route} of rackCommands) expect(paths[route.path]?.[route.method]?.operationId, name).toBe(name);
  expect(new Set(rackCommands.map(({name}) => name)).size).toBe(rackCommands.length);
  expect(new Set(rackCommands.map(({route}) => `${route.method} ${route.path}`)).size).toBe(rackCommands.length);
});

test("the document is made from the routes it is given: one more route, one more path", () => {
  const shapes = {path: {}, query: {}, body: null, answer: {status: 200, mime: "application/json", schema: null}, refusals: []};
  const extra = {name: "one.more", summary: "one more", method: "get", path: "/api/one-more", shapes, answer: async () => new Response()} as const;
  expect(Object.keys(openApi([extra], "1").paths as object)).toEqual(["/api/one-more"]);
});

const runs = process.env.TICKING_LONG === "1" ? 6000 : 600;

test(`requests made from the document, with slips, are answered or refused, never a fault of ours, and as the document says (${runs} of them)`, async () => {
  const t = testApp();
  const document = await documentOf(t);
  const {schemas} = document.components;
  const there = await Promise.all([1, 2, 3].map((n) => t.add(String(n))));
  const {id: sale} = await t.expectJson<{id: string}>(201, "POST", "/api/sales", {sale: {soldOn: "2026-03-02", price: {cents: 12000, currency: "USD"}, kind: "trousers"}});
  const known = fc.constantFrom(...there.map(({id}) => id));
  // Words that a request only gets anywhere with.
  const usual: Record<string, fc.Arbitrary<string>> = {id: known, book: fc.constant("wickerlow"), name: fc.constantFrom(...settingNames)};
  const value = (name: string, schema: Json) => (usual[name] ? fc.oneof({weight: 4, arbitrary: usual[name]}, {weight: 1, arbitrary: arbitraryOf(schema, schemas)}) : arbitraryOf(schema, schemas));
  const withKnown = (body: unknown, id: string) => (typeof body === "object" && body !== null && Array.isArray((body as Json).ids) ? {...body, ids: [id]} : body);
  const requests = operationsOf(document).filter(({path}) => path !== "/api/session").map(({path, method, operation}) => {
    const parameters = operation.parameters ?? [];
    const body = operation.requestBody?.content["application/json"]?.schema;
    return fc.record({
      path: fc.constant(path), method: fc.constant(method), responses: fc.constant(operation.responses),
      given: fc.tuple(...parameters.map((one) => fc.option(path.startsWith("/api/sales/") && one.name === "id" ? fc.constant(sale) : value(one.name, one.schema), {freq: one.required ? 20 : 2, nil: undefined}).map((got) => ({...one, got})))),
      body: body ? fc.tuple(arbitraryOf(body, schemas), known).map(([made, id]) => withKnown(made, id)) : fc.constant(undefined),
    });
  });
  const done = new Map<string, number>();
  await fc.assert(
    fc.asyncProperty(fc.oneof(...requests), async ({path, method, responses, given, body}) => {
      const printed = (got: unknown) => encodeURIComponent((typeof got === "string" ? got : got === null ? "" : JSON.stringify(got)).toWellFormed());
      const address = path.replace(/\{(\w+)\}/g, (_, name: string) => printed(given.find((one) => one.name === name)?.got ?? "-") || "-");
      const query = given.filter((one) => one.in === "query" && one.got !== undefined).map((one) => `${one.name}=${printed(one.got)}`).join("&");
      const response = await t.ask(method.toUpperCase(), `${address}${query ? `?${query}` : ""}`, method === "get" || method === "delete" ? undefined : JSON.stringify(body ?? {}));
      const text = await response.text();
      expect({status: response.status, text, fault: t.faults.at(-1)}).toMatchObject({status: expect.toSatisfy((status: number) => status < 500)});
      expect(Object.keys(responses).concat("404", "405")).toContain(String(response.status));
      if (response.status < 300) done.set(`${method} ${path}`, (done.get(`${method} ${path}`) ?? 0) + 1);
      if (response.status >= 400) expect(JSON.parse(text)).toMatchObject({status: response.status, title: expect.any(String), problems: expect.any(Array)});
    }),
    {numRuns: runs},
  );
  // Otherwise only refusals would have been tried.
  expect(done.size).toBeGreaterThan(requests.length / 2);
}, 600_000);
