// The rack: what is there, in which years it was made, found and narrowed down, on hangers or as a list.
import {useCallback, useMemo} from "react";
import {Link, useLocation, useSearch} from "wouter";
import {ProblemList} from "../ui/problem-list.tsx";
import {filtersSet, readAddress, writeAddress, type RackView} from "./address.ts";
import {GarmentList} from "./garment-list.tsx";
import {Hangers} from "./hangers.tsx";
import {Narrow} from "./narrow.tsx";
import {PickedBar} from "./picked-bar.tsx";
import {sayGarments} from "./say.ts";
import {SearchLine} from "./search-line.tsx";
import {TakeOut} from "./take-out.tsx";
import {useMakerNames} from "./use-maker-names.ts";
import {usePicked} from "./use-picked.ts";
import {useRack} from "./use-rack.ts";
import {YearPlot} from "./year-plot.tsx";
import "./rack.css";

const nothing = {makers: [], types: [], places: [], tags: []};

export function RackScreen() {
  const search = useSearch();
  const [, go] = useLocation();
  const view = useMemo(() => readAddress(search), [search]);
  const {page, rowAt, want, stale, problems, again} = useRack(view.query);
  const picked = usePicked();
  const makerName = useMakerNames();
  const change = useCallback(
    ({query, layout}: {query?: Partial<RackView["query"]>; layout?: RackView["layout"]}) => go(`/rack${writeAddress({query: {...view.query, ...query}, layout: layout ?? view.layout})}`, {replace: true}),
    [go, view],
  );
  const shelf = {total: page?.total ?? 0, rowAt, want, picked, makerName};
  const set = filtersSet(view);
  const values = page?.values ?? nothing;

  return (
    <main className="rack" aria-busy={stale}>
      <header className="rack-head">
        <div>
          <p className="quiet">{view.query.removed ? "Taken off the rack" : set > 0 || view.query.text !== "" ? "Of the rack, this fits" : "On the rack"}</p>
          <h1 role="status">{page ? sayGarments(page.total) : "Looking …"}</h1>
          <p>{page && <Spread years={page.years} />}</p>
          <nav className="rack-ways" aria-label="Rack">
            <Link href="/rack/bring-in">Bring in a list</Link>
            <TakeOut query={view.query} />
            <Link href="/rack/alike">Look-alikes</Link>
            <Link href="/rack/archive">Archive</Link>
          </nav>
        </div>
        <section aria-label="When they were made">
          <YearPlot years={page?.years ?? {first: 1950, garments: []}} from={view.query.from} until={view.query.until} onRange={(range) => change({query: range})} />
          <p className="quiet plot-note">How many of each year are expected. Sweep across years, or move the pins, to narrow down.</p>
        </section>
      </header>
      <div className="rack-body">
        <details className="narrow-fold" open={matchMedia("(min-width: 900px)").matches}>
          <summary><h2>Narrow down</h2> <span className="quiet">{set === 0 ? "nothing set" : `${set} set`}</span></summary>
          <Narrow view={view} values={values} makerName={makerName} onChange={(query) => change({query})} />
        </details>
        <section aria-label="Garments" className={stale && page ? "garments stale" : "garments"}>
          <SearchLine view={view} onChange={change} />
          <ProblemList problems={problems} />
          {page?.total === 0 && <Empty narrowed={set > 0 || view.query.text !== ""} />}
          {page && page.total > 0 && (view.layout === "list" ? <GarmentList {...shelf} /> : <Hangers {...shelf} />)}
        </section>
      </div>
      <PickedBar picked={picked} total={shelf.total} query={view.query} places={values.places} tags={values.tags} onChanged={again} />
    </main>
  );
}

/** The years that hold the middle half of what is expected. */
function Spread({years: {first, garments}}: {years: {readonly first: number; readonly garments: readonly number[]}}) {
  const sum = garments.reduce((a, b) => a + b, 0);
  if (sum < 0.5) return null;
  const reach = (share: number) => {
    let so = 0;
    return first + garments.findIndex((count) => (so += count) >= share * sum);
  };
  const [low, middle, high] = [reach(0.25), reach(0.5), reach(0.75)];
  if (low === high) return <>At least half of them were made in <b>{low}</b>.</>;
  return <>Half of them were made from <b>{low}</b> to <b>{high}</b>, half before the end of <b>{middle}</b>.</>;
}

function Empty({narrowed}: {narrowed: boolean}) {
  return narrowed ? (
    <p className="empty">Nothing fits. Widen the years, or take a word out of the search.</p>
  ) : (
    <p className="empty">The rack is empty. <Link href="/examine">Examine a garment</Link> and keep it, or <Link href="/rack/bring-in">bring in a list</Link>.</p>
  );
}
