// Rows of a CSV file in an opened log: added, taken out, brought back, saved, and read back from the disk.

import type { ChildProcess } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readLog } from "../../lib/index.ts";
import { built, temporaryFolder } from "../cli/mullbook.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { filedTrial } from "./filed-batches.ts";
import { openedLog } from "./opened-log.ts";

const [log, csv] = filedTrial as readonly [(typeof filedTrial)[0], (typeof filedTrial)[0]];

describe.skipIf(withoutBrowser)("rows of a CSV file in an opened log", () => {
  let browser: Browser;
  let server: ChildProcess;
  let address: string;
  const folder = temporaryFolder();
  const onDisk = (): string => readFileSync(join(folder, csv.name), "utf8");

  beforeAll(async () => {
    await built();
    browser = await openBrowser();
    for (const { name, text } of filedTrial) writeFileSync(join(folder, name), text);
    ({ server, address } = await openedLog(folder, log.name, "moisture-trial"));
  }, 600_000);
  afterAll(() => {
    server?.kill("SIGKILL");
  });

  test("a row added and one taken out stand in the file, all else as it was", async () => {
    const complaints: string[] = [];
    const tab = await browser.newPage();
    tab.setDefaultTimeout(60_000);
    tab.on("console", (message) => complaints.push(message.text()));
    tab.on("pageerror", (error) => complaints.push(error.message));
    await tab.goto(address);
    await tab.waitForFunction("globalThis.mullbookSession !== undefined");
    const now = (): Promise<string> => tab.evaluate("mullbookSession.texts[1].text");
    await tab.getByRole("button", { name: "The log", exact: true }).click();
    await tab.locator(`.live-panel [data-key='fold ["${csv.name}"]']`).click();

    await tab.getByRole("textbox", { name: "new row, batch" }).fill("W8");
    await tab.keyboard.press("Tab");
    for (const [column, text] of [
      ["date", "2026-04-13"],
      ["moisture", "3.45 % ± 0.1 %"],
      ["compactability", "44.8 % ± 1 %"],
      ["note", 'said "damp, not wet"'],
    ]) {
      await tab.getByRole("textbox", { name: `row 8, ${column}` }).fill(text!);
      await tab.keyboard.press("Tab");
    }
    const added = `${csv.text}W8,2026-04-13,,3.45 % ± 0.1 %,44.8 % ± 1 %,,"said ""damp, not wet"""\n`;
    await expect.poll(now).toBe(added);

    const without = added.replace(/^W2,.*\n/m, "");
    await tab.getByRole("button", { name: "Take out row 2", exact: true }).click();
    await expect.poll(now).toBe(without);
    await tab.getByRole("button", { name: "Undo", exact: true }).click();
    await expect.poll(now).toBe(added);
    await tab.getByRole("button", { name: "Take out row 2", exact: true }).click();
    await expect.poll(now).toBe(without);
    expect(onDisk()).toBe(csv.text);

    await tab.getByRole("button", { name: "Save", exact: true }).click();
    await expect.poll(onDisk, { timeout: 60_000 }).toBe(without);
    expect(readFileSync(join(folder, `${csv.name}.before`), "utf8")).toBe(csv.text);
    expect(readFileSync(join(folder, log.name), "utf8")).toBe(log.text);
    const { value, issues } = readLog(log.text, { name: log.name, files: { [csv.name]: onDisk() } });
    expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(value!.batches.map(({ name }) => name)).toEqual(["W1", "W3", "W4", "W5", "W6", "W7", "W8"]);

    await tab.reload();
    await tab.locator("main th", { hasText: /^W8$/ }).first().waitFor();
    expect(await tab.locator("main th", { hasText: /^W2$/ }).count()).toBe(0);
    expect(complaints).toEqual([]);
    await tab.close();
  }, 300_000);
});
