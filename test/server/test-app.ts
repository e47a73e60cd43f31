// A server over a store in memory with the small book of tests, asked in process; every answer is checked against the shapes that the interface promises.
import {mkdtempSync, mkdirSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import type {z} from "zod";
import {expect} from "vitest";
import {rackCommands} from "../../commands/rack/list.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {makeApp, type AppOptions} from "../../server/app.ts";
import {world} from "../commands/small-world.ts";
import {openDatabase} from "../../store/sqlite/database.ts";
import {migrate} from "../../store/sqlite/migrate.ts";
import {sqliteStore} from "../../store/sqlite/sqlite-store.ts";
import type {Store} from "../../store/store.ts";

export const home = "http://127.0.0.1:4848";

/** A folder with built screens, and a file beside it that must never be handed out. */
export function screensFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "ticking-screens-"));
  mkdirSync(join(folder, "dist-web", "assets"), {recursive: true});
  writeFileSync(join(folder, "secret.txt"), "the secret");
  writeFileSync(join(folder, "dist-web", "index.html"), "<!doctype html><title>Ticking</title>");
  writeFileSync(join(folder, "dist-web", "assets", "main-a1b2c3d4.js"), `export const many = "${"stitch ".repeat(400)}";`);
  writeFileSync(join(folder, "dist-web", ".hidden"), "the secret");
  return join(folder, "dist-web");
}

/** The real driver on a database that leaves nothing behind. */
export function storeInMemory(): Store {
  const db = openDatabase(":memory:");
  migrate(db, "memory", "memory");
  return sqliteStore(db);
}

export interface TestApp {
  readonly app: ReturnType<typeof makeApp>;
  readonly options: AppOptions;
  readonly faults: unknown[];
  /** Moves the clock. */
  readonly pass: (milliseconds: number) => void;
  ask(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<Response>;
  /** The answer as JSON; fails when the status is another one. */
  expectJson<T>(status: number, method: string, path: string, body?: unknown): Promise<T>;
  /** A garment hung up. */
  add(number: string, more?: object): Promise<GarmentRecord>;
}

export function testApp(more: Partial<AppOptions> = {}): TestApp {
  const faults: unknown[] = [];
  let now = Date.UTC(2026, 10, 5);
  const options: AppOptions = {store: storeInMemory(), shipped: world.books, screens: "/nowhere", version: "1.2.3", clock: () => new Date((now += 1)), onFault: (error) => faults.push(error), ...more};
  const app = makeApp(options);
  const ask = async (method: string, path: string, body?: unknown, headers: Record<string, string> = {}) => {
    const given = body === undefined ? {} : {body: typeof body === "string" || body instanceof Uint8Array ? (body as string) : JSON.stringify(body)};
    return app.request(home + path, {method, ...given, headers: {...(body === undefined ? {} : {"content-type": "application/json"}), ...headers}});
  };
  const expectJson = async <T>(status: number, method: string, path: string, body?: unknown): Promise<T> => {
    const response = await ask(method, path, body);
    const answer = await response.json();
    expect({status: response.status, answer, fault: faults.at(-1)}).toMatchObject({status});
    if (response.status < 300) promised(method, path)?.parse(answer);
    return answer as T;
  };
  return {
    app, options, faults, ask, expectJson,
    pass: (milliseconds) => void (now += milliseconds),
    add: (number, content = {}) => expectJson(201, "POST", "/api/garments", {content: {garment: {garment: number, maker: "wickerlow", saw: {}}, ...content}}),
  };
}

/** The shape that a command promises for its answer. */
function promised(method: string, path: string): z.ZodType | undefined {
  const plain = path.split("?")[0]!;
  return rackCommands.find(({route}) => route.gives === undefined && route.method === method.toLowerCase() && new RegExp(`^${route.path.replace(/\{\w+\}/g, "[^/]+")}$`).test(plain))?.output;
}
