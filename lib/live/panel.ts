// The log beside the page: what was changed, and all that stands in it, to fill in.

import type { LogPath } from "../log/edit-types.ts";
import type { Bench } from "./edit-bench.ts";
import { button, byFinger, h, refill } from "./edit-dom.ts";
import { pathKey } from "./edit-places.ts";
import { changesList } from "./panel-changes.ts";
import type { Folds } from "./panel-folds.ts";
import { outlineParts } from "./panel-outline.ts";

export interface Panel {
  readonly element: HTMLElement;
  /** At a path: opened down to it, with the focus there; folded: the group there stays as it is. */
  open(path?: LogPath, folded?: boolean): void;
  close(): void;
  readonly isOpen: boolean;
  /** After a change of the log. */
  refresh(): void;
}

export function logPanel(bench: Bench, opener: () => HTMLElement): Panel {
  const folds: Folds = { open: new Set(["changes"]), rows: new Map() };
  const inside = h("div", { class: "live-panel-inside", tabindex: -1 });
  const close = button("Close the log", () => shut(), { class: "live-close", "data-key": "close" });
  const element = h(
    "aside",
    {
      id: "live-log",
      class: "live-panel",
      "aria-label": "The log",
      hidden: true,
      onkeydown: (event: KeyboardEvent) => {
        if (event.key !== "Escape" || event.defaultPrevented) return;
        event.preventDefault();
        shut();
      },
    },
    h("div", { class: "live-panel-head" }, h("h2", {}, "The log"), close),
    inside,
  );

  function draw(): void {
    if (element.hidden) return;
    const name = bench.session.texts[0]?.name ?? "";
    refill(inside, [
      h(
        "p",
        { class: "live-quiet" },
        `${name}, as it stands on this page. ${
          byFinger()
            ? "What is typed is taken when its field is left; Undo brings back what stood there."
            : "Enter takes what is typed, Escape leaves it."
        }`,
      ),
      changesList(bench),
      ...outlineParts(bench, folds, draw),
    ]);
  }

  function shut(): void {
    element.hidden = true;
    document.documentElement.classList.remove("live-beside");
    opener().setAttribute("aria-expanded", "false");
    opener().focus({ preventScroll: true });
  }

  function open(path?: LogPath, folded = false): void {
    element.hidden = false;
    document.documentElement.classList.add("live-beside");
    opener().setAttribute("aria-expanded", "true");
    const unfolded = folded ? path?.slice(0, -1) : path;
    unfolded?.forEach((_, k) => {
      folds.open.add(pathKey(unfolded.slice(0, k + 1)));
    });
    if (path?.length === 1) folds.open.add(pathKey([]));
    draw();
    const to = path && (folded ? keyed(`fold ${pathKey(path)}`) : fieldAt(path));
    if (to) {
      to.focus({ preventScroll: true });
      to.scrollIntoView({ block: "center" });
    } else close.focus({ preventScroll: true });
  }

  const keyed = (key: string): HTMLElement | undefined =>
    [...inside.querySelectorAll<HTMLElement>("[data-key]")].find((one) => one.dataset.key === key);

  /** The field of the path, else the first below it; a figure rather than a word, since that is what was read. */
  function fieldAt(path: LogPath): HTMLElement | undefined {
    const key = pathKey(path);
    const start = `${key.slice(0, -1)},`;
    const below = [...inside.querySelectorAll<HTMLElement>("[data-key]")].filter((one) =>
      one.dataset.key?.startsWith(start),
    );
    return (
      keyed(key) ??
      below.find((one) => one instanceof HTMLInputElement && /^[-+.]?\d/.test(one.value)) ??
      below[0]
    );
  }

  return {
    element,
    open,
    close: shut,
    get isOpen() {
      return !element.hidden;
    },
    refresh: draw,
  };
}
