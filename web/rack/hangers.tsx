// The garments on hangers: rails one below the other, as many hooks on each as the window is wide.
import {useWindowVirtualizer} from "@tanstack/react-virtual";
import {useEffect, useRef} from "react";
import {Link} from "wouter";
import type {RackRow} from "../../store/model.ts";
import {WorthLink} from "../worth/worth-link.tsx";
import {Cover} from "./cover.tsx";
import {idsBetween, useTop, useWanted} from "./in-sight.ts";
import {PickBox} from "./pick-box.tsx";
import type {Shelf} from "./shelf.ts";
import {Sure} from "./sure.tsx";
import {useWidth} from "./use-width.ts";

const narrowest = 158;

export function Hangers({total, rowAt, want, picked}: Shelf) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 1000);
  const across = Math.max(2, Math.floor(width / narrowest));
  const railHeight = Math.round((width / across - 16) * 1.2 + 142);
  const top = useTop(frame);
  const rails = useWindowVirtualizer({count: Math.ceil(total / across), estimateSize: () => railHeight, overscan: 2, scrollMargin: top});
  useEffect(() => rails.measure(), [rails, railHeight]);
  const seen = rails.getVirtualItems();
  useWanted(want, seen[0] && seen[0].index * across, seen.length > 0 ? Math.min(total, (seen.at(-1)!.index + 1) * across) - 1 : undefined);
  const stretch = (from: number, until: number) => idsBetween(rowAt, from, until);

  return (
    <div ref={frame} className="rails" role="list" aria-label="Garments" style={{height: rails.getTotalSize()}}>
      {seen.map(({index: rail, start}) => (
        <div key={rail} className="rail" role="presentation" style={{transform: `translateY(${start - top}px)`, height: railHeight, gridTemplateColumns: `repeat(${across}, minmax(0, 1fr))`}}>
          {Array.from({length: Math.min(across, total - rail * across)}, (_, hook) => {
            const index = rail * across + hook;
            const row = rowAt(index);
            return (
              <div key={hook} role="listitem" aria-setsize={total} aria-posinset={index + 1} className={row && picked.ids.has(row.id) ? "hanger on" : "hanger"}>
                {row ? <Card row={row} on={picked.ids.has(row.id)} onPick={(withShift) => picked.pick(row.id, index, stretch, withShift)} /> : <span className="quiet">fetching…</span>}
              </div>
            );
          })}
        </div>
      ))}
    </div>
  );
}

function Card({row, on, onPick}: {row: RackRow; on: boolean; onPick: (withShift: boolean) => void}) {
  return (
    <>
      <svg className="hook" width={18} height={22} viewBox="0 0 18 22" aria-hidden="true"><path d="M9 22V13C9 10 14 9.5 14 5.5A5 5 0 0 0 4 5" /></svg>
      <Link href={`/examine/${row.id}`} className="hanger-link">
        <Cover row={row} />
        <span className="hanger-made">{row.dating?.words ?? "not dated yet"}</span>
        <span className="hanger-title">{row.title || row.type || "no title"}</span>
      </Link>
      <span className="hanger-foot"><span className="code">{row.number}</span>{row.dating ? <Sure dating={row.dating} short /> : null}</span>
      <span className="hanger-foot quiet">
        <span>{row.dating && row.dating.odd > 0 ? <span className="odd-note">{row.dating.odd === 1 ? "one odd mark" : `${row.dating.odd} odd marks`}</span> : row.place}</span>
        <WorthLink row={row} />
      </span>
      <PickBox row={row} on={on} onPick={onPick} />
    </>
  );
}
