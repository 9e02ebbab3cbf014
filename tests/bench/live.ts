// Live pages in Chromium: how large, how soon shown, how long after an edit everything is right, many batches, memory.
// Wants dist built from this source.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import type { LogText } from "../../lib/log/types.ts";
import { launched, withoutBrowser } from "../browser/chromium.ts";
import { type DemoLog, demoLogs } from "../browser/demo-pages.ts";
import { livePage } from "../browser/live-edit-page.ts";
import { openedLive, wake } from "../browser/open-live.ts";
import { batchLog } from "./batch-log.ts";
import { figureIn, type Timed, turn } from "./live-turn.ts";
import { type Row, skipped } from "./row.ts";
import type { Target } from "./targets.ts";
import { interleaved, median } from "./timing.ts";

const textsOf = ({ name, text, files }: DemoLog): readonly LogText[] => [
  { name, text },
  ...Object.entries(files).map(([file, csv]) => ({ name: file, text: csv })),
];
const demo = (notebook: string, name: string): DemoLog =>
  demoLogs().find((log) => log.notebook === notebook && log.name === name)!;
const moisture = demo("moisture-trial", "seven-waters.yaml");
const fineness = demo("grain-fineness", "two-bags.yaml");

async function sizes(): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const log of demoLogs()) {
    const kilobytes = Buffer.byteLength(await livePage(log.notebook, textsOf(log))) / 1000;
    rows.push({
      of: "live size",
      work: `live page in one file: ${log.notebook}, ${log.name}`,
      measured: `${kilobytes.toFixed(0)} KB`,
      against: "",
      figure: kilobytes,
      target: { most: 900, unit: "KB" },
    });
  }
  return rows;
}

/** Two frames after the load event the first picture of the page has been shown. */
const noteShown = `window.shown = new Promise((shown) => addEventListener("load", () =>
  requestAnimationFrame(() => requestAnimationFrame(() => shown(performance.now())))))`;

async function shown(browser: Browser): Promise<readonly Row[]> {
  const html = await livePage(moisture.notebook, textsOf(moisture));
  const drawings = [...html.matchAll(/<div class="wide"[^>]*>(<svg[\s\S]*?<\/svg>)<\/div>/g)].map(
    ([, svg]) => svg,
  );
  const alone = `<!doctype html><meta charset="utf-8"><title>drawings</title><style>svg{display:block;width:720px}</style>${drawings.join("\n")}`;
  const folder = mkdtempSync(join(tmpdir(), "mullbook-bench-"));
  const file = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return pathToFileURL(join(folder, name)).href;
  };
  const [live, drawn] = [file("live.html", html), file("drawings.html", alone)];
  const time = async (page: string): Promise<number> => {
    const tab = await browser.newPage({ viewport: { width: 1200, height: 900 } });
    try {
      await tab.addInitScript(noteShown);
      await tab.goto(page);
      return (await tab.evaluate("window.shown")) as number;
    } finally {
      await tab.close();
    }
  };
  const times = await interleaved({ page: () => time(live), alone: () => time(drawn) }, { rounds: 15 });
  rmSync(folder, { recursive: true });
  return [
    {
      of: "shown",
      work: `live page shows its charts after opening (${moisture.name})`,
      measured: `${times.page.toFixed(0)} ms`,
      against: `its drawings alone: ${times.alone.toFixed(0)} ms`,
      figure: times.page / times.alone,
      target: { most: 1.5, unit: "×" },
    },
  ];
}

interface Setting {
  readonly says: string;
  readonly width: number;
  readonly slower: number;
  readonly ownThread: boolean;
  readonly target?: number;
  readonly of?: Target;
}
const SETTINGS: readonly Setting[] = [
  { says: "1,200 px", width: 1200, slower: 1, ownThread: true, target: 50, of: "live edit" },
  { says: "360 px", width: 360, slower: 1, ownThread: true, target: 50, of: "live edit" },
  { says: "360 px, page 4 × slower", width: 360, slower: 4, ownThread: true },
  {
    says: "360 px, all 4 × slower (no thread of its own)",
    width: 360,
    slower: 4,
    ownThread: false,
    target: 150,
    of: "live edit, slowed",
  },
];

