// An opened log by keyboard alone, from the address to the saved file; and where the file may not be written.

import type { ChildProcess } from "node:child_process";
import { chmodSync, copyFileSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page as Tab } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { built, root, temporaryFolder } from "../cli/mullbook.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { openedLog } from "./opened-log.ts";

const log = "seven-waters.yaml";

describe.skipIf(withoutBrowser)("an opened log", () => {
  let browser: Browser;
  const servers: ChildProcess[] = [];
  beforeAll(async () => {
    await built();
    browser = await openBrowser();
  }, 600_000);
  afterAll(() => {
    for (const server of servers) server.kill("SIGKILL");
  });

  /** readOnly: neither the file nor its folder may be written; root may write everything, so it becomes nobody then. */
  async function opened(readOnly: boolean): Promise<{ readonly tab: Tab; readonly path: string }> {
    const folder = temporaryFolder();
    const path = join(folder, log);
    copyFileSync(join(root, "data-demo", "moisture-trial", log), path);
    if (readOnly) {
      chmodSync(path, 0o444);
      chmodSync(folder, 0o555);
    }
    const nobody = readOnly && process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const { server, address } = await openedLog(folder, log, "moisture-trial", nobody);
    servers.push(server);
    const context = await browser.newContext({ reducedMotion: "reduce" });
    const tab = await context.newPage();
    tab.setDefaultTimeout(60_000);
    await tab.goto(address);
    await tab.waitForFunction("globalThis.mullbookSession !== undefined");
    return { tab, path };
  }

  const focused = (tab: Tab, selector: string): Promise<boolean> =>
    tab.evaluate((one) => document.activeElement?.matches(one) ?? false, selector);
  async function tabTo(tab: Tab, selector: string, key = "Tab"): Promise<number> {
    for (let presses = 1; presses < 400; presses++) {
      await tab.keyboard.press(key);
      if (await focused(tab, selector)) return presses;
    }
    throw new Error(`${key} leads to no ${selector}`);
  }
  const state = (tab: Tab) => tab.locator(".live-state");

  test("by keyboard alone: to a figure, changed, undone, done again, read at a chart, saved", async () => {
    const { tab, path } = await opened(false);
    const before = readFileSync(path, "utf8");
    await tabTo(tab, "main [data-at]");
    await tab.keyboard.press("Enter");
    await tab.locator(".live-over input").waitFor();
    await tab.keyboard.press("End");
    await tab.keyboard.press("Home");
    await tab.keyboard.press("Delete");
    await tab.keyboard.type("6");
    const words = await tab.locator(".live-over input").inputValue();
    await tab.keyboard.press("Enter");
    await state(tab).filter({ hasText: "1 change, not saved" }).waitFor();
    expect(await focused(tab, "main [data-at]")).toBe(true);
    await tab.keyboard.press("Control+z");
    await state(tab).filter({ hasText: "As in the file" }).waitFor();
    await tab.keyboard.press("Control+Shift+Z");
    await state(tab).filter({ hasText: "1 change, not saved" }).waitFor();
    await tabTo(tab, "#figure-1 .live-ring");
    const label = tab.locator("#figure-1 .live-label p").first();
    const first = await label.textContent();
    await tab.keyboard.press("ArrowRight");
    expect(await label.textContent()).not.toBe(first);
    expect(readFileSync(path, "utf8")).toBe(before);
    await tabTo(tab, ".live-bar .live-main", "Shift+Tab");
    await tab.keyboard.press("Enter");
    await tab.locator(".live-said", { hasText: `Saved into ${log}.` }).waitFor();
    const after = readFileSync(path, "utf8");
    expect(after).toContain(words);
    const was = before.split("\n");
    expect(after.split("\n").filter((line, i) => line !== was[i])).toHaveLength(1);
    await tab.context().close();
  }, 180_000);

  test("a file that may not be written: told at the save, a copy offered, the change kept over a reload", async () => {
    const { tab, path } = await opened(true);
    const before = readFileSync(path, "utf8");
    await tab.locator("main [data-at]").first().click();
    await tab.locator(".live-over input").fill("5.25 kg");
    await tab.keyboard.press("Enter");
    await tab.keyboard.press("Control+s");
    const message = tab.locator(".live-message");
    await message.waitFor();
    expect(await message.textContent()).toContain(
      `Not saved. ${log} is not saved: your account may not write`,
    );
    expect(await message.textContent()).toContain("Save a copy");
    expect(await state(tab).textContent()).toBe("1 change, not saved");
    const [download] = await Promise.all([
      tab.waitForEvent("download"),
      tab.getByRole("button", { name: "Save a copy instead" }).click(),
    ]);
    const copy = readFileSync((await download.path())!, "utf8");
    expect(copy).not.toBe(before);
    expect(copy).toContain("5.25 kg");
    expect(readFileSync(path, "utf8")).toBe(before);
    tab.on("dialog", (dialog) => void dialog.accept());
    await tab.reload();
    await tab.locator(".live-message", { hasText: "from an earlier visit" }).waitFor();
    await state(tab).filter({ hasText: "1 change, not saved" }).waitFor();
    await tab.locator("main[aria-busy=true]").waitFor({ state: "detached" });
    expect(await tab.locator("section.data table").first().textContent()).toContain("5.25");
    await tab.context().close();
  }, 180_000);
});
