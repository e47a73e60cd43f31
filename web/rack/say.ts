// Small things of the rack in words: money, a date, how many.
import type {Money, RackRow} from "../../store/model.ts";
import {sayAmount} from "../worth/money.ts";

/** 120 euros as the reader's own language writes them; whole amounts without their cents. */
export const sayMoney = (money: Money | null): string => (money ? sayAmount(money) : "");

/** "1968 to 1976", or one year when both ends lie in it. */
export function sayYears(dating: NonNullable<RackRow["dating"]>): string {
  const [from, until] = [dating.noEarlier.slice(0, 4), dating.noLater.slice(0, 4)];
  return from === until ? from : `${from} to ${until}`;
}

/** "1 garment", "12 garments" */
export const sayGarments = (count: number): string => `${count.toLocaleString()} ${count === 1 ? "garment" : "garments"}`;
