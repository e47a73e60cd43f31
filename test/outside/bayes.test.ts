// Textbook cases of Bayes' theorem, run through the whole engine: two months stand for the two states, the later one for "it is so".
// Printed roundings from memory; the values are prior·hit / (prior·hit + (1 - prior)·false alarm), worked out again.
import {describe, test} from "vitest";
import {close} from "../helper/close.ts";
import {bookOf, findingOf, markOf} from "../helper/small-book.ts";

const later = {begins: ["1901-02", "1901-02"]};
const clue = (hit: number, falseAlarm: number) => markOf({kind: "presence", window: later, inside: hit, outside: falseAlarm});

/** Probability of the later month, after a sign was seen on each of the marks. */
const after = (prior: number, marks: Record<string, ReturnType<typeof clue>>, seen = "present"): number =>
  findingOf([bookOf({marks})], {
    saw: Object.fromEntries(Object.keys(marks).map((id) => [id, seen])),
    from: "1901-01",
    until: "1901-02",
    prior: [1 - prior, prior],
  }).posterior[1]!;

describe("one sign", () => {
  test.each([
    {source: "MacKay 2003, exercise 2.3, printed 16 %", prior: 0.01, hit: 0.95, falseAlarm: 0.05, expected: 0.16101694915254236},
    {source: "Gigerenzer & Hoffrage 1995, printed 7.8 %", prior: 0.01, hit: 0.8, falseAlarm: 0.096, expected: 0.07763975155279504},
    {source: "Casscells et al. 1978, printed 2 %", prior: 0.001, hit: 1, falseAlarm: 0.05, expected: 0.019627085377821395},
    {source: "Gigerenzer 2007, printed about 1 in 10", prior: 0.01, hit: 0.9, falseAlarm: 0.09, expected: 0.09174311926605506},
    {source: "Eddy 1982, printed 7.7 %", prior: 0.01, hit: 0.792, falseAlarm: 0.096, expected: 0.07692307692307693},
  ])("$source", ({prior, hit, falseAlarm, expected}) => close(after(prior, {clue: clue(hit, falseAlarm)}), expected, {rel: 1e-12}));
});

test("two independent signs (MacKay 2003, exercise 2.3 taken twice)", () => {
  close(after(0.01, {first: clue(0.95, 0.05), second: clue(0.95, 0.05)}), 0.7847826086956521, {rel: 1e-12});
});

test("a sign that is missing speaks against it (odds form: prior odds times (1 - hit) / (1 - false alarm))", () => {
  const odds = (0.01 / 0.99) * (0.05 / 0.95);
  close(after(0.01, {clue: clue(0.95, 0.05)}, "absent"), odds / (1 + odds), {rel: 1e-12});
});

test("a sign as common on one side as on the other leaves the prior", () => close(after(0.3, {clue: clue(0.4, 0.4)}), 0.3, {rel: 1e-12}));
