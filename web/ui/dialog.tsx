// A sheet over the screen, in the browser's own dialog: focus stays in it, Escape closes it.
import {useEffect, useId, useRef, type ReactNode} from "react";
import {Button} from "./button.tsx";

export interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

export function Dialog({title, onClose, wide = false, children}: DialogProps) {
  const sheet = useRef<HTMLDialogElement>(null);
  const name = useId();
  useEffect(() => {
    const dialog = sheet.current!;
    if (!dialog.open) dialog.showModal();
    return () => dialog.close();
  }, []);
  return (
    <dialog
      ref={sheet}
      className={wide ? "sheet wide" : "sheet"}
      aria-labelledby={name}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => event.target === sheet.current && onClose()}
    >
      <div className="sheet-inside">
        <header>
          <h2 id={name}>{title}</h2>
          <Button look="quiet" onClick={onClose}>Close</Button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
