// Turns examples with "// -> value" into pairs of expression and expected value.

export interface Expectation {
  readonly expression: string;
  /** A value as JavaScript writes it; null when the example only has to run. */
  readonly expected: string | null;
}

const arrow = /^(.*?);?\s*\/\/ -> (.+)$/;

/**
 * Reads lines of examples.
 * A value stands behind its expression, or on the next line.
 */
export function expectationsOf(lines: readonly string[]): Expectation[] {
  const found: Expectation[] = [];
  for (const line of lines.map((one) => one.trim()).filter((one) => one !== "")) {
    const match = arrow.exec(line);
    if (!match) found.push({expression: line.replace(/;$/, ""), expected: null});
    else if (match[1] === "") found.push({expression: found.pop()!.expression, expected: match[2]!});
    else found.push({expression: match[1]!, expected: match[2]!});
  }
  return found;
}

/** A value as written in an example. */
export const valueOf = (written: string): unknown => new Function(`return (${written});`)() as unknown;
