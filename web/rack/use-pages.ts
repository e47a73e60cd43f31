// A long list that the server keeps, fetched page by page as it comes into sight.
import {useCallback, useEffect, useRef, useState} from "react";
import type {Problem} from "../../engine/problem.ts";
import {getJson, problemsOf} from "../api.ts";

interface AnyPage {
  readonly rows: readonly unknown[];
}

export interface Pages<Page extends AnyPage> {
  /** All but the rows; null until the first page has come. */
  readonly page: Omit<Page, "rows"> | null;
  /** The row at a place of the whole list; undefined while it is on its way. */
  readonly rowAt: (index: number) => Page["rows"][number] | undefined;
  /** Called with what is in sight, so that it is fetched. */
  readonly want: (first: number, last: number) => void;
  /** The page shown still answers an earlier question. */
  readonly stale: boolean;
  readonly problems: readonly Problem[];
  /** Asks everything anew, after something was changed. */
  readonly again: () => void;
}

const perPage = 100;

interface Held<Page extends AnyPage> {
  readonly question: string;
  readonly page: Omit<Page, "rows"> | null;
  readonly rows: ReadonlyMap<number, Page["rows"]>;
}

/** @param address  of one page; the first page's address says all of the question */
export function usePages<Page extends AnyPage>(address: (offset: number, limit: number) => string): Pages<Page> {
  const question = address(0, perPage);
  const [turn, setTurn] = useState(0);
  const [held, setHeld] = useState<Held<Page>>({question: "", page: null, rows: new Map()});
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const asked = useRef({key: "", pages: new Set<number>(), stop: new AbortController()});
  const key = `${turn} ${question}`;

  const fetchPage = useCallback(
    async (number: number) => {
      const now = asked.current;
      if (now.pages.has(number)) return;
      now.pages.add(number);
      try {
        const page = await getJson<Page>(address(number * perPage, perPage), {signal: now.stop.signal});
        setProblems([]);
        setHeld((was) => ({question: now.key, page: number === 0 || was.question !== now.key ? page : was.page, rows: new Map([...(was.question === now.key ? was.rows : []), [number, page.rows]])}));
      } catch (error) {
        if (now.stop.signal.aborted) return;
        now.pages.delete(number);
        setProblems(problemsOf(error));
      }
    },
    // The question says all of the address.
    [question],
  );

  useEffect(() => {
    asked.current = {key, pages: new Set(), stop: new AbortController()};
    void fetchPage(0);
    const {stop} = asked.current;
    return () => stop.abort();
  }, [key, fetchPage]);

  const {page, rows} = held;
  const rowAt = useCallback((index: number) => rows.get(Math.floor(index / perPage))?.[index % perPage], [rows]);
  const want = useCallback(
    (first: number, last: number) => {
      if (held.question !== asked.current.key) return;
      for (let number = Math.floor(first / perPage); number <= Math.floor(last / perPage); number++) void fetchPage(number);
    },
    [fetchPage, held.question],
  );
  return {page, rowAt, want, stale: held.question !== key, problems, again: useCallback(() => setTurn((one) => one + 1), [])};
}
