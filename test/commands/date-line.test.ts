// Lines of tables and lists, dated one by one.
import {expect, test} from "vitest";
import {readColumns, delimiterOf, type Columns} from "../../commands/batch/columns.ts";
import {dateLine, resultHeader, type Plan} from "../../commands/batch/date-line.ts";
import {readCells} from "../../commands/batch/cells.ts";
import {findingShape} from "../../commands/finding-shape.ts";
import {world} from "./small-world.ts";

function columnsOf(header: string, carry: readonly string[] = []): Columns {
  const {columns, problems} = readColumns(header, world.books, carry, "rack.csv:1");
  if (problems) throw new Error(JSON.stringify(problems));
  return columns;
}

const problemsOf = (header: string) => readColumns(header, world.books, [], "rack.csv:1").problems?.map(({code, fix}) => `${code} ${fix}`) ?? [];

function planOf(header: string | null, parts: Partial<Plan> = {}): Plan {
  return {columns: header === null ? null : columnsOf(header, ["price"]), whole: false, odd: false, usual: {}, ...parts};
}

const date = (line: string, plan: Plan) => dateLine(line, "rack.csv:2", plan, world.examiner());

test("all columns stay as they were, and the result columns follow", () => {
  const plan = planOf("garment,maker,rows,label,price");
  expect(resultHeader(plan.columns!)).toBe("garment,maker,rows,label,price,best,probability,no_earlier,no_later,range90,makers,odd");
  const {text} = date('7, wickerlow ,"3 8 21",grey-tape,"a ""b"""', plan);
  expect(text).toMatch(/^7, wickerlow ,"3 8 21",grey-tape,"a ""b""",1968-03,0\.\d{4},1968-03,/);
});

test("a table and a list say the same of the same garment", () => {
  const line = date("7,wickerlow,3 8 21,grey-tape|blue-satin", planOf("garment,maker,rows,label")).text!;
  const list = date('{"garment":"7","maker":"wickerlow","saw":{"rows":["3 8 21"],"label":["grey-tape","blue-satin"]}}', planOf(null)).text!;
  const [best, probability] = readCells(line, ",")!.slice(4);
  const {finding} = JSON.parse(list) as {finding: {best: string; probability: number}};
  expect(finding.best).toBe(best);
  expect(finding.probability.toFixed(4)).toBe(probability);
});

test("a list keeps its fields as written, and an earlier finding is written anew", () => {
  const given = '{"garment": "7", "maker": "wickerlow", "saw": {"rows": ["3 8 21"]}, "note": "1e2"}';
  const once = date(given, planOf(null)).text!;
  expect(once.startsWith(given.slice(0, -1))).toBe(true);
  expect(JSON.parse(date(once, planOf(null)).text!)).toEqual(JSON.parse(once));
});

test("the result of a table can be dated again, and its result columns are written anew", () => {
  const plan = planOf("garment,maker,rows,price");
  const once = date("7,wickerlow,3 8 21,=1+1", plan).text!;
  expect(once).toMatch(/^7,wickerlow,3 8 21,'=1\+1,1968-03/);
  expect(date(once, planOf(resultHeader(plan.columns!))).text).toBe(once);
});

test("empty cells and a single dash were not looked at", () => {
  const header = "garment,maker,rows,label,hem-tape";
  expect(date("7,wickerlow,3 8 21,-,", planOf(header)).text!.split(",").slice(5)).toEqual(date("7,wickerlow,3 8 21,,", planOf(header)).text!.split(",").slice(5));
});

test("what a line does not say comes from the flags", () => {
  const plan = planOf("garment,rows", {usual: {maker: "wickerlow"}});
  expect(date("7,3 8 21", plan).text).toMatch(/^7,3 8 21,1968-03/);
});

test("a whole finding has the documented shape", () => {
  const {text} = date("7,wickerlow,3 8 21,grey-tape,", planOf("garment,maker,rows,label,hem-tape", {whole: true}));
  expect(findingShape.parse((JSON.parse(text!) as {finding: unknown}).finding).best.month).toBe("1968-03");
});

test("wrong lines say what is wrong and where", () => {
  const plan = planOf("garment,maker,rows,label");
  const first = (line: string, p = plan) => date(line, p).problems?.map(({at, code}) => `${at}: ${code}`)[0];
  expect(first("7,wickerlow,3 8 21")).toBe("rack.csv:2: batch/cell-count");
  expect(first('7,wickerlow,"3 8 21,grey-tape')).toBe("rack.csv:2: batch/open-quote");
  expect(first("7,wickerlow,3 8 21,grey-tap")).toBe("rack.csv:2 saw.label: garment/unknown-value");
  expect(first("7,wickerlou,3 8 21,")).toBe("rack.csv:2 maker: garment/unknown-maker");
  expect(first("7,wickerlow,(3 8 21,")).toBe("rack.csv:2 saw.rows[0]: garment/row-not-read");
  expect(first("{", planOf(null))).toBe("rack.csv:2: batch/not-json");
  expect(first('{"garment":"7","seen":{}}', planOf(null))).toMatch(/^rack\.csv:2 seen: /);
  expect(date(",,,", plan).text).toBe("");
});

test("columns that are no marks are refused with the nearest name, before anything is dated", () => {
  expect(problemsOf("garment,lable")).toEqual([expect.stringMatching(/^batch\/unknown-column did you mean label\?/)]);
  expect(problemsOf("garment,label,Label")).toEqual([expect.stringMatching(/^batch\/column-twice/)]);
  expect(problemsOf("garment,,label")).toEqual([expect.stringMatching(/^batch\/column-without-name/)]);
  expect(problemsOf('garment,"label')).toEqual([expect.stringMatching(/^batch\/header-quotes/)]);
});

test("the sign between cells is found out from the column names", () => {
  expect(delimiterOf("garment;maker;rows")).toBe(";");
  expect(delimiterOf("garment\tmaker\trows")).toBe("\t");
  expect(delimiterOf('garment,"a;b;c;d",rows')).toBe(",");
  expect(delimiterOf("garment")).toBe(",");
});
