// A batch is left out of the fits at its point in a chart, with a reason, and put back: in Chromium, as a founder does it.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type LogText, readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { filedTrial } from "./filed-batches.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive } from "./open-live.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const file = join(import.meta.dirname, "../../data-demo/moisture-trial/seven-waters.yaml");
const typedTrial: readonly LogText[] = [{ name: "seven-waters.yaml", text: readFileSync(file, "utf8") }];
/** Everything that YAML, CSV and HTML could take for their own. */
const HOSTILE = `the "tube", was: #wet <img src=x onerror=alert(1)> 'so' {it}`;
/** A CSV file takes no marks that turn the line round. */
const TURNED = `${HOSTILE} \u202eis`;

const textsOf = (tab: Tab): Promise<string[]> =>
  tab.evaluate(() =>
    (
      globalThis as unknown as { mullbookSession: { texts: readonly { text: string }[] } }
    ).mullbookSession.texts.map(({ text }) => text),
  );
const reasonIn = ([log, ...csv]: readonly LogText[], texts: readonly string[]): string | undefined => {
  const files = Object.fromEntries(csv.map(({ name }, i) => [name, texts[i + 1]!]));
  const { value } = readLog(texts[0]!, { name: log!.name, files });
  return value?.batches.find(({ name }) => name === "W3")?.keptOut?.why;
};

describe.skipIf(withoutBrowser)("leaving out at a chart", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each([
    { what: "typed in the log", texts: typedTrial, width: 360, why: TURNED },
    { what: "in rows of a CSV file", texts: filedTrial, width: 1200, why: HOSTILE },
  ])(
    "$what, $width px: offered as the page opens, asks for the reason, leaves out, undone and done, put back",
    async ({ texts, width, why }) => {
      const html = await livePage("moisture-trial", texts);
      const was = texts.map(({ text }) => text);
      const { seen, complaints } = await openedLive(browser, html, { width }, async (tab) => {
        await tab.emulateMedia({ reducedMotion: "reduce" });
        const label = tab.locator("#figure-1 .live-label");
        await tab.locator("#figure-1 .live-ring").focus();
        await tab.keyboard.press("ArrowRight");
        await tab.keyboard.press("ArrowRight");
        const asleep = await tab.evaluate(() => !("mullbookSession" in globalThis));
        await label.getByRole("button", { name: "Leave out of the fits: W3" }).click();
        const field = label.getByRole("textbox", { name: "Why W3 is left out" });
        await field.waitFor();
        await tab.keyboard.press("Enter");
        const asked = await label.locator("[role=alert]").textContent();
        const untouched = await textsOf(tab);
        await tab.evaluate(axe);
        const wrong = await tab.evaluate(
          "axe.run({ include: [['.live-label']] }).then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
        );
        await field.fill(why);
        await tab.keyboard.press("Enter");
        const header = tab.locator("header", { hasText: "This is without W3" });
        await header.waitFor();
        const back = label.getByRole("button", { name: "Put back into the fits: W3" });
        await back.waitFor();
        const out = await textsOf(tab);
        const words = (await label.locator("p").first().textContent()) ?? "";
        const state = await tab.locator(".live-state").textContent();
        await tab.keyboard.press("Control+z");
        await header.waitFor({ state: "detached" });
        const undone = await textsOf(tab);
        await tab.keyboard.press("Control+Shift+Z");
        await header.waitFor();
        const again = await textsOf(tab);
        const says = await header.textContent();
        await back.click();
        await header.waitFor({ state: "detached" });
        return {
          asleep,
          asked,
          untouched,
          wrong,
          out,
          words,
          state,
          undone,
          again,
          says,
          after: await textsOf(tab),
        };
      });
      expect(complaints).toEqual([]);
      expect(seen.asleep).toBe(true);
      expect(seen.asked).toBe("Write why first.");
      expect(seen.untouched).toEqual(was);
      expect(seen.wrong).toEqual([]);
      expect(reasonIn(texts, seen.out)).toBe(why);
      expect(seen.words).toMatch(/^W3, left out of the fit: moisture 3\.3/);
      expect(seen.state).toBe("1 change, not saved");
      expect(seen.undone).toEqual(was);
      expect(seen.again).toEqual(seen.out);
      expect(seen.says).toContain("<img src=x onerror=alert(1)>");
      expect(seen.says).not.toContain("\u202e");
      expect(seen.after).toEqual(was);
    },
    120_000,
  );

  test("a slow press, in which the page wakes, is one press", async () => {
    const html = await livePage("moisture-trial", typedTrial);
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      await tab.locator("#figure-1 .live-ring").focus();
      await tab.keyboard.press("ArrowRight");
      const press = tab.locator("#figure-1 .live-label [data-leave]");
      await press.scrollIntoViewIfNeeded();
      const { x, y, width, height } = (await press.boundingBox())!;
      await tab.mouse.move(x + width / 2, y + height / 2);
      await tab.mouse.down();
      while (!(await tab.evaluate(() => "mullbookSession" in globalThis))) await tab.waitForTimeout(50);
      await tab.mouse.up();
      const field = tab.locator("#figure-1 .live-label input");
      await field.waitFor();
      return field.getAttribute("aria-label");
    });
    expect(complaints).toEqual([]);
    expect(seen).toMatch(/^Why W2 is left out$/);
  }, 60_000);
});
