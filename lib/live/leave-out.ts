// At a point of a chart that is a batch of the log: a button that leaves it out of the fits, with a reason, or puts it back.

import type { LogPath } from "../log/edit-types.ts";
import { TOLD } from "./chart-reader.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { button, h } from "./edit-dom.ts";

/** As a line of a batch. */
const KEY = "left out";

/** Listens for the labels of charts, for as long as the page stands. */
export function offerLeavingOut(bench: Bench): void {
  document.addEventListener(TOLD, (event) => {
    if (event instanceof CustomEvent && event.target instanceof HTMLElement)
      offer(bench, event.target, String(event.detail));
  });
}

/** The batch that the words of a point begin with: the longest name, where one begins with another. */
function batchTold(words: string, names: readonly string[]): string | undefined {
  const told = names.filter((name) => words.startsWith(`${name}:`) || words.startsWith(`${name}, `));
  return told.sort((a, b) => b.length - a.length)[0];
}

function offer(bench: Bench, label: HTMLElement, words: string): void {
  const batches = bench.places().get(["batches"]);
  const names = batches?.kind === "group" ? batches.parts.map(({ path }) => String(path.at(-1))) : [];
  const name = batchTold(words, names);
  const old = label.querySelector<HTMLElement>(".live-leave");
  if (name === undefined) {
    old?.remove();
    return;
  }
  const path: LogPath = ["batches", name];
  const isOut = bench.places().get([...path, KEY]) !== undefined;
  const state = `${isOut ? "out" : "in"} ${name}`;
  // What is being typed stays.
  if (old?.dataset.state === state) return;
  const box = h("div", { class: "live-leave", "data-state": state });
  if (isOut) {
    const back = (): void =>
      done(bench.apply([{ kind: "remove", path: [...path, KEY] }]), `${name} is put back.`);
    box.append(button("Put back", back, { "aria-label": `Put ${name} back into the fits` }));
  } else box.append(button("Leave out", ask, { "aria-label": `Leave ${name} out of the fits` }));
  old?.remove();
  label.append(box);

  function ask(): void {
    const input = h("input", {
      type: "text",
      placeholder: "why: what went wrong with it?",
      "aria-label": `Why ${name} is left out`,
      autocomplete: "off",
      onkeydown: (event: KeyboardEvent) => {
        if (event.key === "Enter") leave();
      },
    });
    const told = h("p", { class: "live-fault", role: "alert", hidden: true });
    const leave = (): void => {
      const why = input.value.trim();
      if (why === "") {
        told.textContent = "Write why first.";
        told.hidden = false;
        input.focus();
        return;
      }
      done(bench.apply([{ kind: "add", to: path, entries: { [KEY]: why } }]), `${name} is left out: ${why}`);
    };
    const asked = [input, button("Leave it out", leave), told];
    box.append(...asked);
    // The label goes when the focus leaves it: the field has it before the button is gone.
    input.focus({ preventScroll: true });
    for (const child of [...box.children]) if (!asked.includes(child as HTMLInputElement)) child.remove();
  }

  function done(issues: ReturnType<Bench["apply"]>, says: string): void {
    const wrong = issues.filter(({ severity }) => severity !== "note").map(issueWords);
    bench.say(wrong.length > 0 ? wrong.join(" ") : says);
    // Tells the point anew, with the other button.
    label.parentElement?.querySelector<HTMLElement>(".live-ring")?.focus({ preventScroll: true });
  }
}
