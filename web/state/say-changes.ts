// What changed in the measures and the state from one step of a garment's history to the next, each change a sentence.
import {sayCloth} from "../../state/cloth.ts";
import {sayFlaw} from "../../state/grade.ts";
import type {Content} from "../../store/model.ts";
import {same} from "../offline/merge.ts";
import {sizesOf, stateOf} from "./with-measure.ts";

export function sayStateChanges(before: Pick<Content, "sizes" | "state">, after: Pick<Content, "sizes" | "state">): string[] {
  const said: string[] = [];
  const tell = (name: string, was: string, is: string) => {
    if (was !== is) said.push(was === "" ? `${name}: ${is}` : is === "" ? `${name} taken away, was ${was}` : `${name}: ${was} → ${is}`);
  };
  const [sizes, sized] = [sizesOf(before), sizesOf(after)];
  const lengths = (list: typeof sizes.measures) => new Map(list.map(({point, length}) => [point, `${length.typed} ${length.unit}`]));
  const [laid, now] = [lengths(sizes.measures), lengths(sized.measures)];
  for (const point of new Set([...laid.keys(), ...now.keys()])) tell(point.replaceAll("-", " "), laid.get(point) ?? "", now.get(point) ?? "");
  tell("size on the tag", sizes.tag?.text ?? "", sized.tag?.text ?? "");
  tell("cloth", sizes.cloth ? sayCloth(sizes.cloth) : "", sized.cloth ? sayCloth(sized.cloth) : "");

  const [state, looked] = [stateOf(before), stateOf(after)];
  const gone = state.flaws.filter((flaw) => !looked.flaws.some((other) => same(flaw, other)));
  const come = looked.flaws.filter((flaw) => !state.flaws.some((other) => same(flaw, other)));
  said.push(...come.map((flaw) => `${sayFlaw(flaw)} noted`), ...gone.map((flaw) => `${sayFlaw(flaw)} taken out`));
  tell("wear", state.wear ?? "", looked.wear ?? "");
  tell("cleanliness", state.clean ?? "", looked.clean ?? "");
  const names = (list: readonly string[]) => list.map((one) => one.replaceAll("-", " ")).join(", ");
  tell("altered", names(state.alterations.map(({kind}) => kind)), names(looked.alterations.map(({kind}) => kind)));
  tell("missing", names(state.missing), names(looked.missing));
  tell("pattern of wear", names(state.fading), names(looked.fading));
  return said;
}
