// The furniture of a live page: built once, when somebody begins to change something.

import type { LiveSetup } from "../page/live-setup.ts";
import { editBar } from "./edit-bar.ts";
import { type Bench, benchOf } from "./edit-bench.ts";
import { cellEditor } from "./edit-cell.ts";
import { h } from "./edit-dom.ts";
import { pageMarks } from "./edit-marks.ts";
import { notices } from "./edit-notice.ts";
import { whatIfRibbon } from "./edit-ribbon.ts";
import { type Meant, pressAgain } from "./held-presses.ts";
import { keepCopy } from "./keep-copy.ts";
import { followDrafts } from "./keep-drafts.ts";
import { keepOnServer } from "./keep-server.ts";
import { listenForKeys } from "./keys.ts";
import { offerLeavingOut } from "./leave-out.ts";
import { logPanel } from "./panel.ts";
import type { Session } from "./session.ts";
import { tellWorking } from "./working.ts";

export interface EditingParts {
  readonly session: Session;
  readonly setup: LiveSetup;
  readonly main: HTMLElement;
  /** What was clicked and typed before the live part could do it. */
  readonly meant: Meant;
  /** Names of the events at the document that tell of new parts of the page, and that all of it is right. */
  readonly redrawn: string;
  readonly settled: string;
}

export function startEditing({ session, setup, main, meant, redrawn, settled }: EditingParts): void {
  const told = notices();
  const bar = editBar(() => bench, {
    keepWords: setup.keep.kind === "server" ? "Save" : "Save a copy",
    keep: () => void keep(),
    toggleLog: () => (panel.isOpen ? panel.close() : panel.open()),
  });
  const bench: Bench = benchOf(session, {
    say: bar.say,
    openLog: (path, folded) => panel.open(path, folded),
  });
  const leaving = offerLeavingOut(bench);
  const panel = logPanel(bench, () => bar.logButton);
  const marks = pageMarks(bench, main);
  const layer = h("div", {
    class: "live-layer",
    role: "region",
    "aria-label": "The figure that is being changed",
  });
  const ribbon = whatIfRibbon(bench);
  const cells = cellEditor(bench, {
    layer,
    fault: marks.fault,
    cellOf: marks.cellOf,
    next: (cell, step) => {
      const all = marks.cells();
      for (let i = all.indexOf(cell as HTMLElement) + step; all[i]; i += step) {
        const path = marks.pathOf(all[i]!);
        if (path && bench.places().get(path)?.kind === "value") return { cell: all[i]!, path };
      }
      return undefined;
    },
  });
  const keep =
    setup.keep.kind === "server"
      ? keepOnServer({ session, notices: told, keep: setup.keep, say: bar.say })
      : () => keepCopy(session, bar.say);

  document.body.prepend(ribbon.element);
  document.body.append(
    h("div", { class: "live-furniture", "data-live": true }, layer, panel.element, told.element, bar.element),
  );
  document.documentElement.classList.add("live-on");
  // What lies above the bar has to know how high it is.
  new ResizeObserver(() => {
    document.documentElement.style.setProperty("--bar", `${bar.element.offsetHeight}px`);
  }).observe(bar.element);

  const openCell = (cell: Element, typed?: string): void => {
    const path = marks.pathOf(cell);
    if (path) cells.open(cell, path, typed);
  };
  listenForKeys({ undo: session.undo, redo: session.redo, save: () => void keep(), openCell });
  document.addEventListener("click", (event) => {
    const target = event.target instanceof Element ? event.target : undefined;
    const cell = target?.closest("[data-at], .live-faulty");
    if (cell) openCell(cell);
    else if (target?.closest("[data-start]")) panel.open();
  });
  addEventListener("beforeunload", (event) => {
    cells.close();
    if (bench.session.texts.some(({ text }, i) => text !== session.base[i]?.text)) event.preventDefault();
  });

  const refresh = (): void => {
    bar.refresh();
    ribbon.refresh();
    marks.refresh();
    // The focus moves on after this event: what is drawn now would be drawn under it.
    setTimeout(panel.refresh);
  };
  session.subscribe(refresh);
  document.addEventListener(redrawn, () => {
    marks.refresh();
    cells.follow();
  });
  tellWorking(session, bar, settled);
  refresh();
  followDrafts(session, told, () => (setup.keep.kind === "server" ? session.base : setup.texts));
  const { clicked, presses } = meant;
  const cell = clicked?.closest("[data-at]");
  if (clicked?.closest("[data-start]")) panel.open();
  else if (clicked?.closest("[data-leave]")) leaving.press(clicked);
  else if (cell) openCell(cell);
  pressAgain(presses);
}
