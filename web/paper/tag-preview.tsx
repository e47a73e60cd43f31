// A hang tag as it will be printed, and how many fit on a page.
import {useState} from "react";
import {formatNamed, pageSizes, tagsOn} from "../../commands/paper/tag-format.ts";
import type {Wish} from "./address.ts";
import {Turn} from "./turn.tsx";

export function TagPreview({wish: {of, size, format: id, code, price}}: {readonly wish: Wish}) {
  const [at, setAt] = useState(0);
  const garment = of[Math.min(at, of.length - 1)]!;
  const format = formatNamed(id)!;
  const {columns, rows} = tagsOn(format, pageSizes[size ?? "a4"]);
  const pages = Math.ceil(of.length / (columns * rows));
  return (
    <div>
      <Turn at={at} of={of.length} onTurn={setAt} />
      <p className="tag-place"><img src={`/api/paper/tag/${garment}?format=${id}&code=${code}&price=${price}`} width={format.width * 4.4} height={format.height * 4.4} alt={`Hang tag, ${format.name}`} /></p>
      <p className="quiet">{columns * rows} on a page, edge to edge, with marks to cut along; {of.length.toLocaleString()} {of.length === 1 ? "tag takes" : "tags take"} {pages.toLocaleString()} {pages === 1 ? "page" : "pages"}. The ring is where the hole goes. Print at full size, not fitted to the page.</p>
    </div>
  );
}
