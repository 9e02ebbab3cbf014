// A founder changes the log in its page: by keyboard, in the cell, in the log beside it, by pasting, as what if.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, BrowserContext, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { beginLog, readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { livePage } from "./live-edit-page.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const address = "http://page.invalid/";
const root = join(import.meta.dirname, "..", "..");
const demo = (path: string): string => readFileSync(join(root, "data-demo", path), "utf8");

const waters = { name: "seven-waters.yaml", text: demo("moisture-trial/seven-waters.yaml") };

interface Opened {
  readonly tab: Tab;
  readonly context: BrowserContext;
  readonly complaints: string[];
}

describe.skipIf(withoutBrowser)("changing a log in its page", () => {
  let browser: Browser;
  let html: string;
  beforeAll(async () => {
    browser = await openBrowser();
    html = await livePage("moisture-trial", [waters]);
  }, 600_000);

  async function opened(
    view: { readonly width?: number; readonly dark?: boolean; readonly page?: string },
    look: (opened: Opened) => Promise<void>,
  ): Promise<void> {
    const context = await browser.newContext({
      viewport: { width: view.width ?? 1280, height: 900 },
      colorScheme: view.dark ? "dark" : "light",
      reducedMotion: "reduce",
    });
    const complaints: string[] = [];
    try {
      const tab = await context.newPage();
      tab.setDefaultTimeout(60_000);
      tab.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
      tab.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
      await tab.route("**", (route) => {
        const url = route.request().url();
        if (url === address)
          return route.fulfill({ body: view.page ?? html, contentType: "text/html; charset=utf-8" });
        if (!url.startsWith("blob:")) complaints.push(`request: ${url}`);
        return route.continue();
      });
      await tab.goto(address);
      await look({ tab, context, complaints });
      expect(complaints).toEqual([]);
    } finally {
      await context.close();
    }
  }

  /** The page's policy forbids the browser's own waiting for an expression. */
  async function until(tab: Tab, expression: string): Promise<void> {
    for (const end = Date.now() + 60_000; !(await tab.evaluate(expression)); ) {
      if (Date.now() > end) throw new Error(`never came true: ${expression}`);
      await tab.waitForTimeout(30);
    }
  }

  /** The cell of a batch in the table of what went in. */
  const cell = (tab: Tab, batch: string, column: number) =>
    tab.locator(`section.data table >> nth=0 >> tr:has(th:text-is("${batch}")) >> td >> nth=${column - 1}`);
  const water = (tab: Tab, batch: string) => cell(tab, batch, 5);
  const settled = (tab: Tab) => until(tab, "!document.querySelector('[aria-busy=true]')");
  const field = (tab: Tab) => tab.locator(".live-over input");
  const state = (tab: Tab) => tab.locator(".live-state").textContent();

  /** What a saved copy holds. */
  async function saved(tab: Tab): Promise<string> {
    const [download] = await Promise.all([
      tab.waitForEvent("download"),
      tab.getByRole("button", { name: "Save a copy" }).click(),
    ]);
    return readFileSync((await download.path())!, "utf8");
  }

  test("a figure is opened as typed, taken with Enter, undone and done again by keys, and saved as the only change", async () => {
    await opened({}, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").focus();
      await tab.keyboard.press("Enter");
      await field(tab).waitFor();
      expect(await field(tab).inputValue()).toBe("0.142 kg");
      await tab.keyboard.press("Control+a");
      await tab.keyboard.type("0.150 kg ± 0.001 kg");
      await tab.keyboard.press("Enter");
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.150");
      expect(await water(tab, "W3").locator("[data-at]").getAttribute("title")).toBe("Changed, was 0.142 kg");
      expect(await state(tab)).toBe("1 change, not saved");
      await tab.keyboard.press("Control+z");
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.142");
      expect(await state(tab)).toBe("As in the file");
      await tab.keyboard.press("Control+Shift+Z");
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.150");
      expect(await saved(tab)).toBe(waters.text.replace("water: 0.142 kg", "water: 0.150 kg ± 0.001 kg"));
      expect(await state(tab)).toBe("As in the file");
    });
  });

  test("typing on a cell opens it, Tab takes it and goes on, Escape leaves it", async () => {
    await opened({}, async ({ tab }) => {
      await cell(tab, "W1", 3).locator("[data-at]").focus();
      await tab.keyboard.press("F2");
      await field(tab).waitFor();
      expect(await field(tab).inputValue()).toBe("5.00 kg");
      await tab.keyboard.press("Tab");
      expect(await field(tab).inputValue()).toBe("0.455 kg");
      await tab.keyboard.type("0.460 kg");
      await tab.keyboard.press("Tab");
      expect(await field(tab).inputValue()).toBe("0.107 kg");
      await tab.keyboard.type("9");
      await tab.keyboard.press("Escape");
      expect(await field(tab).count()).toBe(0);
      await settled(tab);
      expect(await cell(tab, "W1", 4).textContent()).toContain("0.460");
      expect(await water(tab, "W1").textContent()).toContain("0.107");
      await water(tab, "W2").locator("[data-at]").focus();
      await tab.keyboard.type("0.2 kg");
      expect(await field(tab).inputValue()).toBe("0.2 kg");
      await tab.keyboard.press("Escape");
    });
  });

  test("in a narrow window the field stays on its cell; by finger a figure is taken, gone on from and left", async () => {
    await opened({ width: 360 }, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").click();
      await field(tab).waitFor();
      const [over, on] = await Promise.all([field(tab).boundingBox(), water(tab, "W3").boundingBox()]);
      expect(over!.x).toBeLessThanOrEqual(on!.x);
      expect(over!.x + over!.width).toBeGreaterThanOrEqual(on!.x + on!.width);
      const under = (await tab.locator(".live-under").boundingBox())!;
      expect(under.x).toBeGreaterThanOrEqual(0);
      expect(under.x + under.width).toBeLessThanOrEqual(360);
      await field(tab).fill("0.151 kg");
      await tab.getByRole("button", { name: "Next", exact: true }).click();
      expect(await field(tab).getAttribute("aria-label")).not.toBe("W3, made of, water");
      await field(tab).fill("no figure");
      await tab.getByRole("button", { name: "Leave it", exact: true }).click();
      await settled(tab);
      expect(await state(tab)).toBe("1 change, not saved");
      await water(tab, "W4").locator("[data-at]").click();
      await field(tab).fill("0.170 kg");
      await tab.getByRole("button", { name: "Take it", exact: true }).click();
      await settled(tab);
      expect(await tab.evaluate("document.activeElement.closest('tr').querySelector('th').textContent")).toBe(
        "W4",
      );
      expect(await state(tab)).toBe("2 changes, not saved");
    });
  });

  test("a faulty entry is told at its cell as check tells it, and the rest of the page stands", async () => {
    await opened({}, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").click();
      await field(tab).fill("0,142");
      await tab.keyboard.press("Enter");
      const told = tab.locator(".live-over [role=alert]");
      await told.waitFor();
      const { issues } = readLog(waters.text.replace("water: 0.142 kg", 'water: "0,142"'), {
        name: waters.name,
      });
      expect(issues[0]!.severity).toBe("error");
      expect(await told.textContent()).toContain(issues[0]!.message);
      expect(await field(tab).inputValue()).toBe("0,142");
      // Worked out anew, the page has another cell in its place, perhaps elsewhere: the field stays over it.
      await settled(tab);
      const [over, cell] = [await field(tab).boundingBox(), await water(tab, "W3").boundingBox()];
      expect(Math.abs(over!.y - cell!.y)).toBeLessThan(12);
      await tab.keyboard.press("Tab");
      await tab.keyboard.press("Escape");
      await settled(tab);
      const faulty = tab.locator(".live-faulty");
      expect(await faulty.textContent()).toContain("0,142");
      expect(await faulty.textContent()).toContain("has a comma");
      expect(await water(tab, "W4").textContent()).toContain("0.161");
      await faulty.focus();
      await tab.keyboard.press("Enter");
      expect(await field(tab).inputValue()).toBe("0,142");
      await field(tab).fill("0.142 kg");
      await tab.keyboard.press("Enter");
      await settled(tab);
      expect(await faulty.count()).toBe(0);
      expect(await state(tab)).toBe("As in the file");
    });
  });

  test("another faulty text after a first: left, neither stands in the log, and it was one step", async () => {
    await opened({}, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").click();
      const told = tab.locator(".live-over [role=alert]");
      for (const text of ["0,142", "0,143"]) {
        await field(tab).fill(text);
        await tab.keyboard.press("Enter");
        await told.filter({ hasText: text }).waitFor();
      }
      await tab.keyboard.press("Escape");
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.142");
      expect(await tab.locator(".live-faulty").count()).toBe(0);
      expect(await state(tab)).toBe("As in the file");
      expect(await tab.evaluate("mullbookSession.canUndo")).toBe(false);
    });
  });

  test("what if: arrow keys try values, the page says so, one key goes back, nothing of it is saved", async () => {
    await opened({}, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").click();
      await tab.getByRole("button", { name: "What if" }).click();
      const slider = tab.locator(".live-try input[type=range]");
      await slider.waitFor();
      for (let i = 0; i < 5; i++) await tab.keyboard.press("ArrowRight");
      await tab.locator(".live-ribbon").waitFor();
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.147");
      expect(await tab.locator(".live-ribbon").textContent()).toContain(
        "What if W3, made of, water 0.147 kg",
      );
      expect(await state(tab)).toBe("As in the file");
      await tab.emulateMedia({ media: "print" });
      expect(await tab.locator(".live-ribbon").isVisible()).toBe(true);
      await tab.emulateMedia({ media: "screen" });
      expect(await saved(tab)).toBe(waters.text);
      await slider.focus();
      await tab.keyboard.press("Escape");
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.142");
      expect(await tab.locator(".live-ribbon").isVisible()).toBe(false);
    });
  });

  test("a batch is typed into a begun log by keyboard alone", async () => {
    const begun = { name: "my-sands.yaml", text: beginLog("moisture-trial", "my-sands.yaml") };
    await opened({ page: await livePage("moisture-trial", [begun]) }, async ({ tab }) => {
      await tab.locator("[data-start]").focus();
      await tab.keyboard.press("Enter");
      await tab.locator(".live-panel").waitFor();
      const reach = async (name: RegExp | string): Promise<void> => {
        await tab.locator(".live-panel summary").filter({ hasText: name }).last().focus();
        await tab.keyboard.press("Enter");
        await tab.waitForTimeout(100);
      };
      await reach(/^batches/);
      await reach("Add another to batches");
      await tab.keyboard.press("Tab");
      await tab.keyboard.type("W6");
      const figures: { readonly [label: string]: string } = {
        date: "2026-03-16",
        order: "7",
        "made of, water": "190 g",
        "moisture, damp": "150.3 g",
        "moisture, dry": "142.9 g",
        "compactability, rammed": "51.0 mm",
        "green compression, load": "8.9 kg",
        squeeze: "5",
      };
      // From field to field by Enter too: it adds nothing before the last one.
      await tab.keyboard.press("Enter");
      await tab.keyboard.press("Shift+Tab");
      const repeats: string[] = [];
      for (let i = 0; i < 60; i++) {
        await tab.keyboard.press("Tab");
        const repeat = (await tab.evaluate(
          "document.activeElement.closest('.live-again > button')?.getAttribute('aria-label')",
        )) as string | undefined;
        if (repeat !== undefined) {
          repeats.push(repeat);
          await tab.keyboard.press("Enter");
          continue;
        }
        const label = (await tab.evaluate("document.activeElement?.labels?.[0]?.textContent")) as
          | string
          | null;
        if (label === null || label === undefined) break;
        if (figures[label] !== undefined) await tab.keyboard.type(figures[label]);
      }
      await tab.keyboard.press("Enter");
      await settled(tab);
      expect(await tab.locator("section.data table >> nth=0").textContent()).toContain("W6");
      const copy = await saved(tab);
      const { value, issues } = readLog(copy, { name: begun.name });
      expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
      const batch = value!.batches.find(({ name }) => name === "W6")!;
      expect(batch.date).toBe("2026-03-16");
      expect(repeats).toContain("made of, sand as in W5: 4 kg");
      expect(copy).toMatch(/W6:\n[\s\S]*made of: \{ sand: 4 kg, bentonite: 350 g/);
      expect(batch.readings.find(({ test }) => test === "moisture")?.raw.dryG?.value).toBe(142.9);
      // Undone, the batch is gone with its line that had the focus: the keyboard stays in the log.
      await tab.locator(".live-panel summary").filter({ hasText: /^W6/ }).focus();
      await tab.keyboard.press("Control+z");
      await settled(tab);
      await expect
        .poll(() => tab.evaluate("document.activeElement.closest('.live-panel') !== null"))
        .toBe(true);
      await tab.keyboard.press("Escape");
      expect(await tab.locator(".live-panel").isVisible()).toBe(false);
      const kept = begun.text.split("\n");
      expect(copy.split("\n").filter((line) => kept.includes(line)).length).toBeGreaterThanOrEqual(
        kept.length - 1,
      );
    });
  });

  test("a block is pasted into a table of the log as one step, and what does not fit is told", async () => {
    const texts = [
      { name: "three-clays.yaml", text: demo("own-sheets/three-clays.yaml") },
      { name: "swelling.csv", text: demo("own-sheets/swelling.csv") },
    ];
    await opened({ page: await livePage("own-sheets", texts) }, async ({ tab }) => {
      await tab.locator("[data-start]").click();
      await tab.locator(".live-panel summary", { hasText: "swelling.csv" }).click();
      const rows = tab.locator(".live-rows tbody tr");
      const before = await rows.count();
      const input = rows
        .nth(before - 2)
        .locator("input")
        .nth(1);
      await input.focus();
      await input.evaluate((element) => {
        const data = new DataTransfer();
        data.setData("text/plain", "11\t12\t13\t14\t15\t16\t17\n21\t22\n");
        element.dispatchEvent(
          new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
        );
      });
      await until(tab, `document.querySelectorAll(".live-rows tbody tr").length === ${before + 1}`);
      expect(await tab.locator(".live-said").textContent()).toMatch(
        /2 rows of 7 cells pasted.*Did not fit: "1\d"/,
      );
      expect(
        await rows
          .nth(before - 1)
          .locator("input")
          .nth(1)
          .inputValue(),
      ).toBe("21");
      await tab.getByRole("button", { name: "Undo" }).click();
      await until(tab, `document.querySelectorAll(".live-rows tbody tr").length === ${before}`);
      expect(await state(tab)).toBe("As in the file");
    });
  });

  test("a draft survives a reload, is told, and can be thrown away", async () => {
    await opened({}, async ({ tab }) => {
      await water(tab, "W3").locator("[data-at]").click();
      await field(tab).fill("0.151 kg");
      await tab.keyboard.press("Enter");
      await settled(tab);
      tab.on("dialog", (dialog) => void dialog.accept());
      await tab.waitForTimeout(500);
      await tab.reload();
      await tab.locator(".live-message").waitFor();
      await settled(tab);
      expect(await tab.locator(".live-message").textContent()).toContain("from an earlier visit");
      expect(await water(tab, "W3").textContent()).toContain("0.151");
      await tab.getByRole("button", { name: "Throw them away" }).click();
      await settled(tab);
      expect(await water(tab, "W3").textContent()).toContain("0.142");
      await tab.waitForTimeout(500);
      await tab.reload();
      await tab.waitForTimeout(500);
      expect(await tab.locator(".live-message").count()).toBe(0);
    });
  });

  test("a changed page warns before it is closed, one as in the file does not", async () => {
    await opened({}, async ({ tab }) => {
      const asks = () =>
        tab.evaluate("!dispatchEvent(Object.assign(new Event('beforeunload', { cancelable: true })))");
      await water(tab, "W3").locator("[data-at]").click();
      await field(tab).waitFor();
      await tab.keyboard.press("Escape");
      expect(await asks()).toBe(false);
      await water(tab, "W3").locator("[data-at]").click();
      await field(tab).fill("0.151 kg");
      await tab.keyboard.press("Enter");
      expect(await asks()).toBe(true);
    });
  });

  test.each([
    ...(process.env.DEMOS === "all" ? [{ width: 1280, dark: true }] : []),
    { width: 360, dark: false },
  ])(
    "breaks no rule of access with the log open, a field open, a faulty entry; does not scroll sideways: $width px, dark: $dark",
    async (view) => {
      await opened(view, async ({ tab }) => {
        const violations = async (): Promise<unknown> => {
          await tab.evaluate(axe);
          return tab.evaluate(
            "axe.run().then((all) => all.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.html).join(' ')))",
          );
        };
        await water(tab, "W3").locator("[data-at]").click();
        await field(tab).fill("0,142");
        await tab.keyboard.press("Enter");
        await tab.locator(".live-over [role=alert]").waitFor();
        await settled(tab);
        expect(await violations()).toEqual([]);
        await tab.getByRole("button", { name: "In the log" }).click();
        await tab.locator(".live-panel").waitFor();
        await settled(tab);
        expect(await violations()).toEqual([]);
        const line = tab.locator(".live-panel input:focus");
        expect(await line.inputValue()).toBe("0,142");
        expect(await tab.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(view.width);
      });
    },
    120_000,
  );

  test("prints without the furniture", async () => {
    await opened({}, async ({ tab }) => {
      await tab.locator("[data-start]").click();
      await tab.locator(".live-panel").waitFor();
      await tab.emulateMedia({ media: "print" });
      const seen = await tab.evaluate(
        "[...document.querySelectorAll('.live-furniture, .live, .live-bar, .live-panel')].filter((x) => x.getClientRects().length).length",
      );
      expect(seen).toBe(0);
    });
  });
});
