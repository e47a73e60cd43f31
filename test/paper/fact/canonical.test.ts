// Canonical JSON against the examples of its standard.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {canonical, type Json} from "../../../paper/fact/canonical.ts";

// Source: RFC 8785, sections 3.2.2 and 3.2.3 (the sample object and its canonical form).
test("the sample of the standard comes out as the standard prints it", () => {
  const sample = {numbers: [333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001], string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/", literals: [null, true, false]};
  expect(canonical(sample)).toBe(String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`);
});

// Source: RFC 8785, section 3.2.3: names are sorted by their UTF-16 code units.
test("names are sorted by code units, not by letters", () => {
  const sample = {"\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One", "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"};
  expect(Object.values(JSON.parse(canonical(sample)) as Record<string, string>)).toHaveLength(7);
  expect([...canonical(sample).matchAll(/:"([^"]+)"/g)].map(([, name]) => name)).toEqual(["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"]);
});

// Source: RFC 8785, appendix B (samples of numbers).
test.each([[0x8000000000000000n, "0"], [0x0000000000000001n, "5e-324"], [0x7fefffffffffffffn, "1.7976931348623157e+308"], [0x4340000000000000n, "9007199254740992"], [0x44b52d02c7e14af6n, "1e+23"], [0x3eb0c6f7a0b5ed8dn, "0.000001"], [0x41b3de4355555553n, "333333333.3333332"]])("the number of bits %s is spelled %s", (bits, spelled) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, bits);
  expect(canonical(view.getFloat64(0))).toBe(spelled);
});

test("the order in which entries were written never shows, and what is read back is the same", () => {
  fc.assert(fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (given) => {
    const turned = Object.fromEntries(Object.entries(given).reverse());
    expect(canonical(turned as Json)).toBe(canonical(given as Json));
    expect(JSON.parse(canonical(given as Json))).toEqual(JSON.parse(JSON.stringify(given)));
  }));
});

test("a number that JSON cannot spell is refused", () => {
  expect(() => canonical({a: Number.NaN})).toThrow(RangeError);
});
