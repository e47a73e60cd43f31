// What stops the store altogether, said so that the owner can mend it.
import {printProblem, type Problem} from "../engine/problem.ts";

export class StoreFault extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(printProblem).join("\n"));
    this.problems = problems;
  }
}
