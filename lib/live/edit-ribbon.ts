// Says over the page, on the screen and on paper, that figures are tried and not logged.

import type { Bench } from "./edit-bench.ts";
import { h } from "./edit-dom.ts";
import { pathWords } from "./edit-words.ts";

export function whatIfRibbon(bench: Bench): { readonly element: HTMLElement; refresh(): void } {
  const element = h("aside", {
    class: "live-ribbon",
    "data-live": true,
    "aria-label": "What if",
    hidden: true,
  });
  return {
    element,
    refresh: () => {
      const { whatIfs } = bench.session;
      element.hidden = whatIfs.length === 0;
      const tried = whatIfs.map(({ at, text }) => {
        const path = bench.places().at(at);
        return `${path ? pathWords(path) : "a figure"} ${text}`;
      });
      element.replaceChildren(
        h(
          "p",
          {},
          h("strong", {}, "What if"),
          ` ${tried.join("; ")}: this page is worked out with tried figures, not with the log's.`,
        ),
      );
    },
  };
}
