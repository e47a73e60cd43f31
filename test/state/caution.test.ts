// Which cautions stand beside a garment. The facts and how each was seen are in state/caution-table.ts.
import {expect, test} from "vitest";
import {cautionTable} from "../../state/caution-table.ts";
import {cautionsFor, type CautionSubject} from "../../state/caution.ts";
import {state} from "./sized.ts";

const ids = (subject: CautionSubject, country = "") => cautionsFor(subject, country).map(({id}) => id);
const jacket: CautionSubject = {garment: {type: "jacket"}};
const pyjamas: CautionSubject = {garment: {type: "shirt", title: "Boy's flannel pyjama top"}, dating: {noEarlier: "1973-04", noLater: "1976-12"}};

test("any garment is an estimate, without a guarantee, to be appraised by others and handled with care", () => {
  expect(ids(jacket)).toEqual(["estimate", "authenticity", "appraisal", "handling"]);
});

test("the owner's country takes the place of what holds anywhere", () => {
  expect(ids(jacket, "US")).toContain("appraisal-us");
  expect(ids(jacket, "US")).not.toContain("appraisal");
  expect(ids(jacket, "GB")).toContain("appraisal-uk");
  expect(ids(jacket, "JP")).toContain("appraisal");
});

test("children's nightwear of the seventies carries its warnings, in the US with the flame retardant", () => {
  expect(ids(pyjamas, "US")).toEqual(expect.arrayContaining(["nightwear-us", "tris-us", "child-us"]));
  expect(ids(pyjamas, "DE")).toEqual(expect.arrayContaining(["nightwear", "child", "azo"]));
  expect(ids({...pyjamas, dating: {noEarlier: "1990-01", noLater: "1992-01"}}, "US")).not.toContain("tris-us");
});

test("grown-ups' workwear is spared the children's warnings", () => expect(ids({garment: {type: "jacket", title: "Roadman's jacket"}}, "US").filter((id) => /child|night|cord/.test(id))).toEqual([]));

test("a missing label, a smell and mould bring their own", () => {
  const noted = {...jacket, state: state({missing: ["care-label"], clean: "smells", flaws: [{kind: "mould-spots", severity: "plain"}]})};
  expect(ids(noted, "US")).toEqual(expect.arrayContaining(["label-us", "moth-balls", "mould"]));
  expect(ids(jacket, "US")).not.toContain("label-us");
});

test("what years alone call for is not shown while the years are unknown", () => {
  expect(ids(jacket, "DE")).not.toContain("azo");
  expect(ids({...jacket, dating: {noEarlier: "1960-01", noLater: "1969-12"}}, "DE")).toContain("azo");
});

test("cautions are short, have ids of their own, and say more than one country's law only for that country", () => {
  expect(new Set(cautionTable.map(({id}) => id)).size).toBe(cautionTable.length);
  for (const {says, id, countries} of cautionTable) {
    expect([id, says.length < 330]).toEqual([id, true]);
    if (countries !== null && !countries.includes("EU")) expect(["estimate", "authenticity"]).not.toContain(id);
  }
});

test("every topic with a line for one country has one for anywhere, or is that country's affair alone", () => {
  const anywhere = new Set(cautionTable.filter(({countries}) => countries === null).map(({topic}) => topic));
  expect([...new Set(cautionTable.map(({topic}) => topic))].filter((topic) => !anywhere.has(topic))).toEqual(["dye"]);
});
