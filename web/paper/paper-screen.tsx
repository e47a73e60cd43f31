// Paper: what goes with garments, chosen, looked at, and made: dating sheets, hang tags, listing text, wall charts; and a printed sheet checked.
import {useCallback, useEffect, useMemo, useState} from "react";
import {useLocation, useSearch} from "wouter";
import type {Owner} from "../../commands/rack/settings.ts";
import {paperNames, papers, readWish, writeWish, type Wish} from "./address.ts";
import {ChartPaper} from "./chart-paper.tsx";
import {CheckPaper} from "./check-paper.tsx";
import {ChooseGarments} from "./choose-garments.tsx";
import {ListingPaper} from "./listing-paper.tsx";
import {MakePaper} from "./make-paper.tsx";
import {PaperOptions} from "./paper-options.tsx";
import {ShopPanel} from "./shop-panel.tsx";
import {SheetPreview} from "./sheet-preview.tsx";
import {TagPreview} from "./tag-preview.tsx";
import {takeWanted} from "./wanted.ts";
import "./paper.css";

/** Where Letter pages are the usual ones. Source: Unicode CLDR, paper sizes by territory, from memory. */
const letterLands = new Set("BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "));

/** What the address says, or garments that were picked on the rack. */
function begin(search: string): Wish {
  const wish = readWish(search);
  return wish.of.length > 0 ? wish : {...wish, of: takeWanted()};
}

export function PaperScreen() {
  const search = useSearch();
  const [, go] = useLocation();
  const [wish, setWish] = useState<Wish>(() => begin(search));
  const [owner, setOwner] = useState<Owner | null>(null);
  const country = owner?.country ?? "";
  const change = useCallback((part: Partial<Wish>) => setWish((now) => ({...now, ...part})), []);
  const address = writeWish(wish);
  useEffect(() => {
    if (address !== window.location.search) go(`/paper${address}`, {replace: true});
  }, [address, go]);
  const whole = useMemo(() => ({...wish, size: wish.size ?? (letterLands.has(country) ? ("letter" as const) : ("a4" as const))}), [wish, country]);
  const ofGarments = wish.what === "sheet" || wish.what === "tags" || wish.what === "listing";

  return (
    <main className="paper">
      <header>
        <p className="quiet">What goes with a garment</p>
        <h1>Paper</h1>
      </header>
      <fieldset className="paper-kinds">
        <legend className="unseen">Which paper</legend>
        {papers.map((what) => (
          <label key={what}><input type="radio" name="what" checked={wish.what === what} onChange={() => change({what})} /> {paperNames[what]}</label>
        ))}
      </fieldset>
      {ofGarments && (
        <div className="paper-body">
          <div className="paper-side">
            <ChooseGarments of={wish.of} onChange={(of) => change({of})} />
            <PaperOptions wish={whole} onChange={change} />
            {wish.what !== "listing" && <MakePaper wish={whole} />}
            <ShopPanel onKept={setOwner} />
          </div>
          <section className="paper-sight" aria-label="As it will look" key={JSON.stringify(owner)}>
            {wish.of.length === 0 && <p className="quiet">Choose a garment, and it is shown here.</p>}
            {wish.of.length > 0 && wish.what === "sheet" && <SheetPreview of={wish.of} photos={wish.photos} worth={wish.worth} />}
            {wish.of.length > 0 && wish.what === "tags" && <TagPreview wish={whole} />}
            {wish.of.length > 0 && wish.what === "listing" && <ListingPaper wish={whole} />}
          </section>
        </div>
      )}
      {wish.what === "chart" && <ChartPaper wish={whole} onChange={change} />}
      {wish.what === "check" && <CheckPaper />}
      <footer className="notice">
        <p>Papers tell an estimate from the marks that were seen: no guarantee of authenticity and no certified appraisal. For tax, insurance or an estate, ask a qualified appraiser.</p>
      </footer>
    </main>
  );
}
