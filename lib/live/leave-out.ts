// At a point of a chart that is a batch of the log: a button that leaves it out of the fits, with a reason, or puts it back.

import { type OutlinedBatch, outlinedBatches } from "../log/outline-batches.ts";
import { TOLD } from "./chart-reader.ts";
import { type Bench, issueWords } from "./edit-bench.ts";
import { button, h, setText } from "./edit-dom.ts";
import { batchTold, leaveBox } from "./leave-box.ts";
import { leave } from "./leave-edits.ts";

export interface LeavingOut {
  /** What was pressed while the live part was unpacked. */
  press(at: Element): void;
}

/** Listens for the labels of charts and for the button in them, also one of before the page woke, as long as the page stands. */
export function offerLeavingOut(bench: Bench): LeavingOut {
  document.addEventListener(TOLD, (event) => {
    if (event instanceof CustomEvent && event.target instanceof HTMLElement)
      offer(bench, event.target, String(event.detail));
  });
  const press = (at: Element): void => {
    const label = at.closest<HTMLElement>(".live-label");
    if (!label) return;
    const name = offer(bench, label, label.querySelector("p")?.textContent ?? "");
    if (name !== undefined) pressed(bench, label, name);
  };
  document.addEventListener("click", ({ target }) => {
    const at = target instanceof Element ? target.closest("[data-leave]") : null;
    if (at) press(at);
  });
  return { press };
}

function batchesOf(bench: Bench): readonly (OutlinedBatch & { readonly isOut: boolean })[] {
  return outlinedBatches(bench.places().outline).map((one) => ({
    ...one,
    isOut: one.keptOut !== undefined,
  }));
}

/** Name of the batch. */
function offer(bench: Bench, label: HTMLElement, words: string): string | undefined {
  const batch = batchTold(words, batchesOf(bench));
  leaveBox(label, batch);
  return batch?.name;
}

function pressed(bench: Bench, label: HTMLElement, name: string): void {
  const batch = batchesOf(bench).find((one) => one.name === name);
  if (batch?.isOut) done(bench, label, leave(bench, batch, undefined), `${name} is put back.`);
  else if (batch) ask(bench, label, batch);
}

function ask(bench: Bench, label: HTMLElement, batch: OutlinedBatch): void {
  const { name } = batch;
  const box = label.querySelector<HTMLElement>(".live-leave");
  if (!box) return;
  const input = h("input", {
    type: "text",
    placeholder: "why: what went wrong with it?",
    "aria-label": `Why ${name} is left out`,
    autocomplete: "off",
    enterkeyhint: "done",
    onkeydown: (event: KeyboardEvent) => {
      if (event.key === "Enter" && !event.isComposing) take();
    },
  });
  const told = h("p", { class: "live-fault", role: "alert", hidden: true });
  const wrong = (says: string): void => {
    setText(told, says);
    told.hidden = false;
    input.focus();
  };
  const take = (): void => {
    const why = input.value.trim();
    const before = bench.session.texts;
    const issues = why === "" ? [] : leave(bench, batch, why);
    // Refused: the words stay in the field.
    if (bench.session.texts === before) wrong(issues.map(issueWords).join(" ") || "Write why first.");
    else done(bench, label, issues, `${name} is left out: ${why}`);
  };
  // The label goes when the focus leaves it: the field has it before the button is gone.
  box.append(input, button("Leave it out", take), told);
  input.focus({ preventScroll: true });
  // Not under the bar at the foot of the window.
  box.scrollIntoView({ block: "nearest" });
  for (const child of [...box.children])
    if (child instanceof HTMLElement && child.dataset.leave !== undefined) child.remove();
}

function done(bench: Bench, label: HTMLElement, issues: ReturnType<Bench["apply"]>, says: string): void {
  const wrong = issues.filter(({ severity }) => severity !== "note").map(issueWords);
  bench.say(wrong.length > 0 ? wrong.join(" ") : says);
  // Tells the point anew, with the other button.
  label.parentElement?.querySelector<HTMLElement>(".live-ring")?.focus({ preventScroll: true });
}
