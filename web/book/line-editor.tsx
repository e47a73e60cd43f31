// A plain text editor with line numbers; lines with a problem carry a mark, and the box stays an ordinary text box for keyboards and screen readers.
import {useLayoutEffect, useRef, type Ref} from "react";

export interface LineEditorProps {
  readonly label: string;
  readonly text: string;
  /** Numbers of lines with something to mend, the first line is 1. */
  readonly marked: ReadonlySet<number>;
  readonly onText: (text: string) => void;
  readonly box: Ref<HTMLTextAreaElement>;
  /** Id of the element that lists what has to be mended. */
  readonly describedBy: string;
}

export function LineEditor({label, text, marked, onText, box, describedBy}: LineEditorProps) {
  const numbers = useRef<HTMLDivElement>(null);
  const count = text.split("\n").length;
  const scroll = (top: number) => {
    if (numbers.current) numbers.current.style.transform = `translateY(${-top}px)`;
  };
  useLayoutEffect(() => scroll(document.querySelector<HTMLTextAreaElement>(".line-editor textarea")?.scrollTop ?? 0), [count]);
  return (
    <div className="line-editor">
      <div className="line-numbers" aria-hidden="true">
        <div ref={numbers}>
          {Array.from({length: count}, (_, i) => <div key={i} className={marked.has(i + 1) ? "marked" : undefined}>{i + 1}</div>)}
        </div>
      </div>
      <textarea
        ref={box}
        aria-label={label}
        aria-invalid={marked.size > 0}
        aria-describedby={describedBy}
        spellCheck={false}
        autoCapitalize="off"
        autoCorrect="off"
        wrap="off"
        value={text}
        onChange={({target}) => onText(target.value)}
        onScroll={({currentTarget}) => scroll(currentTarget.scrollTop)}
      />
    </div>
  );
}

/** The line that a problem speaks of: its place begins "book:12:3"; null when it speaks of the whole. */
export function lineOf(at: string): number | null {
  const line = /^[^:]*:(\d+)/.exec(at)?.[1];
  return line === undefined ? null : Number(line);
}

/** Puts the cursor at the beginning of a line and brings it into sight. */
export function goToLine(box: HTMLTextAreaElement, line: number): void {
  const lines = box.value.split("\n");
  const at = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  box.focus();
  box.setSelectionRange(at, at + (lines[line - 1]?.length ?? 0));
  box.scrollTop = Math.max(0, (line - 6) * Number.parseFloat(getComputedStyle(box).lineHeight));
}
