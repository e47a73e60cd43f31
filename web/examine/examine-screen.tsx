// The main screen: when a garment was made, how sure that is, and why; every mark that is filled in changes the answer at once.
import {useCallback, useMemo, useRef, useState} from "react";
import {Link, useLocation, useParams} from "wouter";
import {nameOf, type NextLook} from "../../engine/index.ts";
import {notice} from "../../commands/finding-json.ts";
import type {Content} from "../../store/model.ts";
import {useBooks, useFinding, useWithout} from "../engine/use-finding.ts";
import {StateLine} from "../state/state-line.tsx";
import {BarNote} from "../ui/bar-note.tsx";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import {BasicsPanel} from "./basics-panel.tsx";
import {ConflictSheet} from "./conflict-sheet.tsx";
import {DetailsForm} from "./details-form.tsx";
import {FindMark} from "./find-mark.tsx";
import {GarmentFigure} from "./garment-figure.tsx";
import {KeysSheet, useKeys} from "./keys.tsx";
import {LabelSlip} from "./label-slip.tsx";
import {Ledger} from "./ledger.tsx";
import {booksFor, placesFor, rowsPlace} from "./marks.ts";
import {NextLooks} from "./next-looks.tsx";
import {PhotoStrip} from "./photo-strip.tsx";
import {PlaceSheet} from "./place-sheet.tsx";
import {RibbonPanel} from "./ribbon-panel.tsx";
import {SavingNote} from "./saving-note.tsx";
import {ShortVerdict} from "./short-verdict.tsx";
import {TakeOff} from "./take-off.tsx";
import {blank, useGarment} from "./use-garment.ts";
import {useLedLook} from "./use-led-look.ts";
import {VerdictBand} from "./verdict-band.tsx";
import "./examine.css";

