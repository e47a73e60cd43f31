// What one garment is worth: the price with its doubt, what moved it and which sales it comes from, an offer to defend, and what was spent and earned on it.
import {Link, useParams} from "wouter";
import type {Terms} from "../../worth/model.ts";
import {useMakers} from "../rack/use-maker-names.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {readAmount} from "./money.ts";
import {MoneyStoryPanel} from "./offer/money-story-panel.tsx";
import {LookMoney} from "./offer/look-money.tsx";
import {OfferPanel} from "./offer/offer-panel.tsx";
import {Drivers} from "./price/drivers.tsx";
import {PriceVerdict} from "./price/price-verdict.tsx";
import {SalesUsed} from "./price/sales-used.tsx";
import {TapePanel} from "./price/tape-panel.tsx";
import {TooFew} from "./price/too-few.tsx";
import {YearPrices} from "./price/year-prices.tsx";
import {currencyOf} from "./say.ts";
import {TermsOver} from "./terms/terms-over.tsx";
import {useSetting} from "./terms/use-setting.ts";
import {useKeptText} from "./use-kept-text.ts";
import {useWorth} from "./use-worth.ts";
import {WorthWays} from "./worth-ways.tsx";
import "./worth.css";

export function WorthScreen() {
  const {id = ""} = useParams<{id: string}>();
  return <OneWorth key={id} id={id} />;
}

function OneWorth({id}: {id: string}) {
  const terms = useSetting<Terms>("terms");
  const currency = currencyOf(terms.value);
  const [asked, setAsked] = useKeptText(`ticking.worth.asked.${id}`);
  const {cents} = readAmount(asked, currency);
  const {record, answer, stale, problems, setRecord, again} = useWorth(id, cents);
  const makers = useMakers();
  const {garment, dating, paid} = record?.content ?? {garment: null, dating: null, paid: null};
  const paidHere = paid && paid.currency === currency ? paid.cents : null;
  return (
    <main className="worth" aria-busy={stale || answer === null}>
      <WorthWays />
      <p className="worth-of">
        {garment && <><Link href={`/examine/${id}`}><span className="code">{garment.garment}</span> {garment.title ?? garment.type ?? ""}</Link> <span className="quiet">{!dating ? "not dated yet" : dating.kind === "cannot tell" ? "its date is open" : `made ${dating.words}`}</span></>}
      </p>
      <ProblemList problems={[...terms.problems, ...problems]} />
      {!answer && problems.length === 0 && <section className="price-verdict" aria-label="Worth"><p className="quiet">Going through the sales …</p><h1>…</h1></section>}
      {answer && record && (
        <>
          <div className="worth-head">
            {answer.enough ? <PriceVerdict answer={answer} /> : <TooFew answer={answer} record={record} />}
            <TapePanel answer={answer} name="as it stands" pins={pinsOf(answer)} />
          </div>
          <div className="worth-bench">
            <div>
              <OfferPanel offer={answer.offer} currency={answer.currency} asked={asked} onAsked={setAsked} paid={paidHere}>
                <TermsOver setting={terms} onChanged={again} />
              </OfferPanel>
            </div>
            <div>
              {answer.enough && <LookMoney looks={answer.looks} currency={answer.currency} id={id} />}
              {answer.enough && <YearPrices answer={answer} />}
              {answer.enough && <Drivers drivers={answer.drivers} makers={makers} />}
              <MoneyStoryPanel record={record} currency={currency} onRecord={(next) => (setRecord(next), again())} />
            </div>
            {answer.used.length > 0 && <SalesUsed answer={answer} makers={makers} />}
          </div>
          <footer className="notice worth-notice">{answer.cautions.map((line) => <p key={line}>{line}</p>)}</footer>
        </>
      )}
    </main>
  );
}

/** Prices that matter, on the tape: at most three, so that it stays readable. */
function pinsOf({offer}: NonNullable<ReturnType<typeof useWorth>["answer"]>) {
  if (!offer) return [];
  const asked = offer.atAsked ? [{name: "asked", cents: offer.atAsked.asked}] : [];
  return [...asked, {name: "pay at most", cents: offer.most}, {name: "list at", cents: offer.list}];
}
