// The garments as a dense list: one line each, only those in sight are in the page, however many there are.
import {useWindowVirtualizer} from "@tanstack/react-virtual";
import {useRef} from "react";
import {Link} from "wouter";
import type {RackRow} from "../../store/model.ts";
import {WorthLink} from "../worth/worth-link.tsx";
import {Cover} from "./cover.tsx";
import {idsBetween, useTop, useWanted} from "./in-sight.ts";
import {PickBox} from "./pick-box.tsx";
import {sayYears} from "./say.ts";
import type {Shelf} from "./shelf.ts";
import {Sure} from "./sure.tsx";

const lineHeight = 52;
const heads = ["", "Number", "Garment", "Made", "How sure", "Between", "Maker", "Kept", "Standing", "Asking"] as const;

export function GarmentList({total, rowAt, want, picked, makerName}: Shelf) {
  const frame = useRef<HTMLDivElement>(null);
  const top = useTop(frame);
  const lines = useWindowVirtualizer({count: total, estimateSize: () => lineHeight, overscan: 12, scrollMargin: top});
  const seen = lines.getVirtualItems();
  useWanted(want, seen[0]?.index, seen.at(-1)?.index);
  const stretch = (from: number, until: number) => idsBetween(rowAt, from, until);

  return (
    <div className="list" role="table" aria-label="Garments" aria-rowcount={total + 1}>
      <div role="rowgroup">
        <div role="row" aria-rowindex={1} className="list-line list-head">
          {heads.map((head, i) => <span key={head || i} role="columnheader">{head || <span className="unseen">Picked</span>}</span>)}
        </div>
      </div>
      <div role="rowgroup" ref={frame} className="list-body" style={{height: lines.getTotalSize()}}>
        {seen.map(({index, start}) => {
          const row = rowAt(index);
          return (
            <div key={index} role="row" aria-rowindex={index + 2} className={row && picked.ids.has(row.id) ? "list-line on" : "list-line"} style={{transform: `translateY(${start - top}px)`, height: lineHeight}}>
              {row ? <Cells row={row} makerName={makerName} on={picked.ids.has(row.id)} onPick={(withShift) => picked.pick(row.id, index, stretch, withShift)} /> : <span role="cell" className="quiet">fetching…</span>}
            </div>
          );
        })}
      </div>
    </div>
  );
}

interface CellsProps {
  readonly row: RackRow;
  readonly makerName: Shelf["makerName"];
  readonly on: boolean;
  readonly onPick: (withShift: boolean) => void;
}

function Cells({row, makerName, on, onPick}: CellsProps) {
  return (
    <>
      <span role="cell"><PickBox row={row} on={on} onPick={onPick} /></span>
      <span role="cell" className="list-number"><Cover row={row} small /><span className="code">{row.number}</span></span>
      <span role="cell" className="list-title">
        <Link href={`/examine/${row.id}`}>{row.title || row.type || "no title"}</Link>
        {row.tags.length > 0 && <span className="quiet">{row.tags.join(" · ")}</span>}
      </span>
      <span role="cell" className="list-made">
        {row.dating?.words ?? "–"}
        {row.dating && row.dating.odd > 0 && <span className="odd-note">{row.dating.odd === 1 ? "one odd mark" : `${row.dating.odd} odd marks`}</span>}
      </span>
      <span role="cell"><Sure dating={row.dating} /></span>
      <span role="cell" className="code quiet">{row.dating ? sayYears(row.dating) : ""}</span>
      <span role="cell">{row.maker ? makerName(row.maker) : <span className="quiet">not known</span>}</span>
      <span role="cell">{row.place}</span>
      <span role="cell">{row.standing}</span>
      <span role="cell" className="list-price"><WorthLink row={row} /></span>
    </>
  );
}
