// Live pages in a real browser: every notebook's demo opens without a complaint, and after an edit it shows to the
// letter what the command line writes for the edited log, drawings and all.

import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { logOutline, type OutlineNode, readLog } from "../../lib/index.ts";
import type { LogText } from "../../lib/log/types.ts";
import { seeded } from "../seeded.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { type DemoLog, demoLogs, demoLogsToRepeat, written } from "./demo-pages.ts";
import { livePage } from "./live-edit-page.ts";
import { type Change, change, openedLive, shownOn, wake } from "./open-live.ts";

const logs = demoLogsToRepeat().map((log) => [`${log.notebook}, ${log.name}`, log] as const);
const MOST_KB = 900;

const textsOf = ({ name, text, files }: DemoLog): readonly LogText[] => [
  { name, text },
  ...Object.entries(files).map(([file, csv]) => ({ name: file, text: csv })),
];

function valuesIn(nodes: readonly (OutlineNode | undefined)[]): OutlineNode[] {
  return nodes.flatMap((node) => {
    if (!node) return [];
    if (node.kind === "value") return [node];
    return valuesIn(node.kind === "group" ? node.parts : node.rows.flat());
  });
}

/** Plain figures of the log, some of them with their last digit turned up. */
function randomChanges(texts: readonly LogText[], count: number, seed: number): Change[] {
  const random = seeded(seed);
  const figures = valuesIn(logOutline(texts)).flatMap(({ place, ...node }) => {
    const figure = node.kind === "value" && node.label !== "format" && /^\d[\d.,]*( |$)/.test(node.text);
    return figure ? [{ place, text: node.text }] : [];
  });
  const chosen = new Map<number, Change>();
  for (let i = 0; i < count && figures.length > 0; i++) {
    const { place, text } = figures[Math.floor(random.uniform() * figures.length)]!;
    const turned = text.replace(/\d(?=\D*$)/, (digit) => String((Number(digit) + 1) % 10));
    const { file, offset = 0, length = 0 } = place;
    chosen.set(offset, { file, offset, length, text: turned });
  }
  return [...chosen.values()].sort((a, b) => b.offset - a.offset);
}

async function writtenFor(notebook: string, [log, ...csv]: readonly LogText[]): Promise<string> {
  const files = Object.fromEntries(csv.map(({ name, text }) => [name, text]));
  const { value, issues } = readLog(log!.text, { name: log!.name, files });
  return (await written(notebook, value!, issues)).html;
}

describe.skipIf(withoutBrowser)("a live page in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(logs)("%s: opens as written; edited, it is what the command line writes", async (_, demo) => {
    const texts = textsOf(demo);
    const changes = randomChanges(texts, 3, demo.text.length);
    const html = await livePage(demo.notebook, texts);
    expect(Buffer.byteLength(html) / 1000).toBeLessThan(MOST_KB);
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      const first = await shownOn(tab);
      const asWritten = await shownOn(tab, await writtenFor(demo.notebook, texts));
      await wake(tab);
      const edited = await change(tab, changes);
      const now = await shownOn(tab);
      const wanted = texts.map(({ name }, i) => ({ name, text: edited[i]! }));
      return {
        first,
        asWritten,
        edited,
        now,
        command: await shownOn(tab, await writtenFor(demo.notebook, wanted)),
      };
    });
    expect(complaints).toEqual([]);
    expect(seen.first).toEqual(seen.asWritten);
    expect(changes.length).toBeGreaterThan(0);
    expect(seen.edited).not.toEqual(texts.map(({ text }) => text));
    expect(seen.now).not.toEqual(seen.first);
    expect(seen.now.words).toEqual(seen.command.words);
    expect(seen.now.title).toBe(seen.command.title);
    expect(seen.now.drawings.length).toBe(seen.command.drawings.length);
    expect(seen.now.drawings.findIndex((one, i) => one !== seen.command.drawings[i])).toBe(-1);
  });

  test("folds, scrolling, focus and a selection stay; undone, the page is as it was", async () => {
    const demo = demoLogs().find(
      ({ name, notebook }) => name === "two-bags.yaml" && notebook === "grain-fineness",
    )!;
    const texts = textsOf(demo);
    const { seen, complaints } = await openedLive(
      browser,
      await livePage(demo.notebook, texts),
      { width: 360 },
      async (tab) => {
        const first = await shownOn(tab);
        await wake(tab);
        await tab.evaluate(() => {
          for (const fold of document.querySelectorAll("main details"))
            (fold as HTMLDetailsElement).open = true;
          document.querySelector("main h2")!.setAttribute("data-mark", "");
          scrollTo(0, 700);
          getSelection()!.selectAllChildren(document.querySelector(".caution p")!);
        });
        const state = () =>
          tab.evaluate(() => ({
            open: [...document.querySelectorAll("main details")].filter(
              (fold) => (fold as HTMLDetailsElement).open,
            ).length,
            y: scrollY,
            selected: getSelection()!.toString(),
          }));
        const before = await state();
        await change(tab, randomChanges(texts, 2, 5));
        const after = await state();
        const changed = await shownOn(tab);
        await tab.evaluate(async () => {
          const settled = new Promise((resolve) =>
            document.addEventListener("mullbook:drawn", resolve, { once: true }),
          );
          (globalThis as unknown as { mullbookSession: { undo(): void } }).mullbookSession.undo();
          await settled;
        });
        return { first, before, after, changed, undone: await shownOn(tab) };
      },
    );
    expect(complaints).toEqual([]);
    expect(seen.before.open).toBeGreaterThan(3);
    expect(seen.after).toEqual(seen.before);
    expect(seen.changed).not.toEqual(seen.first);
    expect(seen.undone).toEqual(seen.first);
  });

  test("a log that cannot be read leaves the last page, with a notice that goes again", async () => {
    const demo = demoLogs().find(({ notebook }) => notebook === "mulling-trial")!;
    const texts = textsOf(demo);
    const { seen, complaints } = await openedLive(
      browser,
      await livePage(demo.notebook, texts),
      {},
      async (tab) => {
        const first = await shownOn(tab);
        await wake(tab);
        const replace = (text: string) =>
          tab.evaluate(
            async ([name, now]) => {
              const settled = new Promise((resolve) =>
                document.addEventListener("mullbook:settled", resolve, { once: true }),
              );
              (
                globalThis as unknown as { mullbookSession: { replace(texts: object[]): void } }
              ).mullbookSession.replace([{ name, text: now }]);
              await settled;
              return document.querySelector(".live-notice")?.textContent ?? "";
            },
            [demo.name, text] as const,
          );
        const notice = await replace("just words");
        const kept = await shownOn(tab);
        const gone = await replace(demo.text);
        return { first, notice, kept, gone };
      },
    );
    expect(complaints).toEqual([]);
    expect(seen.notice).toContain("cannot be read");
    expect(seen.kept).toEqual(seen.first);
    expect(seen.gone).toBe("");
  });
});
