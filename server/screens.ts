// Hands out the built screens: only files that lie in their folder, the first page for every address of a screen.
import {createHash} from "node:crypto";
import {createReadStream} from "node:fs";
import {readFile, realpath, stat} from "node:fs/promises";
import {Readable} from "node:stream";
import {promisify} from "node:util";
import {gzip} from "node:zlib";
import {extname, join, sep} from "node:path";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";

const kinds: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8", ".json": "application/json", ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml", ".png": "image/png", ".ico": "image/x-icon", ".webp": "image/webp", ".jpg": "image/jpeg", ".woff2": "font/woff2", ".txt": "text/plain; charset=utf-8", ".wasm": "application/wasm",
};
/** Names that carry a hash of what they hold never change. */
const hashed = /^\/(assets|reader)\/.+-[\w-]{8,}\.\w+$/;
/** What is larger is not held in memory: the models that read photos. */
const mostHeld = 4_000_000;
const squeezed = /^(text|application\/(json|manifest)|image\/svg)/;

interface Held {
  readonly changed: number;
  readonly bytes: Buffer;
  readonly small: Buffer | null;
  readonly tag: string;
}

/** @param folder  of the built screens; it may be built anew while the server runs */
export function serveScreens(folder: string): (request: Request) => Promise<Response> {
  const held = new Map<string, Held>();
  return async (request) => {
    const {pathname} = new URL(request.url);
    const found = await fileFor(pathname, folder);
    if (!found) {
      if (extname(pathname) !== "") throw new Refused(404, [say.nothingHere(pathname)]);
      throw new Refused(503, [say.noScreens()]);
    }
    const size = hashed.test(pathname) ? (await stat(found)).size : 0;
    if (size > mostHeld) return streamed(request, found, size);
    const {bytes, small, tag} = await hold(found, held);
    const kind = kinds[extname(found)] ?? "application/octet-stream";
    const headers = new Headers({"content-type": kind, "etag": tag, "cache-control": hashed.test(pathname) ? "public, max-age=31536000, immutable" : "no-cache", "vary": "accept-encoding"});
    if (request.headers.get("if-none-match") === tag) return new Response(null, {status: 304, headers});
    const packed = small && /\bgzip\b/.test(request.headers.get("accept-encoding") ?? "") ? small : null;
    if (packed) headers.set("content-encoding", "gzip");
    headers.set("content-length", String((packed ?? bytes).length));
    return new Response(request.method === "HEAD" ? null : (packed ?? bytes), {headers});
  };
}

function streamed(request: Request, path: string, size: number): Response {
  const headers = new Headers({"content-type": kinds[extname(path)] ?? "application/octet-stream", "cache-control": "public, max-age=31536000, immutable", "content-length": String(size)});
  return new Response(request.method === "HEAD" ? null : (Readable.toWeb(createReadStream(path)) as ReadableStream<Uint8Array>), {headers});
}

async function fileFor(pathname: string, folder: string): Promise<string | null> {
  const path = decoded(pathname);
  const named = path === null || path.includes("\0") || path.includes("\\") ? null : await inside(join(folder, path), folder);
  if (named) return named;
  return extname(pathname) === "" ? inside(join(folder, "index.html"), folder) : null;
}

function decoded(pathname: string): string | null {
  try {
    return decodeURIComponent(pathname);
  } catch {
    return null;
  }
}

/** The real path of a file when it lies in the folder, links followed; null otherwise. */
async function inside(path: string, folder: string): Promise<string | null> {
  try {
    const [real, home] = [await realpath(path), await realpath(folder)];
    return real.startsWith(home + sep) && !real.slice(home.length).split(sep).some((part) => part.startsWith(".")) && (await stat(real)).isFile() ? real : null;
  } catch {
    return null;
  }
}

async function hold(path: string, held: Map<string, Held>): Promise<Held> {
  const changed = (await stat(path)).mtimeMs;
  const known = held.get(path);
  if (known?.changed === changed) return known;
  const bytes = await readFile(path);
  const small = squeezed.test(kinds[extname(path)] ?? "") && bytes.length > 1000 ? await promisify(gzip)(bytes) : null;
  const fresh = {changed, bytes, small, tag: `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 22)}"`};
  held.set(path, fresh);
  return fresh;
}
