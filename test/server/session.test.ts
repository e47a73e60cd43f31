// Signing in: who has not sees nothing, tickets end and can be taken back, guessing is slow.
import {expect, test} from "vitest";
import {hashPassphrase, isPassphrase} from "../../server/passphrase.ts";
import {makeThrottle} from "../../server/throttle.ts";
import {testApp, type TestApp} from "./test-app.ts";

const passphrase = "seventeen blue threads";
const passphraseHash = await hashPassphrase(passphrase);
const guarded = () => testApp({passphraseHash, wide: true});
const day = 24 * 3_600_000;

const signIn = (t: TestApp, given = passphrase, headers = {}) => t.ask("POST", "/api/session", {passphrase: given}, headers);
const ticketOf = (response: Response) => response.headers.get("set-cookie")!.split(";")[0]!;

test("without signing in nothing of the rack is shown, and nothing changed", async () => {
  const t = guarded();
  for (const [method, path, body] of [["GET", "/api/rack"], ["GET", "/api/books/used"], ["GET", "/api/rack/export"], ["POST", "/api/garments", {content: {garment: {garment: "1", saw: {}}}}], ["POST", "/api/examine", {}], ["GET", "/api/nothing"]] as const) {
    expect((await t.ask(method, path, body)).status).toBe(401);
  }
  expect(await t.expectJson(200, "GET", "/api/about")).toMatchObject({open: false, garments: 0, demo: false});
});

test("the passphrase opens the rack with a ticket that no script can read and no other site can send", async () => {
  const t = guarded();
  const response = await signIn(t);
  expect(response.status).toBe(200);
  const cookie = response.headers.get("set-cookie")!;
  expect(cookie).toMatch(/^ticking-session=[\w-]{43};/);
  expect(cookie).toMatch(/HttpOnly/);
  expect(cookie).toMatch(/SameSite=Strict/);
  expect(cookie).not.toMatch(/Secure/);
  const headers = {cookie: ticketOf(response)};
  expect((await t.ask("GET", "/api/rack", undefined, headers)).status).toBe(200);
  expect(await (await t.ask("GET", "/api/about", undefined, headers)).json()).toMatchObject({open: true});
  expect(ticketOf(await signIn(t))).not.toBe(ticketOf(response));
});

test("behind a proxy that adds TLS the ticket is kept to TLS", async () => {
  const t = testApp({passphraseHash, wide: true, names: ["shop.example"]});
  const response = await signIn(t, passphrase, {host: "shop.example", origin: "https://shop.example"});
  expect(response.headers.get("set-cookie")).toMatch(/Secure/);
});

test("a ticket ends when signed out, after a week without use, and after thirty days", async () => {
  const t = guarded();
  const open = async (headers: Record<string, string>) => (await t.ask("GET", "/api/rack", undefined, headers)).status === 200;
  const one = {cookie: ticketOf(await signIn(t))};
  await t.ask("DELETE", "/api/session", undefined, one);
  expect(await open(one)).toBe(false);
  const two = {cookie: ticketOf(await signIn(t))};
  t.pass(6 * day);
  expect(await open(two)).toBe(true);
  t.pass(8 * day);
  expect(await open(two)).toBe(false);
  const three = {cookie: ticketOf(await signIn(t))};
  for (let i = 0; i < 5; i++) {
    t.pass(6 * day);
    expect(await open(three)).toBe(i < 4);
  }
  expect(await open({cookie: "ticking-session=forged"})).toBe(false);
});

test("guessing is slowed down: after five wrong passphrases even the right one must wait, longer with each", async () => {
  const t = guarded();
  for (let i = 0; i < 5; i++) expect((await signIn(t, `wrong ${i}`)).status).toBe(401);
  const refused = await signIn(t);
  expect(refused.status).toBe(429);
  expect(Number(refused.headers.get("retry-after"))).toBeGreaterThan(0);
  t.pass(2000);
  expect((await signIn(t)).status).toBe(200);
}, 60_000);

test("the wait doubles up to a quarter of an hour, is forgotten after the right one, and is each address's own", () => {
  const throttle = makeThrottle();
  const waits = Array.from({length: 20}, () => {
    throttle.wrong("a", 0);
    return throttle.wait("a", 0);
  });
  expect(waits.slice(0, 8)).toEqual([0, 0, 0, 0, 1000, 2000, 4000, 8000]);
  expect(waits.at(-1)).toBe(15 * 60_000);
  expect(throttle.wait("b", 0)).toBe(0);
  throttle.right("a");
  expect(throttle.wait("a", 0)).toBe(0);
});

test("a passphrase is kept as a salted hash that takes 128 MB to try, and letters composed differently are the same", async () => {
  expect(passphraseHash).toMatch(/^scrypt\$131072\$8\$1\$/);
  expect(passphraseHash).not.toContain(passphrase);
  expect(await hashPassphrase(passphrase)).not.toBe(passphraseHash);
  expect(await isPassphrase(passphrase, passphraseHash)).toBe(true);
  expect(await isPassphrase(`${passphrase} `, passphraseHash)).toBe(false);
  expect(await isPassphrase(passphrase, "scrypt$broken")).toBe(false);
  const composed = await hashPassphrase("\u00e9");
  expect(await isPassphrase("e\u0301", composed)).toBe(true);
});

// Source: RFC 7914, section 12, fourth test vector but one: "pleaseletmein", "SodiumChloride", N 16384, r 8, p 1.
test("the hash is scrypt as RFC 7914 has it", async () => {
  const key = Buffer.from("7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2", "hex");
  const kept = ["scrypt", 16384, 8, 1, Buffer.from("SodiumChloride").toString("base64url"), key.toString("base64url")].join("$");
  expect(await isPassphrase("pleaseletmein", kept)).toBe(true);
});

test("where no passphrase is needed, signing in is refused kindly", async () => {
  const t = testApp();
  expect((await signIn(t)).status).toBe(409);
  expect((await t.ask("POST", "/api/session", {})).status).toBe(422);
});
