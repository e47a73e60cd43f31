// The terms over another screen: a way to them, the sheet, and a way back after they were saved.
import {useState} from "react";
import type {Terms} from "../../../worth/model.ts";
import {Button} from "../../ui/button.tsx";
import {Dialog} from "../../ui/dialog.tsx";
import {TermsForm} from "./terms-form.tsx";
import type {OpenSetting} from "./use-setting.ts";

export interface TermsOverProps {
  readonly setting: OpenSetting<Terms>;
  /** Called once they are saved, or are as they were again. */
  readonly onChanged: () => void;
}

export function TermsOver({setting, onChanged}: TermsOverProps) {
  const [open, setOpen] = useState(false);
  return (
    <span className="worth-line">
      {setting.undo && <span role="status" className="quiet">saved <Button look="quiet" onClick={() => void setting.undo!().then((back) => back && onChanged())}>Undo</Button></span>}
      <Button look="quiet" onClick={() => setOpen(true)}>terms</Button>
      {open && setting.value && (
        <Dialog title="Terms of the shop" wide onClose={() => setOpen(false)}>
          <TermsForm terms={setting.value} setting={setting} onSaved={() => (setOpen(false), onChanged())} onLeft={() => setOpen(false)} />
        </Dialog>
      )}
    </span>
  );
}
