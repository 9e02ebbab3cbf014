// A telephone: points of a chart are told by a tap, and no words speak of keys that are not there.

import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { filedTrial } from "./filed-batches.ts";
import { livePage } from "./live-edit-page.ts";

const address = "http://page.invalid/";

describe.skipIf(withoutBrowser)("a live page by finger", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test("a tap near a point tells it, one elsewhere takes it away; a figure is changed without a key", async () => {
    const html = await livePage("moisture-trial", filedTrial);
    const context = await browser.newContext({
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
      reducedMotion: "reduce",
    });
    try {
      const tab = await context.newPage();
      tab.setDefaultTimeout(60_000);
      const complaints: string[] = [];
      tab.on("console", (message) => complaints.push(message.text()));
      tab.on("pageerror", (error) => complaints.push(error.message));
      await tab.route("**", (route) =>
        route.request().url() === address
          ? route.fulfill({ body: html, contentType: "text/html; charset=utf-8" })
          : route.continue(),
      );
      await tab.goto(address);
      const figure = tab.locator("#figure-1");
      await figure.scrollIntoViewIfNeeded();
      const point = await figure.evaluate((box: HTMLElement) => {
        const at = (box.dataset.readings ?? "").split("\n")[2]!.split("|");
        const svg = box.querySelector<SVGSVGElement>(".narrow > svg")!;
        const { left, top, width } = svg.getBoundingClientRect();
        const scale = width / svg.viewBox.baseVal.width;
        return {
          x: left + Number(at[2]) * scale,
          y: top + Number(at[3]) * scale,
          words: at.slice(6).join("|"),
        };
      });
      const label = figure.locator(".live-label");
      await tab.touchscreen.tap(point.x + 9, point.y - 6);
      await label.waitFor();
      expect(await label.locator("p").first().textContent()).toBe(point.words);
      const box = (await label.boundingBox())!;
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(360);
      const button = (await label.getByRole("button").boundingBox())!;
      expect(button.height).toBeGreaterThanOrEqual(35);
      await tab.locator("h1").tap();
      await label.waitFor({ state: "hidden" });

      await tab.locator("main [data-at]").nth(2).tap();
      const field = tab.locator(".live-over input");
      await field.waitFor();
      const note = (await tab.locator("#live-cell-note").textContent()) ?? "";
      expect(note).toContain("Take it");
      expect(note).not.toMatch(/Enter|Escape|Tab/);
      await tab.getByRole("button", { name: "What if" }).tap();
      await tab.locator(".live-try").waitFor();
      expect(await tab.locator(".live-try").textContent()).not.toMatch(/Enter|Escape/);
      await tab.getByRole("button", { name: "Go on trying" }).tap();
      await tab.getByRole("button", { name: "The log", exact: true }).tap();
      expect(await tab.locator(".live-panel-inside > p").first().textContent()).not.toMatch(/Enter|Escape/);
      expect(complaints).toEqual([]);
    } finally {
      await context.close();
    }
  });
});
