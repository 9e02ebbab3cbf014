// A page as HTML: every tag closed in its order or by what the standard lets close it, no < or & that is not markup of ours, nothing that runs.

import { claim } from "./claim.ts";

const alone = new Set("meta link br hr img input col wbr source path use line rect circle".split(" "));
/** Closed by what follows: HTML Standard, 13.1.2.4, optional tags (from memory), as far as pages use them. */
const closedBy: { readonly [open: string]: readonly string[] } = {
  th: ["th", "td", "tr", "tbody", "tfoot"],
  td: ["th", "td", "tr", "tbody", "tfoot"],
  tr: ["tr", "tbody", "tfoot"],
  thead: ["tbody", "tfoot"],
  tbody: ["tbody", "tfoot"],
  tfoot: [],
  li: ["li"],
  dt: ["dt", "dd"],
  dd: ["dt", "dd"],
  p: ["p", "ul", "ol", "dl", "table", "section", "figure", "div", "h2", "h3", "details", "pre", "aside"],
};
const token =
  /<!doctype html>|<!--[\s\S]*?-->|<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:@.-]+(?:\s*=\s*(?:"[^"<]*"|'[^'<]*'|[^\s"'`=<>]+))?)*)\s*(\/?)>|[^<]+|</g;

export function htmlHolds(html: string): void {
  const open: string[] = [];
  let raw: string | undefined;
  for (const match of html.matchAll(token)) {
    const { index } = match;
    const [whole, close, name, attributes, selfClosed] = match;
    if (raw !== undefined) {
      if (close === "/" && name === raw) {
        raw = undefined;
        open.pop();
      }
      continue;
    }
    claim(whole !== "<", "a < that is no tag");
    if (name === undefined) {
      if (!whole.startsWith("<"))
        claim(
          !/&(?!#\d+;|#x[0-9a-f]+;|[a-z]+;)/i.test(whole),
          () => `a & that is no entity: ${whole.slice(0, 80)}`,
        );
      continue;
    }
    claim(!/^(script|iframe|object|embed|xx-markup)$/i.test(name), `an element ${name}`);
    claim(!/\son\w+\s*=/i.test(attributes ?? ""), () => `an attribute that runs: ${whole.slice(0, 120)}`);
    claim(
      !/=\s*["']?\s*(javascript|vbscript):/i.test(attributes ?? ""),
      () => `a link that runs: ${whole.slice(0, 120)}`,
    );
    if (close === "/") {
      while (open.at(-1) !== name && closedBy[open.at(-1) ?? ""]) open.pop();
      const last = open.pop();
      claim(
        last === name,
        () => `</${name}> closes <${last}>: ${html.slice(Math.max(0, index - 160), index + 20)}`,
      );
    } else if (selfClosed !== "/" && !alone.has(name)) {
      while (closedBy[open.at(-1) ?? ""]?.includes(name)) open.pop();
      open.push(name);
      if (name === "style") raw = name;
    }
  }
  claim(open.length === 0, `left open: ${open.join(", ")}`);
}
