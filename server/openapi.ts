// The interface as an OpenAPI 3.1 document, made from the same shapes that check requests: nothing is written twice.
import {STATUS_CODES} from "node:http";
import {z} from "zod";
import {findingShape} from "../commands/finding-shape.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import * as model from "../store/model.ts";
import {problemType} from "./problem-details.ts";
import type {Route} from "./route.ts";

type Json = Record<string, unknown>;

/** Shapes that occur often get a name, so that the document says each of them once. */
const often: ReadonlyMap<unknown, string> = new Map<unknown, string>([
  [garmentSchema, "Garment"], [findingShape, "Finding"], [model.contentSchema, "Content"], [model.recordSchema, "GarmentRecord"], [model.stepSchema, "Step"],
  [model.datingSchema, "Dating"], [model.moneySchema, "Money"], [model.photoUseSchema, "PhotoUse"], [model.photoSchema, "Photo"], [model.bookEditionSchema, "BookEdition"],
  [model.rackRowSchema, "RackRow"], [model.rackPageSchema, "RackPage"],
]);

const words = z.string();
/** RFC 9457, with the problems as an extension of ours. */
const problemDetails = z.object({
  type: words, title: words, status: z.number().int(), detail: words.optional(),
  problems: z.array(z.strictObject({code: words, at: words, what: words, why: words, fix: words, see: words.optional()})),
});

/** Every route can refuse these: a strange host or site, nobody signed in, a fault of ours, a full disk. */
const always = [401, 403, 421, 500, 507];

export function openApi(routes: readonly Route[], version: string): Json {
  const schemas: Json = {};
  const named = (schema: z.ZodType, io: "input" | "output") => schemaOf(schema, io, schemas);
  schemas.ProblemDetails = named(problemDetails, "output");
  const paths: Record<string, Json> = {};
  for (const route of routes) (paths[route.path] ??= {})[route.method] = operation(route, named);
  return {
    openapi: "3.1.1",
    info: {title: "ticking", version, summary: "Dates old workwear and denim from its marks, and keeps what was examined.", description: "Changes are kept with the name in the header x-ticking-who. Refusals are problem details (RFC 9457)."},
    servers: [{url: "/"}],
    paths,
    components: {schemas, securitySchemes: {session: {type: "apiKey", in: "cookie", name: "ticking-session"}}},
    security: [{}, {session: []}],
  };
}

function operation({name, summary, shapes: {path, query, body, answer, refusals}, open}: Route, named: (schema: z.ZodType, io: "input" | "output") => Json): Json {
  const parameters = [
    ...Object.entries(path).map(([key, schema]) => ({name: key, in: "path", required: true, schema: named(schema, "input")})),
    ...Object.entries(query).map(([key, schema]) => parameter(key, named(schema, "input"), !schema.safeParse(undefined).success)),
  ];
  const refused = {content: {[problemType]: {schema: {$ref: "#/components/schemas/ProblemDetails"}}}};
  const statuses = [...new Set([...refusals, ...always])].sort((a, b) => a - b);
  return {
    operationId: name,
    summary,
    ...(open ? {security: [{}]} : {}),
    ...(parameters.length > 0 ? {parameters} : {}),
    ...(body === null ? {} : {requestBody: {required: true, content: bodyContent(body, named)}}),
    responses: {
      [answer.status]: {description: STATUS_CODES[answer.status], content: {[answer.mime]: answer.schema ? {schema: named(answer.schema, "output")} : {}}},
      ...Object.fromEntries(statuses.map((status) => [status, {description: STATUS_CODES[status], ...refused}])),
    },
  };
}

function parameter(name: string, {description, ...schema}: Json, required: boolean): Json {
  return {name, in: "query", required, ...(description === undefined ? {} : {description}), schema};
}

function bodyContent(body: z.ZodType | readonly string[], named: (schema: z.ZodType, io: "input" | "output") => Json): Json {
  return Array.isArray(body) ? Object.fromEntries(body.map((mime) => [mime, {}])) : {"application/json": {schema: named(body as z.ZodType, "input")}};
}

/** A shape as JSON Schema (draft 2020-12, as OpenAPI 3.1 takes it); its named parts go among the components. */
function schemaOf(schema: z.ZodType, io: "input" | "output", schemas: Json): Json {
  const metadata = z.registry<z.core.GlobalMeta>();
  const nameOf = (one: unknown) => (often.has(one) ? {id: `${often.get(one)!}${io === "input" ? "Given" : ""}`} : {});
  metadata.get = (one) => ({...z.globalRegistry.get(one), ...nameOf(one)}) as ReturnType<typeof metadata.get>;
  const {$schema: _, $defs, id, ...rest} = z.toJSONSchema(schema, {io, metadata, unrepresentable: "any"}) as Json & {$defs?: Record<string, Json>; id?: string};
  for (const [name, {id: __, ...definition}] of Object.entries($defs ?? {})) schemas[name] = pointed(definition);
  if (id === undefined) return pointed(rest) as Json;
  schemas[id] = pointed(rest);
  return {$ref: `#/components/schemas/${id}`};
}

/** References lead to the components. */
function pointed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(pointed);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, key === "$ref" && typeof inner === "string" ? inner.replace("#/$defs/", "#/components/schemas/") : pointed(inner)]));
}
