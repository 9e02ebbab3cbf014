// The demo pages in a real browser: nothing scrolls sideways, overlaps, hides or loads.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { contrasts } from "./contrast.ts";
import { demoPages } from "./demo-pages.ts";
import { drawnWords } from "./drawn-text.ts";
import { opened, openFolds } from "./open-page.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const pages = await demoPages();
const widths = [1200, 800, 360];
const everyWidth = pages.flatMap((page) => widths.map((width) => [page.name, width, page] as const));

test("there are demo pages to look at, with charts", () => {
  expect(pages.length).toBeGreaterThanOrEqual(3);
  for (const { html } of pages) expect(html).toContain("<figure");
});

describe.skipIf(withoutBrowser)("a demo page in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);
  afterAll(() => browser?.close());

  // A page is opened once for each width, and everything is looked at there: opening takes most of the time.
  test.each(everyWidth)(
    "%s, %d px: loads nothing, scrolls not sideways, charts whole, words 4.5 : 1, no rule of access broken",
    async (_, width, { html }) => {
      // The middle width has the colours and the elements of the wide one.
      const whole = width !== 800;
      const { seen, complaints } = await opened(browser, html, { width }, async (tab) => {
        const sideways = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;
        const closed = await tab.evaluate(sideways);
        const charts = await tab.evaluate(drawnWords, 1);
        await openFolds(tab);
        const open = await tab.evaluate(sideways);
        if (!whole) return { sideways: [closed, open], charts, words: [], broken: [] };
        // axe-core's rules for WCAG 2.2 A and AA and its best practices. A dark page has the same elements.
        await tab.evaluate(axe);
        const broken = await tab.evaluate(
          "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
        );
        const height = await tab.evaluate(() => document.documentElement.scrollHeight);
        await tab.setViewportSize({ width, height });
        const light = await tab.evaluate(contrasts);
        await tab.emulateMedia({ colorScheme: "dark" });
        return { sideways: [closed, open], charts, words: [light, await tab.evaluate(contrasts)], broken };
      });
      expect(complaints).toEqual([]);
      expect(seen.sideways).toEqual([0, 0]);
      expect(seen.charts.length).toBeGreaterThan(0);
      for (const { figure, shown, count, overlaps, cut, smallestPx } of seen.charts) {
        expect({ figure, shown, overlaps, cut }).toEqual({
          figure,
          shown: [width > 640 ? "wide" : "narrow"],
          overlaps: [],
          cut: [],
        });
        expect(count).toBeGreaterThan(2);
        expect(smallestPx, figure).toBeGreaterThanOrEqual(10.99);
      }
      expect(seen.words).toHaveLength(whole ? 2 : 0);
      for (const words of seen.words) {
        expect(words.filter(({ drawn }) => drawn).length).toBeGreaterThan(20);
        expect(words.filter(({ drawn }) => !drawn).length).toBeGreaterThan(100);
        expect(words.filter(({ ratio }) => ratio < 4.5)).toEqual([]);
      }
      expect(seen.broken).toEqual([]);
    },
    120_000,
  );
});
