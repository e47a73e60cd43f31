// What keeps other sites and strangers away: names, origins, headers, limits, and files that lie outside.
import {symlinkSync} from "node:fs";
import {join} from "node:path";
import {connect} from "node:net";
import {expect, test} from "vitest";
import {isLoopback, listen} from "../../server/listen.ts";
import {home, screensFolder, testApp} from "./test-app.ts";

const content = {garment: {garment: "1", saw: {}}};

test.each(["127.0.0.1:4848", "localhost:4848", "[::1]:4848", "LOCALHOST"])("the server answers under its own name %s", async (host) => {
  expect((await testApp().ask("GET", "/api/about", undefined, {host})).status).toBe(200);
});

// A name that an attacker points at 127.0.0.1 makes a browser take the rack for the attacker's own site (DNS rebinding).
test.each(["evil.example", "evil.example:4848", "127.0.0.1.evil.example", "192.168.1.7", "localhost.evil.example", ""])("a request under the strange name “%s” is refused, page and interface alike", async (host) => {
  const {ask} = testApp({screens: screensFolder()});
  expect((await ask("GET", "/api/about", undefined, {host})).status).toBe(421);
  expect((await ask("GET", "/", undefined, {host})).status).toBe(421);
});

test("served wider, addresses in figures and names that the owner gave pass, others do not", async () => {
  const {ask} = testApp({wide: true, names: ["shop.example"]});
  for (const host of ["192.168.1.7:4848", "[fe80::1]:4848", "shop.example", "Shop.Example:443"]) expect((await ask("GET", "/api/about", undefined, {host})).status).toBe(200);
  expect((await ask("GET", "/api/about", undefined, {host: "evil.example"})).status).toBe(421);
});

test.each([
  {origin: "https://evil.example"},
  {origin: "null"},
  {origin: "http://127.0.0.1:9999"},
  {"sec-fetch-site": "cross-site"},
  {"sec-fetch-site": "same-site"},
] as Record<string, string>[])("a change that comes from another site is refused: %o", async (headers) => {
  const {ask, expectJson} = testApp();
  const own = {host: "127.0.0.1:4848"};
  expect((await ask("POST", "/api/garments", {content}, {...own, ...headers})).status).toBe(403);
  expect((await ask("DELETE", "/api/garments/aaaaaaaaaaaa?base=1", undefined, {...own, ...headers})).status).toBe(403);
  expect(await expectJson(200, "GET", "/api/rack")).toMatchObject({total: 0});
});

test("changes from the server's own pages and from programs that are no browser pass", async () => {
  const {ask} = testApp();
  const own = {host: "127.0.0.1:4848"};
  expect((await ask("POST", "/api/garments", {content}, {...own, "origin": "http://127.0.0.1:4848", "sec-fetch-site": "same-origin"})).status).toBe(201);
  expect((await ask("POST", "/api/garments", {content}, own)).status).toBe(201);
});

test("another site can link to a screen, but read nothing of the interface", async () => {
  const {ask} = testApp({screens: screensFolder()});
  expect((await ask("GET", "/", undefined, {"sec-fetch-site": "cross-site"})).status).toBe(200);
  expect((await ask("GET", "/api/rack", undefined, {"sec-fetch-site": "cross-site"})).status).toBe(403);
});

test("a form of another site cannot send a change: only JSON that is called JSON is read", async () => {
  const {ask} = testApp();
  for (const type of ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", ""]) {
    expect((await ask("POST", "/api/garments", JSON.stringify({content}), {"content-type": type})).status).toBe(415);
  }
  expect((await ask("POST", "/api/garments", JSON.stringify({content}), {"content-type": "application/json; charset=utf-8"})).status).toBe(201);
});

test("every answer carries the headers that keep a browser safe, refusals too", async () => {
  const {ask} = testApp({screens: screensFolder()});
  for (const path of ["/", "/assets/main-a1b2c3d4.js", "/api/about", "/api/nothing", "/nothing.js"]) {
    const {headers} = await ask("GET", path);
    const policy = headers.get("content-security-policy")!;
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
    expect(headers.get("permissions-policy")).toContain("camera=(self)");
    expect(headers.get("access-control-allow-origin")).toBeNull();
  }
});

test("bodies that are no JSON, no UTF-8 or too large are refused as such", async () => {
  const {ask, faults} = testApp();
  expect((await ask("POST", "/api/garments", "{")).status).toBe(400);
  expect((await ask("POST", "/api/garments", new Uint8Array([0x22, 0xff, 0x22]))).status).toBe(400);
  expect((await ask("POST", "/api/garments", "[]")).status).toBe(422);
  expect((await ask("POST", "/api/garments", "null")).status).toBe(422);
  expect((await ask("POST", "/api/garments", '{"__proto__": {"content": 1}, "constructor": 2}')).status).toBe(422);
  expect((await ask("POST", "/api/garments", `"${"x".repeat(1_000_001)}"`)).status).toBe(413);
  expect((await ask("POST", "/api/garments", "{}", {"content-length": "99999999"})).status).toBe(413);
  expect((await ask("POST", "/api/garments", `${"[".repeat(200_000)}${"]".repeat(200_000)}`)).status).toBe(422);
  expect(faults).toEqual([]);
});

