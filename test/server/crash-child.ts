// A server of its own process, to be killed: prints its port and goes on until then.
import {startServer} from "../../server/start.ts";
import {world} from "../commands/small-world.ts";

const {port} = await startServer({folder: process.argv[2]!, shipped: world.books, demo: [], address: "127.0.0.1", port: 0, screens: "/nowhere", version: "1"});
// The first examination loads the worker: killed before that, nothing would have been written.
await fetch(`http://127.0.0.1:${port}/api/examine`, {method: "POST", headers: {"content-type": "application/json"}, body: JSON.stringify({garment: {garment: "first", saw: {}}})});
process.stdout.write(`port ${port}\n`);
