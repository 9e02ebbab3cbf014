// What differs from the file, each with a way back.

import type { Bench } from "./edit-bench.ts";
import { button, h } from "./edit-dom.ts";
import { pathKey } from "./edit-places.ts";
import { counted } from "./edit-words.ts";
import type { LogChange } from "./history.ts";

export function changesList(bench: Bench): HTMLElement {
  const changes = bench.changes();
  return h(
    "section",
    { class: "live-changes", "aria-label": "Changes against the file" },
    h(
      "h3",
      {},
      changes.length === 0 ? "As in the file" : `${counted(changes.length, "change")} against the file`,
    ),
    changes.length > 0 && h("ul", {}, ...changes.map((change) => changeItem(bench, change))),
  );
}

function changeItem(bench: Bench, change: LogChange): HTMLElement {
  const words = changeWords(change);
  return h(
    "li",
    {},
    h("span", {}, words),
    button("Put back", () => bench.apply(change.back), {
      "aria-label": `Put back: ${words}`,
      "data-key": `back ${pathKey(change.path)}`,
    }),
  );
}

/** "W3, moisture, damp: 152.4 g, was 152.1 g" */
export function changeWords({ kind, words, was = "", now = "" }: LogChange): string {
  const text = (one: string): string => (one === "" ? "empty" : one);
  if (kind === "value") return `${words}: ${text(now)}, was ${text(was)}`;
  return kind === "added"
    ? `${words}: new${now === "" ? "" : `, ${now}`}`
    : `${words}: taken out${was === "" ? "" : `, ${was}`}`;
}
