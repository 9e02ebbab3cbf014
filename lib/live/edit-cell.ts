// A figure of the page changed where it stands: as it was typed, in a field of the cell's own size.

import type { LogPath } from "../log/edit-types.ts";
import type { Bench } from "./edit-bench.ts";
import { focusIn, keepInView, placeBox } from "./edit-cell-box.ts";
import { type CellField, takeBack, takeTyped } from "./edit-cell-take.ts";
import { button, byFinger, h } from "./edit-dom.ts";
import { trySpan } from "./edit-span.ts";
import { tryControl } from "./edit-try.ts";
import { pathWords } from "./edit-words.ts";

export interface CellEditor {
  /** typed: a first character that takes the place of what stood there. */
  open(cell: Element, path: LogPath, typed?: string): void;
  /** Takes what is typed; true when nothing is open any more. */
  close(): boolean;
  /** The page was put together anew: the open field moves to what stands in its cell's place. */
  follow(): void;
}

export interface CellEditorParts {
  readonly layer: HTMLElement;
  /** The cell to go on to. */
  next(cell: Element, step: 1 | -1): { readonly cell: Element; readonly path: LogPath } | undefined;
  /** Marks a cell whose text is faulty, so that it can be found again. */
  fault(cell: Element, path: LogPath): void;
  /** What stands for a figure of the log on the page as it is now. */
  cellOf(path: LogPath): Element | undefined;
}

interface Open extends CellField {
  cell: Element;
  readonly box: HTMLElement;
}

export function cellEditor(bench: Bench, { layer, next, fault, cellOf }: CellEditorParts): CellEditor {
  let open: Open | undefined;

  function show(cell: Element, path: LogPath, typed?: string): void {
    if (open && !close()) return;
    const node = bench.places().get(path);
    if (node?.kind !== "value") {
      bench.openLog(path);
      return;
    }
    const words = pathWords(path);
    const input = h("input", {
      type: "text",
      class: "live-cell",
      "aria-label": words,
      "aria-describedby": "live-cell-note",
      autocomplete: "off",
      autocapitalize: "off",
      spellcheck: "false",
      enterkeyhint: "done",
    });
    input.value = typed ?? node.text;
    const note = h("p", { id: "live-cell-note", class: "live-note" });
    const box = h("div", { class: "live-over", role: "group", "aria-label": words }, input);
    open = { cell, path, box, input, note };
    box.append(
      h("div", { class: "live-under" }, h("p", { class: "live-what" }, words), note, actions(node.text)),
    );
    how();
    input.addEventListener("keydown", keys);
    box.addEventListener("focusout", (event) => {
      // A tap elsewhere takes what was typed; the field itself may be gone already.
      const to = event.relatedTarget;
      if (to instanceof Node && box.contains(to)) return;
      setTimeout(() => {
        if (open?.box === box && !box.contains(document.activeElement) && document.hasFocus()) close();
      });
    });
    layer.append(box);
    place();
    input.focus({ preventScroll: true });
    if (typed === undefined) input.select();
    keepInView(box);
  }

  function actions(text: string): HTMLElement {
    const { path } = open!;
    const change = bench.changeAt(path);
    const back = change?.was;
    return h(
      "p",
      { class: "live-actions" },
      button("Take it", takeAndStay),
      button("Next", () => goOn(1) || takeAndStay()),
      button("Leave it", leaveAndStay),
      trySpan(text) !== undefined && button("What if", trying),
      back !== undefined &&
        change?.kind === "value" &&
        button(`Back to ${back}`, () => {
          open!.input.value = back;
          takeAndStay();
        }),
      button("In the log", () => {
        const to = open!.path;
        if (take()) bench.openLog(to);
      }),
    );
  }

  function how(): void {
    open!.note.textContent = byFinger()
      ? "Take it puts it into the log, Leave it keeps what stood there, Next goes on."
      : "Enter takes it, Escape leaves it, Tab goes on.";
    open!.note.classList.remove("live-fault");
    open!.note.removeAttribute("role");
    open!.input.removeAttribute("aria-invalid");
  }

  function trying(): void {
    const { path, cell, box, input } = open!;
    const node = bench.places().get(path);
    if (node?.kind !== "value") return;
    const typed = input.value.trim();
    shut();
    const done = (): void => {
      box.remove();
      focusIn(cell);
    };
    const asked = typed === "" || typed === node.text ? undefined : typed;
    const control = tryControl(bench, path, node.text, done, asked);
    if (!control) return;
    box.classList.add("live-trying");
    box.replaceChildren(control);
    layer.append(box);
    placeBox(box, cell);
    keepInView(box);
    control.querySelector<HTMLElement>("[type=range]")?.focus();
  }

  /** True when the field is closed: the text is as it was, or stands in the log. */
  function take(): boolean {
    const field = open!;
    const done = takeTyped(bench, field, () => open === field, fault);
    if (done) shut();
    return done;
  }

  function leave(): void {
    if (open) takeBack(bench, open, "");
    shut();
  }

  function shut(): void {
    const box = open?.box;
    open = undefined;
    box?.remove();
  }

  /** What is typed is taken; a faulty text stays in the log, marked at its cell. */
  function close(): boolean {
    if (!open) return true;
    if (take()) return true;
    // Refused altogether: the text is nowhere but in the field, which stays.
    if (open?.faulty === undefined) return false;
    shut();
    return true;
  }

  function takeAndStay(): void {
    const { cell } = open!;
    if (take()) focusIn(cell);
  }

  function leaveAndStay(): void {
    const { cell } = open!;
    leave();
    focusIn(cell);
  }

  /** False where there is no figure to go on to. */
  function goOn(step: 1 | -1): boolean {
    const { cell } = open!;
    const to = next(cell, step);
    if (to && close()) show(to.cell, to.path);
    return to !== undefined;
  }

  function keys(event: KeyboardEvent): void {
    if (!open || event.isComposing) return;
    if (event.key === "Escape") {
      event.preventDefault();
      event.stopPropagation();
      leaveAndStay();
    } else if (event.key === "Enter") {
      event.preventDefault();
      takeAndStay();
    } else if (event.key === "Tab") {
      if (goOn(event.shiftKey ? -1 : 1)) event.preventDefault();
    } else if (open.faulty !== undefined || open.input.hasAttribute("aria-invalid")) {
      how();
    }
  }

  function place(): void {
    if (open) placeBox(open.box, open.cell);
  }

  function follow(): void {
    if (open && !open.cell.isConnected) open.cell = cellOf(open.path) ?? open.cell;
    place();
  }
  addEventListener("resize", place);
  addEventListener("scroll", place, true);

  return { open: show, close, follow };
}
