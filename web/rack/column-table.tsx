// What each column of a list is taken as: guessed from its name, changed here.

export interface Column {
  readonly name: string;
  /** Null: its name says nothing. */
  readonly target: string | null;
  readonly samples: readonly string[];
}

/** What a column can be taken as: ids with their names. */
export interface TargetGroup {
  readonly name: string;
  readonly targets: readonly (readonly [id: string, name: string])[];
}

export interface ColumnTableProps {
  readonly columns: readonly Column[];
  readonly groups: readonly TargetGroup[];
  readonly mapping: Readonly<Record<string, string>>;
  readonly onMapping: (mapping: Readonly<Record<string, string>>) => void;
}

export function ColumnTable({columns, groups, mapping, onMapping}: ColumnTableProps) {
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
                    {groups.map((group) => (
                      <optgroup key={group.name} label={group.name}>
                        {group.targets.map(([id, word]) => <option key={id} value={id}>{word}</option>)}
                      </optgroup>
                    ))}
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
