// The sales as a list: one line each on a desk, two on a phone; only those in sight are in the page, however many there are.
import {useWindowVirtualizer} from "@tanstack/react-virtual";
import {useEffect, useRef} from "react";
import {Link} from "wouter";
import type {SaleRecord} from "../../../worth/model.ts";
import {useTop, useWanted} from "../../rack/in-sight.ts";
import {useWidth} from "../../rack/use-width.ts";
import {sayAmount} from "../money.ts";
import {sayDay} from "../say.ts";
import {sayMade, sayWhat} from "./say-sale.ts";

export interface SaleListProps {
  readonly total: number;
  readonly rowAt: (index: number) => SaleRecord | undefined;
  readonly want: (first: number, last: number) => void;
  readonly makerName: (maker: string) => string;
  readonly onOpen: (record: SaleRecord) => void;
}

const heads = ["Sold on", "What", "Made", "Size", "Grade", "Through", "Price"] as const;

export function SaleList({total, rowAt, want, makerName, onOpen}: SaleListProps) {
  const frame = useRef<HTMLDivElement>(null);
  const top = useTop(frame);
  const beside = useWidth(frame, 1000) > 640;
  const height = beside ? 42 : 70;
  const lines = useWindowVirtualizer({count: total, estimateSize: () => height, overscan: 12, scrollMargin: top});
  useEffect(() => lines.measure(), [lines, height]);
  const seen = lines.getVirtualItems();
  useWanted(want, seen[0]?.index, seen.at(-1)?.index);
  return (
    <div className={beside ? "sale-list" : "sale-list stacked"} role="table" aria-label="Sales" aria-rowcount={total + 1}>
      <div role="rowgroup" className="sale-heads">
        <div role="row" aria-rowindex={1} className="sale-line">{heads.map((head) => <span key={head} role="columnheader">{head}</span>)}</div>
      </div>
      <div role="rowgroup" ref={frame} className="sale-body" style={{height: lines.getTotalSize()}}>
        {seen.map(({index, start}) => {
          const record = rowAt(index);
          return (
            <div key={index} role="row" aria-rowindex={index + 2} className="sale-line" style={{transform: `translateY(${start - top}px)`, height}}>
              {record ? <Cells record={record} makerName={makerName} onOpen={onOpen} /> : <span role="cell" className="quiet">fetching…</span>}
            </div>
          );
        })}
      </div>
    </div>
  );
}

function Cells({record, makerName, onOpen}: {record: SaleRecord; makerName: SaleListProps["makerName"]; onOpen: SaleListProps["onOpen"]}) {
  const {sale, garment} = record;
  const what = sayWhat(sale, makerName);
  return (
    <>
      <span role="cell" className="sale-day quiet">{sayDay(sale.soldOn)}</span>
      <span role="cell" className="sale-what">
        {record.removed ? <>{what} <button type="button" className="quiet" onClick={() => onOpen(record)}>Put back<span className="unseen"> {what}</span></button></> : garment ? <Link href={`/worth/${garment}`}>{what}</Link> : <button type="button" className="quiet" onClick={() => onOpen(record)}>{what}</button>}
        {garment && <span className="quiet"> off my rack</span>}
      </span>
      <span role="cell" className="sale-made">{sayMade(sale)}</span>
      <span role="cell" className="sale-size">{sale.size}</span>
      <span role="cell" className="sale-grade">{sale.grade}</span>
      <span role="cell" className="sale-channel">{sale.channel}</span>
      <span role="cell" className="sale-price">{sayAmount(sale.price)}</span>
    </>
  );
}
