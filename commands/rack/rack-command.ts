// What a command on the rack is: data like a pure command, with the route under which the server offers it; it may wait for the store.
import type {z} from "zod";
import type {Problem} from "../../engine/index.ts";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import type {Rack} from "./rack.ts";

/** Why nothing was done: the input does not fit, there is no such thing, or somebody saved in between. */
export type Refusal = "unfit" | "unknown" | "conflict";

export type Reply<T> =
  | {readonly answer: T; readonly refused?: undefined}
  | {readonly answer?: undefined; readonly refused: Refusal; readonly problems: readonly Problem[]; /** Told beside the problems. */ readonly more?: Readonly<Record<string, unknown>>};

export interface RackRoute {
  readonly method: "get" | "post" | "put" | "delete";
  /** Entries of the input that stand in the path are in braces: "/api/garments/{id}". */
  readonly path: string;
  /** 200 when left out. */
  readonly status?: 201;
  /** json: the answer at once; lines: a value a line while it is worked out; download: a file. */
  readonly gives?: "json" | "lines" | "download";
}

/** A file made while it is handed out. */
export interface Download {
  readonly name: string;
  readonly mime: string;
  readonly pieces: AsyncIterable<string>;
}

export interface RackCommand<Input extends z.ZodObject = z.ZodObject, T = unknown> {
  /** Dotted, stable, never used twice: "garment.save". */
  readonly name: string;
  readonly summary: string;
  readonly route: RackRoute;
  readonly input: Input;
  /** The shape of the answer; of a line for "lines", of the text for "download". */
  readonly output: z.ZodType;
  /** More than the usual megabyte of input, in bytes. */
  readonly mostBytes?: number;
  readonly run: (input: z.output<Input>, rack: Rack) => Promise<Reply<T>>;
}

/** Makes a command; only there so that the types of input and answer are found out by themselves. */
export function rackCommand<Input extends z.ZodObject, T>(parts: RackCommand<Input, T>): RackCommand<Input, T> {
  return Object.freeze(parts);
}

/** Checks an input of unknown origin, then runs the command. */
export async function performOnRack<Input extends z.ZodObject, T>({input, run}: RackCommand<Input, T>, given: unknown, rack: Rack): Promise<Reply<T>> {
  const {fits, problems} = checkShape(input, given, (path) => printPath(path) || "input");
  return problems ? unfit(problems) : run(fits as z.output<Input>, rack);
}

export const unfit = (problems: readonly Problem[]) => ({refused: "unfit", problems}) as const;
export const unknown = (problem: Problem) => ({refused: "unknown", problems: [problem]}) as const;
