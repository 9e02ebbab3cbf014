// Keys pressed at a figure while the live part is unpacked: held in their order and done once it can.

import { keyMeaning } from "./keys.ts";

type Press = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">;

/** What somebody did while the live part was unpacked. */
export interface Meant {
  /** What was clicked last: at a figure, or at a button that needs the log. */
  readonly clicked: HTMLElement | undefined;
  /** The keys that were pressed at a figure since then. */
  readonly presses: readonly string[];
}

export interface HeldPresses {
  /** True where the press is held: the browser does nothing with it then. */
  hold(press: Press): boolean;
  /** Those held so far, none from now on. */
  release(): readonly string[];
}

/** Holds from the first press that opens a figure or is typed at it, all that may be meant for its field; chords are the browser's. */
export function heldPresses(): HeldPresses {
  let held: string[] = [];
  return {
    hold(press) {
      if (press.ctrlKey || press.metaKey || press.altKey) return false;
      if (held.length === 0 && keyMeaning(press, { inField: false, onCell: true }) === undefined)
        return false;
      if ([...press.key].length > 1 && !NAMED.has(press.key)) return false;
      held.push(press.shiftKey && press.key === "Tab" ? BACK : press.key);
      return true;
    },
    release() {
      const all = held;
      held = [];
      return all;
    },
  };
}

const NAMED = new Set(["Enter", "F2", "Backspace", "Delete", "Tab", "Escape"]);
const BACK = "Shift+Tab";

/** Does them, each where the focus is by then: signs are typed into the field, keys are pressed. */
export function pressAgain(presses: readonly string[]): void {
  for (const press of presses) {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return;
    const key = press === BACK ? "Tab" : press;
    const event = new KeyboardEvent("keydown", {
      key,
      shiftKey: press === BACK,
      bubbles: true,
      cancelable: true,
    });
    if (!at.dispatchEvent(event) || !(at instanceof HTMLInputElement)) continue;
    const text = key === "Backspace" || key === "Delete" ? "" : [...key].length === 1 ? key : undefined;
    if (text !== undefined) putIn(at, text, key);
  }
}

/** In place of what is selected, else where the caret stands. */
function putIn(field: HTMLInputElement, text: string, key: string): void {
  const length = field.value.length;
  let start = field.selectionStart ?? length;
  let end = field.selectionEnd ?? length;
  if (start === end && key === "Backspace") start = Math.max(0, start - 1);
  if (start === end && key === "Delete") end = Math.min(length, end + 1);
  field.setRangeText(text, start, end, "end");
}
