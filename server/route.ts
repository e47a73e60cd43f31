// What a route of the interface is: its shapes, from which the OpenAPI document is made, and what answers it.
import type {Context} from "hono";
import type {z} from "zod";
import {performOnRack, type Download, type RackCommand} from "../commands/rack/rack-command.ts";
import type {Rack} from "../commands/rack/rack.ts";
import {download, lines} from "./answer.ts";
import {Refused, statusOf} from "./problem-details.ts";
import {readJson} from "./read-body.ts";
import {readQuery} from "./read-query.ts";

export interface Shapes {
  /** Entries that stand in the path. */
  readonly path: Readonly<Record<string, z.ZodType>>;
  readonly query: Readonly<Record<string, z.ZodType>>;
  /** A shape for JSON, media types for bytes, null for none. */
  readonly body: z.ZodType | readonly string[] | null;
  readonly answer: {readonly status: number; readonly mime: string; /** Null for bytes. */ readonly schema: z.ZodType | null};
  /** Statuses of refusal beside those that every route can give. */
  readonly refusals: readonly number[];
}

export interface Route {
  readonly name: string;
  readonly summary: string;
  readonly method: "get" | "post" | "put" | "delete";
  /** Entries in braces, as in OpenAPI. */
  readonly path: string;
  readonly shapes: Shapes;
  /** Answered without signing in. */
  readonly open?: boolean;
  readonly answer: (context: Context) => Promise<Response>;
}

const usualBytes = 1_000_000;

/** A command as a route: entries of its input come from the path, and from the query or a JSON body. */
export function commandRoute(command: RackCommand, rackFor: (context: Context) => Promise<Rack>): Route {
  const {name, summary, input, output, route: {method, path, status = 200, gives = "json"}, mostBytes = usualBytes} = command;
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, entry]) => entry!);
  const rest = input.omit(Object.fromEntries(inPath.map((entry) => [entry, true])) as Record<string, true>);
  const pick = Object.fromEntries(inPath.map((entry) => [entry, input.shape[entry] as z.ZodType]));
  const hasBody = method === "post" || method === "put";
  const bare = Object.keys(rest.shape).length === 0;
  const mime = gives === "json" ? "application/json" : gives === "lines" ? "application/x-ndjson" : "text/plain";
  return {
    name,
    summary,
    method,
    path,
    shapes: {
      path: pick,
      query: hasBody ? {} : (rest.shape as Record<string, z.ZodType>),
      body: hasBody && !bare ? rest : null,
      answer: {status, mime, schema: output},
      refusals: [422, ...(inPath.length > 0 ? [404] : []), ...(hasBody && !bare ? [400, 413, 415] : []), ...(method === "get" ? [] : [409])],
    },
    async answer(context) {
      const given = hasBody ? (bare ? {} : await readJson(context.req.raw, mostBytes)) : readQuery(new URL(context.req.url).searchParams, rest.shape as Record<string, z.ZodType>);
      const whole = typeof given === "object" && given !== null && !Array.isArray(given) ? {...given, ...Object.fromEntries(inPath.map((entry) => [entry, context.req.param(entry)]))} : given;
      const reply = await performOnRack(command, numbered(whole, pick), await rackFor(context));
      if (reply.refused) throw new Refused(statusOf[reply.refused], reply.problems, reply.more);
      if (gives === "lines") return lines(reply.answer as AsyncIterable<unknown>);
      if (gives === "download") return download(reply.answer as Download);
      return context.json(reply.answer as object, status);
    },
  };
}

/** Path entries are text; those that are numbers are read as such, like those of a query. */
function numbered(given: unknown, pick: Readonly<Record<string, z.ZodType>>): unknown {
  if (typeof given !== "object" || given === null) return given;
  const texts = new URLSearchParams(Object.keys(pick).map((entry) => [entry, String((given as Record<string, unknown>)[entry])] as [string, string]));
  return {...given, ...readQuery(texts, pick)};
}
