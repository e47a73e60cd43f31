// Problems print on one line, and no wording is left half said.
import {expect, test} from "vitest";
import {printProblem} from "../../engine/problem.ts";

test("a problem prints what, why and how to mend it, and where to read more when there is more", () => {
  const problem = {code: "window/reversed", at: "book.yaml:7", what: "it ends before it begins", why: "it never holds", fix: "swap the months"};
  expect(printProblem(problem)).toBe("book.yaml:7: it ends before it begins; it never holds. To fix: swap the months.");
  expect(printProblem({...problem, see: "docs/model.md"})).toBe("book.yaml:7: it ends before it begins; it never holds. To fix: swap the months. More: docs/model.md");
});
