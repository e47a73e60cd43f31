// What was spent and earned on this garment, with the ways to write it down: its costs, and its sale.
import {useState} from "react";
import type {Problem} from "../../../engine/problem.ts";
import type {GarmentRecord} from "../../../store/model.ts";
import {problemsOf, sendJson} from "../../api.ts";
import {Button} from "../../ui/button.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {sayAmount} from "../money.ts";
import {capital, sayDay} from "../say.ts";
import {saleOf, sumStory} from "./money-story.ts";
import {SoldSheet} from "./sold-sheet.tsx";
import {StorySheet} from "./story-sheet.tsx";

export interface MoneyStoryPanelProps {
  readonly record: GarmentRecord;
  readonly currency: string;
  /** Called with the garment as it was saved. */
  readonly onRecord: (record: GarmentRecord) => void;
}

export function MoneyStoryPanel({record, currency, onRecord}: MoneyStoryPanelProps) {
  const [open, setOpen] = useState<"costs" | "sold" | null>(null);
  const [undo, setUndo] = useState<{readonly rev: number; readonly words: string} | null>(null);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const today = new Date().toISOString().slice(0, 10);
  const {standing} = record.content;
  const {lines, kept, mixed} = sumStory(record.content);
  const sold = saleOf(record.content);
  const saved = (words: string) => (next: GarmentRecord) => {
    setUndo({rev: record.rev, words});
    setProblems([]);
    setOpen(null);
    onRecord(next);
  };
  const takeBack = async () => {
    try {
      onRecord(await sendJson<GarmentRecord>("POST", `/api/garments/${record.id}/undo`, {base: record.rev, rev: undo!.rev}));
      setUndo(null);
    } catch (error) {
      setProblems(problemsOf(error));
    }
  };
  return (
    <section className="story" aria-label="What was spent and earned">
      <header><h2>Spent and earned</h2><span className="quiet">{sold ? `sold on ${sayDay(sold.on)}${sold.channel ? `, ${sold.channel}` : ""}` : standing}</span></header>
      {undo && <p className="done" role="status">{undo.words} <Button look="quiet" onClick={() => void takeBack()}>Undo</Button></p>}
      <ProblemList problems={problems} />
      {lines.length === 0 && <p className="quiet">Nothing is written down yet: neither what was paid nor what went into it.</p>}
      {lines.length > 0 && (
        <table className="sum">
          <caption className="unseen">What was spent and earned on it</caption>
          <tbody>{lines.map(({what, amount, out}, i) => <tr key={i}><th scope="row">{out && sold ? `less ${what}` : capital(what)}</th><td>{sayAmount(out && sold ? {...amount, cents: -amount.cents} : amount)}</td></tr>)}</tbody>
          {kept && <tfoot><tr><th scope="row">{kept.cents < 0 ? "Lost on it" : "Earned on it"}</th><td>{sayAmount(kept)}</td></tr></tfoot>}
        </table>
      )}
      {mixed && <p className="quiet">Several currencies meet here, so there is no sum.</p>}
      {sold && !kept && !mixed && <p className="quiet">What was paid for it is not written down, so there is no sum.</p>}
      <p className="worth-line">
        {!sold && <Button onClick={() => setOpen("sold")}>Mark as sold</Button>}
        <Button look="quiet" onClick={() => setOpen("costs")}>{lines.length === 0 ? "Write down what it cost" : "Change what it cost"}</Button>
      </p>
      {open === "costs" && <StorySheet record={record} currency={currency} today={today} onSaved={saved("Costs saved.")} onClose={() => setOpen(null)} />}
      {open === "sold" && <SoldSheet record={record} currency={currency} today={today} onSold={saved("Marked as sold; its sale counts from now on.")} onClose={() => setOpen(null)} />}
    </section>
  );
}
