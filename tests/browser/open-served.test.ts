// The pages of an opened log in a real browser: saved into the file, told of changes, and closed to other sites.

import type { ChildProcess } from "node:child_process";
import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { Browser, Page as Tab } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { built, root, temporaryFolder } from "../cli/mullbook.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { openedLog } from "./opened-log.ts";

const log = "seven-waters.yaml";

async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  for (const end = Date.now() + 60_000; !(await holds()); await pause(50)) {
    if (Date.now() > end) throw new Error("it did not come to pass within a minute");
  }
}

describe.skipIf(withoutBrowser)("an opened log in a browser", () => {
  let browser: Browser;
  let server: ChildProcess;
  let address: string;
  const folder = temporaryFolder();
  const path = join(folder, log);

  beforeAll(async () => {
    await built();
    browser = await openBrowser();
    copyFileSync(join(root, "data-demo", "moisture-trial", log), path);
    ({ server, address } = await openedLog(folder, log, "moisture-trial"));
  }, 600_000);
  afterAll(() => {
    server?.kill("SIGKILL");
  });

  async function loaded(complaints: string[]): Promise<Tab> {
    const tab = await browser.newPage();
    tab.setDefaultTimeout(60_000);
    tab.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
    tab.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
    tab.on("request", (request) => {
      if (!request.url().startsWith(new URL("../", address).href) && !request.url().startsWith("blob:"))
        complaints.push(`request: ${request.url()}`);
    });
    await tab.goto(address);
    await tab.waitForFunction("globalThis.mullbookSession !== undefined");
    return tab;
  }

  const textOf = (tab: Tab) => tab.evaluate("mullbookSession.texts[0].text") as Promise<string>;
  const water = (tab: Tab, batch: string) =>
    tab.locator(`section.data table >> nth=0 >> tr:has(th:text-is("${batch}")) >> td >> nth=4`);

  test("a change is saved into the file, another page hears of it, and so do both of an editor's", async () => {
    const complaints: string[] = [];
    const [first, second] = [await loaded(complaints), await loaded(complaints)];
    const before = readFileSync(path, "utf8");
    const typed = (await water(first, "W1").textContent())!.trim();
    await water(first, "W1").click();
    await first.locator(".live-over input").fill("0.1234 kg");
    await first.keyboard.press("Enter");
    await first.getByRole("button", { name: "Save", exact: true }).click();
    await until(() => readFileSync(path, "utf8") !== before);
    const after = readFileSync(path, "utf8");
    expect(after).toContain("0.1234 kg");
    expect(typed).not.toContain("0.1234");
    // Only the one figure differs, and what was there is beside it.
    const lines = (text: string) => text.split("\n");
    expect(lines(after).filter((line, i) => line !== lines(before)[i]).length).toBe(1);
    expect(readFileSync(`${path}.before`, "utf8")).toBe(before);
    await until(async () => (await textOf(second)) === after);

    const edited = after.replace("0.1234 kg", "0.155 kg");
    writeFileSync(path, edited);
    await until(async () => (await textOf(first)) === edited && (await textOf(second)) === edited);
    await until(async () => (await water(first, "W1").textContent())?.includes("155") === true);
    expect(complaints).toEqual([]);
    await first.close();
    await second.close();
  }, 300_000);

  test("the list and its links lead through the pages without a complaint", async () => {
    const complaints: string[] = [];
    const tab = await loaded(complaints);
    await tab.getByRole("navigation").getByRole("link", { name: "All pages of this log" }).click();
    await tab.getByRole("link", { name: "Home rigs" }).click();
    await tab.waitForSelector("h1");
    expect(tab.url()).toMatch(/\/pages\/home-rigs$/);
    expect(complaints).toEqual([]);
    await tab.close();
  }, 300_000);

  test("a page of another site on this machine reads nothing, shows nothing and saves nothing", async () => {
    const before = readFileSync(path, "utf8");
    const page = (await loaded([])).context().pages().at(-1)!;
    const keep = (await page.evaluate(
      `JSON.parse(document.getElementById("live-setup").textContent).keep`,
    )) as { readonly save: string; readonly events: string };
    const { origin } = new URL(address);
    const other = createServer((_, response) =>
      response.end("<!doctype html><title>another site</title><body></body>"),
    );
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    const tab = await browser.newPage();
    await tab.goto(`http://127.0.0.1:${(other.address() as AddressInfo).port}/`);
    // It knows the whole address, secret and all, and still gets nowhere.
    const got = (await tab.evaluate(`(async () => {
      const page = ${JSON.stringify(address)};
      const save = ${JSON.stringify(origin + keep.save)};
      const events = ${JSON.stringify(origin + keep.events)};
      const body = JSON.stringify({ base: [], texts: [] });
      const json = { "content-type": "application/json" };
      const failed = (asked) => asked.then((r) => r.type + " " + r.status + " " + r.statusText, () => "failed");
      const element = (name, set) => new Promise((resolve) => {
        const made = document.createElement(name);
        made.onload = () => resolve("loaded");
        made.onerror = () => resolve("failed");
        set(made);
        document.body.append(made);
      });
      const stream = new EventSource(events);
      const heard = new Promise((resolve) => {
        stream.onopen = () => resolve("open");
        stream.onerror = () => { stream.close(); resolve("failed"); };
      });
      return {
        read: await failed(fetch(page)),
        blind: await failed(fetch(page, { mode: "no-cors" })),
        save: await failed(fetch(save, { method: "POST", headers: json, body })),
        blindSave: await failed(fetch(save, { method: "POST", mode: "no-cors", body })),
        stream: await heard,
        socket: await new Promise((resolve) => {
          const made = new WebSocket(page.replace("http:", "ws:"));
          made.onopen = () => resolve("open");
          made.onerror = () => resolve("failed");
        }),
        form: await element("iframe", (made) => {
          made.name = "answer";
          const form = document.createElement("form");
          Object.assign(form, { method: "post", action: save, target: "answer", enctype: "text/plain" });
          const field = document.createElement("input");
          Object.assign(field, { name: body, value: "" });
          form.append(field);
          document.body.append(form);
          setTimeout(() => form.submit(), 200);
        }).then(() => new Promise((done) => setTimeout(done, 1000))).then(() => "sent"),
        image: await element("img", (made) => { made.src = page; }),
        script: await element("script", (made) => { made.src = page; }),
        framed: await element("iframe", (made) => { made.src = page; }).then(() => {
          try { return String(document.querySelector("iframe").contentDocument?.title); } catch { return "closed"; }
        }),
      };
    })()`)) as Readonly<Record<string, string>>;
    expect(got).toMatchObject({
      read: "failed",
      save: "failed",
      stream: "failed",
      socket: "failed",
      image: "failed",
      script: "failed",
    });
    for (const name of ["blind", "blindSave"]) expect(got[name]).toMatch(/failed|opaque 0/);
    expect(got.framed).not.toContain("trial");
    expect(readFileSync(path, "utf8")).toBe(before);
    expect(existsSync(`${path}.tmp`)).toBe(false);
    await tab.close();
    await page.close();
    other.close();
  }, 300_000);
});
