// The worker between page and server: the screens open without a server, and what was last seen of the rack can be read without one.
export {};

/** Written in by the build (precache.ts): every file of the screens, and a name that changes when one of them does. */
declare const __SCREEN_FILES__: readonly string[];
declare const __SCREEN_VERSION__: string;

const worker = self as unknown as ServiceWorkerGlobalScope;
const screens = `ticking screens ${__SCREEN_VERSION__}`;
const books = "ticking books";
const answers = "ticking answers";
const photos = "ticking photos";
/** What reading photos needs: some 30 MB that are fetched once, when a photo is first read. */
const reader = "ticking reader";
const most = {[books]: 40, [answers]: 200, [photos]: 600, [reader]: 8};
/** With an answer at hand nobody waits longer for a server that may be out of reach. */
const patience = 4000;

worker.addEventListener("install", (event) => {
  event.waitUntil(caches.open(screens).then((cache) => cache.addAll(__SCREEN_FILES__.map((file) => new Request(file, {cache: "reload"})))));
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(dropOldScreens().then(() => worker.clients.claim()));
});

// The page asks for it once its owner agrees to load it anew: until then old pages keep their old files.
worker.addEventListener("message", (event) => {
  if (event.data === "take over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const {request} = event;
  const url = new URL(request.url);
  if (url.origin !== worker.location.origin) return;
  if (url.pathname === "/api/session" && request.method === "DELETE") event.respondWith(signOut(request));
  else if (request.method === "PUT" && /^\/api\/garments\/\w+$/.test(url.pathname)) event.respondWith(saved(request, event));
  else if (request.method !== "GET") return;
  else if (request.mode === "navigate" && !url.pathname.startsWith("/api/")) event.respondWith(fromScreens("/", request));
  else if (__SCREEN_FILES__.includes(url.pathname)) event.respondWith(fromScreens(url.pathname, request));
  else if (/^\/api\/photos\/[0-9a-f]{64}\/(small|shown)$/.test(url.pathname)) event.respondWith(keptFirst(request, photos, event));
  else if (url.pathname === "/reader/parts.json") event.respondWith(serverFirst(request, reader, event));
  else if (url.pathname.startsWith("/reader/")) event.respondWith(keptFirst(request, reader, event));
  else if (url.pathname.startsWith("/api/books")) event.respondWith(serverFirst(request, books, event));
  else if (/^\/api\/(about$|rack$|garments\/)/.test(url.pathname) && !url.searchParams.has("alive")) event.respondWith(serverFirst(request, answers, event));
});

async function fromScreens(path: string, request: Request): Promise<Response> {
  return (await (await caches.open(screens)).match(path)) ?? fetch(request);
}

// What is named after what it holds is never out of date once it is kept.
async function keptFirst(request: Request, name: typeof photos | typeof reader, event: FetchEvent): Promise<Response> {
  const kept = await (await caches.open(name)).match(request);
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok) event.waitUntil(keep(request, response.clone(), name));
  return response;
}

async function serverFirst(request: Request, name: typeof books | typeof answers | typeof reader, event: FetchEvent): Promise<Response> {
  // The server is asked before the shelf is looked through: that takes longer than most answers.
  const asked = fetch(request).then((response) => {
    if (response.ok) event.waitUntil(keepLater(request, response.clone(), name));
    return response;
  });
  const sound = asked.then((response) => ([502, 503, 504].includes(response.status) ? null : response), () => null);
  const kept = caches.open(name).then((cache) => cache.match(request));
  const patient = kept.then((found) => (found ? new Promise<null>((give) => void setTimeout(() => give(null), patience)) : sound));
  return (await Promise.race([sound, patient])) ?? (await kept) ?? asked;
}

// The answer to a save is the garment as it stands from now on.
async function saved(request: Request, event: FetchEvent): Promise<Response> {
  const response = await fetch(request);
  if (response.ok) event.waitUntil(keep(new Request(request.url), response.clone(), answers));
  return response;
}

async function keep(request: Request, response: Response, name: keyof typeof most): Promise<void> {
  const cache = await caches.open(name);
  // Put anew at the end, so that the ones at the front are the longest unused.
  await cache.delete(request);
  await cache.put(request, response);
  const old = await cache.keys();
  await Promise.all(old.slice(0, Math.max(0, old.length - most[name])).map((one) => cache.delete(one)));
}

/** Once the screen has its answer: writing it down would hold up the reading of it. */
async function keepLater(request: Request, response: Response, name: keyof typeof most): Promise<void> {
  await new Promise((go) => setTimeout(go, 250));
  await keep(request, response, name);
}

async function signOut(request: Request): Promise<Response> {
  const response = await fetch(request);
  if (response.ok) await Promise.all([books, answers, photos].map((name) => caches.delete(name)));
  return response;
}

async function dropOldScreens(): Promise<void> {
  const old = (await caches.keys()).filter((name) => name.startsWith("ticking screens ") && name !== screens);
  await Promise.all(old.map((name) => caches.delete(name)));
}
