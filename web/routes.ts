// Which address shows which screen; each is fetched when it is first wanted.
import {lazy, type ComponentType} from "react";

const screen = <K extends string>(load: () => Promise<Record<K, ComponentType>>, name: K) => lazy(async () => ({default: (await load())[name]}));

const Examine = screen(() => import("./examine/examine-screen.tsx"), "ExamineScreen");

export const routes: readonly (readonly [path: string, Screen: ComponentType])[] = [
  ["/", Examine],
  ["/examine/:id?", Examine],
  ["/rack", screen(() => import("./rack/rack-screen.tsx"), "RackScreen")],
  ["/rack/bring-in", screen(() => import("./rack/bring-in-screen.tsx"), "BringInScreen")],
  ["/rack/alike", screen(() => import("./rack/alike-screen.tsx"), "AlikeScreen")],
  ["/rack/archive", screen(() => import("./rack/archive-screen.tsx"), "ArchiveScreen")],
  ["/rack/history/:id", screen(() => import("./rack/history-route.tsx"), "HistoryRoute")],
  ["/books", screen(() => import("./book/book-list-screen.tsx"), "BookListScreen")],
  ["/books/:id/edit", screen(() => import("./book/book-route.tsx"), "EditRoute")],
  ["/books/:id/compare/:from/:to", screen(() => import("./book/book-route.tsx"), "CompareRoute")],
  ["/books/:id/:edition?", screen(() => import("./book/book-route.tsx"), "BookRoute")],
];
