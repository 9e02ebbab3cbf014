// What a text of a log must not have become in a page.

import type { Page as Tab } from "playwright-core";

export async function looked(tab: Tab) {
  await tab.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
  return tab.evaluate(() => ({
    strange: [
      ...document.querySelectorAll(
        "iframe, img, base, link, object, embed, form, foreignObject, image, use, meta[http-equiv=refresh], body style",
      ),
      ...[...document.querySelectorAll("a")].filter((a) =>
        /^\s*javascript/i.test(a.getAttribute("href") ?? ""),
      ),
    ].map((one) => one.outerHTML.slice(0, 200)),
    handlers: [...document.querySelectorAll("*")].flatMap((one) =>
      [...one.attributes].map(({ name }) => name).filter((name) => name.startsWith("on")),
    ),
    turning: [...document.querySelectorAll("title, body > header, main, body > footer, .live-furniture")]
      .map((part) => part.textContent ?? "")
      .filter((text) => /[\u202a-\u202e\u2066\u2067]/.test(text)).length,
    // A word to the left outside an isolate would draw the figures behind it to its own side.
    bare: [...document.querySelectorAll("body > header, main, body > footer, .live-furniture")]
      .map((part) => part.textContent ?? "")
      .join("\n")
      .match(/(?<!\u2068[^\u2069]*)[\u05d0-\u05ea]/u)?.index,
    sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    words: document.body.textContent?.length ?? 0,
  }));
}
export const CLEAN = { strange: [], handlers: [], turning: 0, bare: undefined };
