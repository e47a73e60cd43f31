// Brings a list of sales in.
import {useState} from "react";
import type {Sale} from "../../../worth/model.ts";
import {BringIn} from "../../rack/bring-in.tsx";
import {useMakerNames} from "../../rack/use-maker-names.ts";
import {sayAmount} from "../money.ts";
import {sayDay, saySales} from "../say.ts";
import {guessSaleColumns, saleEntryNames} from "./guess-sale-column.ts";
import {sayMade} from "./say-sale.ts";

interface Row {
  readonly line: number;
  readonly sale: Sale;
}

const groups = [{name: "The sale", targets: Object.entries(saleEntryNames)}];
const preview = (rows: readonly Row[], ready: number) => <SalePreview rows={rows} ready={ready} />;

export function BringSalesInScreen() {
  const [days, setDays] = useState("");
  const controls = (
    <label className="bring-in-currency">
      Days like 3/4/2026 are written{" "}
      <select value={days} onChange={({target}) => setDays(target.value)}><option value="">one way only, or not at all</option><option>day first</option><option>month first</option></select>
    </label>
  );
  return (
    <BringIn
      path="/api/sales/import"
      back={{href: "/sales", name: "Sales", to: "To the sales"}}
      title="Bring in sales"
      about="A table (CSV) with a line of names, JSON, or JSON with one sale a line. A day, a price and a kind of garment are enough; the more is known, the better the prices."
      example={"sold on,kind,maker,made from,made until,grade,price\n2026-03-14,trousers,Marrowfield,1966,1969,good,180"}
      count={saySales}
      then="."
      groups={groups}
      guess={guessSaleColumns}
      preview={preview}
      habits={{sent: days === "" ? {} : {days}, controls}}
    />
  );
}

function SalePreview({rows, ready}: {rows: readonly Row[]; ready: number}) {
  const makerName = useMakerNames();
  return (
    <section aria-label="As they would be brought in">
      <h2>{rows.length < ready ? `The first ${rows.length} of ${saySales(ready)}` : saySales(ready)}</h2>
      <div className="wide-table" tabIndex={0} role="group" aria-label="The first sales">
        <table>
          <thead><tr>{["Line", "Sold on", "Kind", "Maker", "Lot", "Made", "Size", "Grade", "Price", "Fees", "Through", "Note"].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>
            {rows.map(({line, sale}) => (
              <tr key={line}>
                <td className="code quiet">{line}</td>
                <th scope="row">{sayDay(sale.soldOn)}</th>
                <td>{sale.kind}</td>
                <td>{sale.maker === null ? "" : makerName(sale.maker)}</td>
                <td className="code">{sale.lot}</td>
                <td>{sayMade(sale)}</td>
                <td>{sale.size}</td>
                <td>{sale.grade}</td>
                <td>{sayAmount(sale.price)}</td>
                <td>{sale.fees ? sayAmount(sale.fees) : ""}</td>
                <td>{sale.channel}</td>
                <td>{sale.note}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
