// Puts garments into the lot: found on the rack by words, or by their numbers typed one after the other.
import {useEffect, useState, type FormEvent} from "react";
import type {RackPage, RackRow} from "../../../store/model.ts";
import {getJson, problemsOf} from "../../api.ts";
import {Field} from "../../ui/field.tsx";
import {numbersIn} from "./lot-draft.ts";

export interface AddGarmentsProps {
  readonly ids: readonly string[];
  readonly onAdd: (ids: readonly string[]) => void;
}

const most = 6;
const patience = 200;
const find = (text: string, limit: number, signal?: AbortSignal) => getJson<RackPage>(`/api/rack?${new URLSearchParams({text, limit: String(limit)})}`, signal ? {signal} : {});

export function AddGarments({ids, onAdd}: AddGarmentsProps) {
  const [words, setWords] = useState("");
  const [found, setFound] = useState<{readonly rows: readonly RackRow[]; readonly total: number} | null>(null);
  const [numbers, setNumbers] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    if (words.trim() === "") return setFound(null);
    const stop = new AbortController();
    const timer = setTimeout(() => void find(words, most + ids.length, stop.signal).then(setFound, (error: unknown) => !stop.signal.aborted && setWrong(problemsOf(error)[0]!.what)), patience);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [words, ids.length]);
  const addNumbers = async (event: FormEvent) => {
    event.preventDefault();
    const asked = numbersIn(numbers);
    try {
      const rows = await Promise.all(asked.map(async (number) => (await find(number, 50)).rows.find((row) => row.number.toLowerCase() === number.toLowerCase()) ?? null));
      onAdd(rows.flatMap((row) => (row ? [row.id] : [])));
      const missing = asked.filter((_, i) => rows[i] === null);
      setNumbers(missing.join(", "));
      setWrong(missing.length > 0 ? `${missing.join(", ")}: not on the rack` : null);
    } catch (error) {
      setWrong(problemsOf(error)[0]!.what);
    }
  };
  const free = found?.rows.filter(({id}) => !ids.includes(id)).slice(0, most) ?? [];
  return (
    <div className="lot-add">
      <Field label="Find on the rack">{(tie) => <input {...tie} type="search" maxLength={200} value={words} placeholder="a word, a maker, a code …" onChange={({target}) => setWords(target.value)} />}</Field>
      {found && (
        <ul className="lot-found">
          {free.map(({id, number, title, type, dating}) => <li key={id}><button type="button" className="quiet" onClick={() => onAdd([id])}>Add <span className="code">{number}</span> {title || type}</button> <span className="quiet">{dating?.words}</span></li>)}
          <li className="quiet"><span role="status">{found.total === 0 ? "Nothing on the rack has these words." : free.length === 0 ? "All of these are in the lot." : found.total > free.length + ids.length ? "More fit: add a word." : ""}</span></li>
        </ul>
      )}
      <form className="lot-numbers" onSubmit={(event) => void addNumbers(event)}>
        <Field label="or type their numbers" hint="with spaces or commas between" wrong={wrong}>{(tie) => <input {...tie} value={numbers} maxLength={4000} onChange={({target}) => setNumbers(target.value)} />}</Field>
        <button type="submit" className="plain" disabled={numbers.trim() === ""}>Add them</button>
      </form>
    </div>
  );
}
