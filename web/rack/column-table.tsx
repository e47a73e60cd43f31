// What each column of the list is taken as: guessed from its name, changed here.
import {useMarkNames} from "./use-mark-names.ts";
import {entryNames} from "./guess-column.ts";

export interface ColumnTableProps {
  readonly columns: readonly {readonly name: string; readonly target: string | null; readonly samples: readonly string[]}[];
  readonly mapping: Readonly<Record<string, string>>;
  readonly onMapping: (mapping: Readonly<Record<string, string>>) => void;
}

export function ColumnTable({columns, mapping, onMapping}: ColumnTableProps) {
  const marks = [...useMarkNames()].filter(([id]) => id !== "rows").sort(([, a], [, b]) => a.localeCompare(b));
  return (
    <section aria-label="Columns">
      <h2>What the columns hold</h2>
      <div className="wide-table" tabIndex={0} role="group" aria-label="Columns of the list">
        <table className="columns">
          <thead><tr><th scope="col">Column</th><th scope="col">holds, for example</th><th scope="col">is taken as</th></tr></thead>
          <tbody>
            {columns.map(({name, target, samples}) => (
              <tr key={name}>
                <th scope="row">{name || "(no name)"}</th>
                <td className="code">{samples.join(" · ") || <span className="quiet">nothing</span>}</td>
                <td>
                  <select aria-label={`Column ${name} is taken as`} value={mapping[name] ?? target ?? ""} onChange={(event) => onMapping({...mapping, [name]: event.target.value})}>
                    <option value="">left out</option>
                    <optgroup label="The garment">
                      {Object.entries(entryNames).map(([id, word]) => <option key={id} value={id}>{word}</option>)}
                    </optgroup>
                    <optgroup label="Marks">
                      {marks.map(([id, word]) => <option key={id} value={id}>{word}</option>)}
                    </optgroup>
                  </select>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
