// The demo pages on A4: folds are open but for the data of charts and what is kept to the screen; no figure is torn apart.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { chartsOf, type DemoPage, demoPages } from "./demo-pages.ts";
import { opened } from "./open-page.ts";

const pages = (await demoPages()).map((page) => [page.name, page] as const);
/** What A4 leaves between the margins of the page's own print style (18, 17 and 20 mm), CSS px. */
const sheet = { width: Math.floor(((210 - 34) / 25.4) * 96), height: Math.floor(((297 - 38) / 25.4) * 96) };

const withoutPdfText = spawnSync("pdftotext", ["-v"]).error !== undefined && !process.env.CI;
if (withoutPdfText) {
  console.warn(
    "The words of a printed page are not read: no pdftotext (Debian: apt-get install poppler-utils).",
  );
}

describe.skipIf(withoutBrowser)("a demo page on paper", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  /** A page is opened once; what each test asks is noted then. */
  const looked = new Map<string, ReturnType<typeof onPaper>>();
  const look = ({ name, html }: DemoPage) => {
    const seen = looked.get(name) ?? onPaper(browser, html);
    looked.set(name, seen);
    return seen;
  };

  test.each(pages)(
    "%s: every fold is open, although none was opened; the data of charts and what is kept to the screen take no room",
    async (_, page) => {
      const { folds, data } = await look(page);
      expect(folds.filter(({ open, shown }) => open || !shown)).toEqual([]);
      expect(data.length).toBeGreaterThanOrEqual(chartsOf(page));
      expect(data.filter((boxes) => boxes > 0)).toEqual([]);
    },
    60_000,
  );

  test.each(pages)(
    "%s: a figure, a table and a caution stay whole, and a sheet can hold them",
    async (_, page) => {
      const { parts } = await look(page);
      expect(parts.length).toBeGreaterThan(1);
      expect(parts.filter(({ what }) => what.startsWith("figure-"))).toHaveLength(chartsOf(page));
      expect(
        parts.filter(({ breakInside, height }) => breakInside !== "avoid" || height > sheet.height),
      ).toEqual([]);
    },
    60_000,
  );

  test.skipIf(withoutPdfText).each(pages)(
    "%s: the PDF has every word of every fold and figure",
    async (_, page) => {
      const { pdf, words } = await look(page);
      const printed = plain(textOf(pdf));
      const wanted = words.map(plain).filter((text) => text !== "");
      // A guide has no figure, and its folds are for the screen.
      if (!page.name.startsWith("guide")) expect(wanted.length).toBeGreaterThan(20);
      expect(wanted.filter((text) => !printed.includes(text))).toEqual([]);
    },
    60_000,
  );
});

async function onPaper(browser: Browser, html: string) {
  const { seen } = await opened(browser, html, sheet, async (tab) => {
    await tab.emulateMedia({ media: "print" });
    await tab.evaluate(
      () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
    );
    return {
      folds: await tab.evaluate(foldsShown),
      data: await tab.evaluate(() =>
        [...document.querySelectorAll("details:is(.chart-data, .screen)")].map(
          (fold) => fold.getClientRects().length,
        ),
      ),
      parts: await tab.evaluate(wholeParts),
      words: await tab.evaluate(wordsInFolds),
      pdf: withoutPdfText ? Buffer.alloc(0) : await tab.pdf({ format: "A4", preferCSSPageSize: true }),
    };
  });
  return seen;
}

function foldsShown() {
  return [
    ...document.querySelectorAll<HTMLDetailsElement>("details:not(.chart-data, .screen, .screen *)"),
  ].map((fold) => ({
    open: fold.open,
    shown: [...fold.children].every(
      (part) =>
        part.tagName === "SUMMARY" ||
        part.className === "source" ||
        (part.checkVisibility({ contentVisibilityAuto: true }) && part.getBoundingClientRect().height > 0),
    ),
  }));
}

function wholeParts() {
  // A long table may be parted between two rows.
  const rows = ":is(table:not(.long), tr):not(.chart-data *, .screen *)";
  const whole = `figure, .figures, .finding, .caution, ${rows}`;
  return [...document.querySelectorAll(whole)].map((part) => ({
    what: part.tagName === "TR" ? "row" : part.id || part.className || part.tagName,
    breakInside: getComputedStyle(part).breakInside,
    height: part.getBoundingClientRect().height,
  }));
}

function wordsInFolds() {
  const inFold = "details:not(.chart-data, .screen) :is(p, li, td, th):not(.screen *)";
  const inData = "section.data :is(td, th):not(.screen *)";
  const drawn = [...document.querySelectorAll(".wide text:not(.screen *)")];
  const folded = [...document.querySelectorAll(`${inFold}, ${inData}`)];
  // The sources of a finding are printed once, among those of the page.
  return [...folded, ...drawn].flatMap((part) => {
    const text = part.textContent ?? "";
    return text.startsWith("Source: ") ? text.slice(8).split("; ") : [text];
  });
}

/** Letters and digits alone: lines, hyphens and ligatures are the printer's business; a source begins with a capital. */
function plain(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[^\p{L}\p{N}]/gu, "")
    .toLowerCase();
}

function textOf(pdf: Buffer): string {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-print-"));
  try {
    writeFileSync(join(folder, "page.pdf"), pdf);
    return execFileSync("pdftotext", ["-raw", join(folder, "page.pdf"), "-"], { encoding: "utf8" });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
