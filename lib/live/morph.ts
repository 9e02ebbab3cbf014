// Brings the page's elements into line with new markup and keeps what is the reader's: focus, scrolling, open folds.

import * as morphdomModule from "morphdom";
import type { HtmlSection } from "../page/html-parts.ts";

type Morphdom = typeof morphdomModule.default;
/** The package's types take it for CommonJS, in which its function is one step deeper. */
const morphdom = morphdomModule.default as unknown as Morphdom extends { readonly default: infer F }
  ? F
  : Morphdom;

export interface Morphing {
  /** What is done to the place of a drawing: its element and that of the new markup. */
  readonly drawing: (from: HTMLElement, to: HTMLElement) => void;
}

/** The element becomes as the markup says. Furniture (data-live) is left where it is; so is what is being edited (data-live-keep), but for its place in the log. */
export function morph(element: Element, markup: string, { drawing }: Morphing): void {
  morphdom(element, elementOf(markup), {
    getNodeKey: (node) => {
      if (!(node instanceof Element)) return undefined;
      if (node.hasAttribute("data-live")) return "furniture";
      return node.id === "" ? undefined : node.id;
    },
    onBeforeNodeDiscarded: (node) => !(node instanceof Element && node.hasAttribute("data-live")),
    onBeforeElUpdated: (from, to) => {
      if (from.hasAttribute("data-live") || to.hasAttribute("data-same")) return false;
      if (from.hasAttribute("data-live-keep")) {
        if (to.dataset.at !== undefined) from.dataset.at = to.dataset.at;
        return false;
      }
      // What is told of its places is told later.
      if (from.dataset.readings !== undefined && to.dataset.readings === undefined)
        to.dataset.readings = from.dataset.readings;
      if (to.dataset.drawn !== undefined) {
        if (to.dataset.drawn !== "" && from.dataset.drawn !== to.dataset.drawn) drawing(from, to);
        return false;
      }
      if (from instanceof HTMLDetailsElement && from.open) to.setAttribute("open", "");
      if (from.isEqualNode(to)) return false;
      if (!from.matches("details.chart-data:not([open])")) return true;
      putWhole(from, to);
      return false;
    },
  });
}

/** Data that nobody has opened, often a hundred rows: nothing of the reader's is in them but the focus on their name. */
function putWhole(from: Element, to: Element): void {
  const name = from.firstChild;
  const [newName, ...others] = to.childNodes;
  if (!name || !newName || !name.isEqualNode(newName)) {
    from.replaceChildren(...to.childNodes);
    return;
  }
  while (from.lastChild !== name) from.lastChild!.remove();
  from.append(...others);
}

/** Markup of main in which a section that has not changed is but a sign of itself. */
export function mainMarkup(sections: readonly HtmlSection[], before: ReadonlyMap<string, string>): string {
  const parts = sections.map(({ id, html }) =>
    before.get(id) === html ? `<section id="${id}" data-same></section>` : html,
  );
  return `<main>\n${parts.join("\n")}\n</main>`;
}

/** The markup's first element, inert: nothing in it loads or runs. */
function elementOf(markup: string): Element {
  const template = document.createElement("template");
  template.innerHTML = markup;
  return template.content.firstElementChild!;
}
