// A server for this machine only: one address, one secret, and nothing said to anybody else.

import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { type Door, newSecret, pathBehindDoor } from "./serve-guard.ts";

/** What a page may be told: a status, and a body where there is something to say. */
export interface Answer {
  readonly status: number;
  readonly type?: "text/html" | "application/json";
  readonly body?: string;
  readonly allow?: string;
}

/** Answers what came through the door; no answer: it has taken the response over, as a stream does. */
export type Handle = (
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
) => Promise<Answer | undefined>;

export interface Server {
  /** "http://127.0.0.1:41233/<secret>/" */
  readonly address: string;
  /** "/<secret>/" */
  readonly root: string;
  /** Takes no more requests and waits for those under way, for five seconds at most. */
  close(): Promise<void>;
}

export interface ServeOptions {
  /** Taken if it is free, else one that the system picks. */
  readonly port?: number;
  /** How long a request may take to arrive whole. */
  readonly requestMs?: number;
  readonly onFault?: (error: unknown) => void;
}

const LONGEST_CLOSE_MS = 5000;

const HEADERS = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-store",
  "Content-Security-Policy": "frame-ancestors 'none'",
  "X-Frame-Options": "DENY",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
} as const;

/** Listens on 127.0.0.1. */
export async function serve(
  handle: Handle,
  { port: wanted = 0, requestMs = 30_000, onFault = () => undefined }: ServeOptions = {},
): Promise<Server> {
  const secret = newSecret();
  let door: Door = { port: 0, secret };
  let closing = false;
  const server = createServer(
    {
      requestTimeout: requestMs,
      headersTimeout: Math.min(requestMs, 10_000),
      connectionsCheckingInterval: Math.min(requestMs, 1000),
      keepAliveTimeout: 5000,
      maxHeaderSize: 16_384,
    },
    (request, response) => {
      for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
      const path = pathBehindDoor(askedBy(request), door);
      const answered =
        typeof path === "number" ? Promise.resolve({ status: path }) : handle(path, request, response);
      answered
        .catch((error: unknown) => {
          onFault(error);
          return { status: 500 };
        })
        .then((answer) => answer && send(response, answer, closing || !request.complete));
    },
  );
  server.maxConnections = 200;
  const listen = (port: number): Promise<void> =>
    new Promise((resolve, reject) => {
      server.once("error", reject);
      server.listen({ host: "127.0.0.1", port, exclusive: true }, () => {
        server.off("error", reject);
        resolve();
      });
    });
  await (wanted === 0 ? listen(0) : listen(wanted).catch(() => listen(0)));
  const { port } = server.address() as AddressInfo;
  door = { port, secret };
  return {
    address: `http://127.0.0.1:${port}/${secret}/`,
    root: `/${secret}/`,
    close: () =>
      new Promise((resolve) => {
        closing = true;
        const force = setTimeout(() => server.closeAllConnections(), LONGEST_CLOSE_MS);
        server.close(() => {
          clearTimeout(force);
          resolve();
        });
        server.closeIdleConnections();
      }),
  };
}

function askedBy({ url = "", method = "", headers, rawHeaders }: IncomingMessage) {
  const all = (name: string) =>
    rawHeaders.flatMap((header, i) =>
      i % 2 === 0 && header.toLowerCase() === name ? rawHeaders[i + 1]! : [],
    );
  const site = headers["sec-fetch-site"];
  return {
    url,
    method,
    hosts: all("host"),
    origins: all("origin"),
    site: Array.isArray(site) ? "twice" : site,
  };
}

/** @param last  The connection is closed: its request was not read to its end, or the server stops. */
function send(response: ServerResponse, { status, type, body = "", allow }: Answer, last: boolean): void {
  if (response.destroyed) return;
  response.writeHead(status, {
    ...(type === undefined ? {} : { "Content-Type": `${type}; charset=utf-8` }),
    ...(allow === undefined ? {} : { Allow: allow }),
    ...(last ? { Connection: "close" } : {}),
    "Content-Length": Buffer.byteLength(body),
  });
  response.end(body);
}
