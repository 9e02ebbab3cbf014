// Charts of a founder's own notebook in a live page: those of the library's functions need no drawing library; a spec of
// the founder's own brings it; one that it cannot draw costs its own place alone. Notebooks and logs are invented.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { built, mullbookProcess, temporaryFolder } from "../cli/mullbook.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { change, openedLive, wake } from "./open-live.ts";

const LOG = `format: 1
title: Two jars
invented: yes
sands:
  yard sand:
    state: new
    sievings:
      - { date: 2026-05-02, washed: yes, start: 50 g, retained: { No. 40: 2.1, No. 50: 9.5, No. 70: 18.2, No. 100: 13.0, No. 140: 5.3, No. 200: 1.2, pan: 0.3 } }
`;

/** property: how the script writes the name of what draws. */
const script = (property: string): string => `import * as mull from "mullbook";

export default mull.notebook("Jars", (log) => {
  const mass = log.sands[0]!.sievings[0]!.retained[2]!.mass.value;
  const share = { label: "weighing", sharePercent: mass };
  const good = mull.doubtBars({ name: "doubt", shares: [share] });
  const bars = { mark: "bar", data: { values: [{ mass }] }, encoding: { x: { field: "mass", type: "quantitative" } } };
  const own = { name: "own", alt: "One bar.", caption: "One bar", table: good.table, ${property} };
  const charts = ${property === "" ? "[good]" : '[{ kind: "chart", chart: own } as never, good]'};
  return { question: "How much?", answer: ["Some."], sections: [mull.section("result", "Jars", charts)] };
});
`;
const WIDTH = "(width: number) => ({ width, ...bars })";

function written(property: string): string {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), LOG);
  writeFileSync(join(cwd, "jars.ts"), script(property));
  const { code, out } = mullbookProcess(["write", "jars.ts", "log.yaml", "--live"], { cwd });
  expect(code).toBe(0);
  return readFileSync(join(cwd, out.trim()), "utf8");
}

/** Drawings at the width that shows, before a figure is changed and after. */
async function drawings(browser: Browser, html: string) {
  const shown = (): string[] => [...document.querySelectorAll(".wide")].map(({ innerHTML }) => innerHTML);
  return openedLive(browser, html, {}, async (tab) => {
    await wake(tab);
    const before = await tab.evaluate(shown);
    await change(tab, [{ file: "log.yaml", offset: LOG.indexOf("18.2"), length: 4, text: "31.9" }]);
    const notice = await tab.locator(".live-notice").count();
    const images = await tab.evaluate(() =>
      [...document.querySelectorAll("figure > div:has(.wide)")].map((box) => [
        box.getAttribute("role"),
        box.hasAttribute("aria-label"),
      ]),
    );
    return { before, after: await tab.evaluate(shown), notice, images };
  });
}

describe.skipIf(withoutBrowser)("in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    await built();
    browser = await openBrowser();
  }, 180_000);

  test("the library's charts alone: no drawing library, less than 900 KB, drawn anew", async () => {
    const html = written("");
    expect(html.length).toBeLessThan(900_000);
    const { seen, complaints } = await drawings(browser, html);
    expect(complaints).toEqual([]);
    expect(seen.after[0]).toMatch(/^<svg/);
    expect(seen.after[0]).not.toBe(seen.before[0]);
  }, 120_000);

  test("a spec of the founder's own is drawn anew by the library that it brings", async () => {
    const html = written(`spec: ${WIDTH}`);
    expect(html.length).toBeGreaterThan(900_000);
    const { seen, complaints } = await drawings(browser, html);
    expect(complaints).toEqual([]);
    expect(seen.notice).toBe(0);
    for (const i of [0, 1]) {
      expect(seen.after[i]).toMatch(/^<svg/);
      expect(seen.after[i]).not.toBe(seen.before[i]);
    }
  }, 120_000);

  test("a spec under a name put together is not seen: a sentence in its place, the other drawn anew", async () => {
    const { seen, complaints } = await drawings(browser, written(`["sp".concat("ec")]: ${WIDTH}`));
    expect(complaints).toEqual([]);
    expect(seen.notice).toBe(0);
    expect(seen.before[0]).toMatch(/^<svg/);
    expect(seen.after[0]).toMatch(/^<p class="undrawable">This chart cannot be drawn/);
    expect(seen.after[1]).toMatch(/^<svg/);
    expect(seen.after[1]).not.toBe(seen.before[1]);
    // What a screen reader takes for an image it reads no words of.
    expect(seen.images).toEqual([
      [null, false],
      ["img", true],
    ]);
  }, 120_000);
});