export function ExamineScreen() {
  const {id = null} = useParams<{id?: string}>();
  const [, go] = useLocation();
  const open = useGarment(id, useCallback((hung: string) => go(`/examine/${hung}`, {replace: true}), [go]));
  const {content, change} = open;
  const {garment} = content;
  // Its title and the like are no marks: writing them asks nothing of the engine.
  const examined = useMemo(() => garment, [garment.saw, garment.maker, garment.market, garment.type]);
  // Photos arrive later than they were sent for: they are added to what stands there then.
  const latest = useRef(content);
  latest.current = content;
  const {books, problems: noBooks} = useBooks();
  const {brief, finding, problems} = useFinding(examined);
  const [place, setPlace] = useState<{id: string; mark: string | null} | null>(null);
  const [pointed, point] = useState<string | null>(null);
  const [pinned, pin] = useState<string | null>(null);
  const [keys, showKeys] = useState(false);
  const [later, setLater] = useState(false);

  const held = useMemo(() => booksFor(books, garment), [books, garment.maker]);
  const places = useMemo(() => placesFor(held), [held]);
  const leftOut = pointed ?? pinned;
  const known = leftOut !== null && (leftOut === "rows" ? garment.saw.rows !== undefined : garment.saw[leftOut] !== undefined);
  const without = useWithout(examined, known ? leftOut : null);
  const setGarment = (next: typeof garment) => change({...content, garment: next});
  const addTo = (how: (now: Content) => Content) => {
    latest.current = how(latest.current);
    change(latest.current);
  };
  /** To the last row of the label, which is begun when there is none. */
  const toRows = () => ((garment.saw.rows?.length ?? 0) === 0 ? addRow() : setTimeout(() => document.querySelector<HTMLElement>(".slip-row input, .slip-row .sign")?.focus(), 60));
  const addRow = () => {
    setGarment({...garment, saw: {...garment.saw, rows: [...(garment.saw.rows ?? []), ""]} as typeof garment.saw});
    setTimeout(() => document.querySelector<HTMLInputElement>(".slip-row:last-of-type input")?.focus(), 60);
  };
  const openLook = (look: NextLook) => {
    if (look.id === "rows") return addRow();
    const found = places.find(({marks}) => marks.some((mark) => mark.id === look.id));
    if (found) setPlace({id: found.id, mark: look.id});
  };
  useLedLook(places, (at, mark) => setPlace({id: at, mark}));
  useKeys({undo: () => open.undo?.(), redo: () => open.redo?.(), next: () => finding?.next[0] && openLook(finding.next[0]), row: addRow, find: () => document.querySelector<HTMLInputElement>(".find-mark input")?.focus(), help: () => showKeys(true)});
  const sheet = place && places.find((one) => one.id === place.id);

  return (
    <main className="examine">
      <BarNote><SavingNote open={open} onKeys={() => showKeys(true)} /></BarNote>
      <ProblemList problems={[...noBooks, ...problems, ...open.problems]} />
      {open.off && <p className="hang-line" role="status">It was taken off the rack: this is what is kept of it. <Button onClick={open.putBack}>Put it back</Button></p>}
      {brief && (
        <div className="head">
          <VerdictBand finding={finding} brief={brief} makerName={(maker) => books.find(({book}) => book === maker)?.title.split(",")[0] ?? maker} without={without && finding && leftOut ? {name: nameOf(finding, leftOut), brief: without} : null} />
          <RibbonPanel finding={finding} brief={brief} books={held} shown={without} pointed={pointed} pinned={pinned} onPoint={point} onPin={pin} />
        </div>
      )}
      <ShortVerdict finding={finding} brief={brief} />
      {id === null && open.ready && (
        <p className="hang-line"><Button look="main" onClick={open.hang}>Hang it on the rack</Button> <span className="quiet">Until then it is kept on this device.</span> {(open.undo || Object.keys(garment.saw).length > 0) && <Button look="quiet" onClick={() => change(blank())}>Begin anew</Button>}</p>
      )}
      <div className="bench">
        <div>
          <GarmentFigure garment={garment} places={places} next={finding?.next ?? []} onOpen={(at, mark) => setPlace({id: at, mark})} />
          <FindMark places={places} onOpen={(at, mark) => setPlace({id: at, mark})} />
          <NextLooks next={finding?.next ?? []} onOpen={openLook} />
        </div>
        <div>
          {open.ready && <BasicsPanel key={open.id ?? "blank"} garment={garment} books={books} onChange={setGarment} />}
          <LabelSlip content={content} finding={finding} books={books} place={places.find((one) => one.id === rowsPlace)?.name ?? ""} onChange={addTo} />
          <PhotoStrip content={content} places={places} onChange={addTo} />
          <StateLine content={content} id={open.id} />
          <DetailsForm content={content} onChange={change} />
          {open.id && (
            <p className="garment-ways">
              <Link href={`/worth/${open.id}`}>What it is worth</Link>
              <Link href={`/paper?of=${open.id}`}>Sheet, tag, listing</Link>
              <Link href={`/rack/history/${open.id}`}>What was changed, and by whom</Link>
              <Link href="/examine">Another garment</Link>
              <TakeOff id={open.id} onOff={() => go("/rack")} />
            </p>
          )}
        </div>
        <Ledger finding={finding} books={books} />
      </div>
      <footer className="notice">
        <p>{notice} Where money or authenticity is at stake, ask a qualified appraiser.</p>
        <p>Old cloth, dyes, moth-balls and metal parts can carry mould, poisons and lead: air a garment before handling it, wash your hands, keep it from small children.</p>
        <p>Old children's clothes, nightwear above all, may not meet today's law on flammability and cords: before selling or giving one on, ask the authority where you are.</p>
      </footer>
      {sheet && <PlaceSheet key={sheet.id} place={sheet} garment={garment} first={place.mark} order={(finding?.next ?? []).map((look) => look.id)} content={content} onChange={setGarment} onContent={addTo} onRows={() => (setPlace(null), toRows())} onClose={() => setPlace(null)} />}
      {open.conflict && !later && <ConflictSheet conflict={open.conflict} mine={content} onSettle={open.settle} onClose={() => setLater(true)} />}
      {open.conflict && later && <p className="newer"><Button look="quiet" onClick={() => setLater(false)}>Somebody else saved this garment, too: put both together</Button></p>}
      {keys && <KeysSheet onClose={() => showKeys(false)} />}
    </main>
  );
}
