// Tells a row of figures from a row of words: only the former stands on the slip unasked.

/** So many letters in a run are a word, not part of a code. */
const wordLetters = 5;
/** So many figures make a row one of figures, whatever words stand beside them. */
const codeFigures = 4;

/**
 * Whether a row as read is one of figures. Source: common practice, no source; tried on made-up labels.
 * @example
 * isPrintedCode("W 34 L 32") // -> true
 * isPrintedCode("100% COTTON") // -> false
 */
export function isPrintedCode(text: string): boolean {
  const figures = text.replace(/[^0-9]/g, "").length;
  if (figures === 0 || /\d\s*%/.test(text)) return false;
  return figures >= codeFigures || !text.split(/[^A-Z]+/i).some((run) => run.length >= wordLetters);
}
