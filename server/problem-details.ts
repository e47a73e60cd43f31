// Refusals as problem details (RFC 9457): the reason phrase of the status as title, and every problem in the same shape as elsewhere.
import {STATUS_CODES} from "node:http";
import type {Problem} from "../engine/index.ts";
import {printProblem} from "../engine/problem.ts";
import type {Refusal} from "../commands/rack/rack-command.ts";

export const problemType = "application/problem+json";

/** Thrown to end a request; the one place that answers turns it into problem details. */
export class Refused extends Error {
  readonly status: number;
  readonly problems: readonly Problem[];
  readonly more: Readonly<Record<string, unknown>>;
  readonly headers: Readonly<Record<string, string>>;

  constructor(status: number, problems: readonly Problem[], more: Readonly<Record<string, unknown>> = {}, headers: Readonly<Record<string, string>> = {}) {
    super(problems.map(printProblem).join("\n"));
    this.status = status;
    this.problems = problems;
    this.more = more;
    this.headers = headers;
  }
}

/** Input that is read but does not fit is 422; 400 is left for what cannot be read at all. */
export const statusOf: Readonly<Record<Refusal, number>> = {unfit: 422, unknown: 404, conflict: 409};

/** So many problems are told in one answer. */
const mostTold = 500;

export function problemResponse({status, problems, more, headers}: Pick<Refused, "status" | "problems" | "more" | "headers">): Response {
  const body = {type: "about:blank", title: STATUS_CODES[status], status, detail: problems[0] ? printProblem(problems[0]) : undefined, problems: problems.slice(0, mostTold), ...more};
  return new Response(JSON.stringify(body), {status, headers: {"content-type": problemType, "cache-control": "no-store", ...headers}});
}
