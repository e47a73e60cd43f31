// What a lot is worth: a rail or a bag, some of it examined and some not, as one sum with its spread and an offer for all of it.
import {useState} from "react";
import type {Terms} from "../../../worth/model.ts";
import {Button} from "../../ui/button.tsx";
import {Field} from "../../ui/field.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {readAmount} from "../money.ts";
import {OfferPanel} from "../offer/offer-panel.tsx";
import {TapePanel} from "../price/tape-panel.tsx";
import {sayGarments} from "../../rack/say.ts";
import {currencyOf, sayAbout, sayBetween} from "../say.ts";
import {TermsOver} from "../terms/terms-over.tsx";
import {useSetting} from "../terms/use-setting.ts";
import {WorthWays} from "../worth-ways.tsx";
import {AddGarments} from "./add-garments.tsx";
import {emptyLot, keepLot, readLot, unexaminedOf, withGarments, withoutGarment, type LotDraft} from "./lot-draft.ts";
import {LotGarments} from "./lot-garments.tsx";
import {useLotAnswer} from "./use-lot-answer.ts";
import {useLotNames} from "./use-lot-names.ts";
import "../worth.css";

export function LotScreen() {
  const [lot, setLot] = useState<LotDraft>(readLot);
  const [before, setBefore] = useState<{readonly lot: LotDraft; readonly words: string} | null>(null);
  const [turn, setTurn] = useState(0);
  const terms = useSetting<Terms>("terms");
  const currency = currencyOf(terms.value);
  const change = (next: LotDraft, takenAway: string | null = null) => {
    setBefore(takenAway === null ? null : {lot, words: takenAway});
    setLot(next);
    keepLot(next);
  };
  const unexamined = unexaminedOf(lot);
  const {cents} = readAmount(lot.asked, currency);
  const {answer, stale, problems} = useLotAnswer(unexamined === null ? null : {ids: lot.ids, unexamined, sampled: lot.sampled, ...(cents === null ? {} : {asked: cents})}, turn);
  const names = useLotNames(lot.ids);
  const total = answer?.total ?? null;
  const many = lot.ids.length + (unexamined ?? 0);
  return (
    <main className="worth" aria-busy={stale}>
      <WorthWays />
      <div className="worth-head">
        <section className="price-verdict" aria-label="Worth of the lot">
          <p className="quiet">{lot.ids.length === 0 ? "A rail, a bag, a room" : `${sayGarments(many)}${unexamined ? `, ${unexamined.toLocaleString()} of them not examined` : ""}, worth about`}</p>
          <h1 aria-live="polite">{lot.ids.length === 0 ? "What is a lot worth?" : total && answer ? sayAbout({cents: total.typical, currency: answer.currency}) : stale ? "…" : "Too few sales to say"}</h1>
          {total && answer && <p className="odds">8 in 10 between {sayBetween(total.low, total.high, answer.currency).replace(" to ", " and ")}</p>}
          {lot.ids.length === 0 && <p>Put in what you have looked at, say how many more there are, and what is asked for all of it.</p>}
          {answer && (
            <ul className="bounds">
              {answer.examinedTotal && answer.unexamined > 0 && <li>the examined alone: <b>{sayBetween(answer.examinedTotal.low, answer.examinedTotal.high, answer.currency)}</b></li>}
              {answer.unpriced > 0 && <li>{sayGarments(answer.unpriced)} without a price, counted as nothing</li>}
            </ul>
          )}
        </section>
        {answer && <TapePanel answer={{price: answer.total, branches: [], currency: answer.currency}} name="all of it" pins={pinsOf(answer.offer)} />}
      </div>
      <ProblemList problems={[...terms.problems, ...problems]} />
      <div className="worth-bench lot-bench">
        <section className="lot-in" aria-label="In the lot">
          <header><h2>In the lot</h2>{lot.ids.length > 0 && <Button look="quiet" onClick={() => change(emptyLot, "Begun anew.")}>Begin anew</Button>}</header>
          {before && <p className="done" role="status">{before.words} <Button look="quiet" onClick={() => change(before.lot)}>Undo</Button></p>}
          <AddGarments ids={lot.ids} onAdd={(ids) => change(withGarments(lot, ids))} />
          <LotGarments lot={lot} names={names} answer={answer} drawing={(unexamined ?? 0) > 0} onSampled={(id, on) => change({...lot, sampled: on ? [...lot.sampled, id] : lot.sampled.filter((one) => one !== id)})} onTakeOut={(id) => change(withoutGarment(lot, id), `${names.get(id)?.number ?? "It"} is out of the lot.`)} />
          <Field label="Not examined" hint="how many more there are that nobody looked at" wrong={unexamined === null ? "A whole number, like 40" : null}>
            {(tie) => <input {...tie} inputMode="numeric" maxLength={6} value={lot.unexamined} onChange={({target}) => change({...lot, unexamined: target.value})} />}
          </Field>
          {(unexamined ?? 0) > 0 && <p className="quiet">{lot.sampled.length > 0 ? `Priced like the ${lot.sampled.length === 1 ? "one that was" : `${lot.sampled.length} that were`} drawn blindly.` : "Priced like all that you put in. If you picked the best ones first, that says too much: draw some blindly and tick them."}</p>}
        </section>
        <OfferPanel offer={answer?.offer ?? null} currency={answer?.currency ?? currency} asked={lot.asked} onAsked={(asked) => change({...lot, asked})} paid={null} first="What all of it should bring, sold one by one">
          <TermsOver setting={terms} onChanged={() => setTurn(turn + 1)} />
        </OfferPanel>
      </div>
      {answer && <footer className="notice worth-notice"><p>{answer.way}</p>{answer.cautions.map((line) => <p key={line}>{line}</p>)}</footer>}
    </main>
  );
}

const pinsOf = (offer: NonNullable<ReturnType<typeof useLotAnswer>["answer"]>["offer"]) => (offer ? [...(offer.atAsked ? [{name: "asked", cents: offer.atAsked.asked}] : []), {name: "pay at most", cents: offer.most}] : []);
