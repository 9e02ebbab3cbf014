// A page as HTML: every tag closed in its order, no < or & that is not markup of ours, nothing that runs.

import { claim } from "./claim.ts";

const alone = new Set("meta link br hr img input col wbr source path use line rect circle".split(" "));
const token =
  /<!doctype html>|<!--[\s\S]*?-->|<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:@.-]+(?:\s*=\s*(?:"[^"<]*"|'[^'<]*'))?)*)\s*(\/?)>|[^<]+|</g;

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
      !/=\s*["']\s*(javascript|vbscript):/i.test(attributes ?? ""),
      () => `a link that runs: ${whole.slice(0, 120)}`,
    );
    if (close === "/") {
      const last = open.pop();
      claim(
        last === name,
        () => `</${name}> closes <${last}>: ${html.slice(Math.max(0, index - 160), index + 20)}`,
      );
    } else if (selfClosed !== "/" && !alone.has(name)) {
      open.push(name);
      if (name === "style") raw = name;
    }
  }
  claim(open.length === 0, `left open: ${open.join(", ")}`);
}
