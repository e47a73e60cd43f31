// The sales that prices are learned from: found, narrowed down, written down, changed, taken out and brought in.
import {useCallback, useEffect, useMemo, useState} from "react";
import {Link, useLocation, useSearch} from "wouter";
import type {Problem} from "../../../engine/problem.ts";
import type {SalePage} from "../../../store/model.ts";
import type {SaleRecord, Terms} from "../../../worth/model.ts";
import {getJson, problemsOf} from "../../api.ts";
import {useMakers} from "../../rack/use-maker-names.ts";
import {usePages} from "../../rack/use-pages.ts";
import {Button} from "../../ui/button.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {currencyOf, saySales} from "../say.ts";
import {useSetting} from "../terms/use-setting.ts";
import {WorthWays} from "../worth-ways.tsx";
import {readSaleAddress, saleFiltersSet, writeSaleAddress, writeSaleQuestion, type SaleView} from "./sale-address.ts";
import {blankSale} from "./sale-entry.ts";
import {SaleList} from "./sale-list.tsx";
import {SaleNarrow} from "./sale-narrow.tsx";
import {SaleSheet} from "./sale-sheet.tsx";
import {TakeSalesOut} from "./take-sales-out.tsx";
import {useSaleChanges} from "./use-sale-changes.ts";
import "../worth.css";

const nothing = {kinds: [], makers: [], channels: []};

export function SalesScreen() {
  const search = useSearch();
  const [, go] = useLocation();
  const view = useMemo(() => readSaleAddress(search), [search]);
  const said = new URLSearchParams(search);
  const {page, rowAt, want, stale, problems, again} = usePages<SalePage>((offset, limit) => `/api/sales?${writeSaleQuestion(view, offset, limit)}`);
  const makers = useMakers();
  const makerName = useCallback((maker: string) => makers.get(maker) ?? maker, [makers]);
  const currency = currencyOf(useSetting<Terms>("terms").value);
  const [open, setOpen] = useState<SaleRecord | "new" | null>(said.get("write") === "new" ? "new" : null);
  const changes = useSaleChanges(again, useCallback((newer: SaleRecord) => setOpen((now) => (now === null || now === "new" ? now : newer)), []));
  const [lost, setLost] = useState<readonly Problem[]>([]);
  const change = useCallback((part: Partial<SaleView>) => go(`/sales${writeSaleAddress({...view, ...part})}`, {replace: true}), [go, view]);

  // A sale that another screen leads to.
  const asked = said.get("sale");
  useEffect(() => {
    if (asked === null) return;
    const stop = new AbortController();
    getJson<SaleRecord>(`/api/sales/${encodeURIComponent(asked)}`, {signal: stop.signal}).then(
      (record) => (record.garment ? go(`/worth/${record.garment}`, {replace: true}) : setOpen(record)),
      (error: unknown) => !stop.signal.aborted && setLost(problemsOf(error)),
    );
    return () => stop.abort();
  }, [asked, go]);

  const close = () => {
    setOpen(null);
    if (asked !== null || said.has("write")) go(`/sales${writeSaleAddress(view)}`, {replace: true});
  };
  const values = page?.values ?? nothing;
  const today = new Date().toISOString().slice(0, 10);
  const narrowed = saleFiltersSet(view) > 0 || view.text !== "";
  return (
    <main className="worth" aria-busy={stale}>
      <WorthWays />
      <header className="sales-head">
        <div>
          <p className="quiet">{view.removed ? "Taken out of the sales" : narrowed ? "Of the sales, these fit" : "Sales to learn prices from"}</p>
          <h1 role="status">{page ? saySales(page.total) : "Looking …"}</h1>
        </div>
        <p className="worth-line">
          <Button look="main" onClick={() => setOpen("new")}>Write a sale down</Button>
          <Link href="/sales/bring-in" className="worth-go">Bring in a list</Link>
          <TakeSalesOut view={view} />
        </p>
      </header>
      {changes.done && (
        <p className="done" role="status">
          {changes.done.words} {changes.done.undo && <Button look="quiet" onClick={() => void changes.done!.undo!()}>Undo</Button>}
        </p>
      )}
      <ProblemList problems={[...problems, ...changes.problems, ...lost]} />
      <SaleNarrow view={view} values={values} makerName={makerName} onChange={change} />
      {page?.total === 0 && <NoSales narrowed={narrowed} />}
      {page && page.total > 0 && (
        <div className={stale ? "stale" : undefined}>
          <SaleList total={page.total} rowAt={rowAt} want={want} makerName={makerName} onOpen={(record) => (record.removed ? void changes.putBack(record) : setOpen(record))} />
        </div>
      )}
      {open && (
        <SaleSheet
          key={open === "new" ? "new" : open.id}
          record={open === "new" ? null : open}
          blank={blankSale(currency, today, said.get("kind") ?? "")}
          today={today}
          makers={makers}
          values={values}
          onSave={async (sale) => {
            const refused = await changes.save(open === "new" ? null : open, sale);
            if (refused.length === 0) close();
            return refused;
          }}
          onTakeOut={() => {
            if (open !== "new") void changes.takeOut(open);
            close();
          }}
          onClose={close}
        />
      )}
    </main>
  );
}

function NoSales({narrowed}: {narrowed: boolean}) {
  return narrowed ? (
    <p className="empty">No sale fits. Take a word out of the search, or show all sales.</p>
  ) : (
    <p className="empty">No sale is written down yet. Prices are learned from what things really sold for: your own, and those you saw at markets and auctions. A garment on the rack that is marked as sold comes here by itself.</p>
  );
}
