// What opening a reader throws when there is none on this machine, so that callers can go on by typing.
import {printProblem, type Problem} from "../engine/problem.ts";

export class NoReader extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(printProblem(problem));
    this.name = "NoReader";
    this.problem = problem;
  }
}
