// The demo pages on A4: folds are open but for the data of charts, and no figure is torn apart.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoPages } from "./demo-pages.ts";
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
  afterAll(() => browser?.close());

  const onPaper = async <T>(html: string, look: (tab: Tab) => Promise<T>): Promise<T> => {
    const { seen } = await opened(browser, html, sheet, async (tab) => {
      await tab.emulateMedia({ media: "print" });
      await tab.evaluate(
        () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
      );
      return look(tab);
    });
    return seen;
  };

  test.each(pages)(
    "%s: every fold is open, although none was opened, and the data of charts take no room",
    async (_, { html }) => {
      const folds = await onPaper(html, (tab) =>
        tab.evaluate(() =>
          [...document.querySelectorAll<HTMLDetailsElement>("details:not(.chart-data)")].map((fold) => ({
            open: fold.open,
            shown: [...fold.children].every(
              (part) =>
                part.tagName === "SUMMARY" ||
                (part.checkVisibility({ contentVisibilityAuto: true }) &&
                  part.getBoundingClientRect().height > 0),
            ),
          })),
        ),
      );
      expect(folds.filter(({ open, shown }) => open || !shown)).toEqual([]);
      const data = await onPaper(html, (tab) =>
        tab.evaluate(() =>
          [...document.querySelectorAll("details.chart-data")].map((fold) => fold.getClientRects().length),
        ),
      );
      expect(data.length).toBeGreaterThan(1);
      expect(new Set(data)).toEqual(new Set([0]));
    },
  );

  test.each(pages)(
    "%s: a figure, a table and a caution stay whole, and a sheet can hold them",
    async (_, { html }) => {
      const parts = await onPaper(html, (tab) =>
        tab.evaluate(() =>
          [
            ...document.querySelectorAll(
              "figure, .figures, .finding, .caution, table:not(.chart-data *), tr:not(.chart-data *)",
            ),
          ].map((part) => ({
            what: part.tagName === "TR" ? "row" : part.id || part.className || part.tagName,
            breakInside: getComputedStyle(part).breakInside,
            height: part.getBoundingClientRect().height,
          })),
        ),
      );
      expect(parts.filter(({ what }) => what.startsWith("figure-")).length).toBeGreaterThan(1);
      expect(
        parts.filter(({ breakInside, height }) => breakInside !== "avoid" || height > sheet.height),
      ).toEqual([]);
    },
  );

  test.skipIf(withoutPdfText).each(pages)(
    "%s: the PDF has every word of every fold and figure",
    async (_, { html }) => {
      const { pdf, words } = await onPaper(html, async (tab) => ({
        words: await tab.evaluate(() => {
          const drawn = [...document.querySelectorAll(".wide text")];
          const inFold = "details:not(.chart-data) :is(p, li, td, th)";
          const folded = [...document.querySelectorAll(`${inFold}, section.data td, section.data th`)];
          return [...folded, ...drawn].map((part) => part.textContent ?? "");
        }),
        pdf: await tab.pdf({ format: "A4", preferCSSPageSize: true }),
      }));
      const printed = plain(textOf(pdf));
      const wanted = words.map(plain).filter((text) => text !== "");
      expect(wanted.length).toBeGreaterThan(100);
      expect(wanted.filter((text) => !printed.includes(text))).toEqual([]);
    },
    60_000,
  );
});

/** Letters and digits alone: where lines, hyphens and ligatures fall is the printer's business. */
function plain(text: string): string {
  return text.normalize("NFKC").replace(/[^\p{L}\p{N}]/gu, "");
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
