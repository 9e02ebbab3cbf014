// A live page on paper is the written page: pixel by pixel and word by word, as opened and, in the midst of editing,
// as the written page of the edited log.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type LogText, readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoLogs, written } from "./demo-pages.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";
import { opened } from "./open-page.ts";

/** What A4 leaves between the margins of the page's print style, CSS px. */
const sheet = { width: 657, height: 978 };
const withoutPdfText = spawnSync("pdftotext", ["-v"]).error !== undefined && !process.env.CI;

interface Printed {
  /** The whole page as print media show it. */
  readonly picture: Buffer;
  /** Words of the PDF as they lie on its sheets. */
  readonly words: string;
}

const pages = [
  { notebook: "moisture-trial", name: "seven-waters.yaml" },
  { notebook: "own-sheets", name: "three-clays.yaml" },
  ...(process.env.DEMOS === "all"
    ? [
        { notebook: "grain-fineness", name: "two-bags.yaml" },
        { notebook: "diary", name: "one-heap.yaml" },
        { notebook: "write-up", name: "two-sands.yaml" },
      ]
    : []),
];

describe.skipIf(withoutBrowser)("a live page on paper", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(pages)(
    "$notebook, $name: as written, also in the midst of an edit",
    async ({ notebook, name }) => {
      const demo = demoLogs().find((one) => one.notebook === notebook && one.name === name)!;
      const texts = [
        { name, text: demo.text },
        ...Object.entries(demo.files).map(([file, text]) => ({ name: file, text })),
      ];
      const { seen, complaints } = await openedLive(
        browser,
        await livePage(notebook, texts),
        { width: sheet.width },
        async (tab) => {
          const first = await printed(tab);
          await wake(tab);
          // A figure is changed, another faulty and marked at its cell, a third one's field open, the log beside the page.
          await type(tab, 4, (text) =>
            text.replace(/\d(?=\D*$)/, (digit) => String((Number(digit) + 1) % 10)),
          );
          await type(tab, 5, (text) => `${text} x`);
          await tab.locator("main .live-faulty").waitFor();
          await tab.locator("main [data-at]").nth(3).click();
          await tab.locator(".live-over").waitFor();
          const editing = await printed(tab);
          return { first, editing, texts: await textsOf(tab) };
        },
      );
      expect(complaints).toEqual([]);
      expect(seen.texts).not.toEqual(texts);
      expectSame(seen.first, await writtenPrint(browser, notebook, texts));
      expectSame(seen.editing, await writtenPrint(browser, notebook, seen.texts));
    },
  );
});

test.skipIf(withoutBrowser)(
  "a page that a server keeps, with links to the other pages, is printed as written",
  async () => {
    const browser = await openBrowser();
    const demo = demoLogs().find(({ name }) => name === "seven-waters.yaml")!;
    const texts = [{ name: demo.name, text: demo.text.replace("format: 1", "format: 1\nunknown line: x") }];
    const at = "http://page.invalid/";
    const others = [{ name: "All pages of this log", href: "/all", question: "What is there?" }];
    const keep = { kind: "server", save: `${at}save`, events: `${at}events`, others } as const;
    const html = await livePage("moisture-trial", texts, keep);
    const { seen } = await openedLive(browser, html, { width: sheet.width }, async (tab) => {
      const settled = await printed(tab);
      // As a change that is still being worked out leaves them; held so, for the page may be done with something else.
      await tab.evaluate(() => {
        const hold = (): void => {
          const main = document.querySelector("main")!;
          const chart = document.querySelector("#figure-1 .wide")!;
          if (main.getAttribute("aria-busy") !== "true") main.setAttribute("aria-busy", "true");
          if (!chart.hasAttribute("data-waiting")) chart.setAttribute("data-waiting", "");
        };
        hold();
        new MutationObserver(hold).observe(document.body, {
          attributes: true,
          childList: true,
          subtree: true,
        });
      });
      return { settled, busy: await printed(tab) };
    });
    expectSame(seen.settled, await writtenPrint(browser, "moisture-trial", texts));
    if (withoutPdfText) return;
    expect(seen.settled.words).not.toMatch(/Printed while/);
    expect(seen.busy.words).toMatch(/Printed while the page was being worked out/);
    expect(seen.busy.words.match(/Printed while this chart was being drawn/g)?.length).toBe(1);
  },
);

/** Into the nth figure of the page: what it becomes of what stood there. */
async function type(tab: Tab, nth: number, become: (text: string) => string): Promise<void> {
  await tab.locator("main [data-at]").nth(nth).click();
  const field = tab.locator(".live-over input");
  await field.fill(become(await field.inputValue()));
  await tab.keyboard.press("Enter");
  // A faulty one is asked about once.
  await tab.keyboard.press("Tab");
  await tab.keyboard.press("Escape");
  await tab.locator(".live-over").waitFor({ state: "detached" });
  await tab.locator("[aria-busy=true]").first().waitFor({ state: "detached" });
}

const textsOf = (tab: Tab): Promise<LogText[]> =>
  tab.evaluate(() => [
    ...(globalThis as unknown as { mullbookSession: { texts: LogText[] } }).mullbookSession.texts,
  ]);

async function writtenPrint(browser: Browser, notebook: string, [log, ...csv]: readonly LogText[]) {
  const files = Object.fromEntries(csv.map(({ name, text }) => [name, text]));
  const { value, issues } = readLog(log!.text, { name: log!.name, files });
  const { html } = await written(notebook, value!, issues);
  return (await opened(browser, html, { width: sheet.width }, printed)).seen;
}

async function printed(tab: Tab): Promise<Printed> {
  await tab.emulateMedia({ media: "print", reducedMotion: "reduce" });
  await tab.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  const picture = await tab.screenshot({ fullPage: true, animations: "disabled" });
  const pdf = withoutPdfText ? undefined : await tab.pdf({ format: "A4", preferCSSPageSize: true });
  await tab.emulateMedia({ media: "screen" });
  return { picture, words: pdf ? wordsOf(pdf) : "" };
}

function expectSame(live: Printed, asWritten: Printed): void {
  expect(live.words).toBe(asWritten.words);
  const same = live.picture.equals(asWritten.picture);
  if (!same && process.env.SHOT) {
    writeFileSync(`${process.env.SHOT}-live.png`, live.picture);
    writeFileSync(`${process.env.SHOT}-written.png`, asWritten.picture);
  }
  expect(same).toBe(true);
}

function wordsOf(pdf: Buffer): string {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-print-"));
  try {
    writeFileSync(join(folder, "page.pdf"), pdf);
    return execFileSync("pdftotext", ["-layout", join(folder, "page.pdf"), "-"], { encoding: "utf8" });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
