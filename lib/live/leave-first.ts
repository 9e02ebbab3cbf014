// Leaving a batch out is offered from the moment that a page opens: the button wakes what can do it.

import type { StartBatch } from "../page/live-setup.ts";
import { TOLD } from "./chart-reader.ts";
import { batchTold, leaveBox } from "./leave-box.ts";

/** batches: as the page opened. isAwake: leave-out.ts offers it then, by the log as it is. */
export function offerLeavingFirst(batches: readonly StartBatch[], isAwake: () => boolean): void {
  document.addEventListener(TOLD, (event) => {
    if (isAwake() || !(event instanceof CustomEvent && event.target instanceof HTMLElement)) return;
    leaveBox(event.target, batchTold(String(event.detail), batches));
  });
}
