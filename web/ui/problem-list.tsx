// Problems in plain words, beside the thing that caused them.
import type {Problem} from "../../engine/problem.ts";
import {Button} from "./button.tsx";

export function ProblemList({problems}: {readonly problems: readonly Problem[]}) {
  if (problems.length === 0) return null;
  return (
    <div role="alert">
      <ul className="problems">
        {problems.map(({code, at, what, why, fix}, i) => (
          <li key={`${code} ${at} ${i}`}>
            <strong>{sentence(`${at}: ${what}`)}</strong> {sentence(why)} {sentence(fix)}
          </li>
        ))}
      </ul>
      {problems.some(({code}) => code === "screen/unreachable") && <p><Button look="quiet" onClick={() => location.reload()}>Try again</Button></p>}
    </div>
  );
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?…]$/.test(words) ? "" : "."}`;
