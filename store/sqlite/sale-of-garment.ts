// The sale that a sold garment is, told by the garment itself: it is nowhere written down a second time.
import type {Sale} from "../../worth/model.ts";
import type {Content} from "../model.ts";

/** Null while it is not sold, or nobody said what it brought. */
export function saleOfGarment({garment, standing, dating, sizes, money}: Content): Sale | null {
  if (standing !== "sold" || !money?.sold) return null;
  const {on, price, fees, channel, grade} = money.sold;
  return {
    soldOn: on,
    price,
    fees,
    kind: garment.type ?? "",
    maker: dating ? dating.maker : typeof garment.maker === "string" ? garment.maker : null,
    lot: null,
    madeFrom: dating?.noEarlier ?? null,
    madeUntil: dating?.noLater ?? null,
    size: sizes?.tag?.text ?? "",
    grade: grade ?? null,
    channel,
    note: (garment.title ?? "").slice(0, 2000),
  };
}
