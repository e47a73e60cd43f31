// The walk-through of a first start: a few steps, each skippable, shown once on a device.
import {useState} from "react";
import {useLocation} from "wouter";
import {sendJson} from "../api.ts";
import {Button} from "./button.tsx";
import {Dialog} from "./dialog.tsx";

const key = "ticking.walked";

const steps = [
  {title: "A rack to try things on", words: "These garments are made up, and so are their makers. Change whatever you like; one press empties the rack when you are ready."},
  {title: "Examine", words: "The large words say when a garment was made and how sure that is. Beside it, the stronger its colour, the likelier a month; each stitched line is one mark. Point at a line to see the date without it."},
  {title: "Write down what you see", words: "Press a place on the drawing, or type the rows of the label as they are printed. A worn figure may be ? or (3/8). Looked and found nothing counts, too: say so."},
  {title: "Look next", words: "The dashed box names the look that settles most for the least trouble. The ledger on the right says what each mark weighs, and on whose authority."},
] as const;

export function Walk() {
  const [step, setStep] = useState(() => (localStorage.getItem(key) === null ? 0 : null));
  const [, go] = useLocation();
  if (step === null) return null;
  const done = () => {
    localStorage.setItem(key, "1");
    setStep(null);
  };
  const last = step === steps.length - 1;
  const {title, words} = steps[step]!;
  return (
    <Dialog title={title} onClose={done}>
      <p>{words}</p>
      <p className="quiet">{step + 1} of {steps.length}</p>
      <p className="walk-ways">
        <Button look="main" onClick={() => (last ? done() : setStep(step + 1))}>{last ? "Begin" : "Next"}</Button>
        {step === 0 && (
          <Button
            onClick={() => {
              void sendJson("POST", "/api/rack/empty", {keep: "nothing"}).then(() => go("/examine"), () => go("/rack/archive"));
              done();
            }}
          >
            Start with an empty rack
          </Button>
        )}
        {!last && <Button look="quiet" onClick={done}>Skip</Button>}
      </p>
    </Dialog>
  );
}
