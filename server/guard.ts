// What every request has to pass, and every answer carries: only this server's own names and pages reach the rack.
import type {MiddlewareHandler} from "hono";
import {isIP} from "node:net";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";

/** Nothing but what this server hands out; source: Content Security Policy Level 3 (W3C), OWASP Secure Headers Project. */
const policy = (scripts: string) => [
  "default-src 'self'", `script-src ${scripts}`, "style-src 'self'", "img-src 'self' blob: data:", "font-src 'self'", "connect-src 'self'", "worker-src 'self'", "manifest-src 'self'",
  "object-src 'none'", "base-uri 'none'", "form-action 'self'", "frame-ancestors 'none'",
].join("; ");
export const contentPolicy = policy("'self'");

/** The worker that reads photos does its sums in WebAssembly, and is the one script that may: the policy of a worker is that of its own file. */
const readerWorker = /^\/assets\/reader-worker-[\w-]+\.js$/;
const readerPolicy = policy("'self' 'wasm-unsafe-eval'");

const usualHeaders: Readonly<Record<string, string>> = {
  "content-security-policy": contentPolicy,
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
  "permissions-policy": "camera=(self), microphone=(), geolocation=(), payment=(), usb=()",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
};

export function safeHeaders(): MiddlewareHandler {
  return async (context, next) => {
    await next();
    for (const [name, value] of Object.entries(usualHeaders)) context.res.headers.set(name, value);
    if (readerWorker.test(context.req.path)) context.res.headers.set("content-security-policy", readerPolicy);
  };
}

const loopback = new Set(["localhost", "127.0.0.1", "[::1]"]);

/**
 * Refuses requests under a strange name: a site could point its own name at this machine and read the rack as its own pages (DNS rebinding).
 * @param names  beside this machine's: names that the owner gave
 * @param wide   served to others than this machine: addresses in figures pass, as no site can claim one
 */
export function ownNames(names: readonly string[], wide: boolean): MiddlewareHandler {
  const known = new Set([...loopback, ...names.map((name) => name.toLowerCase())]);
  return async (context, next) => {
    const host = hostOf(context.req.raw);
    const name = host.replace(/:\d+$/, "").toLowerCase();
    if (!known.has(name) && !(wide && isIP(name.replace(/^\[|\]$/g, "")) > 0)) throw new Refused(421, [say.strangeHost(name)]);
    await next();
  };
}

/** Refuses what another site sends. Programs that are no browser send neither header, and need no protection from other sites. */
export function sameSite(): MiddlewareHandler {
  return async (context, next) => {
    const {method, headers, url} = context.req.raw;
    const [site, origin] = [headers.get("sec-fetch-site"), headers.get("origin")];
    const reads = method === "GET" || method === "HEAD";
    const strange = site !== null && site !== "same-origin" && site !== "none";
    if (strange && (!reads || new URL(url).pathname.startsWith("/api/"))) throw new Refused(403, [say.strangeOrigin()]);
    if (origin !== null && !reads && !isOrigin(origin, hostOf(context.req.raw))) throw new Refused(403, [say.strangeOrigin()]);
    await next();
  };
}

const hostOf = (request: Request) => request.headers.get("host") ?? new URL(request.url).host;

// Of the origin only host and port are compared: behind a proxy that adds TLS its scheme is another one.
function isOrigin(origin: string, host: string): boolean {
  try {
    return new URL(origin).host === new URL(`http://${host}`).host || new URL(origin).host === host;
  } catch {
    return false;
  }
}
