// Gets the passphrase that opens a rack to others than this machine: from a file, typed in, or the one that was kept.
import {readFileSync} from "node:fs";
import {createInterface} from "node:readline";
import {fewestCharacters, hashPassphrase, passphraseKey} from "../../server/passphrase.ts";
import type {Store} from "../../store/store.ts";
import {NeedsMending} from "../ending.ts";
import {notOpened, passphraseNeeded, passphraseShort} from "../problems.ts";

/**
 * The hash to check against. A passphrase from a file takes the place of the one that was kept.
 * @throws NeedsMending when there is none, and nobody to type it
 */
export async function passphraseFor(store: Store, file: string | undefined, reachable: string): Promise<string> {
  const kept = await store.setting(passphraseKey);
  if (file === undefined && kept !== null) return kept;
  if (file === undefined && !process.stdin.isTTY) throw new NeedsMending([passphraseNeeded(reachable)]);
  const passphrase = file === undefined ? await typed() : firstLine(file);
  if ([...passphrase].length < fewestCharacters) throw new NeedsMending([passphraseShort(file ?? "passphrase", fewestCharacters)]);
  const hash = await hashPassphrase(passphrase);
  await store.setSetting(passphraseKey, hash);
  return hash;
}

function firstLine(file: string): string {
  try {
    return readFileSync(file, "utf8").split(/\r?\n/)[0]!;
  } catch (error) {
    throw new NeedsMending([notOpened(file, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  }
}

/** Asks on the terminal; what is typed is not shown. */
function typed(): Promise<string> {
  process.stderr.write("A passphrase for the rack, at least 15 characters (it is not shown): ");
  const reader = createInterface({input: process.stdin, terminal: true, output: undefined});
  return new Promise((resolve) => {
    reader.question("", (answer) => {
      reader.close();
      process.stderr.write("\n");
      resolve(answer);
    });
  });
}
