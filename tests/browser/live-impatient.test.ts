// A founder who doesn't wait: types before the live part is there, takes back before the page is worked out anew.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, shownOn, wake } from "./open-live.ts";

const path = join(import.meta.dirname, "../../data-demo/moisture-trial/seven-waters.yaml");
const waters = { name: "seven-waters.yaml", text: readFileSync(path, "utf8") };

interface Session {
  readonly texts: readonly { readonly text: string }[];
  edit(edit: object): unknown;
  undo(): void;
}
interface Page {
  readonly mullbookSession: Session;
}

describe.skipIf(withoutBrowser)("an impatient hand", () => {
  let browser: Browser;
  let html: string;
  beforeAll(async () => {
    browser = await openBrowser();
    html = await livePage("moisture-trial", [waters]);
  }, 600_000);

  test("what is typed at a figure while the live part is unpacked is typed into it, in order", async () => {
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      // All in one go, before anything can be unpacked.
      const during = await tab.evaluate(() => {
        const cells = [...document.querySelectorAll<HTMLElement>("main [data-at]")];
        const cell = cells.find(({ textContent }) => textContent?.includes("0.142"))!;
        cell.focus();
        const awake = "mullbookSession" in globalThis;
        const held = [..."0.15q", "Backspace", "0", " ", "k", "g", "Enter"].map((key) => {
          const press = new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true });
          return !document.activeElement!.dispatchEvent(press);
        });
        const chord = new KeyboardEvent("keydown", {
          key: "p",
          ctrlKey: true,
          bubbles: true,
          cancelable: true,
        });
        return { awake, held, chord: !cell.dispatchEvent(chord) };
      });
      while (!(await tab.evaluate(() => "mullbookSession" in globalThis))) await tab.waitForTimeout(30);
      const text = await tab.evaluate(() => (globalThis as unknown as Page).mullbookSession.texts[0]!.text);
      const open = await tab.locator(".live-over").count();
      const log = await tab.locator(".live-panel").isVisible();
      return { during, text, open, log };
    });
    expect(complaints).toEqual([]);
    expect(seen.during.awake).toBe(false);
    expect(seen.during.held).not.toContain(false);
    expect(seen.during.chord).toBe(false);
    expect(seen.text).toBe(waters.text.replace("water: 0.142 kg", "water: 0.150 kg"));
    expect([seen.open, seen.log]).toEqual([0, false]);
  });

  test("a Tab past the button that opens the log opens nothing", async () => {
    const { seen } = await openedLive(browser, html, {}, async (tab) => {
      await tab.evaluate(() => document.querySelector<HTMLElement>("[data-start]")!.focus());
      await tab.evaluate(() => {
        const press = new KeyboardEvent("keydown", { key: "Tab", bubbles: true, cancelable: true });
        document.activeElement!.dispatchEvent(press);
      });
      while (!(await tab.evaluate(() => "mullbookSession" in globalThis))) await tab.waitForTimeout(30);
      return tab.locator(".live-panel").isVisible();
    });
    expect(seen).toBe(false);
  });

  test("a batch taken out and put back at once: its figures can be changed as before", async () => {
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      await wake(tab);
      await tab.evaluate(warmed);
      const before = await tab.evaluate(marks);
      await tab.evaluate(async () => {
        const { mullbookSession: session } = globalThis as unknown as Page;
        const drawn = new Promise((resolve) => document.addEventListener("mullbook:drawn", resolve));
        session.edit({ kind: "remove", path: ["batches", "W3"] });
        session.undo();
        await drawn;
      });
      return { before, after: await tab.evaluate(marks) };
    });
    expect(complaints).toEqual([]);
    expect(seen.before.length).toBeGreaterThan(50);
    expect(seen.after).toEqual(seen.before);
  });

  test("taken back when its page is put in and its drawings are not told yet: all drawings are there, at either width", async () => {
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      await wake(tab);
      await tab.evaluate(warmed);
      const before = await shownOn(tab);
      await tab.evaluate(async (offset) => {
        const { mullbookSession: session } = globalThis as unknown as Page;
        const undone = new Promise<void>((resolve) =>
          document.addEventListener(
            "mullbook:redrawn",
            () => {
              session.undo();
              resolve();
            },
            { once: true },
          ),
        );
        const at = { file: "seven-waters.yaml", offset, length: 8 };
        session.edit({ kind: "write", at, text: "0.160 kg" });
        const drawn = new Promise((resolve) => document.addEventListener("mullbook:drawn", resolve));
        await undone;
        await drawn;
      }, waters.text.indexOf("0.142 kg"));
      const waiting = await tab.evaluate(() => document.querySelectorAll("main [data-waiting]").length);
      return { before, waiting, after: await shownOn(tab) };
    });
    expect(complaints).toEqual([]);
    expect(seen.waiting).toBe(0);
    expect(seen.after).toEqual(seen.before);
  });
});

/** Changed and undone, each drawn to the end: the page that came of it is the one that is compared with. */
async function warmed(): Promise<void> {
  const { mullbookSession: session } = globalThis as unknown as Page;
  const drawn = () =>
    new Promise((resolve) => document.addEventListener("mullbook:drawn", resolve, { once: true }));
  const offset = session.texts[0]!.text.indexOf("0.107 kg");
  for (const step of [
    () =>
      session.edit({ kind: "write", at: { file: "seven-waters.yaml", offset, length: 8 }, text: "0.108 kg" }),
    () => session.undo(),
  ]) {
    const done = drawn();
    step();
    await done;
  }
}

const marks = (): (string | undefined)[] =>
  [...document.querySelectorAll<HTMLElement>("main [data-at]")].map(({ dataset }) => dataset.at);
