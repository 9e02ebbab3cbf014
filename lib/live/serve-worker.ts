// Within the worker: works out what is wanted last, one at a time, and listens in between.

import type { Notebook } from "../page/notebook.ts";
import { rehearsals } from "./rehearse.ts";
import { drawingCache, type Told, type Wanted, workOut } from "./work-out.ts";

export interface Work {
  want(wanted: Wanted): void;
}

/**
 * Works for one page. Between steps it lets the thread hear what came in; what is no longer wanted is given up.
 * rehearses: once it has nothing to do it works the page out a few times more and tells nothing of it; for a thread of
 * its own.
 */
export function workFor(
  notebook: Pick<Notebook, "run">,
  tell: (told: Told) => void,
  { rehearses = false } = {},
): Work {
  const cache = drawingCache();
  const { next, took } = rehearsals();
  let latest: Wanted | undefined;
  let busy = false;
  const idle = async (id: number): Promise<boolean> => {
    await breath();
    return latest?.id !== id;
  };
  async function asked(wanted: Wanted): Promise<void> {
    await workOut(wanted, { notebook, tell, idle, cache }).catch((error: unknown) =>
      tell({ kind: "fault", id: wanted.id, message: String(error) }),
    );
  }
  /** With drawings of its own: those that are kept for the way back stay. What it throws an edit would tell. */
  async function rehearsed(wanted: Wanted): Promise<void> {
    await workOut(wanted, { notebook, tell: () => undefined, idle, cache: drawingCache() }).catch(
      () => undefined,
    );
  }
  async function work(): Promise<void> {
    busy = true;
    for (let done: number | undefined; latest !== undefined; ) {
      const told = latest.id !== done;
      const wanted = told ? latest : rehearses && !(await idle(latest.id)) ? next(latest) : undefined;
      if (!wanted && latest.id === done) break;
      if (!wanted) continue;
      done = wanted.id;
      const begun = performance.now();
      await (told ? asked(wanted) : rehearsed(wanted));
      took(performance.now() - begun);
    }
    busy = false;
  }
  return {
    want(wanted) {
      latest = wanted;
      if (!busy) void work();
    },
  };
}

/** The messages and key strokes that wait are dealt with first. A timer would be held to 4 ms. */
function breath(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

/** In a worker's own thread: takes wishes from the page and tells it what comes of them. */
export function serveWorker(notebook: Pick<Notebook, "run">): void {
  const here = globalThis as unknown as {
    onmessage: (event: { readonly data: Wanted }) => void;
    postMessage(told: Told): void;
  };
  const { want } = workFor(notebook, (told) => here.postMessage(told), { rehearses: true });
  here.onmessage = ({ data }) => want(data);
}
