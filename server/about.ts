// Routes about the server itself: what it is, what its interface is, and the books in use for the engine in the page.
import type {Context} from "hono";
import {z} from "zod";
import {printMonth} from "../engine/index.ts";
import type {Store} from "../store/store.ts";
import {isDemoOnly} from "./demo.ts";
import type {BooksUsed} from "./books-used.ts";
import {openApi} from "./openapi.ts";
import type {Route} from "./route.ts";

interface Given {
  readonly store: Store;
  readonly version: string;
  readonly used: BooksUsed;
  /** All routes; filled by the time a request comes. */
  readonly routes: readonly Route[];
  readonly isOpen: (context: Context) => boolean;
}

const aboutSchema = z.strictObject({
  version: z.string(),
  garments: z.number().int().describe("on the rack; 0 for those who are not signed in"),
  demo: z.boolean().describe("the rack holds the demo alone"),
  open: z.boolean().describe("no passphrase is needed, or it was given"),
  today: z.string().describe("the last month that counts, 2026-11"),
});

export function aboutRoutes({store, version, used, routes, isOpen}: Given): Route[] {
  const get = (name: string, summary: string, path: string, schema: z.ZodType, answer: Route["answer"], open = false): Route => ({
    name, summary, method: "get", path, open, answer, shapes: {path: {}, query: {}, body: null, answer: {status: 200, mime: "application/json", schema}, refusals: []},
  });
  return [
    get("about", "say what this server is and how much hangs on its rack", "/api/about", aboutSchema, async (context) => {
      const open = isOpen(context);
      const garments = open ? await store.count() : 0;
      const {today} = await used.world();
      return context.json({version, garments, demo: open && (await isDemoOnly(store, garments)), open, today: printMonth(today)});
    }, true),
    get("about.interface", "describe this interface as an OpenAPI document", "/api/openapi.json", z.record(z.string(), z.unknown()), async (context) => context.json(openApi(routes, version)), true),
    get("books.used", "give the rule books in use, as the engine takes them", "/api/books/used", z.array(z.record(z.string(), z.unknown())), async (context) => {
      const {text, packed, tag} = await used.json();
      const headers = {"content-type": "application/json", "etag": tag, "cache-control": "no-cache", "vary": "accept-encoding"};
      if (context.req.header("if-none-match") === tag) return new Response(null, {status: 304, headers});
      if (/\bgzip\b/.test(context.req.header("accept-encoding") ?? "")) return new Response(packed, {headers: {...headers, "content-encoding": "gzip"}});
      return new Response(text, {headers});
    }),
  ];
}
