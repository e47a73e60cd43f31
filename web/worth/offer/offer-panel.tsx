// From an asked price to an offer: the most to pay with its sum, what to list it at, the least to let it go for, and how the asked price stands to that.
import type {ReactNode} from "react";
import type {Offer} from "../../../worth/answer.ts";
import {sayShare} from "../../examine/say-share.ts";
import {AmountField} from "../amount-field.tsx";
import {sayAmount} from "../money.ts";
import {sayAbout} from "../say.ts";
import {SumTable} from "./sum-table.tsx";

export interface OfferPanelProps {
  readonly offer: Offer | null;
  readonly currency: string;
  readonly asked: string;
  readonly onAsked: (text: string) => void;
  /** What was paid for it, when it is bought already. */
  readonly paid: number | null;
  /** What the first line of the sum is called, when it is no single garment's. */
  readonly first?: string;
  /** The way to the terms. */
  readonly children: ReactNode;
}

export function OfferPanel({offer, currency, asked, onAsked, paid, first, children}: OfferPanelProps) {
  const say = (cents: number) => sayAmount({cents, currency});
  return (
    <section className="offer" aria-label="Offer">
      <header><h2>Offer</h2>{children}</header>
      <AmountField label="The seller asks" hint={paid === null ? "what stands on the tag, or what was said" : "it is bought already: leave this empty, or try another price"} text={asked} currency={currency} onText={onAsked} />
      {offer ? (
        <>
          {offer.atAsked && <AtAsked at={offer.atAsked} most={offer.most} currency={currency} />}
          <dl className="three">
            <div><dt>pay at most</dt><dd>{say(offer.most)}</dd></div>
            <div><dt>list it at</dt><dd>{say(offer.list)}</dd></div>
            <div><dt>walk away below</dt><dd>{say(offer.walkAway)}</dd></div>
          </dl>
          <p className="quiet">{paid !== null ? `Walk away below: it covers the ${say(paid)} paid and what went into it.` : `Walk away below: less would not cover ${offer.bought === null ? "what was spent" : `buying it at ${say(offer.bought)}`}.`} Bought at {say(offer.breakEven)} nothing would be earned and nothing lost.</p>
          <SumTable offer={offer} currency={currency} first={first} />
        </>
      ) : (
        <p className="quiet">Without a price there is no sum to defend an offer with. Offer what you can afford to lose.</p>
      )}
    </section>
  );
}

/** The asked price against the offer; said in words, with a mark that needs no colour. */
function AtAsked({at: {asked, profit, earns, loses, buy}, most, currency}: {at: NonNullable<Offer["atAsked"]>; most: number; currency: string}) {
  const say = (cents: number) => sayAmount({cents, currency});
  return (
    <div className={buy ? "at-asked buy" : "at-asked leave"} role="status">
      <p><b>{buy ? "✓ Buy" : "✗ Leave it"} at {say(asked)}.</b> {buy ? `It leaves the margin you want: you could go up to ${say(most)}.` : most > 0 ? `It does not leave the margin you want: offer ${say(most)} at most.` : "Even as a gift it would not leave the margin you want."}</p>
      <p className="quiet">Expected {profit < 0 ? "loss" : "profit"} {sayAbout({cents: Math.abs(profit), currency})}; your margin in {sayShare(earns)}, a loss in {sayShare(loses)}.</p>
    </div>
  );
}
