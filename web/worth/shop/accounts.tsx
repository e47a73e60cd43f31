// What was earned by kind, maker or decade: a table whose margins are also sewn.
import type {Account} from "../../../worth/answer.ts";
import {sayAmount} from "../money.ts";
import {capital} from "../say.ts";

export interface AccountsProps {
  readonly title: string;
  readonly accounts: readonly Account[];
  readonly currency: string;
  readonly nameOf?: (name: string) => string;
}

export function Accounts({title, accounts, currency, nameOf = capital}: AccountsProps) {
  const say = (cents: number) => sayAmount({cents, currency});
  if (accounts.length === 0) return null;
  return (
    <section className="accounts" aria-label={title}>
      <h2>{title}</h2>
      <div className="worth-table" tabIndex={0} role="group" aria-label={`${title}, in figures`}>
        <table>
          <thead><tr>{["", "Bought", "Sold", "Paid", "Costs", "Taken", "Profit", "Margin", "Days"].map((head, i) => <th key={head} scope="col" className={i > 0 ? "figure" : undefined}>{head || <span className="unseen">Which</span>}</th>)}</tr></thead>
          <tbody>
            {accounts.map(({name, bought, sold, paid, costs, taken, profit, margin, days}) => (
              <tr key={name}>
                <th scope="row">{nameOf(name)}</th>
                <td>{bought}</td>
                <td>{sold}</td>
                <td>{say(paid)}</td>
                <td>{say(costs)}</td>
                <td>{say(taken)}</td>
                <td><b>{say(profit)}</b></td>
                <td><Margin margin={margin} /></td>
                <td>{days === null ? <span className="quiet">–</span> : Math.round(days)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** Ten stitches are a margin of all; a loss has none, and its figure says so. */
function Margin({margin}: {margin: number | null}) {
  if (margin === null) return <span className="quiet">none sold</span>;
  const sewn = Math.min(10, Math.max(0, Math.round(margin * 10)));
  return (
    <span className="margin">
      <svg className="used-weight" width={60} height={4} aria-hidden="true">{Array.from({length: 10}, (_, i) => <rect key={i} className={i < sewn ? "sewn" : "unsewn"} x={i * 6} width={4} height={3} />)}</svg>
      <span>{sayMargin(margin)}</span>
    </span>
  );
}

export const sayMargin = (margin: number): string => `${margin < 0 ? "−" : ""}${Math.abs(Math.round(margin * 100))} in 100`;