async function edits(browser: Browser): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const [log, path] of [
    [moisture, /^batches\/.*\/moisture\/damp$/],
    [fineness, /^sands\/.*\/retained\/No\. 100/],
  ] as const) {
    const texts = textsOf(log);
    const html = await livePage(log.notebook, texts);
    const at = figureIn(texts, path);
    for (const setting of SETTINGS) {
      const times = await timed(browser, html, at, setting, 12);
      rows.push({
        ...(setting.of === undefined ? {} : { of: setting.of }),
        work: `edit until all is right: ${log.notebook}, ${setting.says}`,
        measured: `${median(times.map(({ all }) => all)).toFixed(0)} ms`,
        against: `the key stroke itself ${median(times.map(({ sync }) => sync)).toFixed(0)} ms`,
        figure: median(times.map(({ all }) => all)),
        ...(setting.target === undefined ? {} : { target: { most: setting.target, unit: "ms" } }),
      });
    }
  }
  return rows;
}

async function timed(
  browser: Browser,
  html: string,
  at: { readonly offset: number; readonly length: number },
  { width, slower, ownThread }: Setting,
  times: number,
): Promise<readonly Timed[]> {
  const { seen } = await openedLive(browser, html, { width }, async (tab) => {
    if (!ownThread) await tab.evaluate(() => Reflect.deleteProperty(globalThis, "Worker"));
    await wake(tab);
    const client = await tab.context().newCDPSession(tab);
    await client.send("Emulation.setCPUThrottlingRate", { rate: slower });
    await turn(tab, at, 4);
    return turn(tab, at, times);
  });
  return seen;
}

async function many(browser: Browser): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const count of [200, 2_000]) {
    const texts = [{ name: "many.yaml", text: batchLog(count) }];
    const html = await livePage("moisture-trial", texts);
    const at = figureIn(texts, /^batches\/B7\/moisture\/damp$/);
    const times = await timed(browser, html, at, { says: "", width: 1200, slower: 1, ownThread: true }, 5);
    rows.push({
      work: `edit in a log of ${count} batches: until typing can go on`,
      measured: `${median(times.map(({ sync }) => sync)).toFixed(0)} ms`,
      against: `until all is right ${median(times.map(({ all }) => all)).toFixed(0)} ms`,
      figure: median(times.map(({ sync }) => sync)),
      target: { most: 300, unit: "ms" },
    });
  }
  return rows;
}

async function memory(browser: Browser): Promise<readonly Row[]> {
  const texts = textsOf(fineness);
  const html = await livePage(fineness.notebook, texts);
  const at = figureIn(texts, /^sands\/.*\/retained\/No\. 100/);
  const { seen } = await openedLive(browser, html, {}, async (tab) => {
    await wake(tab);
    const measured: number[] = [];
    for (let hundreds = 0; hundreds <= 10; hundreds++) {
      await turn(tab, at, hundreds === 0 ? 20 : 100);
      const client = await tab.context().newCDPSession(tab);
      await client.send("HeapProfiler.collectGarbage");
      measured.push(await rendererMegabytes(browser));
    }
    return measured;
  });
  return [
    {
      work: "memory of the page's process over 1,000 edits (grain-fineness), resident",
      measured: `${seen.at(-1)!.toFixed(0)} MB`,
      against: `after 20 edits ${seen[0]!.toFixed(0)} MB, after 500 ${seen[5]!.toFixed(0)} MB`,
      figure: seen.at(-1)! / seen[5]!,
      target: { most: 1.15, unit: "×" },
    },
  ];
}

/** The largest process that shows pages: the tab that is being measured. */
async function rendererMegabytes(browser: Browser): Promise<number> {
  const client = await browser.newBrowserCDPSession();
  const { processInfo } = await client.send("SystemInfo.getProcessInfo");
  await client.detach();
  const sizes = processInfo
    .filter(({ type }) => type === "renderer")
    .map(({ id }) => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, "utf8"))?.[1] ?? 0));
  return Math.max(...sizes) / 1024;
}

const parts: { readonly [name: string]: (browser: Browser) => Promise<readonly Row[]> } = {
  "live-sizes": sizes,
  "live-shown": shown,
  "live-edits": edits,
  "live-many": many,
  "live-memory": memory,
};
const needs: { readonly [part: string]: readonly Target[] } = {
  "live-sizes": ["live size"],
  "live-shown": ["shown"],
  "live-edits": ["live edit", "live edit, slowed"],
};

/** The parts by name, each in a browser of its own. */
export const liveParts: { readonly [name: string]: () => Promise<readonly Row[]> } = Object.fromEntries(
  Object.entries(parts).map(([name, part]) => [
    name,
    async () => {
      if (withoutBrowser) return (needs[name] ?? [undefined]).map((of) => skipped(name, "no Chromium", of));
      const browser = await launched();
      try {
        return await part(browser);
      } finally {
        await browser.close();
      }
    },
  ]),
);
