// A text that stays on this device, so that nothing typed is lost by a reload.
import {useCallback, useState} from "react";

export function useKeptText(key: string): readonly [string, (text: string) => void] {
  const [text, setText] = useState(() => localStorage.getItem(key) ?? "");
  const keep = useCallback(
    (next: string) => {
      setText(next);
      if (next === "") localStorage.removeItem(key);
      else localStorage.setItem(key, next);
    },
    [key],
  );
  return [text, keep];
}
