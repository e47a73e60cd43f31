// An offer as a small sum on paper: from what it should bring down to the most to pay.
import type {Offer} from "../../../worth/answer.ts";
import {sayAmount} from "../money.ts";
import {sumLines} from "./sum-lines.ts";

export interface SumTableProps {
  readonly offer: Pick<Offer, "lines" | "most">;
  readonly currency: string;
  /** What the first line is called, when it is no single garment's. */
  readonly first?: string | undefined;
}

export function SumTable({offer, currency, first}: SumTableProps) {
  return (
    <table className="sum">
      <caption className="unseen">From what it should bring down to the most to pay</caption>
      <tbody>
        {sumLines(offer).map(({what, cents}, i) => (
          <tr key={what}>
            <th scope="row">{i === 0 ? (first ?? what) : what}</th>
            <td>{sayAmount({cents, currency})}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr><th scope="row">The most to pay</th><td>{sayAmount({cents: offer.most, currency})}</td></tr>
      </tfoot>
    </table>
  );
}
