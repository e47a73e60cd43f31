// Takes the sales that are shown out as a file: they stay where they are.
import {writeSaleQuestion, type SaleView} from "./sale-address.ts";

const formats = [["csv", "a table (CSV)"], ["json", "everything (JSON)"], ["jsonl", "everything, one a line (JSONL)"]] as const;

export function TakeSalesOut({view}: {readonly view: SaleView}) {
  const said = new URLSearchParams(writeSaleQuestion(view, 0, 1));
  said.delete("offset");
  said.delete("limit");
  return (
    <details className="take-sales">
      <summary>Take out a list</summary>
      <ul>
        <li className="quiet">Of what is shown now:</li>
        {formats.map(([format, name]) => <li key={format}><a href={`/api/sales/export?format=${format}${said.size > 0 ? `&${said}` : ""}`} download>{name}</a></li>)}
      </ul>
    </details>
  );
}
