// A line at the foot of the window: the log, back and forth, what was changed and how to keep it, and what is tried.

import type { Bench } from "./edit-bench.ts";
import { button, h, setText } from "./edit-dom.ts";
import { counted, pathWords } from "./edit-words.ts";

export interface Bar {
  readonly element: HTMLElement;
  readonly logButton: HTMLElement;
  /** Said aloud and shown until the next thing is said. */
  say(text: string): void;
  /** That the figures of the page are those of before, until it is worked out. */
  working(on: boolean): void;
  refresh(): void;
}

export interface BarParts {
  readonly keepWords: string;
  keep(): void;
  toggleLog(): void;
}

export function editBar(bench: () => Bench, { keepWords, keep, toggleLog }: BarParts): Bar {
  const said = h("p", { class: "live-said", role: "status" });
  const logButton = button("The log", toggleLog, { "aria-expanded": "false", "aria-controls": "live-log" });
  const undo = button("Undo", () => bench().session.undo(), { title: "Ctrl+Z" });
  const redo = button("Redo", () => bench().session.redo(), { title: "Ctrl+Shift+Z" });
  const state = h("span", { class: "live-state" });
  const save = button(keepWords, keep, { title: "Ctrl+S", class: "live-main" });
  const tries = h("div", { class: "live-tries", hidden: true });
  const working = h("p", { class: "live-working", role: "status" });
  const element = h(
    "section",
    { class: "live-bar", "aria-label": "Changing the log" },
    working,
    tries,
    h("div", { class: "live-buttons" }, logButton, undo, redo, state, save),
    said,
  );

  /** A button that has the focus stays one: only its meaning is dimmed. */
  const able = (one: HTMLElement, can: boolean): void => one.setAttribute("aria-disabled", String(!can));

  function refresh(): void {
    const { session, changes } = bench();
    able(undo, session.canUndo);
    able(redo, session.canRedo);
    const n = changes().length;
    const same = session.texts.every(({ text }, i) => text === session.base[i]?.text);
    state.textContent = same ? "As in the file" : `${counted(Math.max(1, n), "change")}, not saved`;
    element.classList.toggle("live-unsaved", !same);
    showTries();
  }

  function showTries(): void {
    const { session } = bench();
    tries.hidden = session.whatIfs.length === 0;
    document.documentElement.classList.toggle("live-trying-on", session.whatIfs.length > 0);
    tries.replaceChildren(
      ...session.whatIfs.map(({ at, text }) => {
        const places = bench().places();
        const path = places.at(at);
        const node = path && places.get(path);
        const logged = node?.kind === "value" ? node.text : "";
        return h(
          "p",
          {},
          h("strong", {}, "What if"),
          ` ${path ? pathWords(path) : "a figure"} were ${text}? Logged: ${logged}. `,
          button("Back to the log", () => session.whatIf(at, undefined)),
        );
      }),
    );
  }

  return {
    element,
    logButton,
    say: (text) => {
      setText(said, text);
    },
    working: (on) => {
      working.textContent = on ? "Working it out; the dimmed figures are those of before …" : "";
    },
    refresh,
  };
}
