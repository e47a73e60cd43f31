// The addresses under which a server can be reached, to be printed.
import {networkInterfaces} from "node:os";

/** For an address that stands for all of this machine's, each of them. */
export function addressesOf(address: string, port: number, names: readonly string[]): string[] {
  const hosts = isAll(address) ? ["127.0.0.1", ...outward()] : [address];
  return [...hosts.map((host) => `http://${host.includes(":") ? `[${host}]` : host}:${port}/`), ...names.map((name) => `${name}, through what stands in front`)];
}

const isAll = (address: string) => address === "0.0.0.0" || address === "::";

const outward = () => Object.values(networkInterfaces()).flatMap((ones) => (ones ?? []).filter(({family, internal}) => family === "IPv4" && !internal).map(({address}) => address));
