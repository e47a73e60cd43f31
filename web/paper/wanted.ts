// Garments that were picked for paper on another screen: more than an address can hold, so they wait in this window.

const key = "ticking.paper";

export const keepWanted = (ids: readonly string[]): void => sessionStorage.setItem(key, JSON.stringify(ids));

/** Those that wait; they are taken once. */
export function takeWanted(): readonly string[] {
  const held = sessionStorage.getItem(key);
  sessionStorage.removeItem(key);
  return held === null ? [] : (JSON.parse(held) as string[]);
}
