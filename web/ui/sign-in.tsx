// The way in, when the rack is served wider than one machine.
import {useState, type FormEvent} from "react";
import type {Problem} from "../../engine/problem.ts";
import {problemsOf, sendJson} from "../api.ts";
import {Button} from "./button.tsx";
import {Field} from "./field.tsx";
import {ProblemList} from "./problem-list.tsx";

export function SignIn({onIn}: {readonly onIn: () => void}) {
  const [passphrase, setPassphrase] = useState("");
  const [name, setName] = useState(() => localStorage.getItem("ticking.who") ?? "");
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const enter = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      if (name.trim() !== "") localStorage.setItem("ticking.who", name.trim());
      await sendJson("POST", "/api/session", {passphrase});
      onIn();
    } catch (error) {
      setProblems(problemsOf(error));
    }
    setBusy(false);
  };
  return (
    <main className="sign-in">
      <p className="wordmark">ticking</p>
      <form onSubmit={(event) => void enter(event)}>
        <h1>Come in</h1>
        <Field label="Your name" hint="Stands beside what you change">
          {(tie) => <input {...tie} autoComplete="name" value={name} onChange={({target}) => setName(target.value)} />}
        </Field>
        <Field label="Passphrase of this rack">
          {(tie) => <input {...tie} type="password" autoComplete="current-password" required value={passphrase} onChange={({target}) => setPassphrase(target.value)} />}
        </Field>
        <ProblemList problems={problems} />
        <Button look="main" type="submit" disabled={busy}>{busy ? "Opening …" : "Open"}</Button>
      </form>
    </main>
  );
}
