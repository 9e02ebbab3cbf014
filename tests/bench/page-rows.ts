// A page in a browser: how soon its charts are there, and how large its file is.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { openBrowser, withoutBrowser } from "../browser/chromium.ts";
import { type DemoPage, demoPages } from "../browser/demo-pages.ts";
import { type Row, skipped } from "./row.ts";
import { interleaved } from "./timing.ts";

/** Two frames after the load event the first picture of the page has been shown. */
const noteShown = `window.shown = new Promise((shown) => addEventListener("load", () =>
  requestAnimationFrame(() => requestAnimationFrame(() => shown(performance.now())))))`;

export async function pageRows(): Promise<Row[]> {
  const pages = await demoPages();
  const largest = pages.reduce((a, b) => (b.html.length > a.html.length ? b : a));
  const bytes = Math.max(...pages.map(({ html }) => Buffer.byteLength(html)));
  const size: Row = {
    of: "print size",
    work: `print page in one file, the largest of ${pages.length} demo pages`,
    measured: `${(bytes / 1000).toFixed(0)} KB`,
    against: "",
    figure: bytes / 1000,
    target: { most: 150, unit: "KB" },
  };
  const work = `page shows its charts after opening (${largest.name})`;
  if (withoutBrowser) return [size, skipped(work, "no Chromium", "shown")];
  return [await shownRow(work, largest), size];
}

async function shownRow(work: string, { html }: DemoPage): Promise<Row> {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-bench-"));
  const browser = await openBrowser();
  try {
    const put = (name: string, text: string): string => {
      writeFileSync(join(folder, name), text);
      return pathToFileURL(join(folder, name)).href;
    };
    const whole = put("page.html", html);
    const alone = put("drawings.html", drawingsAlone(html));
    const { page, drawings } = await interleaved(
      { page: () => shownMs(browser, whole), drawings: () => shownMs(browser, alone) },
      { rounds: 25, warm: 3 },
    );
    return {
      of: "shown",
      work,
      measured: `${page.toFixed(0)} ms`,
      against: `its drawings alone: ${drawings.toFixed(0)} ms`,
      figure: page / drawings,
      target: { most: 1.5, unit: "×" },
    };
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true });
  }
}

/** The drawings that a desk shows, with nothing about them. */
function drawingsAlone(html: string): string {
  const drawings = [...html.matchAll(/<div class="wide">(<svg[\s\S]*?<\/svg>)<\/div>/g)].map(
    ([, svg]) => svg,
  );
  return `<!doctype html><meta charset="utf-8"><title>drawings</title><style>svg{display:block;width:720px}</style>${drawings.join("\n")}`;
}

async function shownMs(browser: Browser, address: string): Promise<number> {
  const tab = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  try {
    await tab.addInitScript(noteShown);
    await tab.goto(address);
    return (await tab.evaluate("window.shown")) as number;
  } finally {
    await tab.close();
  }
}
