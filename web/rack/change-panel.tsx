// Changes many garments at once: where they are kept, how they stand, what is asked, and their tags. Only what is filled in changes.
import {useId, useState, type FormEvent} from "react";
import type {Problem} from "../../engine/problem.ts";
import {standings} from "../../store/model.ts";
import {problemsOf, sendJson} from "../api.ts";
import {ProblemList} from "../ui/problem-list.tsx";
import {readAmount} from "../worth/money.ts";
import {sayGarments} from "./say.ts";

export interface ChangePanelProps {
  readonly ids: readonly string[];
  readonly places: readonly string[];
  readonly tags: readonly string[];
  readonly onDone: () => void;
  readonly onClose: () => void;
}

export function ChangePanel({ids, places, tags, onDone, onClose}: ChangePanelProps) {
  const name = useId();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const [done, setDone] = useState<number | null>(null);

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const {change, slip} = readChange(new FormData(event.currentTarget));
    if (slip) return setProblems([slip]);
    setBusy(true);
    try {
      const {changed} = await sendJson<{changed: number}>("POST", "/api/rack/edit", {ids, change});
      setDone(changed);
      setProblems([]);
      onDone();
    } catch (error) {
      setProblems(problemsOf(error));
    } finally {
      setBusy(false);
    }
  };

  return (
    <section className="panel" aria-label="Change together">
      <h2>{done === null ? `Change ${sayGarments(ids.length)} together` : `${sayGarments(done)} changed`}</h2>
      <form className="panel-fields" onSubmit={(event) => void submit(event)}>
        <label>Kept<input name="place" list={`${name}-places`} placeholder="as it is" maxLength={200} /></label>
        <label>Standing<select name="standing"><option value="">as it is</option>{standings.map((one) => <option key={one}>{one}</option>)}</select></label>
        <label>Asking<input name="asked" inputMode="decimal" placeholder="as it is" /></label>
        <label>in<input name="currency" size={4} maxLength={3} pattern="[A-Za-z]{3}" defaultValue={localStorage.getItem("ticking.currency") ?? "USD"} title="three letters, like USD or EUR" /></label>
        <label>Add tags<input name="addTags" list={`${name}-tags`} placeholder="none" /></label>
        <label>Take off tags<input name="removeTags" list={`${name}-tags`} placeholder="none" /></label>
        <datalist id={`${name}-places`}>{places.map((one) => <option key={one} value={one} />)}</datalist>
        <datalist id={`${name}-tags`}>{tags.map((one) => <option key={one} value={one} />)}</datalist>
        <p className="panel-line">
          <button type="submit" className="main" disabled={busy}>Change</button>
          <button type="button" className="plain" onClick={onClose}>{done === null ? "Leave as they are" : "Close"}</button>
        </p>
      </form>
      <ProblemList problems={problems} />
    </section>
  );
}

/** Only what was filled in; several tags are parted by commas. The slip says why an amount is none. */
function readChange(form: FormData): {readonly change: object; readonly slip: Problem | null} {
  const text = (key: string) => String(form.get(key) ?? "").trim();
  const list = (key: string) => text(key).split(",").map((one) => one.trim()).filter((one) => one !== "");
  const [addTags, removeTags, asked, currency] = [list("addTags"), list("removeTags"), text("asked"), text("currency").toUpperCase()];
  const {cents, wrong} = readAmount(asked, currency);
  if (wrong !== null) return {change: {}, slip: {code: "screen/not-amount", at: "asking", what: `“${asked}” is no amount of ${currency}`, why: "nothing was changed", fix: wrong}};
  if (asked) localStorage.setItem("ticking.currency", currency);
  const change = {
    ...(text("place") ? {place: text("place")} : {}),
    ...(text("standing") ? {standing: text("standing")} : {}),
    ...(asked ? {asked: {cents, currency}} : {}),
    ...(addTags.length > 0 ? {addTags} : {}),
    ...(removeTags.length > 0 ? {removeTags} : {}),
  };
  return {change, slip: null};
}
