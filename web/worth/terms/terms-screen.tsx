// The shop's terms as a screen of their own.
import {useState} from "react";
import type {Terms} from "../../../worth/model.ts";
import {ProblemList} from "../../ui/problem-list.tsx";
import {WorthWays} from "../worth-ways.tsx";
import {TermsForm} from "./terms-form.tsx";
import {useSetting} from "./use-setting.ts";

export function TermsScreen() {
  const setting = useSetting<Terms>("terms");
  const [saved, setSaved] = useState(false);
  return (
    <main className="worth">
      <WorthWays />
      <h1>Terms of the shop</h1>
      <p role="status" className={saved ? "done" : "quiet"}>{saved ? "Saved: every offer counts with them from now on." : "What you want to earn and what selling costs. Every offer is worked out with them."}</p>
      {setting.value ? <TermsForm key={JSON.stringify(setting.value)} terms={setting.value} setting={setting} onSaved={() => setSaved(true)} /> : <ProblemList problems={setting.problems} />}
    </main>
  );
}
