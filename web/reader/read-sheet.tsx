// Reading the label from a photo: the photo is taken, its outline and turn are put right, and its rows go to the slip.
import {useEffect, useState} from "react";
import {codeRows} from "../../commands/reading/code-rows.ts";
import type {Book} from "../../engine/index.ts";
import type {Problem} from "../../engine/problem.ts";
import {turned} from "../../reader/image/plane.ts";
import type {LabelReading} from "../../reader/model.ts";
import type {Content} from "../../store/model.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {slipRows, withReading} from "./label-rows.ts";
import {nextTurn, wholePhoto} from "./outline.ts";
import {pixelsOf, type PhotoPixels} from "./photo-pixels.ts";
import {PhotoStage} from "./photo-stage.tsx";
import {PickLabelPhoto} from "./pick-label-photo.tsx";
import {RowsFound} from "./rows-found.tsx";
import {StraightLabel} from "./straight-label.tsx";
import {takePhoto, withPhoto} from "./take-photo.ts";
import {useReading, type Frame} from "./use-reading.ts";

export interface ReadSheetProps {
  readonly content: Content;
  readonly books: readonly Book[];
  /** A photo to begin with, by its hash or as a file; null: one is to be taken or chosen. */
  readonly first: string | File | null;
  /** Name of the place that a photo taken here shows. */
  readonly place: string;
  onChange(change: (content: Content) => Content): void;
  /** @param read  whether rows were put on the slip */
  onClose(read: boolean): void;
}

export function ReadSheet({content, books, first, place, onChange, onClose}: ReadSheetProps) {
  const [photo, setPhoto] = useState(typeof first === "string" ? first : null);
  const [pixels, setPixels] = useState<PhotoPixels | null>(null);
  const [frame, setFrame] = useState<Frame | null>(null);
  const [straight, setStraight] = useState(false);
  const [taking, setTaking] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const before = content.labels.find((one) => one.photo === photo) ?? null;
  const state = useReading(photo, frame, content.garment, books);
  const fresh = state.end === "read" ? state.reading : null;
  const reading = fresh ?? before;

  useEffect(() => {
    if (photo === null) return;
    let here = true;
    setPixels(null);
    setStraight(false);
    // One that was read before is shown as it was read; a new one is read at once.
    setFrame(before ? null : {});
    void pixelsOf(photo, null).then((found) => here && (found ? setPixels(found) : setProblems([doesNotOpen])));
    return () => void (here = false);
  }, [photo]);

  const take = async (file: File) => {
    setProblems([]);
    setTaking(true);
    const taken = await takePhoto(file);
    setTaking(false);
    if (taken.problems) return setProblems(taken.problems);
    onChange((now) => withPhoto(now, taken.photo, place));
    setPhoto(taken.photo);
  };
  useEffect(() => void (first instanceof File && take(first)), []);
  const turn = frame?.turn ?? reading?.turn ?? 0;
  const outline = frame?.outline !== undefined ? frame.outline : (reading?.outline ?? null);
  const shownOutline = outline ?? (pixels && wholePhoto(pixels.size, turn));
  const turnBy = (by: 90 | -90) => setFrame({turn: nextTurn(turn, by), ...(outline ? {outline: turned(outline, by === 90 ? 1 : 3)} : frame?.outline === null ? {outline: null} : {})});
  const put = (others: "stay" | "go") => {
    const {size, ...rest} = fresh!;
    onChange((now) => withReading(withPhoto(now, photo!, place), {photo: photo!, ...rest, ...(size && {size})} as LabelReading, others));
    onClose(true);
  };
  const others = slipRows(content).filter(({seen, from}) => !(typeof seen === "string" && seen.trim() === "") && (from === null || content.labels[from.label] !== before)).length;
  const rows = fresh ? codeRows(fresh.rows.map(({read}) => read.best)).length : 0;
  const some = `${rows === 1 ? "one row" : `${rows} rows`}`;

  return (
    <Dialog title="Read a label from a photo" wide onClose={() => onClose(false)}>
      {photo === null && <PickLabelPhoto photos={content.photos} read={content.labels.map((one) => one.photo)} busy={taking} onFile={(file) => void take(file)} onPhoto={setPhoto} />}
      {photo !== null && (
        <div className="read-label">
          <div className="read-photo">
            {pixels && shownOutline && (straight ? <StraightLabel pixels={pixels} outline={shownOutline} /> : <PhotoStage pixels={pixels} turn={turn} outline={shownOutline} rows={(reading?.rows ?? []).map(({read}) => read.quad)} onOutline={(quad) => setFrame({outline: quad, turn})} />)}
            {!pixels && problems.length === 0 && <p className="quiet">Opening the photo …</p>}
            {pixels && (
              <div className="photo-ways">
                <Button onClick={() => turnBy(-90)}>Turn left</Button>
                <Button onClick={() => turnBy(90)}>Turn right</Button>
                <Button aria-pressed={straight} onClick={() => setStraight(!straight)}>Straightened</Button>
                <Button look="quiet" onClick={() => setFrame({outline: null, turn})}>Whole photo</Button>
                <Button look="quiet" onClick={() => setFrame({})}>Find it anew</Button>
              </div>
            )}
          </div>
          <div className="read-rows" aria-busy={state.busy !== null}>
            <p role="status" className="read-state">{state.busy ?? (state.end === "read" ? `${saidOf(state.reading.rows.length)} read in ${state.seconds.toFixed(1)} seconds.` : before && frame === null ? "As it was read before." : "")}</p>
            {state.busy !== null && (state.part !== null ? <progress max={1} value={state.part} aria-label="How far it is" /> : <progress aria-label="Under way" />)}
            {state.busy !== null && <p><Button look="quiet" onClick={() => setFrame(null)}>Stop</Button></p>}
            {(state.end === "cannot" || state.end === "missing") && <h3>{state.end === "cannot" ? "I cannot read this" : "There is no reader"}</h3>}
            {(state.end === "cannot" || state.end === "missing") && <ProblemList problems={state.problems} />}
            {state.end === "read" && state.advice.length > 0 && <ul className="advice">{state.advice.map(({code, what, fix}) => <li key={code}><b>{sentence(what)}</b> {sentence(fix)}</li>)}</ul>}
            {reading && <RowsFound photo={photo} size={reading.size ?? pixels?.size ?? null} rows={reading.rows} />}
            <p className="put-rows">
              {fresh && others === 0 && <Button look="main" onClick={() => put("stay")}>{rows === 0 ? "Keep what was read" : `Put ${some} on the slip`}</Button>}
              {fresh && others > 0 && <Button look="main" onClick={() => put("go")}>Put {some} in place of what stands there</Button>}
              {fresh && others > 0 && <Button onClick={() => put("stay")}>Put {some} below: another side or label</Button>}
              {!fresh && before && state.busy === null && frame === null && <Button onClick={() => setFrame({outline: before.outline, turn: before.turn})}>Read it anew</Button>}
              <Button look="quiet" onClick={() => (setPhoto(null), setFrame(null), setProblems([]))}>Another photo</Button>
            </p>
          </div>
        </div>
      )}
      <ProblemList problems={problems} />
    </Dialog>
  );
}

const saidOf = (rows: number) => (rows === 1 ? "One row" : `${rows} rows`);
const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? "" : "."}`;

const doesNotOpen: Problem = {code: "screen/photo-does-not-open", at: "photo", what: "it cannot be opened here", why: "it is not on this device, or of a kind that this browser does not know", fix: "choose another photo, or try again when the server is back"};
