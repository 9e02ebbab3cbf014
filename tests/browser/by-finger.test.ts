// A telephone: points of a chart are told by a tap, and no words speak of keys that are not there.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { beginLog, type LogText } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { filedTrial } from "./filed-batches.ts";
import { livePage } from "./live-edit-page.ts";

const file = join(import.meta.dirname, "../../data-demo/moisture-trial/seven-waters.yaml");
const typedTrial: readonly LogText[] = [{ name: "seven-waters.yaml", text: readFileSync(file, "utf8") }];
const address = "http://page.invalid/";

describe.skipIf(withoutBrowser)("a live page by finger", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test("a tap near a point tells it, one elsewhere takes it away; a figure is changed without a key", async () => {
    await byFinger(filedTrial, async (tab) => {
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
    });
  });

  test("a first tap takes a figure whole; what was typed is what is tried; a mistake in a new batch is shown", async () => {
    await byFinger(typedTrial, async (tab) => {
      const text = (): Promise<string> => tab.evaluate("mullbookSession.texts[0].text");
      const field = (key: string) => tab.locator(`.live-panel [data-key='${key}']`);
      await tab
        .locator("main [data-at]", { hasText: /^0\.\d+$/ })
        .first()
        .tap();
      await tab.locator(".live-over input").waitFor();
      await tab.keyboard.type("433 g");
      await tab.getByRole("button", { name: "What if" }).tap();
      const tried = tab.locator(".live-try input[type=text]");
      await tried.waitFor();
      expect(await tried.inputValue()).toBe("433 g");
      await tab.locator(".live-ribbon", { hasText: "433 g" }).waitFor();
      expect(await text()).not.toContain("433 g");
      await tab
        .locator(".live-try")
        .getByRole("button", { name: /^Back to/ })
        .tap();

      await tab.getByRole("button", { name: "The log", exact: true }).tap();
      await field('fold ["batches"]').tap();
      await field('entry ["batches"]').tap();
      for (const [name, typed] of [
        ["name", "W8"],
        ["date", "2026-04-13"],
        ["moisture/damp", "150,3 g"],
        ["moisture/dry", "144.7 g"],
      ]) {
        await field(`new ${name} ["batches"]`).tap();
        await field(`new ${name} ["batches"]`).fill(typed!);
      }
      await field('do entry ["batches"]').tap();
      const damp = field('["batches","W8","moisture","damp"]');
      await damp.waitFor();
      expect(await damp.evaluate((input) => document.activeElement === input)).toBe(true);
      expect(await field('fold ["batches","W8"]').textContent()).toContain("1 to mend");
      const dry = field('["batches","W8","moisture","dry"]');
      for (const [one, figure] of [
        [dry, "144.9 g"],
        [damp, "150.3 g"],
      ] as const) {
        await one.tap();
        await expect.poll(() => one.evaluate(takenWhole)).toBe(true);
        await one.fill(figure);
      }
      await tab.locator(".live-panel h2").tap();
      await expect.poll(text).toMatch(/damp: 150\.3 g, dry: 144\.9 g/);
      expect(await field('fold ["batches","W8"]').textContent()).not.toContain("to mend");
    });
  });

  test("a mistake in a new batch is shown as well where all batches are alike, as in a log just begun", async () => {
    const begun = [{ name: "my-trial.yaml", text: beginLog("moisture-trial", "my-trial.yaml") }];
    await byFinger(begun, async (tab) => {
      const field = (key: string) => tab.locator(`.live-panel [data-key='${key}']`);
      await tab.getByRole("button", { name: "open the log" }).tap();
      await field('fold ["batches"]').tap();
      await field('entry ["batches"]').tap();
      for (const input of await tab.locator(".live-form[open] .live-again input").all()) {
        await input.fill((await input.getAttribute("placeholder"))!.replace(/^in .*?: /, ""));
      }
      for (const [name, typed] of [
        ["name", "W6"],
        ["order", "7"],
        ["made of/water", "150 g"],
        ["moisture/damp", "148,2 g"],
        ["moisture/dry", "142.3 g"],
        ["compactability/rammed", "60.1 mm"],
        ["green compression/load", "9.1 kg"],
        ["squeeze", "4"],
      ])
        await field(`new ${name} ["batches"]`).fill(typed!);
      await field('do entry ["batches"]').tap();
      const damp = field('["batches","W6","moisture","damp"]');
      await damp.waitFor();
      expect(await damp.evaluate((input) => document.activeElement === input)).toBe(true);
      expect(await damp.inputValue()).toBe("148,2 g");
    });
  });

  test("a name twice is told where it is mended; what stays alike is put in by a tap; the next form is at hand", async () => {
    await byFinger(typedTrial, async (tab) => {
      const field = (key: string) => tab.locator(`.live-panel [data-key='${key}']`);
      await tab.getByRole("button", { name: "open the log" }).tap();
      await field('fold ["batches"]').tap();
      await field('entry ["batches"]').tap();
      const name = field('new name ["batches"]');
      const sand = field('new made of/sand ["batches"]');
      await name.fill("W7");
      expect(await sand.getAttribute("placeholder")).toMatch(/^in W7: /);
      // Readings differ from batch to batch, and are asked for.
      expect(await tab.getByRole("button", { name: /^moisture, damp as in/ }).count()).toBe(0);
      await tab.getByRole("button", { name: /^made of, sand as in W7: / }).tap();
      expect(await sand.inputValue()).toBe((await sand.getAttribute("placeholder"))!.replace("in W7: ", ""));
      await field('new moisture/damp ["batches"]').fill("150.1 g");
      await field('new moisture/dry ["batches"]').fill("144.7 g");
      await field('do entry ["batches"]').tap();
      const told = tab.locator(".live-form[open] .live-told");
      await told.waitFor();
      expect(await told.textContent()).toContain("is there already");
      const [at, above] = [(await told.boundingBox())!, (await name.boundingBox())!];
      expect(at.y - above.y - above.height).toBeLessThan(20);
      const bar = (await tab.locator(".live-bar").boundingBox())!;
      expect(at.y).toBeGreaterThan(0);
      expect(at.y + at.height).toBeLessThan(bar.y);
      await name.fill("W8");
      await field('do entry ["batches"]').tap();
      const added = field('fold ["batches","W8"]');
      await added.waitFor();
      expect(await added.evaluate((one) => document.activeElement === one)).toBe(true);
      expect(await added.evaluate((one) => (one.parentElement as HTMLDetailsElement).open)).toBe(false);
      await expect.poll(() => name.inputValue()).toBe("");
      expect(await tab.evaluate("mullbookSession.texts[0].text")).toMatch(
        /W8:\n[\s\S]*sand: [\s\S]*damp: 150\.1 g, dry: 144\.7 g/,
      );
    });
  });

  /** The page of these texts on a telephone, which may complain of nothing. */
  async function byFinger(texts: readonly LogText[], use: (tab: Tab) => Promise<void>): Promise<void> {
    const html = await livePage("moisture-trial", texts);
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
      await use(tab);
      expect(complaints).toEqual([]);
    } finally {
      await context.close();
    }
  }
});

function takenWhole(field: SVGElement | HTMLElement): boolean {
  if (!(field instanceof HTMLInputElement) || document.activeElement !== field) return false;
  return field.selectionStart === 0 && field.selectionEnd === field.value.length;
}
