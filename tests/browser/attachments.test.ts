// The files of a write-up, taken out of its page by a click: byte for byte, without script or network.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { fingerprint, readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { written } from "./demo-pages.ts";
import { opened } from "./open-page.ts";

const text = readFileSync(join(import.meta.dirname, "../../data-demo/write-up/two-sands.yaml"), "utf8");
const csv = "bag,wet (g)\r\nA,12.4 ± 0.1\r\n";
const whole = `${text}sheets: { bags: { columns: { bag: text, wet: g }, rows: bags.csv } }\n`;

describe.skipIf(withoutBrowser)("files that travel with a page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test("a click takes each out as it was typed, and its fingerprint is the one on the page", async () => {
    const { value, issues } = readLog(whole, { name: "two-sands.yaml", files: { "bags.csv": csv } });
    const { html } = await written("write-up", value!, issues);
    const { seen, complaints } = await opened(browser, html, {}, async (tab) => {
      const links = await tab.locator("#files a").all();
      const files: { name: string; bytes: Buffer }[] = [];
      for (const link of links) {
        const [download] = await Promise.all([tab.waitForEvent("download"), link.click()]);
        files.push({ name: download.suggestedFilename(), bytes: readFileSync(await download.path()) });
      }
      const said = await tab.locator("header").textContent();
      return { files, said, list: await tab.locator("#files").textContent() };
    });
    expect(complaints).toEqual([]);
    expect(seen.files.map(({ name }) => name)).toEqual(["two-sands.yaml", "bags.csv"]);
    expect(seen.files[0]!.bytes.equals(Buffer.from(whole))).toBe(true);
    expect(seen.files[1]!.bytes.equals(Buffer.from(csv))).toBe(true);
    const [log, rows] = seen.files.map(({ bytes }) => bytes.toString("utf8")) as [string, string];
    const again = readLog(log, { name: "two-sands.yaml", files: { "bags.csv": rows } }).value!;
    expect(seen.said).toContain(again.fingerprint);
    expect(seen.list).toContain(fingerprint(rows));
  }, 60_000);
});
