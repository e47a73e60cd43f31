// Which of several papers is looked at.
import {Button} from "../ui/button.tsx";

export function Turn({at, of, onTurn}: {readonly at: number; readonly of: number; readonly onTurn: (at: number) => void}) {
  if (of < 2) return null;
  const now = Math.min(at, of - 1);
  return (
    <p className="turn">
      <Button disabled={now === 0} onClick={() => onTurn(now - 1)}>Before</Button>
      <span role="status">{(now + 1).toLocaleString()} of {of.toLocaleString()}</span>
      <Button disabled={now === of - 1} onClick={() => onTurn(now + 1)}>After</Button>
    </p>
  );
}
