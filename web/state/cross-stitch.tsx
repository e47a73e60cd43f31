// The sign of a flaw, in stitches: one stroke for a slight one, a cross for a plain one, a cross and a bar for a heavy one; a mended one has its patch around it.
import type {Flaw} from "../../state/model.ts";

const strokes = {slight: "M4 12L12 4", plain: "M4 12L12 4M4 4L12 12", heavy: "M4 12L12 4M4 4L12 12M8 2V14M2 8H14"} as const;

export function CrossStitch({severity, mended}: Pick<Flaw, "severity" | "mended">) {
  return (
    <svg className="cross-stitch" width={18} height={18} viewBox="-1 -1 18 18" aria-hidden="true">
      {mended && <rect x={0} y={0} width={16} height={16} />}
      <path d={strokes[severity]} />
    </svg>
  );
}
