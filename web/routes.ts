// Which address shows which screen; each is fetched when it is first wanted.
import {lazy, type ComponentType} from "react";

const screen = <K extends string>(load: () => Promise<Record<K, ComponentType>>, name: K) => lazy(async () => ({default: (await load())[name]}));

const Examine = screen(() => import("./examine/examine-screen.tsx"), "ExamineScreen");

export const routes: readonly (readonly [path: string, Screen: ComponentType])[] = [
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
