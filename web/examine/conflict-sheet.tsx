// Somebody saved in between: both sides of what clashes, one choice each, then one content with both changes.
import {useState} from "react";
import type {Content} from "../../store/model.ts";
import type {Conflict} from "../offline/kept.ts";
import {mergeContent, takeTheirs} from "../offline/merge.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {sayValue} from "./say-value.ts";

export interface ConflictProps {
  readonly conflict: Conflict;
  readonly mine: Content;
  onSettle(content: Content): void;
  onClose(): void;
}

export function ConflictSheet({conflict: {now, base}, mine, onSettle, onClose}: ConflictProps) {
  const {content, clashes} = mergeContent(base, mine, now.content);
  const [theirs, setTheirs] = useState<ReadonlySet<number>>(new Set());
  const settled = clashes.reduce((result, clash, i) => (theirs.has(i) ? takeTheirs(result, clash) : result), content);
  return (
    <Dialog title="Somebody else saved this garment" onClose={onClose} wide>
      <p>{now.changedBy} saved it meanwhile. What only one of you changed is kept from both.{clashes.length > 0 ? " Here you both changed the same:" : ""}</p>
      {clashes.map(({path, mine: own, theirs: other}, i) => (
        <fieldset key={path.join(".")} className="clash">
          <legend>{sayPart(path)}</legend>
          {([["mine", own], [`what ${now.changedBy} wrote`, other]] as const).map(([whose, value], side) => (
            <label key={whose}>
              <input type="radio" name={`clash-${i}`} checked={theirs.has(i) === (side === 1)} onChange={() => setTheirs(new Set(side === 1 ? [...theirs, i] : [...theirs].filter((one) => one !== i)))} />
              <span><span className="quiet">{whose}</span><br />{sayValue(value)}</span>
            </label>
          ))}
        </fieldset>
      ))}
      <p><Button look="main" onClick={() => onSettle(settled)}>Save both together</Button></p>
    </Dialog>
  );
}

const partNames: Readonly<Record<string, string>> = {place: "kept where", note: "notes", type: "kind of garment", market: "sold in", garment: "number", rows: "rows of the label", labels: "what was read from photos"};

/** The part that clashes as the screen calls it. */
function sayPart(path: readonly string[]): string {
  const last = path.at(-1)!;
  return partNames[last] ?? last;
}
