// Begins the live part of a page: the session, the thread that works it out, the page kept in step, the editing.

import { editLog } from "../log/edit.ts";
import type { LiveSetup } from "../page/live-setup.ts";
import type { Notebook } from "../page/notebook.ts";
import { startEditing } from "./edit-start.ts";
import { startEngine } from "./engine.ts";
import type { Meant } from "./held-presses.ts";
import { REDRAWN, redrawOf, SETTLED } from "./redraw.ts";
import { startSession } from "./session.ts";
import type { Wanted } from "./work-out.ts";

/** Under this name the scripts of a page find each other. */
export interface MullbookLive {
  /**
   * @param scripts  Texts of library and notebook, for the thread that works the page out.
   * @param meant    What was clicked and typed while they were unpacked.
   */
  start(scripts: readonly string[], meant: () => Meant): void;
  /** In a worker: begins to listen. */
  serve(): void;
}

export function start(scripts: readonly string[], meant: () => Meant): void {
  const setup = JSON.parse(document.getElementById("live-setup")?.textContent ?? "") as LiveSetup;
  const notebook = bundledNotebook();
  const session = startSession({ texts: setup.texts, notebook, editLog });
  let want: (wanted: Wanted) => void = () => undefined;
  const { hear, warm } = redrawOf(session, (wanted) => want(wanted));
  want = startEngine({ scripts: [...scripts, "mullbookLive.serve();"], notebook, tell: hear }).want;
  Object.assign(globalThis, { mullbookSession: session });
  const opened = session.worked;
  const main = document.querySelector("main");
  const events = { redrawn: REDRAWN, settled: SETTLED };
  if (main) startEditing({ session, setup, main, ...events, meant: meant() });
  // Unless a draft was taken up meanwhile: that is worked out already.
  if (session.worked === opened) warm();
}

/** The notebook's own script leaves it under this name. */
export function bundledNotebook(): Notebook {
  const { mullbookNotebook } = globalThis as unknown as { readonly mullbookNotebook: { default: Notebook } };
  return mullbookNotebook.default;
}
