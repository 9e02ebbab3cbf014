// A batch is left out of the fits at its point in a chart, with a reason, and put back: in Chromium, as a founder does it.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";

const file = join(import.meta.dirname, "../../data-demo/moisture-trial/seven-waters.yaml");
const text = readFileSync(file, "utf8");

const logged = (tab: Tab): Promise<string> =>
  tab.evaluate(
    () =>
      (globalThis as unknown as { mullbookSession: { texts: { text: string }[] } }).mullbookSession.texts[0]!
        .text,
  );

describe.skipIf(withoutBrowser)("leaving out at a chart", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each([1200, 360])(
    "%s px: asks for the reason, leaves out, puts back",
    async (width) => {
      const html = await livePage("moisture-trial", [{ name: "seven-waters.yaml", text }]);
      const { seen, complaints } = await openedLive(browser, html, { width }, async (tab) => {
        await wake(tab);
        await tab.keyboard.press("Escape");
        const label = tab.locator("#figure-1 .live-label");
        await tab.locator("#figure-1 .live-ring").focus();
        await tab.keyboard.press("ArrowRight");
        await tab.keyboard.press("ArrowRight");
        await label.getByRole("button", { name: "Leave W3 out of the fits" }).click();
        await tab.keyboard.press("Enter");
        const asked = await label.locator("[role=alert]").textContent();
        const untouched = await logged(tab);
        await tab.keyboard.type("the tube was wet");
        await tab.keyboard.press("Enter");
        await tab.locator("header", { hasText: "This is without W3" }).waitFor();
        const back = label.getByRole("button", { name: "Put W3 back into the fits" });
        await back.waitFor();
        const out = await logged(tab);
        const words = (await label.locator("p").first().textContent()) ?? "";
        const shot = process.env.SHOT;
        if (shot) await tab.screenshot({ path: `${shot}-${width}.png` });
        await back.click();
        await tab.locator("header", { hasText: "This is without W3" }).waitFor({ state: "detached" });
        return { asked, untouched, out, words, after: await logged(tab) };
      });
      expect(complaints).toEqual([]);
      expect(seen.asked).toBe("Write why first.");
      expect(seen.untouched).toBe(text);
      expect(seen.out).not.toBe(text);
      expect(seen.out.replace(/ {4}left out: the tube was wet\n/, "")).toBe(text);
      expect(seen.words).toMatch(/^W3, left out of the fit: moisture 3\.31/);
      expect(seen.after).toBe(text);
    },
    120_000,
  );
});
