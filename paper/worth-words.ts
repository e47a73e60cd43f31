// What a garment may be worth, in the words of a sheet: an estimate from comparable sales, with its spread.
import {performOnRack} from "../commands/rack/rack-command.ts";
import type {Rack} from "../commands/rack/rack.ts";
import {demoCaution} from "../commands/worth/demo-sales.ts";
import {worthOfGarment} from "../commands/worth/price-garment.ts";
import {printMoney} from "../worth/money/money.ts";

/** Short, as the square code of the sheet carries it, too. */
export async function worthWords(id: string, rack: Rack): Promise<string> {
  const {answer} = await performOnRack(worthOfGarment, {id}, rack);
  if (!answer?.price) return "Too few comparable sales are known to say.";
  const {currency, price: {typical, low, high}, on} = answer;
  const invented = (await demoCaution(rack.store)) === null ? "" : " Some of them are invented for the demo.";
  return `About ${printMoney(typical, currency)}; 8 in 10 such sales bring ${printMoney(low, currency)} to ${printMoney(high, currency)}. From sales known on ${on}.${invented}`;
}
