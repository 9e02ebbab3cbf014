// Where a live page is worked out: in a thread of its own where the browser grants one, else between key strokes.

import type { Notebook } from "../page/notebook.ts";
import { type Work, workFor } from "./serve-worker.ts";
import type { Told } from "./work-out.ts";

export interface EngineSetup {
  /** Texts of the scripts that a thread of its own begins with. */
  readonly scripts: readonly string[];
  readonly notebook: Pick<Notebook, "run">;
  readonly tell: (told: Told) => void;
}

/** A thread that cannot be had, or that fails, costs nothing but its speed: the page does the work itself then. */
export function startEngine({ scripts, notebook, tell }: EngineSetup): Work {
  const here = (): Work => workFor(notebook, tell);
  const worker = threadOf(scripts);
  if (!worker) return here();
  let work: Work | undefined;
  let last: Parameters<Work["want"]>[0] | undefined;
  worker.onmessage = ({ data }: MessageEvent<Told>) => tell(data);
  worker.onerror = (event) => {
    event.preventDefault();
    worker.terminate();
    work ??= here();
    if (last) work.want(last);
  };
  return {
    want(wanted) {
      last = wanted;
      if (work) work.want(wanted);
      else worker.postMessage(wanted);
    },
  };
}

function threadOf(scripts: readonly string[]): Worker | undefined {
  try {
    const text = new Blob([scripts.join("\n")], { type: "text/javascript" });
    const address = URL.createObjectURL(text);
    const worker = new Worker(address);
    // The thread has its text once it answers or fails; the address is a few bytes until then.
    worker.addEventListener("message", () => URL.revokeObjectURL(address), { once: true });
    return worker;
  } catch {
    return undefined;
  }
}
