// Puts the app on a port, and takes it off again without cutting answers short.
import type {AddressInfo} from "node:net";
import type {Server} from "node:http";
import {serve} from "@hono/node-server";
import type {Hono} from "hono";

export interface Listening {
  readonly address: string;
  readonly port: number;
  /** Waits for answers under way, at most a few seconds. */
  close(): Promise<void>;
}

/** How long answers under way may take once the server is asked to stop. Source: own choice. */
const patience = 5000;

/** @throws the system's error with its code: EADDRINUSE, EACCES, EADDRNOTAVAIL */
export function listen(app: Hono, hostname: string, port: number): Promise<Listening> {
  return new Promise((resolve, reject) => {
    const server = serve({fetch: app.fetch, hostname, port}) as Server;
    server.requestTimeout = 10 * 60_000;
    server.once("error", reject);
    server.once("listening", () => {
      const bound = server.address() as AddressInfo;
      resolve({address: bound.address, port: bound.port, close: () => closed(server)});
    });
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(() => server.closeAllConnections(), patience);
    server.close(() => {
      clearTimeout(timer);
      resolve();
    });
    server.closeIdleConnections();
  });
}

/** Whether only this machine can reach an address. Source: RFC 1122, section 3.2.1.3 (127/8); RFC 4291, section 2.5.3 (::1). */
export const isLoopback = (address: string) => address === "localhost" || address === "::1" || /^127\.\d{1,3}\.\d{1,3}\.\d{1,3}$/.test(address);
