// The engine beside the page: examines whatever it is handed, for the date alone or for the whole finding.
import {makeExaminer, parseMonth, rowsId, type Book, type Examiner, type Garment, type Problem} from "../../engine/index.ts";
import type {Ask, Told} from "./messages.ts";

let examiner: Examiner | null = null;

const tell = (told: Told) => self.postMessage(told);

self.onmessage = ({data}: MessageEvent<Ask>) => {
  if ("books" in data) {
    examiner = makeExaminer(JSON.parse(data.books) as Book[], {today: parseMonth(data.today)!});
    return;
  }
  try {
    answer(data);
  } catch (error) {
    // Unanswered, the page would wait for ever and ask nothing more.
    tell({id: data.id, problems: [ourFault(error)]});
  }
};

function answer({id, garment, depth, without}: Exclude<Ask, {books: string}>): void {
  const asked = without === null ? garment : leftOut(garment, without);
  if (depth === "date") {
    const {finding: brief, problems} = examiner!.brief(asked);
    return tell(problems ? {id, problems} : {id, brief});
  }
  const {finding, problems} = examiner!.examine(asked);
  tell(problems ? {id, problems} : {id, finding});
}

const ourFault = (error: unknown): Problem => ({
  code: "screen/engine-fault",
  at: "dating",
  what: `the engine broke off (${error instanceof Error ? error.message : String(error)})`,
  why: "that is a fault of ours; what is typed is kept",
  fix: "take back the last change, or load the page again",
});

function leftOut(garment: Garment, mark: string): Garment {
  const {[mark === rowsId ? "rows" : mark]: _, ...saw} = garment.saw;
  return {...garment, saw: saw as Garment["saw"]};
}
