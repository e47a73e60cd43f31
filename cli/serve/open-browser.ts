// Opens an address in the owner's browser, if there is one.
import {spawn} from "node:child_process";

const openers: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {darwin: ["open"], win32: ["cmd", "/c", "start", ""]};

/** Says nothing when it does not work: the address has been printed. */
export function openBrowser(address: string): void {
  const [command, ...words] = openers[process.platform] ?? ["xdg-open"];
  spawn(command, [...words, address], {stdio: "ignore", detached: true}).on("error", () => {}).unref();
}
