// The server as a function from request to response: guards, the routes of the interface, the screens, and refusals as problem details.
import {Hono, type Context} from "hono";
import type {Book} from "../engine/index.ts";
import {rackCommands} from "../commands/rack/list.ts";
import type {Rack} from "../commands/rack/rack.ts";
import type {Store} from "../store/store.ts";
import {aboutRoutes} from "./about.ts";
import {makeBooksUsed, type BooksUsed} from "./books-used.ts";
import {inThisThread, type Examiners} from "./examiners.ts";
import {faultOf} from "./fault.ts";
import {ownNames, safeHeaders, sameSite} from "./guard.ts";
import {problemResponse, Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {commandRoute, type Route} from "./route.ts";
import {serveScreens} from "./screens.ts";
import {makeSessions} from "./session.ts";

export interface AppOptions {
  readonly store: Store;
  /** The books that come with the tool. */
  readonly shipped: readonly Book[];
  /** Folder of the built screens. */
  readonly screens: string;
  readonly version: string;
  /** Names of the server beside this machine's own. */
  readonly names?: readonly string[];
  /** Served to others than this machine. */
  readonly wide?: boolean;
  /** Null: nobody has to sign in. */
  readonly passphraseHash?: string | null;
  /** The books made ready, when others need them, too. */
  readonly used?: BooksUsed;
  readonly examiners?: Examiners;
  /** Has undated garments dated in the background. */
  readonly dateLater?: (ids: readonly string[]) => void;
  readonly clock?: () => Date;
  /** Told of faults of ours. */
  readonly onFault?: (error: unknown) => void;
  /** Routes that need more than the store: photos, archives. */
  readonly more?: readonly Route[];
}

export function makeApp(options: AppOptions): Hono {
  const {store, shipped, clock = () => new Date(), examiners = inThisThread, passphraseHash = null, onFault = () => {}} = options;
  const used = options.used ?? makeBooksUsed(store, shipped, clock);
  const rackFor = async (context: Context): Promise<Rack> => {
    const [world, now] = [await used.world(), clock().toISOString()];
    return rackOf({store, world, shipped, now, who: whoOf(context)}, examiners, options.dateLater);
  };
  const routes: Route[] = [];
  const isFree = (method: string, path: string) => routes.some((route) => route.open === true && route.method === method.toLowerCase() && route.path === path);
  const sessions = makeSessions(passphraseHash, isFree, () => clock().getTime());
  routes.push(...sessions.routes, ...aboutRoutes({...options, used, routes, isOpen: sessions.isOpen}), ...rackCommands.map((command) => commandRoute(command, rackFor)), ...(options.more ?? []));

  const app = new Hono();
  app.use(safeHeaders(), ownNames(options.names ?? [], options.wide ?? false), sameSite(), sessions.guard);
  for (const {method, path, answer} of routes) app.on(method.toUpperCase(), path.replace(/\{(\w+)\}/g, ":$1"), answer);
  const screens = serveScreens(options.screens);
  app.all("*", async (context) => {
    const {method, path} = context.req;
    if (path.startsWith("/api/") || path === "/api") throw nothingAt(path, routes);
    if (method !== "GET" && method !== "HEAD") throw new Refused(405, [say.wrongMethod(path, ["GET"])], {}, {allow: "GET, HEAD"});
    return screens(context.req.raw);
  });
  app.onError((error) => {
    const refused = error instanceof Refused ? error : faultOf(error);
    if (refused.status >= 500) onFault(error);
    return problemResponse(refused);
  });
  return app;
}

/** A rack whose garments are examined by others, now and later. */
export function rackOf(given: Pick<Rack, "store" | "world" | "shipped" | "now" | "who">, examiners: Examiners, later: (ids: readonly string[]) => void = () => {}): Rack {
  const {world, now} = given;
  return {...given, date: (garments) => examiners.date(garments, world, now), examine: (input) => examiners.examine(input, world), weigh: (garment, looks) => examiners.weigh(garment, looks, world), dateLater: async (ids) => later(ids)};
}

/** Who makes a change, for the history: a name that the page keeps. */
function whoOf(context: Context): string {
  const given = context.req.header("x-ticking-who");
  return (given === undefined ? "" : decoded(given)).replace(/\p{Cc}/gu, "").trim().slice(0, 100) || "owner";
}

// Headers carry plain letters only, so that other ones come percent-encoded.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function nothingAt(path: string, routes: readonly Route[]): Refused {
  const allowed = routes.filter((route) => new RegExp(`^${route.path.replace(/\{\w+\}/g, "[^/]+")}$`).test(path)).map(({method}) => method.toUpperCase());
  return allowed.length > 0 ? new Refused(405, [say.wrongMethod(path, allowed)], {}, {allow: allowed.join(", ")}) : new Refused(404, [say.nothingHere(path)]);
}
