// Which address shows which screen; each is fetched when it is first wanted.
import {createElement, lazy, useState, type ComponentType} from "react";

interface Screen {
  readonly Shown: ComponentType;
  readonly isHere: () => boolean;
  readonly fetch: () => Promise<unknown>;
}

/** A screen that was fetched before it is shown is there at once, without a waiting line that would hold it up. */
function screen<K extends string>(load: () => Promise<Record<K, ComponentType>>, name: K): Screen {
  let here: ComponentType | null = null;
  const fetch = async () => (here ??= (await load())[name]);
  const Later = lazy(async () => ({default: await fetch()}));
  function Shown() {
    const [One] = useState<ComponentType>(() => here ?? Later);
    return createElement(One);
  }
  return {Shown, isHere: () => here !== null, fetch};
}

const Examine = screen(() => import("./examine/examine-screen.tsx"), "ExamineScreen");

const screens: readonly (readonly [path: string, screen: Screen])[] = [
  ["/", Examine],
  ["/examine/:id?", Examine],
  ["/measure/:id?", screen(() => import("./state/measure-screen.tsx"), "MeasureScreen")],
  ["/grade-rule", screen(() => import("./state/rule-screen.tsx"), "RuleScreen")],
  ["/rack", screen(() => import("./rack/rack-screen.tsx"), "RackScreen")],
  ["/rack/bring-in", screen(() => import("./rack/bring-in-screen.tsx"), "BringInScreen")],
  ["/rack/alike", screen(() => import("./rack/alike-screen.tsx"), "AlikeScreen")],
  ["/rack/archive", screen(() => import("./rack/archive-screen.tsx"), "ArchiveScreen")],
  ["/rack/history/:id", screen(() => import("./rack/history-route.tsx"), "HistoryRoute")],
  ["/worth/:id", screen(() => import("./worth/worth-screen.tsx"), "WorthScreen")],
  ["/sales", screen(() => import("./worth/sale/sales-screen.tsx"), "SalesScreen")],
  ["/sales/bring-in", screen(() => import("./worth/sale/bring-sales-in-screen.tsx"), "BringSalesInScreen")],
  ["/lot", screen(() => import("./worth/lot/lot-screen.tsx"), "LotScreen")],
  ["/shop", screen(() => import("./worth/shop/shop-screen.tsx"), "ShopScreen")],
  ["/terms", screen(() => import("./worth/terms/terms-screen.tsx"), "TermsScreen")],
  ["/paper", screen(() => import("./paper/paper-screen.tsx"), "PaperScreen")],
  ["/books", screen(() => import("./book/book-list-screen.tsx"), "BookListScreen")],
  ["/books/:id/edit", screen(() => import("./book/book-route.tsx"), "EditRoute")],
  ["/books/:id/compare/:from/:to", screen(() => import("./book/book-route.tsx"), "CompareRoute")],
  ["/books/:id/:edition?", screen(() => import("./book/book-route.tsx"), "BookRoute")],
];

export const routes: readonly (readonly [path: string, Shown: ComponentType])[] = screens.map(([path, {Shown}]) => [path, Shown]);

/** Fetches the screen of an address; nothing to wait for when it is here already, or there is none. */
export function fetchScreen(address: string): Promise<unknown> | null {
  const path = address.split(/[?#]/)[0]!;
  const found = screens.find(([pattern]) => new RegExp(`^${pattern.replace(/\/:\w+\?/g, "(?:/[^/]+)?").replace(/:\w+/g, "[^/]+")}/?$`).test(path));
  return !found || found[1].isHere() ? null : found[1].fetch();
}
