// The shop's terms as a screen of their own.
import {useState} from "react";
import type {Terms} from "../../../worth/model.ts";
import {Button} from "../../ui/button.tsx";
import {ProblemList} from "../../ui/problem-list.tsx";
import {WorthWays} from "../worth-ways.tsx";
import {TermsForm} from "./terms-form.tsx";
import {useSetting} from "./use-setting.ts";

export function TermsScreen() {
  const setting = useSetting<Terms>("terms");
  const [turn, setTurn] = useState(0);
  return (
    <main className="worth">
      <WorthWays />
      <h1>Terms of the shop</h1>
      <p role="status" className={setting.undo ? "done" : "quiet"}>
        {setting.undo ? "Saved: every offer counts with them from now on. " : "What you want to earn and what selling costs. Every offer is worked out with them."}
        {setting.undo && <Button look="quiet" onClick={() => void setting.undo!()}>Undo</Button>}
      </p>
      {setting.value ? <TermsForm key={`${setting.rev} ${turn}`} terms={setting.value} setting={setting} onSaved={() => {}} onLeft={() => setTurn(turn + 1)} /> : <ProblemList problems={setting.problems} />}
    </main>
  );
}
