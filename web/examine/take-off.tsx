// Takes the garment off the rack: asked once more, and it can be put back.
import {useState} from "react";
import type {Problem} from "../../engine/index.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {getJson, problemsOf, sendJson} from "../api.ts";
import {dropDraft} from "../offline/draft.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {ProblemList} from "../ui/problem-list.tsx";

export function TakeOff({id, onOff}: {readonly id: string; onOff(): void}) {
  const [asking, ask] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const take = async () => {
    try {
      const {rev} = await getJson<GarmentRecord>(`/api/garments/${id}`);
      await sendJson("DELETE", `/api/garments/${id}?base=${rev}`);
      await dropDraft(id).catch(() => undefined);
      onOff();
    } catch (error) {
      setProblems(problemsOf(error));
    }
  };
  return (
    <>
      <Button look="quiet" onClick={() => ask(true)}>Take it off the rack</Button>
      {asking && (
        <Dialog title="Take it off the rack?" onClose={() => ask(false)}>
          <p>It leaves the rack and its numbers. Its history and photos stay, and from there it can be put back.</p>
          <ProblemList problems={problems} />
          <p className="doubt-ways"><Button look="away" onClick={() => void take()}>Take it off</Button> <Button onClick={() => ask(false)}>Keep it</Button></p>
        </Dialog>
      )}
    </>
  );
}
