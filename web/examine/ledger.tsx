// The ledger: each mark with what it says, how much it weighs and on whose authority, odd ones first.
import {nameOf, type Book, type Finding, type LedgerLine, type RuleUsed} from "../../engine/index.ts";

const ways: Readonly<Record<string, string>> = {read: "seen in the source", part: "partly seen in the source", memory: "from memory, not looked up", inferred: "own judgement"};

export function Ledger({finding, books}: {readonly finding: Finding | null; readonly books: readonly Book[]}) {
  const odd = new Map(finding?.odd.map(({id, probability}) => [id, probability]));
  const lines = [...(finding?.ledger ?? [])].sort((a, b) => Number(odd.has(b.id)) - Number(odd.has(a.id)) || b.bits - a.bits);
  return (
    <section className="ledger" aria-label="Ledger">
      <header><h2>Ledger</h2><span className="quiet">what each mark settles</span></header>
      {lines.length === 0 && <p className="quiet">Nothing seen yet. Press a place on the drawing, or type a row of the label.</p>}
      <ul>{lines.map((line) => <Line key={line.id} line={line} finding={finding!} books={books} odd={odd.has(line.id)} />)}</ul>
    </section>
  );
}

function Line({line, finding, books, odd}: {line: LedgerLine; finding: Finding; books: readonly Book[]; odd: boolean}) {
  const rules = finding.rules.filter(({mark}) => mark === line.id);
  const [first] = rules;
  const title = (book: string) => books.find((one) => one.book === book)?.title ?? book;
  return (
    <li className={odd ? "odd" : undefined}>
      <details>
        <summary>
          <span className="ledger-name">{nameOf(finding, line.id)}{first && first.seen !== "present" && <span className="quiet"> {first.seen}</span>}{odd && <b> does not fit</b>}</span>
          <Weight bits={line.bits} />
        </summary>
        <p className="quiet">
          {line.bits.toFixed(1)} bits{Math.abs(line.moved) >= 1 ? `; moves the middle ${Math.round(Math.abs(line.moved))} months ${line.moved > 0 ? "later" : "earlier"}` : ""}
          {line.stray !== null ? `; does not belong: ${Math.round(line.stray * 100)} in 100` : ""}
        </p>
        {rules.map((rule, i) => <Authority key={i} rule={rule} book={title(rule.book)} />)}
      </details>
    </li>
  );
}

/** Weight as stitches, one to five, and in words for those who do not see them. */
function Weight({bits}: {bits: number}) {
  const count = bits < 0.05 ? 0 : Math.min(5, Math.max(1, Math.ceil(bits)));
  return (
    <svg className="weight" role="img" aria-label={`weight ${count} of 5`} width={58} height={8} viewBox="0 0 58 8">
      {[0, 1, 2, 3, 4].map((i) => <path key={i} d={`M${i * 12 + 1} 4h8`} className={i < count ? "on" : "off"} />)}
    </svg>
  );
}

function Authority({rule: {says, window, source, cite, edition, caution, seen}, book}: {rule: RuleUsed; book: string}) {
  return (
    <div className="authority">
      <p>{says ?? `Seen: ${seen}.`}{window ? ` In use ${window}.` : ""}</p>
      <p className="quiet">
        {source?.title ?? cite.ref}{source?.publisher ? `, ${source.publisher}` : ""}{source?.date ? `, ${source.date}` : ""}{cite.at ? `, ${cite.at}` : ""} ({ways[cite.how]}).
        {source?.address && <> {/^https?:/.test(source.address) ? <a href={source.address} rel="noreferrer noopener">{source.address}</a> : source.address}</>}
      </p>
      <p className="quiet">{book}, edition {edition}</p>
      {caution && <p className="caution">{caution}</p>}
    </div>
  );
}
