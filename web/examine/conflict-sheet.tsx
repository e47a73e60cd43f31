// Somebody saved in between: both sides of what clashes, one choice each, then one content with both changes.
import {useState} from "react";
import type {Content} from "../../store/model.ts";
import type {Conflict} from "../offline/kept.ts";
import {mergeContent, takeTheirs} from "../offline/merge.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";

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
          <legend>{path.filter((part) => part !== "garment" && part !== "saw").join(", ")}</legend>
          <label><input type="radio" name={`clash-${i}`} checked={!theirs.has(i)} onChange={() => setTheirs(new Set([...theirs].filter((one) => one !== i)))} />mine: <b>{say(own)}</b></label>
          <label><input type="radio" name={`clash-${i}`} checked={theirs.has(i)} onChange={() => setTheirs(new Set([...theirs, i]))} />theirs: <b>{say(other)}</b></label>
        </fieldset>
      ))}
      <p><Button look="main" onClick={() => onSettle(settled)}>Save both together</Button></p>
    </Dialog>
  );
}

const say = (value: unknown): string => (value === undefined || value === null || value === "" ? "nothing" : typeof value === "string" ? value : JSON.stringify(value));
