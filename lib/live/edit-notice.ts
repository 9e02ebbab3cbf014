// What the founder has to know or decide, above the bar: one notice of each kind, until it is answered.

import { button, type Child, h } from "./edit-dom.ts";

export interface Answer {
  readonly says: string;
  /** True keeps the notice. */
  press(): unknown;
}

export interface Notices {
  readonly element: HTMLElement;
  show(kind: string, text: string, answers?: readonly Answer[], below?: Child): void;
  drop(kind: string): void;
}

export function notices(): Notices {
  const element = h("div", { class: "live-notices" });
  const shown = new Map<string, HTMLElement>();
  const drop = (kind: string): void => {
    shown.get(kind)?.remove();
    shown.delete(kind);
  };
  return {
    element,
    drop,
    show: (kind, text, answers = [], below) => {
      drop(kind);
      const notice = h(
        "div",
        { class: "live-message" },
        h("p", { role: "alert" }, text),
        below,
        h(
          "p",
          { class: "live-actions" },
          ...answers.map(({ says, press }) => button(says, () => press() !== true && drop(kind))),
          button("Close", () => drop(kind), { "aria-label": `Close: ${text}` }),
        ),
      );
      shown.set(kind, notice);
      element.append(notice);
    },
  };
}
