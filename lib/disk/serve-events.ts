// Streams to the open pages, over which they hear that a file was changed.

import type { ServerResponse } from "node:http";

/** A browser keeps six connections to one host: streams must leave some for loading and saving. */
const MOST_STREAMS = 4;
const BEAT_MS = 20_000;

export interface Streams {
  /** Keeps the response open as the stream of a page; ends its earlier one, and the oldest of all beyond four. */
  open(page: string, response: ServerResponse): void;
  /** Sends to one page; false where it has no stream at the moment. */
  send(page: string, event: string, data: unknown): boolean;
  close(): void;
}

/** A page whose stream was ended comes back by itself, after three seconds. */
export function streams(): Streams {
  const open = new Map<string, ServerResponse>();
  const end = (page: string) => {
    open.get(page)?.end();
    open.delete(page);
  };
  const beat = setInterval(() => {
    for (const response of open.values()) response.write(":\n\n");
  }, BEAT_MS);
  beat.unref();
  return {
    open: (page, response) => {
      end(page);
      for (const oldest of [...open.keys()].slice(0, Math.max(0, open.size - MOST_STREAMS + 1))) end(oldest);
      open.set(page, response);
      response.on("close", () => {
        if (open.get(page) === response) open.delete(page);
      });
      response.writeHead(200, { "Content-Type": "text/event-stream; charset=utf-8", Connection: "close" });
      response.write("retry: 3000\n\n");
    },
    send: (page, event, data) => {
      const response = open.get(page);
      response?.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
      return response !== undefined;
    },
    close: () => {
      clearInterval(beat);
      for (const page of [...open.keys()]) end(page);
    },
  };
}
