// The ledger: each mark with what it says, how much it weighs and on whose authority, odd ones first.
import {rowsId, sayOdds, sayWindow, type Book, type Finding, type LedgerLine, type RuleUsed} from "../../engine/index.ts";
import {oddChance, schemeOf, wordsOf} from "./mark-line.ts";
import {sayUse} from "./say-use.ts";
import {sideOf} from "./two-dates.ts";

const ways: Readonly<Record<string, string>> = {read: "seen in the source", part: "partly seen in the source", memory: "from memory, not looked up", inferred: "own judgement"};

export function Ledger({finding, books}: {readonly finding: Finding | null; readonly books: readonly Book[]}) {
  const odd = (id: string) => (finding ? oddChance(finding, id) : undefined);
  const lines = [...(finding?.ledger ?? [])].sort((a, b) => (odd(b.id) ?? 0) - (odd(a.id) ?? 0) || b.bits - a.bits);
  return (
    <section className="ledger" aria-label="Ledger">
      <header><h2>Ledger</h2><span className="quiet">what each mark settles</span></header>
      {lines.length === 0 && <p className="quiet">Nothing seen yet. Press a place on the drawing, or type a row of the label.</p>}
      <ul>{lines.map((line) => <Line key={line.id} line={line} finding={finding!} books={books} odd={odd(line.id)} />)}</ul>
    </section>
  );
}

function Line({line, finding, books, odd}: {line: LedgerLine; finding: Finding; books: readonly Book[]; odd: number | undefined}) {
  const rules = finding.rules.filter(({mark}) => mark === line.id);
  const {name, seen} = wordsOf(finding, line.id);
  const side = sideOf(finding, line.id);
  const code = line.id === rowsId ? schemeOf(books, finding) : null;
  const title = (book: string) => books.find((one) => one.book === book)?.title ?? book;
  const sources = [...new Set([...rules.map(({source}) => source), code?.source].map((source) => source?.title).filter((one) => one !== undefined))];
  return (
    <li className={odd === undefined ? undefined : "odd"}>
      <details>
        <summary>
          <span className="ledger-name">
            <span>{name}{seen && <>: <span className="seen">{seen}</span></>}</span>
            <span className="quiet">{odd !== undefined && <b>does not fit, {sayOdds(odd)}. </b>}{side && <b>{side === "look" ? "of the older look. " : "of the making. "}</b>}{sources.join("; ")}</span>
          </span>
          <Weight bits={line.bits} />
        </summary>
        <p className="quiet">{weightWords(line)}</p>
        {code && <CodeAuthority {...code} />}
        {rules.map((rule, i) => <Authority key={i} rule={rule} book={title(rule.book)} />)}
      </details>
    </li>
  );
}

/** How much a mark told, in words, with the bits for those who count. */
function weightWords({bits, moved, stray}: LedgerLine): string {
  const told = bits < 0.05 ? "Moved next to nothing: what the others say, it says too" : bits < 1 ? "Told a little" : bits < 3 ? "Told a good deal" : "Told most of it";
  const way = Math.abs(moved) >= 1 ? `, towards ${moved > 0 ? "later" : "earlier"} by ${sayMonths(Math.abs(moved))}` : "";
  return `${told} (${bits.toFixed(1)} bits)${way}.${stray !== null && stray > 0.005 ? ` Chance that it does not belong: ${Math.round(stray * 100)} in 100.` : ""}`;
}

const sayMonths = (months: number) => (months < 18 ? `${Math.round(months)} month${Math.round(months) === 1 ? "" : "s"}` : `${Math.round(months / 12)} years`);

/** Weight as stitches, one to five, and in words for those who do not see them. */
function Weight({bits}: {bits: number}) {
  const count = bits < 0.05 ? 0 : Math.min(5, Math.max(1, Math.ceil(bits)));
  return (
    <svg className="weight" role="img" aria-label={`weight ${count} of 5`} width={58} height={8} viewBox="0 0 58 8">
      {[0, 1, 2, 3, 4].map((i) => <path key={i} d={`M${i * 12 + 1} 4h8`} className={i < count ? "on" : "off"} />)}
    </svg>
  );
}

/** How a date on the rows was read, and who says that dates were written so. */
function CodeAuthority({scheme, source, book}: NonNullable<ReturnType<typeof schemeOf>>) {
  return (
    <div className="authority">
      <p>Read as {scheme.name}. {sayUse(sayWindow(scheme.window))}{scheme.note ? ` ${scheme.note}` : ""}</p>
      <p className="quiet">{source?.title ?? scheme.source.ref}{scheme.source.at ? `, ${scheme.source.at}` : ""} ({ways[scheme.source.how]}).</p>
      <p className="quiet">{book.title}, edition {book.edition}</p>
    </div>
  );
}

function Authority({rule: {says, window, source, cite, edition, caution, seen}, book}: {rule: RuleUsed; book: string}) {
  return (
    <div className="authority">
      <p>{says ?? `Seen: ${seen}.`} {sayUse(window)}</p>
      <p className="quiet">
        {source?.title ?? cite.ref}{source?.publisher ? `, ${source.publisher}` : ""}{source?.date ? `, ${source.date}` : ""}{cite.at ? `, ${cite.at}` : ""} ({ways[cite.how]}).
        {source?.address && <> {/^https?:/.test(source.address) ? <a href={source.address} rel="noreferrer noopener">{source.address}</a> : source.address}</>}
      </p>
      <p className="quiet">{book}, edition {edition}</p>
      {caution && <p className="caution">{caution}</p>}
    </div>
  );
}
