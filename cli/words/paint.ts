// Four ways to set words apart in a terminal; none of them is needed to understand the text.
export interface Paint {
  /** The answer, and heads. */
  readonly strong: (text: string) => string;
  /** Sources and other small print. */
  readonly quiet: (text: string) => string;
  /** Evidence that moved the answer. */
  readonly moved: (text: string) => string;
  /** What does not fit. */
  readonly odd: (text: string) => string;
}

const sign = (open: number, close: number) => (text: string) => (text === "" ? "" : `\u001b[${open}m${text}\u001b[${close}m`);
const same = (text: string) => text;

const coloured: Paint = {strong: sign(1, 22), quiet: sign(2, 22), moved: sign(36, 39), odd: sign(33, 39)};
const plain: Paint = {strong: same, quiet: same, moved: same, odd: same};

/** Colour only for a terminal, and never when NO_COLOR is set. Source: no-color.org. */
export function paintFor(out: {readonly isTTY?: boolean}, environment: Readonly<Record<string, string | undefined>>): Paint {
  return out.isTTY && !environment.NO_COLOR && environment.TERM !== "dumb" ? coloured : plain;
}
