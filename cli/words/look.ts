// A look worth taking, in words: what, how hard it is, what it costs, what it is likely to settle.
import type {NextLook} from "../../engine/index.ts";

const efforts = ["a glance", "a glance", "turn something out", "a loupe", "unfold or empty something", "tools"];
const settles: readonly (readonly [bits: number, words: string])[] = [[1, "likely to settle much"], [0.3, "likely to settle some of it"], [0.1, "may settle a little"], [0, "hardly settles anything"]];

export function sayLook({name, place, bits, effort, opensSeam}: NextLook): {title: string; effort: string} {
  const costs = opensSeam ? "opens a seam: ask the owner first" : "costs the garment nothing";
  return {
    title: name === place || place === "" ? name : `${place}: ${name}`,
    effort: `${efforts[Math.round(effort)] ?? "tools"}; ${costs}; ${settles.find(([least]) => bits >= least)![1]}`,
  };
}
