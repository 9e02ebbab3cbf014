// What if: a figure tried with other values, never saved, and back to the logged one with one key.

import type { LogPath } from "../log/edit-types.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { button, byFinger, h, setText } from "./edit-dom.ts";
import { trySpan } from "./edit-span.ts";
import { pathWords } from "./edit-words.ts";

/** Undefined where the text is no plain figure. done: the control is not needed any more. first: what is tried at once. */
export function tryControl(
  bench: Bench,
  path: LogPath,
  logged: string,
  done: () => void,
  first?: string,
): HTMLElement | undefined {
  const span = trySpan(logged);
  const place = () => bench.places().get(path)?.place;
  if (!span) return undefined;
  const words = pathWords(path);
  const begun = first ?? bench.tried(path) ?? logged;
  const slider = h("input", {
    type: "range",
    min: span.least,
    max: span.most,
    step: span.step,
    "aria-label": `What if ${words} were`,
    "aria-valuetext": begun,
  });
  slider.value = String(trySpan(begun)?.value ?? span.value);
  const typed = h("input", {
    type: "text",
    class: "live-cell",
    "aria-label": `What if ${words} were, typed`,
    autocomplete: "off",
  });
  typed.value = begun;
  const back = byFinger() ? `Logged: ${logged}.` : `Logged: ${logged}. Escape goes back to it.`;
  const note = h("p", { class: "live-note" }, back);
  let frame = 0;
  const attempt = (text: string): void => {
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(() => {
      const at = place();
      if (!at) return;
      const wrong = bench.session
        .whatIf(at, text.trim() === logged ? undefined : text.trim())
        .filter(({ severity }) => severity === "error");
      setText(note, wrong.length > 0 ? wrong.map(issueWords).join(" ") : back);
      note.classList.toggle("live-fault", wrong.length > 0);
    });
  };
  if (first !== undefined) attempt(first);
  slider.addEventListener("input", () => {
    typed.value = span.say(Number(slider.value));
    slider.setAttribute("aria-valuetext", typed.value);
    attempt(typed.value);
  });
  typed.addEventListener("input", () => {
    const value = trySpan(typed.value)?.value;
    if (value !== undefined) slider.value = String(value);
    attempt(typed.value);
  });
  const backToLogged = (): void => {
    cancelAnimationFrame(frame);
    const at = place();
    if (at) bench.session.whatIf(at, undefined);
    bench.say(`${words}: back to the logged ${logged}.`);
    done();
  };
  const keep = (): void => {
    cancelAnimationFrame(frame);
    const at = place();
    const text = typed.value.trim();
    if (at) bench.session.whatIf(at, undefined);
    bench.write(path, text);
    bench.say(`${words}: ${text}, written into the log.`);
    done();
  };
  return h(
    "div",
    {
      class: "live-try",
      role: "group",
      "aria-label": `What if, ${words}`,
      onkeydown: (event: KeyboardEvent) => {
        if (event.key !== "Escape" && event.key !== "Enter") return;
        if (event.key === "Enter" && event.target instanceof HTMLButtonElement) return;
        event.preventDefault();
        event.stopPropagation();
        if (event.key === "Escape") backToLogged();
        else done();
      },
    },
    h("p", { class: "live-what" }, h("strong", {}, "What if"), ` ${words} were`),
    typed,
    h("div", { class: "live-ends" }, span.say(span.least), slider, span.say(span.most)),
    note,
    h(
      "p",
      { class: "live-actions" },
      button(`Back to ${logged}`, backToLogged),
      button("Go on trying", done),
      button("Write it into the log", keep),
    ),
  );
}
