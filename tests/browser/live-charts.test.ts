// Charts of a live page tell their figures: by pointer, key and tap, before and after the live part has begun.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import type { LogText } from "../../lib/log/types.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoLogs } from "./demo-pages.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

function textsOf(notebook: string): readonly LogText[] {
  const { name, text, files } = demoLogs().find((log) => log.notebook === notebook)!;
  return [{ name, text }, ...Object.entries(files).map(([file, csv]) => ({ name: file, text: csv }))];
}

/** The label of a figure, and where ring and label stand. */
async function toldAt(tab: Tab, figure: number) {
  return tab.evaluate((number) => {
    const box = document.getElementById(`figure-${number}`)!;
    const label = box.querySelector<HTMLElement>(".live-label")!;
    const ring = box.querySelector<HTMLElement>(".live-ring")!;
    const [a, b] = [ring.getBoundingClientRect(), label.getBoundingClientRect()];
    const x = a.left + a.width / 2;
    const y = a.top + a.height / 2;
    return {
      words: label.hidden ? "" : (label.querySelector("p")!.textContent ?? ""),
      said: ring.getAttribute("aria-valuetext") ?? "",
      covers: !label.hidden && x >= b.left && x <= b.right && y >= b.top && y <= b.bottom,
      within: label.hidden || (b.left >= 0 && b.right <= innerWidth),
      row: box.nextElementSibling?.querySelector("tr.live-read")?.textContent ?? "",
      x,
      y,
    };
  }, figure);
}

describe.skipIf(withoutBrowser)("the charts of a live page in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each([1200, 360])(
    "%s px: walked by keys, each point is told beside it, with its row",
    async (width) => {
      const html = await livePage("moisture-trial", textsOf("moisture-trial"));
      const { seen, complaints } = await openedLive(browser, html, { width }, async (tab) => {
        const ring = tab.locator("#figure-1 .live-ring");
        const drawing = await tab.locator("#figure-1 [role=img]").innerHTML();
        await ring.focus();
        const all: Awaited<ReturnType<typeof toldAt>>[] = [await toldAt(tab, 1)];
        for (let i = 0; i < 8; i++) {
          await tab.keyboard.press("ArrowRight");
          all.push(await toldAt(tab, 1));
        }
        await tab.keyboard.press("ArrowDown");
        const below = await toldAt(tab, 1);
        await tab.keyboard.press("Enter");
        const onRow = await tab.evaluate(() => document.activeElement?.textContent ?? "");
        await tab.keyboard.press("ArrowUp");
        const rowBefore = await toldAt(tab, 1);
        await tab.keyboard.press("Escape");
        await tab.keyboard.press("Escape");
        return {
          all,
          below,
          onRow,
          rowBefore,
          after: (await toldAt(tab, 1)).words,
          same: drawing === (await tab.locator("#figure-1 [role=img]").innerHTML()),
          woken: await tab.evaluate(() => "mullbookSession" in globalThis),
        };
      });
      expect(complaints).toEqual([]);
      expect(seen.woken).toBe(false);
      expect(seen.same).toBe(true);
      expect(seen.all[0]!.words).toMatch(
        /^W1: moisture 2\.69 ± 0\.08 % of damp mass; compactability 34\.2 ± 0\.6/,
      );
      expect(new Set(seen.all.map(({ words }) => words)).size).toBe(9);
      for (const { words, said, covers, within, row } of seen.all) {
        expect(said).toBe(words);
        expect(covers).toBe(false);
        expect(within).toBe(true);
        expect(row).toContain(words.split(":")[0]!);
      }
      expect(seen.below.words).toMatch(/permeability/);
      expect(seen.onRow).toBe(seen.below.row);
      expect(seen.rowBefore.words).not.toBe(seen.below.words);
      expect(seen.after).toBe("");
    },
  );

  test("by mouse and tap, at the place that the drawing has; from a row of the data back to the point", async () => {
    const html = await livePage("grain-fineness", textsOf("grain-fineness"));
    const { seen, complaints } = await openedLive(browser, html, { width: 800 }, async (tab) => {
      const figure = tab.locator("figure").nth(1);
      const number = Number((await figure.getAttribute("id"))!.replace("figure-", ""));
      await figure.scrollIntoViewIfNeeded();
      // The third circle of the drawing, wherever it stands: the label has to be that of the third sieve.
      const circle = figure.locator(".wide circle").nth(2);
      const box = (await circle.boundingBox())!;
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await tab.mouse.move(x + 5, y + 4);
      const hovered = await toldAt(tab, number);
      const awayBy = Math.hypot(hovered.x - x, hovered.y - y);
      await tab.mouse.move(3, 3);
      const left = await toldAt(tab, number);
      await tab.mouse.click(x - 6, y);
      const clicked = await toldAt(tab, number);
      const focused = await tab.evaluate(() => document.activeElement?.className ?? "");
      await tab.keyboard.press("Tab");
      await tab.locator("figure + details").nth(1).locator("summary").click();
      await tab.locator("figure + details").nth(1).locator("tbody tr").nth(1).hover();
      return { hovered, awayBy, left, clicked, focused, fromRow: await toldAt(tab, number) };
    });
    expect(complaints).toEqual([]);
    expect(seen.hovered.words).toMatch(/sieve No\. 60$/);
    expect(seen.awayBy).toBeLessThan(1.5);
    expect(seen.left.words).toBe("");
    expect(seen.clicked.words).toBe(seen.hovered.words);
    expect(seen.focused).toBe("live-ring");
    expect(seen.fromRow.words).toMatch(/sieve No\. 40$/);
  });

  test("once a figure is changed, the points tell the new figures", async () => {
    const texts = textsOf("moisture-trial");
    const html = await livePage("moisture-trial", texts);
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      await tab.locator("#figure-1 .live-ring").focus();
      const before = (await toldAt(tab, 1)).words;
      await wake(tab);
      await tab.evaluate(async () => {
        const { mullbookSession: session } = globalThis as unknown as {
          mullbookSession: {
            texts: readonly { name: string; text: string }[];
            edit(edit: object): unknown;
          };
        };
        const settled = new Promise((resolve) =>
          document.addEventListener("mullbook:settled", resolve, { once: true }),
        );
        const { name, text } = session.texts[0]!;
        const found = /W1:[\s\S]*?damp: (\d+\.\d+ g)/.exec(text)!;
        const offset = found.index + found[0].length - found[1]!.length;
        const at = { file: name, offset, length: found[1]!.length };
        session.edit({ kind: "write", at, text: `${Number.parseFloat(found[1]!) + 0.5} g` });
        await settled;
      });
      await tab.locator("#figure-1 .live-ring").focus();
      return { before, after: (await toldAt(tab, 1)).words };
    });
    expect(complaints).toEqual([]);
    expect(seen.after).toMatch(/^W1: moisture/);
    expect(seen.after).not.toBe(seen.before);
  });

  test.each([
    ["moisture-trial", 1200, "light"],
    ["diary", 360, "dark"],
  ] as const)(
    "axe finds nothing wrong while a point is told: %s at %s px, %s",
    async (notebook, width, colours) => {
      const html = await livePage(notebook, textsOf(notebook));
      const { seen, complaints } = await openedLive(browser, html, { width }, async (tab) => {
        await tab.emulateMedia({ colorScheme: colours, reducedMotion: "reduce" });
        await tab.locator("#figure-1 .live-ring").focus();
        await tab.evaluate(axe);
        return tab.evaluate(
          "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
        );
      });
      expect(complaints).toEqual([]);
      expect(seen).toEqual([]);
    },
  );
});
