// The garments of a lot, each with what it may bring, and whether it was drawn blindly.
import {Link} from "wouter";
import type {LotAnswer} from "../../../worth/answer.ts";
import {sayAbout, sayBetween} from "../say.ts";
import type {LotDraft} from "./lot-draft.ts";
import type {LotName} from "./use-lot-names.ts";

export interface LotGarmentsProps {
  readonly lot: LotDraft;
  readonly names: ReadonlyMap<string, LotName>;
  readonly answer: LotAnswer | null;
  /** Some garments of the lot are not examined, so that it matters which stand for them. */
  readonly drawing: boolean;
  readonly onSampled: (id: string, on: boolean) => void;
  readonly onTakeOut: (id: string) => void;
}

export function LotGarments({lot, names, answer, drawing, onSampled, onTakeOut}: LotGarmentsProps) {
  const prices = new Map(answer?.garments.map((one) => [one.id, one]));
  return (
    <ul className="lot-garments">
      {lot.ids.map((id) => {
        const name = names.get(id);
        const price = prices.get(id);
        return (
          <li key={id}>
            <Link href={`/worth/${id}`}><span className="code">{name?.number ?? "…"}</span> {name?.words}</Link>
            <span className="lot-price">{!price || !answer ? "" : price.typical === null ? <span className="quiet">too few sales</span> : <><b>{sayAbout({cents: price.typical, currency: answer.currency})}</b> <span className="quiet">{sayBetween(price.low!, price.high!, answer.currency)}</span></>}</span>
            <span className="lot-ways">
              {drawing && <label className="sale-tick"><input type="checkbox" checked={lot.sampled.includes(id)} onChange={({target}) => onSampled(id, target.checked)} />drawn blindly</label>}
              <button type="button" className="quiet" onClick={() => onTakeOut(id)}>Take out<span className="unseen"> {name?.number}</span></button>
            </span>
          </li>
        );
      })}
    </ul>
  );
}
