// How sure a date is: five stitches, as many sewn as the odds allow, and the same in words.
import type {RackRow} from "../../store/model.ts";

export function Sure({dating, short = false}: {dating: RackRow["dating"]; short?: boolean}) {
  if (!dating) return <span className="quiet">not dated yet</span>;
  const {probability, sureness} = dating;
  const sewn = sureness === "cannot tell" ? 0 : Math.max(1, Math.round(probability * 5));
  const odds = `${Math.min(99, Math.max(1, Math.round(probability * 100)))} in 100`;
  return (
    <span className="sure">
      <svg width={47} height={3} aria-hidden="true">
        {[0, 1, 2, 3, 4].map((i) => <rect key={i} className={i < sewn ? "sewn" : "unsewn"} x={i * 10} width={7} height={3} />)}
      </svg>
      <span>{short || sureness === "cannot tell" ? sureness : `${sureness}, ${odds}`}</span>
    </span>
  );
}
