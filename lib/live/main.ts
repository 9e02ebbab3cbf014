// What the script of every live page leaves for the page's own few lines and for the worker.

import { serveWorker } from "./serve-worker.ts";
import { bundledNotebook, type MullbookLive, start } from "./start.ts";

/** Called by the bundles: a file that only does something when it is read would be left out of them. */
export function offerLive(): void {
  const live: MullbookLive = { start, serve: () => serveWorker(bundledNotebook()) };
  Object.assign(globalThis, { mullbookLive: live });
}
