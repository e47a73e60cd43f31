// How near two sizes are, as they are said: W 34 L 32, 15 1/2, M.

const letters = ["xxs", "xs", "s", "m", "l", "xl", "xxl", "xxxl"];
/** What is left of a sale's weight at the worst size; sizes matter less than all else. Own choice. */
const floor = 0.5;
/** Differences at which the weight above the floor has fallen to 0.61: inches (or what the size counts in), and steps of letters. */
const width = 3;
const step = 1.5;

/** 1 for the same size, towards a half for a far one; 0.8 when one of them is unknown or they cannot be compared. */
export function sizeLikeness(one: string, other: string): number {
  const [a, b] = [one, other].map((text) => text.trim().toLowerCase());
  if (a === b && a !== "") return 1;
  const [la, lb] = [letters.indexOf(a!), letters.indexOf(b!)];
  if (la >= 0 && lb >= 0) return floor + (1 - floor) * Math.exp(-0.5 * ((la - lb) / step) ** 2);
  const [na, nb] = [numbersIn(a!), numbersIn(b!)];
  if (na.length === 0 || nb.length === 0) return 0.8;
  const shared = Math.min(na.length, nb.length);
  let squares = 0;
  for (let i = 0; i < shared; i++) squares += (na[i]! - nb[i]!) ** 2;
  return floor + (1 - floor) * Math.exp((-0.5 * squares) / width ** 2);
}

/** 15 1/2 is one number. */
function numbersIn(text: string): number[] {
  return [...text.matchAll(/(\d+(?:\.\d+)?)(?:\s+(\d)\/(\d+))?/g)].map(([, whole, over, under]) => Number(whole) + (over ? Number(over) / Number(under) : 0));
}
