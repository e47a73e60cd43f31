// An offer as a small sum on paper: from what it should bring down to the most to pay.
import type {Offer} from "../../../worth/answer.ts";
import {sayAmount} from "../money.ts";

export interface SumTableProps {
  readonly offer: Pick<Offer, "lines" | "most">;
  readonly currency: string;
}

export function SumTable({offer: {lines, most}, currency}: SumTableProps) {
  return (
    <table className="sum">
      <caption className="unseen">From what it should bring down to the most to pay</caption>
      <tbody>
        {lines.map(({what, cents}, i) => (
          <tr key={what}>
            <th scope="row">{i > 0 && cents < 0 ? "less " : ""}{what}</th>
            <td>{sayAmount({cents, currency})}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr><th scope="row">The most to pay</th><td>{sayAmount({cents: most, currency})}</td></tr>
      </tfoot>
    </table>
  );
}
