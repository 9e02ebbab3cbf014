// Rules of access on the live page of every notebook, on a telephone, light and dark: the log open beside it, a faulty
// entry, and a conflict that waits for an answer.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import type { LogText } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoLogs } from "./demo-pages.ts";
import { livePage } from "./live-edit-page.ts";
import { wake } from "./open-live.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const address = "http://127.0.0.1:4322/";
const keep = { kind: "server", save: `${address}save`, events: `${address}events`, others: [] } as const;

/** One log of each notebook where DEMOS=all. */
const pages = demoLogs().filter(
  ({ notebook }, i, all) =>
    notebook !== all[i - 1]?.notebook && (process.env.DEMOS === "all" || notebook === "mulling-trial"),
);
const titled = (text: string, title: string): string => text.replace(/^title:.*$/m, `title: ${title}`);

describe.skipIf(withoutBrowser)("access to a live page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(pages)(
    "$notebook, $name: log open, faulty entry, conflict",
    async ({ notebook, name, text, files }) => {
      const texts: LogText[] = [
        { name, text },
        ...Object.entries(files).map(([file, csv]) => ({ name: file, text: csv })),
      ];
      const theirs = texts.map((one, i) => (i === 0 ? { ...one, text: titled(text, "Theirs") } : one));
      const html = await livePage(notebook, texts, keep);
      for (const colorScheme of ["light", "dark"] as const) {
        const context = await browser.newContext({
          viewport: { width: 360, height: 740 },
          colorScheme,
          reducedMotion: "reduce",
        });
        try {
          const tab = await context.newPage();
          tab.setDefaultTimeout(60_000);
          await tab.route("**", (route) => {
            const url = route.request().url();
            if (url === address)
              return route.fulfill({ body: html, contentType: "text/html; charset=utf-8" });
            if (url === keep.save) return route.fulfill({ status: 409, json: { kind: "changed", theirs } });
            return url.startsWith("blob:") ? route.continue() : route.abort();
          });
          await tab.goto(address);
          await wake(tab);
          await opened(tab);
          const mine = texts.map((one, i) => (i === 0 ? { ...one, text: titled(text, "Mine") } : one));
          await tab.evaluate(
            (now) =>
              (
                globalThis as unknown as { mullbookSession: { replace(texts: object[]): void } }
              ).mullbookSession.replace(now),
            mine,
          );
          const figures = tab.locator(".live-panel .live-line > input");
          const at = await figures.evaluateAll((all) =>
            all.findIndex((one) => /^\d+(\.\d+)? ?(g|kg|mm|%)/.test((one as HTMLInputElement).value)),
          );
          if (at >= 0) {
            await figures.nth(at).fill("1,5 x");
            await figures.nth(at).press("Enter");
            await tab.locator(".live-panel [aria-invalid=true]").first().waitFor();
          }
          await tab.getByRole("button", { name: "Save", exact: true }).click();
          await tab.getByRole("button", { name: "Show the differences" }).click();
          await tab.locator(".live-differences pre").first().waitFor();
          await tab.locator("[aria-busy=true]").first().waitFor({ state: "detached" });
          await tab.evaluate(axe);
          const violations = await tab.evaluate(
            "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.slice(0, 3).map((n) => n.html.slice(0, 200)).join(' ')))",
          );
          expect({ colorScheme, violations }).toEqual({ colorScheme, violations: [] });
          expect(await tab.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360);
        } finally {
          await context.close();
        }
      }
    },
    180_000,
  );
});

/** Folds of the log, three deep. */
async function opened(tab: Tab): Promise<void> {
  for (let deep = 0; deep < 3; deep++) {
    await tab.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>(".live-panel details"))
        fold.open = true;
    });
    await tab.waitForTimeout(150);
  }
}
