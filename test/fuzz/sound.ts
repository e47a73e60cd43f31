// What must hold of every answer, whatever the input was.
import {printProblem, type Brief, type Examined, type Examiner, type Problem} from "../../engine/index.ts";

/** An examiner whose every finding is looked through. */
export function watched(examiner: Examiner): Examiner {
  const through = <T extends Brief>(examined: Examined<T>): Examined<T> => {
    if (examined.finding) soundFinding(examined.finding);
    else soundProblems(examined.problems!);
    return examined;
  };
  return {...examiner, brief: (garment) => through(examiner.brief(garment)), examine: (garment) => through(examiner.examine(garment))};
}

/** Probabilities are in [0, 1] and sum to 1 within 1e-9; no number anywhere is NaN or infinite. */
export function soundFinding(finding: Brief): void {
  let total = 0;
  for (const p of finding.posterior) total += p;
  if (!(Math.abs(total - 1) <= 1e-9)) throw new Error(`the months sum to ${total}`);
  if (finding.posterior.some((p) => p < 0)) throw new Error("a month has less than no chance");
  if (finding.noEarlier > finding.noLater) throw new Error("no earlier than comes after no later than");
  everyNumber(finding, "finding");
}

function everyNumber(value: unknown, path: string): void {
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  } else if (ArrayBuffer.isView(value) || Array.isArray(value)) {
    (value as unknown[]).forEach((one, i) => everyNumber(one, `${path}[${i}]`));
  } else if (typeof value === "object" && value !== null) {
    for (const [key, one] of Object.entries(value)) everyNumber(one, `${path}.${key}`);
  }
}

/** At least one problem, each with all its words. */
export function soundProblems(problems: readonly Problem[]): void {
  if (problems.length === 0) throw new Error("neither an answer nor a problem");
  for (const problem of problems) {
    for (const part of ["code", "at", "what", "why", "fix"] as const) if (typeof problem[part] !== "string" || problem[part] === "") throw new Error(`a problem without ${part}: ${JSON.stringify(problem)}`);
    if (printProblem(problem).includes("[object Object]")) throw new Error(`a problem without words: ${printProblem(problem)}`);
  }
}

/** Nothing an input says may reach what all objects share. */
export function soundObjects(): void {
  const leaked = Reflect.ownKeys(Object.prototype).filter((key) => Object.prototype.propertyIsEnumerable.call(Object.prototype, key));
  if (leaked.length > 0 || "spoiled" in {}) throw new Error(`the input reached all objects: ${leaked.join(", ")}`);
}
