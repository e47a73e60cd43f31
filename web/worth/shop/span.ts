// From when until when the books are looked at, as the address of the page says it.

export interface Span {
  readonly from: string | null;
  readonly until: string | null;
}

const isDay = (text: string | null): text is string => text !== null && /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text));

export function readSpan(search: string): Span {
  const said = new URLSearchParams(search);
  const [from, until] = [said.get("from"), said.get("until")];
  return {from: isDay(from) ? from : null, until: isDay(until) ? until : null};
}

export function writeSpan({from, until}: Span): string {
  const said = new URLSearchParams([...(from ? [["from", from]] : []), ...(until ? [["until", until]] : [])]);
  return said.size > 0 ? `?${said}` : "";
}

/** Spans that are often asked for. */
export function spans(today: string): readonly (Span & {readonly name: string})[] {
  const year = Number(today.slice(0, 4));
  return [
    {name: "all of it", from: null, until: null},
    {name: "this year", from: `${year}-01-01`, until: null},
    {name: "last year", from: `${year - 1}-01-01`, until: `${year - 1}-12-31`},
  ];
}
