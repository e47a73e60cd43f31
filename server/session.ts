// Who is signed in: random tickets in a cookie that scripts cannot read and other sites cannot send, each with an end.
import {createHash, randomBytes} from "node:crypto";
import type {Context, MiddlewareHandler} from "hono";
import {deleteCookie, getCookie, setCookie} from "hono/cookie";
import {z} from "zod";
import {isPassphrase} from "./passphrase.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {readJson} from "./read-body.ts";
import type {Route} from "./route.ts";
import {makeThrottle} from "./throttle.ts";

const cookie = "ticking-session";
/** A ticket ends after so long without use, and in any case after thirty days. Source: own choice. */
const idleEnds = 7 * 24 * 3_600_000;
const always = 30 * 24 * 3_600_000;
const mostTickets = 1000;

interface Ticket {
  readonly since: number;
  used: number;
}

export interface Sessions {
  /** Whether a request may see the rack. */
  readonly isOpen: (context: Context) => boolean;
  readonly guard: MiddlewareHandler;
  readonly routes: readonly Route[];
  /** Signs everybody out. */
  readonly revokeAll: () => void;
}

/**
 * @param passphraseHash  null: the rack is open to everybody who reaches the server, which is this machine alone
 * @param isFree          addresses that are answered without signing in
 */
export function makeSessions(passphraseHash: string | null, isFree: (method: string, path: string) => boolean, clock: () => number): Sessions {
  const tickets = new Map<string, Ticket>();
  const throttle = makeThrottle();
  let trying: Promise<unknown> = Promise.resolve();
  const isOpen = (context: Context) => passphraseHash === null || isValid(tickets, getCookie(context, cookie), clock());

  const signIn = async (context: Context): Promise<Response> => {
    const {passphrase} = passphraseOf(await readJson(context.req.raw, 10_000));
    if (passphraseHash === null) throw new Refused(409, [say.noPassphrase()]);
    const who = addressOf(context);
    const wait = throttle.wait(who, clock());
    if (wait > 0) throw tooMany(wait);
    // One at a time: each try takes much memory, and many at once would take all of it.
    const turn = trying.then(async () => {
      const again = throttle.wait(who, clock());
      if (again > 0) throw tooMany(again);
      const right = await isPassphrase(passphrase, passphraseHash);
      if (right) throttle.right(who);
      else throttle.wrong(who, clock());
      return right;
    });
    trying = turn.catch(() => {});
    if (!(await turn)) throw new Refused(401, [say.wrongPassphrase()]);
    setTicket(context, issue(tickets, clock()));
    return context.json({open: true});
  };

  const signOut = async (context: Context): Promise<Response> => {
    const ticket = getCookie(context, cookie);
    if (ticket !== undefined) tickets.delete(digest(ticket));
    deleteCookie(context, cookie, {path: "/"});
    return context.json({open: passphraseHash === null});
  };

  const shape = (refusals: readonly number[]) => ({path: {}, query: {}, answer: {status: 200, mime: "application/json", schema: z.strictObject({open: z.boolean()})}, refusals});
  return {
    isOpen,
    guard: async (context, next) => {
      const {method, path} = context.req;
      if (path.startsWith("/api/") && !isFree(method, path) && !isOpen(context)) throw new Refused(401, [say.notSignedIn()]);
      await next();
    },
    routes: [
      {name: "session.open", summary: "sign in with the passphrase", method: "post", path: "/api/session", open: true, answer: signIn, shapes: {...shape([400, 401, 409, 413, 415, 422, 429]), body: passphraseSchema}},
      {name: "session.close", summary: "sign out", method: "delete", path: "/api/session", open: true, answer: signOut, shapes: {...shape([]), body: null}},
    ],
    revokeAll: () => tickets.clear(),
  };
}

const passphraseSchema = z.strictObject({passphrase: z.string().min(1).max(1000)});

function passphraseOf(given: unknown): z.infer<typeof passphraseSchema> {
  const read = passphraseSchema.safeParse(given);
  if (!read.success) throw new Refused(422, [say.wrongPassphrase()]);
  return read.data;
}

const tooMany = (wait: number) => {
  const seconds = Math.ceil(wait / 1000);
  return new Refused(429, [say.tooManyTries(seconds)], {}, {"retry-after": String(seconds)});
};

/** Only a digest is held, so that a look into memory gives no ticket away. */
const digest = (ticket: string) => createHash("sha256").update(ticket).digest("base64url");

function issue(tickets: Map<string, Ticket>, now: number): string {
  for (const [key, ticket] of tickets) if (isOver(ticket, now)) tickets.delete(key);
  if (tickets.size >= mostTickets) tickets.delete(tickets.keys().next().value!);
  const ticket = randomBytes(32).toString("base64url");
  tickets.set(digest(ticket), {since: now, used: now});
  return ticket;
}

function isValid(tickets: Map<string, Ticket>, given: string | undefined, now: number): boolean {
  const ticket = given === undefined ? undefined : tickets.get(digest(given));
  if (!ticket || isOver(ticket, now)) return false;
  ticket.used = now;
  return true;
}

const isOver = ({since, used}: Ticket, now: number) => now - used > idleEnds || now - since > always;

// Behind a proxy that adds TLS the page's own origin says so, and the cookie is kept to TLS, too.
function setTicket(context: Context, ticket: string): void {
  const secure = (context.req.header("origin") ?? "").startsWith("https:");
  setCookie(context, cookie, ticket, {httpOnly: true, sameSite: "Strict", path: "/", maxAge: always / 1000, secure});
}

function addressOf(context: Context): string {
  const incoming = (context.env as {incoming?: {socket?: {remoteAddress?: string}}} | undefined)?.incoming;
  return incoming?.socket?.remoteAddress ?? "here";
}
