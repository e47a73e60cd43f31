// Takes what is shown out of the rack as a file: the garments stay where they are.
import {writeQuestion, type RackView} from "./address.ts";

const formats = [["csv", "a table (CSV)"], ["json", "everything (JSON)"], ["jsonl", "everything, one a line (JSONL)"]] as const;

export function TakeOut({query}: {query: RackView["query"]}) {
  const said = new URLSearchParams(writeQuestion(query, 0, 1));
  said.delete("offset");
  said.delete("limit");
  return (
    <details className="take-out">
      <summary>Take out a list</summary>
      <p className="quiet">Of what is shown now:</p>
      <ul>
        {formats.map(([format, name]) => (
          <li key={format}><a href={`/api/rack/export?format=${format}${said.size > 0 ? `&${said}` : ""}`} download>{name}</a></li>
        ))}
      </ul>
    </details>
  );
}
