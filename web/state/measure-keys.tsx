// The keys of the measuring screen.
import {Dialog} from "../ui/dialog.tsx";
import {LampChoice} from "../ui/lamp-choice.tsx";

const told = [
  ["Enter", "in a length: on to the next point"],
  ["Shift Enter", "back to the point before"],
  ["Ctrl z", "undo"],
  ["Ctrl Shift z", "redo"],
  ["Escape", "close a sheet"],
  ["?", "this list"],
] as const;

export function MeasureKeys({onClose}: {onClose(): void}) {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <dl className="keys">{told.map(([key, words]) => <div key={key}><dt><kbd>{key}</kbd></dt><dd>{words}</dd></div>)}</dl>
      <LampChoice />
    </Dialog>
  );
}
