// What a hang tag says, composed from what is kept of a garment: short words for a buyer who holds it in hand.
import {sayOdds} from "../../engine/index.ts";
import {printMoney} from "../../commands/rack/table/money-cell.ts";
import type {Content, Dating} from "../../store/model.ts";
import {capital} from "../sheet/say.ts";

export interface Tag {
  readonly shop: string;
  readonly number: string;
  readonly title: string;
  /** "March 1968", or that it is not dated. */
  readonly made: string;
  /** How sure that is. */
  readonly sure: string;
  /** Size and grade. */
  readonly facts: readonly string[];
  readonly price: string;
}

/** What is asked stands on a tag unless the owner leaves it out. */
export function composeTag({garment, dating, sizes, asked}: Pick<Content, "garment" | "dating" | "sizes" | "asked">, {shop, grade, price}: {readonly shop: string; readonly grade: string | null; readonly price: boolean}): Tag {
  const size = sizes?.tag?.text ?? "";
  return {
    shop,
    number: garment.garment,
    title: capital(garment.title ?? garment.type ?? ""),
    ...madeWords(dating),
    facts: [size === "" ? "" : `size ${size}`, grade ?? ""].filter((words) => words !== ""),
    price: price && asked ? printMoney(asked) : "",
  };
}

function madeWords(dating: Dating | null): Pick<Tag, "made" | "sure"> {
  if (!dating || dating.kind === "cannot tell") return {made: "not dated", sure: ""};
  if (dating.kind === "two dates") return {made: capital(dating.words), sure: `a later one in an older look, ${sayOdds(dating.probability)}`};
  return {made: capital(dating.words), sure: `estimate, ${sayOdds(dating.probability)}`};
}
