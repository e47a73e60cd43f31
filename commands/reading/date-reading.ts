// A garment of which nothing but its label is known, to be dated from a photo alone.
import type {Garment, RowText} from "../../engine/index.ts";

/** @param known  maker, or several possible ones, and the label kind, as far as they are known */
export function labelGarment(rows: readonly RowText[], {maker, label, name = "label"}: {readonly maker?: string | readonly string[]; readonly label?: string; readonly name?: string}): Garment {
  const saw: object = {...(label === undefined ? {} : {label}), ...(rows.length > 0 ? {rows: [...rows]} : {})};
  return {garment: name.slice(0, 100) || "label", ...(maker === undefined ? {} : {maker: maker as Garment["maker"]}), saw: saw as Garment["saw"]};
}
