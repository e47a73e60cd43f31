// The keys of this screen: what they do, and doing it.
import {useEffect} from "react";
import {Dialog} from "../ui/dialog.tsx";
import {LampChoice} from "../ui/lamp-choice.tsx";

export interface KeyWays {
  undo(): void;
  redo(): void;
  next(): void;
  row(): void;
  find(): void;
  help(): void;
}

const told = [
  ["n", "open the best next look"],
  ["r", "type another row of the label"],
  ["/", "find a mark by words"],
  ["arrows", "on the ribbon: read it month by month; Home is the likeliest"],
  ["Ctrl z", "undo"],
  ["Ctrl Shift z", "redo"],
  ["Tab, Enter", "go to a place, a line or a character, and open it"],
  ["Escape", "close a sheet"],
  ["?", "this list"],
] as const;

export function useKeys({undo, redo, next, row, find, help}: KeyWays): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLElement && event.target.matches("input, textarea, select");
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z") {
        event.preventDefault();
        return event.shiftKey ? redo() : undo();
      }
      if (typing || event.ctrlKey || event.metaKey || event.altKey || document.querySelector("dialog[open]")) return;
      const way = {n: next, r: row, "/": find, "?": help}[event.key];
      if (!way) return;
      event.preventDefault();
      way();
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  });
}

export function KeysSheet({onClose}: {onClose(): void}) {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <dl className="keys">{told.map(([key, words]) => <div key={key}><dt><kbd>{key}</kbd></dt><dd>{words}</dd></div>)}</dl>
      <LampChoice />
    </Dialog>
  );
}
