// The script of a live page: the whole public door for the notebook, and the live part.

import * as door from "../index.ts";
import { serveWorker } from "./serve-worker.ts";
import { bundledNotebook, type MullbookLive, start } from "./start.ts";

const live: MullbookLive = { start, serve: () => serveWorker(bundledNotebook()) };
Object.assign(globalThis, { mullbook: door, mullbookLive: live });
