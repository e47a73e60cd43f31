// How a run ends: quietly, with problems that the user can mend, or with a fault of ours; and what the exit code says.
import {printProblem, type Problem} from "../engine/problem.ts";

/** 0 fine, 1 our fault, 2 input that needs mending. */
export const exitCodes = {fine: 0, ours: 1, mend: 2} as const;

/** Thrown to end a run because of its input. */
export class NeedsMending extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(printProblem).join("\n"));
    this.problems = problems;
  }
}

/** What was asked for; ends the run when there are problems instead. */
export function orMend<T>(answer: {readonly answer: T; readonly problems?: undefined} | {readonly answer?: undefined; readonly problems: readonly Problem[]}): T {
  if (answer.problems) throw new NeedsMending(answer.problems);
  return answer.answer;
}

export function printProblems(problems: readonly Problem[]): void {
  for (const problem of problems) process.stderr.write(`${printProblem(problem)}\n`);
}

/** Says what went wrong and sets the exit code. */
export function endWith(error: unknown): void {
  if (error instanceof NeedsMending) {
    printProblems(error.problems);
    process.exitCode = exitCodes.mend;
    return;
  }
  if (isUsage(error)) {
    process.exitCode = error.exitCode === 0 ? exitCodes.fine : exitCodes.mend;
    return;
  }
  if ((error as NodeJS.ErrnoException)?.code === "EPIPE") process.exit(exitCodes.fine);
  process.stderr.write(`ticking: something went wrong inside (${error instanceof Error ? error.message : String(error)}).\n`);
  process.stderr.write("This is a fault of the program, not of your input. Please report it where you got ticking, with the command you typed and, if you can, the file.\n");
  if (process.env.TICKING_DEBUG === "1") process.stderr.write(`${error instanceof Error ? error.stack : ""}\n`);
  else process.stderr.write("TICKING_DEBUG=1 before the command shows where it happened.\n");
  process.exitCode = exitCodes.ours;
}

/** The reader of the output may leave at any time: head, a pager. That is no fault. */
export function endQuietlyWhenNobodyReads(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") process.exit(exitCodes.fine);
      throw error;
    });
  }
}

// Errors of the command-line parser carry a code of this kind; it has printed its own words already.
function isUsage(error: unknown): error is {exitCode: number} {
  return typeof (error as {code?: unknown})?.code === "string" && (error as {code: string}).code.startsWith("commander.");
}
