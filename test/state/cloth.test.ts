// Source: check entry E01 of the project's outside values; ounce and yard by the international agreement of 1959, NIST SP 811 appendix B (0.03390575 kg/m2).
import {expect, test} from "vitest";
import {otherWeight, sayCloth} from "../../state/cloth.ts";
import {close} from "../helper/close.ts";

test.each([[1, 33.9057474748823], [8, 271.2459797990584], [11.5, 389.9160959611464], [14, 474.68046464835214], [14.75, 500.10977525451386], [21, 712.0206969725282]])("%d oz/yd² are %d g/m²", (weight, grams) => {
  close(otherWeight({weight, unit: "oz/yd2"}).weight, grams, {rel: 1e-12}); // two products of exact constants
  close(otherWeight({weight: grams, unit: "g/m2"}).weight, weight, {rel: 1e-12});
});

test("a gram to the square metre is 0.0294935 oz to the square yard", () => close(otherWeight({weight: 1, unit: "g/m2"}).weight, 0.029493524681643124, {rel: 1e-12}));

test("cloth is said in both units", () => {
  expect(sayCloth({weight: 14, unit: "oz/yd2"})).toBe("14 oz/yd² (475 g/m²)");
  expect(sayCloth({weight: 500, unit: "g/m2"})).toBe("500 g/m² (14.75 oz/yd²)");
});
