// Offers: the margin is kept to the cent, and nothing moves the wrong way.
import fc from "fast-check";
import {expect, test} from "vitest";
import {termsSchema, type Terms} from "../../../worth/model.ts";
import {shareOf} from "../../../worth/money/money.ts";
import {highestToPay, lowestToSell, offerFor, profitOf} from "../../../worth/offer/offer.ts";

const terms = fc.record({
  margin: fc.integer({min: 0, max: 60}).map((n) => n / 100), feeShare: fc.integer({min: 0, max: 20}).map((n) => n / 100), feeFixed: fc.nat(500), postage: fc.nat(2000), taxShare: fc.integer({min: 0, max: 19}).map((n) => n / 100),
  cleaning: fc.nat(3000), daysToSell: fc.nat(400), yearlyCost: fc.integer({min: 0, max: 30}).map((n) => n / 100),
}).map((some) => termsSchema.parse(some));
const price = fc.integer({min: 0, max: 10_000_000});
const wantedOf = (amount: number, {taxShare, margin}: Terms) => shareOf(amount - shareOf(amount, taxShare), margin);

test("paying the highest price leaves the margin, and a cent more does not", () => {
  fc.assert(
    fc.property(price, terms, (brings, own) => {
      const most = highestToPay(brings, own.margin, own);
      if (most > 0) expect(profitOf(brings, most, own)).toBeGreaterThanOrEqual(wantedOf(brings, own));
      // One rounding of the tied money may cover one cent, never three.
      expect(profitOf(brings, most + 3, own)).toBeLessThan(wantedOf(brings, own));
    }),
  );
});

test("more wanted, more costs or a longer wait never raise the offer; a better price never lowers it by more than a rounding", () => {
  fc.assert(
    fc.property(price, terms, fc.nat(1000), (brings, own, more) => {
      const most = highestToPay(brings, own.margin, own);
      expect(highestToPay(brings, own.margin, {...own, cleaning: own.cleaning + more})).toBeLessThanOrEqual(most);
      expect(highestToPay(brings, own.margin, {...own, postage: own.postage + more})).toBeLessThanOrEqual(most);
      expect(highestToPay(brings, own.margin, {...own, daysToSell: own.daysToSell + more})).toBeLessThanOrEqual(most);
      expect(highestToPay(brings, Math.min(0.95, own.margin + 0.05), own)).toBeLessThanOrEqual(most);
      expect(highestToPay(brings + 100 + more, own.margin, own)).toBeGreaterThanOrEqual(most - 3);
    }),
  );
});

test("the lowest price to sell for covers what was paid, and a cent less does not", () => {
  fc.assert(
    fc.property(price, terms, (paid, own) => {
      const low = lowestToSell(paid, own);
      expect(profitOf(low, paid, own)).toBeGreaterThanOrEqual(0);
      if (low > 1) expect(profitOf(low - 1, paid, own)).toBeLessThan(0);
    }),
  );
});

// Worked by hand: 200.00 less 20 % tax 40.00, less 10 % fees 20.00 and 0.50, less postage 6.00 leaves 133.50; a margin of 40 % of 160.00 is 64.00; 69.50 may be laid out; cleaning takes 8.00.
test("an offer is the sum that a dealer would do on paper", () => {
  const own = termsSchema.parse({margin: 0.4, feeShare: 0.1, feeFixed: 50, postage: 600, taxShare: 0.2, cleaning: 800, yearlyCost: 0, room: 0.2});
  const offer = offerFor({typical: 20_000, mean: 20_000, below: (cents) => (cents > 20_000 ? 1 : 0)}, own, 5_000, null);
  expect([offer.most, offer.breakEven, offer.list]).toEqual([6_150, 12_550, 25_000]);
  expect(offer.lines.reduce((sum, {cents}) => sum + cents, 0)).toBe(offer.most);
  expect(offer.atAsked).toMatchObject({asked: 5_000, profit: 7_550, earns: 1, loses: 0, buy: true});
  // 50.00 paid and 8.00 cleaning, 6.50 fixed: price times 0.7 must cover 64.50.
  expect(offer.walkAway).toBe(9_214);
});

test("money tied up for a year counts on everything laid out", () => {
  const own = termsSchema.parse({margin: 0, daysToSell: 365, yearlyCost: 0.25, cleaning: 1_000});
  expect(highestToPay(10_000, 0, own)).toBe(7_000);
  expect(profitOf(10_000, 7_000, own)).toBe(0);
});

test("terms that eat the whole price leave nothing to offer", () => {
  const own = termsSchema.parse({margin: 0.9, feeShare: 0.5, taxShare: 0.5});
  const offer = offerFor({typical: 10_000, mean: 10_000, below: () => 1}, own, 100, null);
  expect(offer.most).toBe(0);
  expect(offer.atAsked).toMatchObject({buy: false, loses: 1, earns: 0});
});
