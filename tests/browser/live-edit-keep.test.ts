// Keeping what was changed, in a page that came from a server: saved, met by somebody else's changes, refused.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Route, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import type { LogText } from "../../lib/index.ts";
import { draftKey } from "../../lib/live/drafts.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { livePage } from "./live-edit-page.ts";

const address = "http://127.0.0.1:4321/";
const keep = { kind: "server", save: `${address}save`, events: `${address}events`, others: [] } as const;
const path = join(import.meta.dirname, "..", "..", "data-demo", "moisture-trial", "seven-waters.yaml");
const log: LogText = { name: "seven-waters.yaml", text: readFileSync(path, "utf8") };
const withWater = (text: string, was: string, now: string): string =>
  text.replace(`water: ${was}`, `water: ${now}`);

interface Sent {
  readonly base: readonly LogText[];
  readonly texts: readonly LogText[];
}

describe.skipIf(withoutBrowser)("keeping a log on a server", () => {
  let browser: Browser;
  let html: string;
  beforeAll(async () => {
    browser = await openBrowser();
    html = await livePage("moisture-trial", [log], keep);
  }, 600_000);

  /** answer: what saving gives; elsewhere: what the stream tells when the page opens it. */
  async function served(
    answer: (sent: Sent) => { readonly status: number; readonly body: unknown },
    look: (tab: Tab, sent: readonly Sent[]) => Promise<void>,
    elsewhere?: readonly LogText[],
  ): Promise<void> {
    const context = await browser.newContext({ reducedMotion: "reduce" });
    const sent: Sent[] = [];
    try {
      const tab = await context.newPage();
      tab.setDefaultTimeout(60_000);
      let told = false;
      await tab.route("**", (route: Route) => {
        const url = route.request().url();
        if (url === address) return route.fulfill({ body: html, contentType: "text/html; charset=utf-8" });
        if (url === keep.save) {
          sent.push(route.request().postDataJSON());
          const { status, body } = answer(sent.at(-1)!);
          return route.fulfill({ status, body: JSON.stringify(body), contentType: "application/json" });
        }
        if (url === keep.events) {
          const event = `event: changed\ndata: ${JSON.stringify({ texts: elsewhere })}\n\n`;
          const body = `retry: 600000\n\n${elsewhere && !told ? event : ""}`;
          told = true;
          return route.fulfill({ body, contentType: "text/event-stream" });
        }
        return url.startsWith("blob:") ? route.continue() : route.abort();
      });
      await tab.goto(address);
      await look(tab, sent);
    } finally {
      await context.close();
    }
  }

  async function change(tab: Tab, batch: string, text: string): Promise<void> {
    await tab
      .locator(`section.data table >> nth=0 >> tr:has(th:text-is("${batch}")) >> td >> nth=4 >> [data-at]`)
      .click();
    await tab.locator(".live-over input").fill(text);
    await tab.keyboard.press("Enter");
    await tab.locator(".live-over").waitFor({ state: "detached" });
  }
  const state = (tab: Tab) => tab.locator(".live-state").textContent();
  const message = (tab: Tab) => tab.locator(".live-message");

  test("Save writes what was changed, and the text that the changes began from goes along", async () => {
    await served(
      ({ texts }) => ({ status: 200, body: { kind: "saved", texts } }),
      async (tab, sent) => {
        await change(tab, "W3", "0.150 kg");
        await tab.keyboard.press("Control+s");
        await tab.locator(".live-said", { hasText: "Saved into seven-waters.yaml." }).waitFor();
        expect(sent).toEqual([
          { base: [log], texts: [{ ...log, text: withWater(log.text, "0.142 kg", "0.150 kg") }] },
        ]);
        expect(await state(tab)).toBe("As in the file");
      },
    );
  });

  test("a change elsewhere of other lines is taken in, and mine are carried over", async () => {
    const theirs = [{ ...log, text: withWater(log.text, "0.216 kg", "0.219 kg") }];
    await served(
      ({ base, texts }) =>
        base[0]!.text === theirs[0]!.text
          ? { status: 200, body: { kind: "saved", texts } }
          : { status: 409, body: { kind: "changed", theirs } },
      async (tab, sent) => {
        await change(tab, "W3", "0.150 kg");
        await tab.keyboard.press("Control+s");
        await message(tab).waitFor();
        expect(await message(tab).textContent()).toContain("they are carried over, and not saved yet");
        expect(await state(tab)).toBe("1 change, not saved");
        await tab.keyboard.press("Control+s");
        await tab.locator(".live-said", { hasText: "Saved into" }).waitFor();
        expect(sent[1]).toEqual({
          base: theirs,
          texts: [{ ...log, text: withWater(theirs[0]!.text, "0.142 kg", "0.150 kg") }],
        });
      },
    );
  });

  test("the same line changed by both: nothing is written before the founder decides; both sides can be had", async () => {
    const theirs = [{ ...log, text: withWater(log.text, "0.142 kg", "0.139 kg") }];
    await served(
      () => ({ status: 409, body: { kind: "changed", theirs } }),
      async (tab) => {
        await change(tab, "W3", "0.150 kg");
        await tab.keyboard.press("Control+s");
        await message(tab).waitFor();
        await tab.getByRole("button", { name: "Show the differences" }).click();
        const shown = await tab.locator(".live-differences").textContent();
        expect(shown).toContain("0.139 kg");
        expect(shown).toContain("0.150 kg");
        const [download] = await Promise.all([
          tab.waitForEvent("download"),
          tab.getByRole("button", { name: "Save mine as a copy" }).click(),
        ]);
        expect(readFileSync((await download.path())!, "utf8")).toBe(
          withWater(log.text, "0.142 kg", "0.150 kg"),
        );
        await tab.getByRole("button", { name: "Take theirs" }).click();
        expect(await state(tab)).toBe("As in the file");
        await tab.getByRole("button", { name: "Undo" }).click();
        expect(await state(tab)).toBe("1 change, not saved");
      },
    );
  });

  test("the same line changed by both: mine is kept on wish, with theirs of other lines, and saved", async () => {
    const both = withWater(log.text, "0.216 kg", "0.219 kg");
    const theirs = [{ ...log, text: withWater(both, "0.142 kg", "0.139 kg") }];
    await served(
      ({ base, texts }) =>
        base[0]!.text === theirs[0]!.text
          ? { status: 200, body: { kind: "saved", texts } }
          : { status: 409, body: { kind: "changed", theirs } },
      async (tab, sent) => {
        await change(tab, "W3", "0.150 kg");
        await tab.keyboard.press("Control+s");
        await tab.getByRole("button", { name: "Keep mine", exact: true }).click();
        expect(await message(tab).textContent()).toContain("not saved yet");
        expect(await state(tab)).toBe("1 change, not saved");
        await tab.keyboard.press("Control+s");
        await tab.locator(".live-said", { hasText: "Saved into" }).waitFor();
        // What stood there of changes that are not saved is no longer true.
        expect(await message(tab).count()).toBe(0);
        expect(sent[1]?.texts).toEqual([{ ...log, text: withWater(both, "0.142 kg", "0.150 kg") }]);
      },
    );
  });

  test("a page without changes follows the file", async () => {
    const theirs = [{ ...log, text: withWater(log.text, "0.142 kg", "0.139 kg") }];
    await served(
      () => ({ status: 500, body: {} }),
      async (tab) => {
        await tab.locator("section.data", { hasText: "0.139" }).waitFor();
        expect(await message(tab).textContent()).toContain("was changed elsewhere. It is read again here");
        expect(await state(tab)).toBe("As in the file");
      },
      theirs,
    );
  });

  test("what is refused is told with what to do, and stays in the page", async () => {
    await served(
      () => ({ status: 507, body: { kind: "refused", message: "The disk is full.", remedy: "Make room." } }),
      async (tab) => {
        await change(tab, "W3", "0.150 kg");
        await tab.keyboard.press("Control+s");
        await message(tab).waitFor();
        expect(await message(tab).textContent()).toContain("Not saved. The disk is full. Make room.");
        expect(await state(tab)).toBe("1 change, not saved");
      },
    );
  });

  const drafts = (tab: Tab) =>
    tab.evaluate(() =>
      Object.entries({ ...localStorage }).filter(([key]) => key.startsWith("mullbook draft ")),
    );

  test("what was saved is no draft any more: it does not come back as changes that are not in the file", async () => {
    await served(
      ({ texts }) => ({ status: 200, body: { kind: "saved", texts } }),
      async (tab) => {
        await change(tab, "W3", "0.150 kg");
        await expect.poll(async () => (await drafts(tab)).length).toBe(1);
        await tab.keyboard.press("Control+s");
        await tab.locator(".live-said", { hasText: "Saved into" }).waitFor();
        await expect.poll(() => drafts(tab)).toEqual([]);
      },
    );
  });

  test("a draft that began from an older file is carried over and kept as one of this file, once", async () => {
    const older = [{ ...log, text: withWater(log.text, "0.216 kg", "0.219 kg") }];
    const mine = [{ ...log, text: withWater(older[0]!.text, "0.142 kg", "0.150 kg") }];
    await served(
      () => ({ status: 500, body: {} }),
      async (tab) => {
        await tab.evaluate(
          ([key, kept]) => localStorage.setItem(key!, kept!),
          [draftKey(older), JSON.stringify({ base: older, texts: mine })],
        );
        await tab.reload();
        await message(tab).waitFor();
        expect(await message(tab).textContent()).toContain(
          "Your changes from an earlier visit are here again",
        );
        const carried = [{ ...log, text: withWater(log.text, "0.142 kg", "0.150 kg") }];
        const kept = [[draftKey([log]), JSON.stringify({ base: [log], texts: carried })]];
        await expect.poll(() => drafts(tab)).toEqual(kept);
      },
    );
  });

  test("a draft with nothing that the file lacks is thrown away without a word", async () => {
    const older = [{ ...log, text: withWater(log.text, "0.142 kg", "0.139 kg") }];
    await served(
      () => ({ status: 500, body: {} }),
      async (tab) => {
        await tab.evaluate(
          ([key, kept]) => localStorage.setItem(key!, kept!),
          [draftKey(older), JSON.stringify({ base: older, texts: [log] })],
        );
        await tab.reload();
        await expect.poll(() => drafts(tab)).toEqual([]);
        expect(await message(tab).count()).toBe(0);
        expect(await state(tab)).toBe("As in the file");
      },
    );
  });
});
