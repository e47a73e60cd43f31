// What a command is: data from which the terminal, and other ways in, derive their flags, forms and answers.
import type {z} from "zod";
import type {Problem} from "../engine/index.ts";
import {printPath} from "../rulebooks/place.ts";
import {checkShape} from "../rulebooks/shape.ts";
import type {World} from "./world.ts";

/** What was asked for, or what has to be mended in the input. */
export type Answer<T> = {readonly answer: T; readonly problems?: undefined} | {readonly answer?: undefined; readonly problems: readonly Problem[]};

export interface Command<Input extends z.ZodType = z.ZodType, T = unknown> {
  /** Dotted, stable, never used twice: "garment.examine". */
  readonly name: string;
  /** One line for lists and help. */
  readonly summary: string;
  /** The shape of the input; descriptions of its fields become the help of flags. */
  readonly input: Input;
  /** Pure: the same input and world give the same answer. */
  readonly run: (input: z.output<Input>, world: World) => Answer<T>;
  /** The answer as plain JSON, in a shape that stays. */
  readonly json: (answer: T) => unknown;
}

/** Makes a command; only there so that the types of input and answer are found out by themselves. */
export function command<Input extends z.ZodType, T>(parts: Command<Input, T>): Command<Input, T> {
  return Object.freeze(parts);
}

/** Checks an input of unknown origin, then runs the command. */
export function perform<Input extends z.ZodType, T>({input, run}: Command<Input, T>, given: unknown, world: World): Answer<T> {
  const {fits, problems} = checkShape(input, given, (path) => printPath(path) || "input");
  return problems ? {problems} : run(fits as z.output<Input>, world);
}
