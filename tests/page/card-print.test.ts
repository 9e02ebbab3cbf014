// Each card prints on one page of A4 and of Letter, and nothing on it is cut off.

import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { cards, writeCard } from "../../lib/page/card.ts";
import { openBrowser, withoutBrowser } from "../browser/chromium.ts";

describe.skipIf(withoutBrowser)("a card on paper", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(cards.map((card) => [card.name, card] as const))(
    "%s",
    async (_, card) => {
      const tab = await browser.newPage();
      try {
        await tab.setContent(await writeCard(card));
        for (const format of ["A4", "Letter"] as const) {
          const pdf = (await tab.pdf({ format })).toString("latin1");
          expect(pdf.match(/\/Type\s*\/Page[^s]/g)?.length, format).toBe(1);
        }
        await tab.emulateMedia({ media: "print" });
        // A4 less the card's margins of 14 mm, CSS px.
        await tab.setViewportSize({ width: Math.floor((182 / 25.4) * 96), height: 1000 });
        const { wide, over } = await tab.evaluate(() => ({
          wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
          over: [...document.querySelectorAll("svg text")]
            .filter((label) => {
              const [own, drawing] = [
                label.getBoundingClientRect(),
                label.closest("svg")!.getBoundingClientRect(),
              ];
              return (
                own.left < drawing.left - 1 ||
                own.right > drawing.right + 1 ||
                own.bottom > drawing.bottom + 1
              );
            })
            .map((label) => label.textContent),
        }));
        expect(wide).toBeLessThanOrEqual(0);
        expect(over).toEqual([]);
        // A founder types what is seen: in YAML what goes on in the next line stands further in than its own line.
        const outside = await tab.evaluate(() =>
          [...document.querySelectorAll("pre>span")].flatMap((line) => {
            const text = line.firstChild as Text;
            const range = document.createRange();
            range.setStart(text, /^ */.exec(text.data)![0].length);
            range.setEnd(text, text.data.trimEnd().length);
            const [first, ...others] = [...range.getClientRects()];
            return others.some(({ left }) => left <= first!.left) ? [text.data] : [];
          }),
        );
        expect(outside).toEqual([]);
        expect(await tab.locator("pre>span").count()).toBeGreaterThan(1);
        // A pencil wants 6.5 mm.
        const rows = await tab.evaluate(() =>
          [...document.querySelectorAll(".boxes td")].map((box) => box.getBoundingClientRect().height),
        );
        expect(Math.min(...rows)).toBeGreaterThan((6.5 / 25.4) * 96);
      } finally {
        await tab.close();
      }
    },
    30_000,
  );
});
