// Which address shows which screen; each is fetched when it is first wanted.
import {lazy, type ComponentType} from "react";

const screen = <K extends string>(load: () => Promise<Record<K, ComponentType>>, name: K) => lazy(async () => ({default: (await load())[name]}));

const Examine = screen(() => import("./examine/examine-screen.tsx"), "ExamineScreen");

export const routes: readonly (readonly [path: string, Screen: ComponentType])[] = [
  ["/", Examine],
  ["/examine/:id?", Examine],
  ["/rack", screen(() => import("./rack/rack-screen.tsx"), "RackScreen")],
];
