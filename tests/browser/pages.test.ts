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

  test.each(everyWidth)(
    "%s, %d px: loads nothing, says nothing, does not scroll sideways",
    async (_, width, { html }) => {
      const { seen, complaints } = await opened(browser, html, { width }, async (tab) => {
        const sideways = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;
        const closed = await tab.evaluate(sideways);
        await openFolds(tab);
        return [closed, await tab.evaluate(sideways)];
      });
      expect(complaints).toEqual([]);
      expect(seen).toEqual([0, 0]);
    },
  );

  test.each(everyWidth)(
    "%s, %d px: each chart is drawn once, its words apart, whole and large enough",
    async (_, width, { html }) => {
      const { seen } = await opened(browser, html, { width }, (tab) => tab.evaluate(drawnWords, 1));
      expect(seen.length).toBeGreaterThan(0);
      for (const { figure, shown, count, overlaps, cut, smallestPx } of seen) {
        expect({ figure, shown, overlaps, cut }).toEqual({
          figure,
          shown: [width > 640 ? "wide" : "narrow"],
          overlaps: [],
          cut: [],
        });
        expect(count).toBeGreaterThan(2);
        expect(smallestPx, figure).toBeGreaterThanOrEqual(10.99);
      }
    },
  );

  const twoWidths = pages.flatMap((page) => [1200, 360].map((width) => [page.name, width, page] as const));
  const schemes = twoWidths.flatMap(([name, width, page]) =>
    [false, true].map((dark) => [name, width, dark, page] as const),
  );

  test.each(schemes)(
    "%s, %d px, dark: %s: every word stands 4.5 : 1 off its ground",
    async (_, width, dark, { html }) => {
      const { seen } = await opened(browser, html, { width, dark }, async (tab) => {
        await openFolds(tab);
        const height = await tab.evaluate(() => document.documentElement.scrollHeight);
        await tab.setViewportSize({ width, height });
        return tab.evaluate(contrasts);
      });
      expect(seen.filter(({ drawn }) => drawn).length).toBeGreaterThan(20);
      expect(seen.filter(({ drawn }) => !drawn).length).toBeGreaterThan(100);
      expect(seen.filter(({ ratio }) => ratio < 4.5)).toEqual([]);
    },
  );

  // axe-core's rules for WCAG 2.2 A and AA and its best practices. A dark page has the same elements; its colours
  // are the test above.
  test.each(twoWidths)(
    "%s, %d px: breaks no rule of access",
    async (_, width, { html }) => {
      const { seen } = await opened(browser, html, { width }, async (tab) => {
        await openFolds(tab);
        await tab.evaluate(axe);
        return tab.evaluate(
          "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
        );
      });
      expect(seen).toEqual([]);
    },
    60_000,
  );
});
