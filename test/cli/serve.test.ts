// ticking serve: says where it is, ends cleanly when asked to, and says plainly what stands in its way.
import {spawn, type ChildProcess} from "node:child_process";
import {mkdtempSync, writeFileSync} from "node:fs";
import {createServer, type AddressInfo} from "node:net";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {fileURLToPath} from "node:url";
import {expect, test} from "vitest";
import {openStore} from "../../store/open.ts";

const bin = fileURLToPath(new URL("../../bin/ticking.mjs", import.meta.url));
const fresh = () => mkdtempSync(join(tmpdir(), "ticking-serve-"));

interface Running {
  readonly child: ChildProcess;
  readonly said: () => string;
  readonly ended: Promise<number | null>;
}

function serve(...flags: readonly string[]): Running {
  const child = spawn(process.execPath, [bin, "serve", ...flags], {stdio: ["ignore", "pipe", "pipe"]});
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (piece: Buffer) => (said += piece.toString()));
  return {child, said: () => said, ended: new Promise((resolve) => child.on("exit", resolve))};
}

/** The address that is printed once the server answers. */
async function addressOf({said, ended}: Running): Promise<string> {
  let over = false;
  void ended.then(() => (over = true));
  for (;;) {
    const [address] = /http:\/\/\S+/.exec(said()) ?? [];
    if (address) return address;
    if (over) throw new Error(said());
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

test("says where it serves, answers there, and ends with 0 when asked to stop; what was kept is whole", async () => {
  const folder = fresh();
  const server = serve("--data", folder, "--port", "0");
  const address = await addressOf(server);
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  const added = await fetch(`${address}api/garments`, {method: "POST", headers: {"content-type": "application/json"}, body: JSON.stringify({content: {garment: {garment: "own", saw: {}}}})});
  expect(added.status).toBe(201);
  server.child.kill("SIGTERM");
  expect(await server.ended).toBe(0);
  const store = await openStore(folder);
  expect(await store.check()).toEqual([]);
  expect((await store.byNumber("own"))!.rev).toBe(1);
  expect((await store.walk(null, 100)).length).toBe(56);
  await store.close();
});

test("a port that is taken, no port, an address that is not this machine's: told with the way out, exit 2", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await new Promise((resolve) => other.once("listening", resolve));
  const taken = serve("--data", fresh(), "--port", String((other.address() as AddressInfo).port));
  expect(await taken.ended).toBe(2);
  expect(taken.said()).toMatch(/something else listens on port \d+ already/);
  other.close();
  const none = serve("--data", fresh(), "--port", "many");
  expect(await none.ended).toBe(2);
  expect(none.said()).toContain("“many” is no port");
  const file = join(fresh(), "pass.txt");
  writeFileSync(file, "seventeen blue threads\n");
  const foreign = serve("--data", fresh(), "--listen", "192.0.2.1", "--passphrase-file", file); // Source: RFC 5737: no machine has it
  expect(await foreign.ended).toBe(2);
  expect(foreign.said()).toContain("cannot listen on 192.0.2.1");
});

test("a folder that is a file is told plainly", async () => {
  const file = join(fresh(), "rack");
  writeFileSync(file, "");
  const server = serve("--data", file, "--port", "0");
  expect(await server.ended).toBe(2);
  expect(server.said()).toContain("cannot be used");
});

test("listening wider, or under a name, needs a passphrase of some length", async () => {
  const bare = serve("--data", fresh(), "--port", "0", "--listen", "0.0.0.0");
  expect(await bare.ended).toBe(2);
  expect(bare.said()).toContain("no passphrase is given");
  const named = serve("--data", fresh(), "--port", "0", "--name", "shop.example");
  expect(await named.ended).toBe(2);
  const short = join(fresh(), "pass.txt");
  writeFileSync(short, "short\n");
  const weak = serve("--data", fresh(), "--port", "0", "--listen", "0.0.0.0", "--passphrase-file", short);
  expect(await weak.ended).toBe(2);
  expect(weak.said()).toContain("fewer than 15 characters");
});

test("with a passphrase it listens wider, and asks for it; later it need not be given again", async () => {
  const [folder, file] = [fresh(), join(fresh(), "pass.txt")];
  writeFileSync(file, "seventeen blue threads\n");
  for (const flags of [["--passphrase-file", file], []]) {
    const server = serve("--data", folder, "--port", "0", "--listen", "0.0.0.0", ...flags);
    const address = await addressOf(server);
    expect((await fetch(`${address}api/rack`)).status).toBe(401);
    const signedIn = await fetch(`${address}api/session`, {method: "POST", headers: {"content-type": "application/json"}, body: JSON.stringify({passphrase: "seventeen blue threads"})});
    expect(signedIn.status).toBe(200);
    server.child.kill("SIGINT");
    expect(await server.ended).toBe(0);
  }
});
