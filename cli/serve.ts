// ticking serve: the screens and the interface of a rack, on this machine or, with a passphrase, for others.
import {Option, type Command} from "commander";
import {dataHelp} from "./data-folder.ts";
import {examples} from "./help.ts";
import {collected, verb} from "./shared.ts";
import type {ServeFlags} from "./serve/run.ts";

const words = `
The rack lives in one folder, which is made when it is not there; a fresh one begins with a demo. Other verbs of ticking can work on the
same folder meanwhile. Without --listen only this machine can reach the server, and no passphrase is asked for.

Listening wider, or giving the server a name with --name, asks for a passphrase of at least 15 characters. It is given in a file, of which
the first line counts, or typed in; only its hash is kept, and it need not be given again. What is sent can be read on the way unless something
in front adds TLS: docs/guide/serve.md says how.`;

export function serveVerb(): Command {
  return verb("serve", "serve the screens of a rack, on this machine or to others")
    .addOption(new Option("--data <folder>", dataHelp))
    .option("--port <number>", "the port to listen on; 0 takes any free one", "4848")
    .option("--listen <address>", "the address to listen on", "127.0.0.1")
    .option("--name <host>", "a name under which the server is reached, for example through a proxy (repeatable)", collected)
    .option("--passphrase-file <file>", "take the passphrase from the first line of a file")
    .option("--open", "open the screens in a browser")
    .addHelpText("after", words + examples("ticking serve", "ticking serve --data shop --port 8080 --open", "ticking serve --listen 0.0.0.0 --passphrase-file pass.txt"))
    .action(async (flags: ServeFlags) => (await import("./serve/run.ts")).runServe(flags));
}
