// Every stage of an examination in lines of text: what was understood, which cases were weighed, what each factor says.
import type {Stages} from "../infer/examine.ts";
import type {Finding} from "../infer/finding.ts";
import {sum} from "../num/vector.ts";
import {printMonth, sayMonth} from "../month/month.ts";
import {monthIndex} from "../units.ts";
import {sayRuns} from "./say.ts";

/** Prints the stages and the finding; numbers to four figures. */
export function trace({garment, seen, first, evaluations}: Stages, finding: Finding): string[] {
  const lines = [
    `1. garment ${garment.garment}: ${seen.marks.size} marks, ${seen.rows.length} rows`,
    ...[...seen.marks].map(([id, observation]) => `   ${id}: ${JSON.stringify(observation, (key, value: unknown) => (key === "row" ? (value as {text: string}).text : value))}`),
    ...seen.rows.map((row) => `   row “${row.text}”: ${row.cells.map((cell) => cell.shown).join(" ")}`),
    `2. axis ${printMonth(first)} to ${printMonth(monthIndex(first + finding.posterior.length - 1))}, ${finding.posterior.length} months`,
  ];
  const total = sum(evaluations.map(({joint}) => sum(joint)));
  for (const {evidence, cases, joint} of evaluations) {
    lines.push(`3. maker ${evidence.view.maker ?? "unlisted"}: books ${evidence.view.books.map(({book}) => `${book.book} edition ${book.edition}`).join(", ")}`);
    for (const {id, chance} of evidence.foreign) lines.push(`   ${id} belongs to another maker, chance ${chance.toPrecision(4)}`);
    lines.push(`4. ${cases.length} case${cases.length === 1 ? "" : "s"}, probability of this maker ${(sum(joint) / total).toPrecision(4)}`);
    for (const c of cases) {
      const named = Object.entries(c.case).map(([name, value]) => `${name} ${value.startsWith("\u0000") ? "any other" : value}`);
      lines.push(`   case ${named.join(", ") || "only one"}: ${(sum(c.joint) / total).toPrecision(4)}`);
      for (const factor of c.factors) lines.push(`     factor ${factor.ids.join(" × ") || "codes"}: ${span(factor.vector, first)}`);
    }
  }
  lines.push(`5. best ${sayMonth(finding.best.month)} ${finding.best.probability.toPrecision(4)}; ${finding.sets.map(({share, runs}) => `${share * 100} %: ${sayRuns(runs)}`).join("; ")}`);
  for (const {row, readings} of finding.rows) {
    lines.push(`6. row “${row.text}”`);
    for (const reading of readings.slice(0, 5)) {
      lines.push(`   ${reading.probability.toPrecision(4)}  ${reading.brackets.map(({field, text}) => `${field} ${text}`).join(", ") || "noise"}${reading.date ? `: ${reading.date}` : ""}`);
    }
  }
  lines.push("7. ledger");
  for (const {id, bits, moved, stray} of finding.ledger) {
    lines.push(`   ${id}: ${bits.toFixed(3)} bits, mean month moved ${moved.toFixed(1)}${stray === null ? "" : `, stray ${stray.toPrecision(3)}`}`);
  }
  for (const {says, stray} of finding.pieces) lines.push(`   ${says}: ${stray.toPrecision(3)}`);
  if (finding.twoDates) lines.push(`   two dates: ${finding.twoDates.probability.toPrecision(3)}`);
  for (const {id, bits, effort} of finding.next.slice(0, 8)) lines.push(`   next ${id}: ${bits.toFixed(3)} bits, effort ${effort}`);
  return lines;
}

/** Where a factor is highest and how far it falls. */
function span(vector: Float64Array, first: number): string {
  let high = 0;
  let low = 0;
  vector.forEach((value, t) => {
    if (value > vector[high]!) high = t;
    if (value < vector[low]!) low = t;
  });
  return `most at ${printMonth(monthIndex(first + high))}, ${(vector[high]! / Math.max(vector[low]!, 1e-300)).toPrecision(3)} times the least`;
}
