// The button at a point of a chart that leaves its batch out of the fits, or puts it back.

import { isolated, visibleLine } from "../page/visible.ts";
import { h } from "./edit-dom.ts";

export interface Leavable {
  readonly name: string;
  readonly isOut: boolean;
}

/** The batch that the words of a point begin with: the longest name, where one begins with another. */
export function batchTold<B extends Leavable>(words: string, batches: readonly B[]): B | undefined {
  const told = batches.filter(({ name }) =>
    [":", ", "].some((end) => words.startsWith(`${isolated(visibleLine(name))}${end}`)),
  );
  return told.sort((a, b) => b.name.length - a.name.length)[0];
}

const BOX = ".live-leave";

/**
 * What the label holds besides its words; what is there already, where nothing has changed: it may be typed into. The
 * button does nothing by itself: who is awake listens for its click, for it may be older than he is.
 */
export function leaveBox(label: HTMLElement, batch: Leavable | undefined): void {
  const old = label.querySelector<HTMLElement>(BOX);
  const state = batch && `${batch.isOut ? "out" : "in"} ${batch.name}`;
  if (old && old.dataset.state === state) return;
  old?.remove();
  if (!batch) return;
  const { name, isOut } = batch;
  // The words that are seen come first and whole, for whoever speaks them to press the button.
  const says = isOut ? `Put back into the fits: ${name}` : `Leave out of the fits: ${name}`;
  label.append(
    h(
      "div",
      { class: "live-leave", "data-state": state },
      h(
        "button",
        { type: "button", "aria-label": says, "data-leave": true },
        isOut ? "Put back" : "Leave out",
      ),
    ),
  );
}
