// Source: check entry E04 of the project's outside values: ISO 5077:2007 and AATCC TM135, 100 (after - before) / before; averages to the nearest 0.1 %.
import {expect, test} from "vitest";
import {beforeChange, changesTogether, dimensionalChange, sayChange} from "../../state/change.ts";
import {close} from "../helper/close.ts";

test.each([[500, 485, -3, "-3.0 %"], [350, 339.5, -3, "-3.0 %"], [350, 357, 2, "+2.0 %"], [500, 500, 0, "0.0 %"], [76.2, 73.9, -3.0183727034120698, "-3.0 %"], [25, 24.25, -3, "-3.0 %"]])("%d that became %d changed by %d %", (before, after, percent, said) => {
  close(dimensionalChange(before, after), percent, percent === 0 ? {abs: 0, because: "nothing changed"} : {rel: 1e-12});
  expect(sayChange(dimensionalChange(before, after))).toBe(said);
});

test("what was there before is divided back, not added back", () => {
  close(beforeChange(34, -10), 37.77777777777778, {rel: 1e-12});
  close(beforeChange(31, -3), 31.95876288659794, {rel: 1e-12});
  close(beforeChange(31.28, -8), 34, {rel: 1e-12}); // a 34 in tag after 8 % in the length
});

test("washes multiply", () => close(changesTogether([-3, -1, -0.5]), -4.450150000000008, {rel: 1e-12}));

test("nothing that had no length can change", () => expect(() => dimensionalChange(0, 3)).toThrow(RangeError));
