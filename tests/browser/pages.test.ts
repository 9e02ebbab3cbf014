// The demo pages in a real browser: nothing scrolls sideways, overlaps, hides or loads.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { type Contrast, contrasts } from "./contrast.ts";
import { chartsOf, demoPages } from "./demo-pages.ts";
import { drawnWords } from "./drawn-text.ts";
import { opened, openFolds } from "./open-page.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const pages = (await demoPages()).map((page) => [page.name, page] as const);
/** Its narrow drawings are another set; the middle one shows the wide ones at their smallest. */
const widths = [1200, 800, 360];

test("there are demo pages to look at, with charts", () => {
  expect(pages.length).toBeGreaterThanOrEqual(3);
  expect(pages.filter(([, page]) => chartsOf(page) > 1).length).toBeGreaterThan(pages.length / 2);
});

test("every demo page is small: less than 150 KB, drawings and all; a write-up, with its log in it, less than 180", () => {
  for (const [name, { html }] of pages)
    expect(Buffer.byteLength(html) / 1000, name).toBeLessThan(name.startsWith("write-up") ? 180 : 150);
});

describe.skipIf(withoutBrowser)("a demo page in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  // A page is opened once and looked at in every width: opening and laying it out take most of the time.
  test.each(pages)(
    "%s: loads nothing, scrolls not sideways, charts whole, words 4.5 : 1, no rule of access broken",
    async (_, page) => {
      const { html } = page;
      const { seen, complaints } = await opened(browser, html, {}, async (tab) => {
        const closed = await inEveryWidth(tab, async () => ({
          sideways: await tab.evaluate(sideways),
          charts: await tab.evaluate(drawnWords, 1),
        }));
        await openFolds(tab);
        const open = await inEveryWidth(tab, async (width) => ({
          sideways: await tab.evaluate(sideways),
          // The middle width has the colours and the elements of the wide one.
          words: width === 800 ? [] : [await contrastsIn(tab, "light"), await contrastsIn(tab, "dark")],
        }));
        // Last and narrowest, where what is to be touched lies closest. A dark page has the same elements.
        return { closed, open, broken: await rulesBroken(tab) };
      });
      expect(complaints).toEqual([]);
      for (const { width, sideways, charts } of seen.closed) {
        expect({ width, sideways }).toEqual({ width, sideways: 0 });
        expect(charts).toHaveLength(chartsOf(page));
        for (const { figure, shown, count, overlaps, cut, smallestPx } of charts) {
          expect({ width, figure, shown, overlaps, cut }).toEqual({
            width,
            figure,
            shown: [width > 640 ? "wide" : "narrow"],
            overlaps: [],
            cut: [],
          });
          expect(count).toBeGreaterThan(2);
          expect(smallestPx, figure).toBeGreaterThanOrEqual(10.99);
        }
      }
      for (const { width, sideways, words } of seen.open) {
        expect({ width, sideways }).toEqual({ width, sideways: 0 });
        for (const said of words) {
          // No word of a drawing is missed.
          const { charts } = seen.closed.find((one) => one.width === width)!;
          const drawn = charts.reduce((sum, { count }) => sum + count, 0);
          expect(said.filter((one) => one.drawn).length).toBeGreaterThanOrEqual(drawn);
          expect(said.filter(({ drawn }) => !drawn).length).toBeGreaterThan(100);
          expect(said.filter(({ ratio }) => ratio < 4.5)).toEqual([]);
        }
      }
      expect(seen.open.flatMap(({ words }) => words)).toHaveLength(4);
      expect(seen.broken).toEqual([]);
    },
    120_000,
  );
});

async function inEveryWidth<T>(
  tab: Tab,
  look: (width: number) => Promise<T>,
): Promise<readonly (T & { readonly width: number })[]> {
  const seen: (T & { readonly width: number })[] = [];
  for (const width of widths) {
    await tab.setViewportSize({ width, height: 900 });
    seen.push({ width, ...(await look(width)) });
  }
  return seen;
}

function sideways(): number {
  return document.documentElement.scrollWidth - document.documentElement.clientWidth;
}

async function contrastsIn(tab: Tab, colorScheme: "light" | "dark"): Promise<readonly Contrast[]> {
  await tab.emulateMedia({ colorScheme });
  return tab.evaluate(contrasts);
}

/** axe-core's rules for WCAG 2.2 A and AA and its best practices, but for contrast, which contrasts() looks at. */
async function rulesBroken(tab: Tab): Promise<readonly string[]> {
  await tab.evaluate(axe);
  return tab.evaluate(
    `axe.run({ rules: { "color-contrast": { enabled: false } }, resultTypes: ["violations"] })
      .then((all) => all.violations.map((one) => one.id + ": " + one.nodes.map((n) => n.html).join(" ")))`,
  );
}
