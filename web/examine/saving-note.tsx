// Says in the bar what is kept where.
import {useEffect, useState} from "react";
import type {OpenGarment} from "./use-garment.ts";

export function SavingNote({open: {content, saving, savedAt, undo, redo, id}, onKeys}: {readonly open: OpenGarment; onKeys(): void}) {
  const [, tick] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => tick((n) => n + 1), 5000);
    return () => clearInterval(timer);
  }, []);
  const words = {
    draft: "on this device, not on the rack yet", typing: "…", saving: "saving …", waiting: "kept on this device until the server is back", conflict: "somebody else saved it, too", refused: "not saved",
    saved: savedAt === null ? "saved" : `saved ${ago(Date.now() - savedAt)}`,
  }[saving];
  return (
    <span className="saving-note">
      {id && <span>garment {content.garment.garment} · </span>}
      <span role="status">{words}</span>
      <button type="button" className="quiet" disabled={!undo} onClick={() => undo?.()}>undo</button>
      <button type="button" className="quiet" disabled={!redo} onClick={() => redo?.()}>redo</button>
      <button type="button" className="quiet keys-button" onClick={onKeys}><kbd>?</kbd> keys</button>
    </span>
  );
}

function ago(ms: number): string {
  const seconds = Math.max(0, Math.round(ms / 1000));
  if (seconds < 10) return "just now";
  if (seconds < 90) return `${seconds} s ago`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 90) return `${minutes} min ago`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} h ago` : `${Math.round(hours / 24)} days ago`;
}
