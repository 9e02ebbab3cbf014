// Says that a page is being worked out, where that takes longer than an eye waits.

import type { Bar } from "./edit-bar.ts";
import type { Session } from "./session.ts";

/** A change that is right sooner is not told of; our own. */
const PATIENCE_MS = 400;

/** settled: name of the event at the document that tells that everything is right. */
export function tellWorking(session: Session, bar: Pick<Bar, "working">, settled: string): void {
  let known = session.worked;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    bar.working(false);
  };
  session.subscribe(() => {
    if (session.worked === known) return;
    known = session.worked;
    waiting ??= setTimeout(() => bar.working(true), PATIENCE_MS);
  });
  document.addEventListener(settled, stop);
}