test("unknown addresses and methods are told apart", async () => {
  const {ask} = testApp({screens: screensFolder()});
  expect((await ask("GET", "/api/nothing")).status).toBe(404);
  expect((await ask("GET", "/api")).status).toBe(404);
  const wrong = await ask("POST", "/api/rack");
  expect([wrong.status, wrong.headers.get("allow")]).toEqual([405, "GET"]);
  expect((await ask("PATCH", "/api/garments/aaaaaaaaaaaa", {})).headers.get("allow")).toBe("GET, PUT, DELETE");
  expect((await ask("POST", "/")).status).toBe(405);
});

test("a fault of ours says nothing of our insides", async () => {
  const {options, ask, faults} = testApp();
  options.store.search = async () => {
    throw new Error("secret path /home/owner");
  };
  const response = await ask("GET", "/api/rack");
  const text = await response.text();
  expect(response.status).toBe(500);
  expect(response.headers.get("content-type")).toBe("application/problem+json");
  expect(text).not.toMatch(/secret|at .*\.ts/);
  expect(faults).toHaveLength(1);
});

// Numbers of SQLite; source: sqlite.org/rescode.html: 13 is SQLITE_FULL, 8 SQLITE_READONLY, 1032 SQLITE_READONLY_DBMOVED.
test.each([{code: "ENOSPC"}, {code: "EROFS"}, {code: "ERR_SQLITE_ERROR", errcode: 13}, {code: "ERR_SQLITE_ERROR", errcode: 1032}])("when the disk refuses (%o), that is said", async (given) => {
  const {options, ask} = testApp();
  options.store.save = async () => {
    throw Object.assign(new Error("no"), given);
  };
  const response = await ask("POST", "/api/garments", {content});
  expect(response.status).toBe(507);
  expect(await response.json()).toMatchObject({problems: [{code: expect.stringMatching(/^store\/(disk-full|folder-closed)$/)}]});
});

test("screens come with their kind and a tag, packed when that is understood; hashed names for good", async () => {
  const {ask} = testApp({screens: screensFolder()});
  const page = await ask("GET", "/");
  expect([page.headers.get("content-type"), page.headers.get("cache-control")]).toEqual(["text/html; charset=utf-8", "no-cache"]);
  expect((await ask("GET", "/", undefined, {"if-none-match": page.headers.get("etag")!})).status).toBe(304);
  expect(await (await ask("GET", "/rack/some-garment")).text()).toContain("<title>Ticking");
  const script = await ask("GET", "/assets/main-a1b2c3d4.js", undefined, {"accept-encoding": "gzip"});
  expect([script.headers.get("content-encoding"), script.headers.get("cache-control")]).toEqual(["gzip", "public, max-age=31536000, immutable"]);
  expect((await ask("GET", "/assets/gone-a1b2c3d4.js")).status).toBe(404);
  expect((await testApp().ask("GET", "/")).status).toBe(503);
});

test("no path leads out of the folder of the screens", async () => {
  const folder = screensFolder();
  symlinkSync(join(folder, "..", "secret.txt"), join(folder, "link.txt"));
  const {app} = testApp({screens: folder});
  const hosts = {headers: {host: "127.0.0.1"}};
  for (const path of ["/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "/%2e%2e%2fsecret.txt", "/assets/..%2f..%2fsecret.txt", "/..%5csecret.txt", "/..\\secret.txt", "/%00secret.txt", "/link.txt", "/.hidden", "//secret.txt", "/%c0%ae%c0%ae/secret.txt", "/%"]) {
    const text = await (await app.request(home + path, hosts)).text();
    expect(text, path).not.toContain("the secret");
  }
});

test("over a real socket a raw path that climbs out is answered without the file", async () => {
  const listening = await listen(testApp({screens: screensFolder()}).app, "127.0.0.1", 0);
  try {
    const answer = await new Promise<string>((resolve, reject) => {
      let text = "";
      const socket = connect(listening.port, "127.0.0.1", () => socket.write("GET /../secret.txt HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n"));
      socket.on("data", (piece) => (text += piece.toString()));
      socket.on("end", () => resolve(text)).on("error", reject);
    });
    expect(answer).toMatch(/^HTTP\/1\.1 [2-4]\d\d/);
    expect(answer).not.toContain("the secret");
    expect((await fetch(`http://127.0.0.1:${listening.port}/api/about`)).status).toBe(200);
    await expect(listen(testApp().app, "127.0.0.1", listening.port)).rejects.toMatchObject({code: "EADDRINUSE"});
  } finally {
    await listening.close();
  }
});

// Source: RFC 1122, section 3.2.1.3; RFC 4291, section 2.5.3.
test("which addresses only this machine can reach", () => {
  expect(["127.0.0.1", "127.8.9.1", "::1", "localhost"].every(isLoopback)).toBe(true);
  expect(["0.0.0.0", "::", "192.168.1.7", "128.0.0.1", "127.0.0.1.example", "shop.example", ""].some(isLoopback)).toBe(false);
});
