// Hostile texts in every free text of a log, for every notebook: written, live, and brought in by an edit. Nothing runs,
// nothing is asked for, and no text can turn round what stands about it.

import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type LogText, logOutline, type OutlineNode, readLog } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { type DemoLog, demoLogs, written } from "./demo-pages.ts";
import { CLEAN, looked } from "./hostile-look.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";
import { opened } from "./open-page.ts";

/** What a browser would run, load or follow, what ends an element or an attribute, and what turns a line round. */
const HOSTILE = [
  "<img src=x onerror=alert(1)>",
  "</script><script>alert(2)</script>",
  `"><svg onload=alert(3)>`,
  "[a](javascript:alert(4)) <a href=javascript:alert(5)>b</a>",
  "' onfocus='alert(6)' autofocus='",
  "\u202ednuor denrut \u2066\u2067",
  "\u05d0\u05d1\u05d2 \u05d3\u05d4",
  `--></style><style>*{display:none}</style>&lt;b&gt;`,
  `${"W".repeat(4000)}`,
];
/** Keys whose text is the founder's own. */
const FREE = /^(title|founder|note|notes|says|why|question|what|who|source|remark|left out)$/i;
/** One of each notebook; those that take long where DEMOS=all. */
const SLOW = ["diary", "heap", "write-up", "clay-trial", "blend"];
const demos = demoLogs().filter(
  ({ notebook }, i, all) =>
    notebook !== all[i - 1]?.notebook && (process.env.DEMOS === "all" || !SLOW.includes(notebook)),
);

const valuesIn = (nodes: readonly (OutlineNode | undefined)[]): Extract<OutlineNode, { kind: "value" }>[] =>
  nodes.flatMap((node) => {
    if (!node) return [];
    if (node.kind === "value") return [node];
    return valuesIn(node.kind === "group" ? node.parts : node.rows.flat());
  });

/** The log with hostile texts in its free places, and its names in each of them followed by one. */
function poisoned({ name, text, files }: DemoLog): readonly LogText[] {
  let k = 0;
  const next = (): string => HOSTILE[k++ % HOSTILE.length]!;
  const free = valuesIn(logOutline([{ name, text }]))
    .filter(({ label, place }) => FREE.test(label) && place.file === name && (place.length ?? 0) > 0)
    .sort((a, b) => b.place.offset! - a.place.offset!);
  let log = text;
  for (const { place } of free)
    log = `${log.slice(0, place.offset)}${JSON.stringify(next())}${log.slice(place.offset! + place.length!)}`;
  if (!/^note:/m.test(log)) log = log.replace(/^format: 1$/m, `format: 1\nnote: ${JSON.stringify(next())}`);
  // Names of scales, rigs, sands and batches, wherever they are repeated.
  for (const known of ["kitchen scale", "drop tube", "Coppice Lane sand", "pocket scale", "shed stack"])
    if (log.includes(`${known}:`)) {
      const hostile = `${known} ${next().slice(0, 60)}`;
      log = log
        .replaceAll(`${known}:`, `${JSON.stringify(hostile)}:`)
        .replaceAll(
          new RegExp(`(: )${known}(?=[ ,}\\n])`, "g"),
          (_, before) => `${before}${JSON.stringify(hostile)}`,
        );
    }
  return [{ name, text: log }, ...Object.entries(files).map(([file, csv]) => ({ name: file, text: csv }))];
}

describe.skipIf(withoutBrowser)("hostile texts in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(demos.map((demo) => [demo.notebook, demo] as const))(
    "%s: written, and live as opened",
    async (notebook, demo) => {
      const texts = poisoned(demo);
      const [log, ...csv] = texts;
      const files = Object.fromEntries(csv.map(({ name, text }) => [name, text]));
      const { value, issues } = readLog(log!.text, { name: log!.name, files });
      expect(value).toBeDefined();
      const asWritten = await opened(browser, (await written(notebook, value!, issues)).html, {}, looked);
      expect(asWritten.complaints).toEqual([]);
      expect(asWritten.seen).toMatchObject({ ...CLEAN, sideways: 0 });
      const live = await openedLive(browser, await livePage(notebook, texts), {}, looked);
      expect(live.complaints).toEqual([]);
      expect(live.seen).toMatchObject({ ...CLEAN, sideways: 0 });
      expect(live.seen.words).toBeGreaterThan(1000);
    },
    120_000,
  );

  test("brought in by edits: names and notes in the page, the log beside it, the changes and the messages", async () => {
    const demo = demoLogs().find(({ notebook }) => notebook === "moisture-trial")!;
    const clean = [{ name: demo.name, text: demo.text }];
    const dirty = demo.text
      .replace(/^title: .*$/m, `title: ${JSON.stringify(HOSTILE.slice(0, 8).join(" "))}`)
      .replace(
        "  W3:\n",
        `  ${JSON.stringify(`W3 ${HOSTILE[0]} ${HOSTILE[5]} ${HOSTILE[6]}`)}:\n    left out: ${JSON.stringify(HOSTILE.slice(0, 7).join(" "))}\n`,
      )
      .replaceAll("drop tube", "drop tube <img src=y onerror=alert(7)>")
      .replace("W5:\n", `W5:\n    note: ${JSON.stringify(HOSTILE.join(" "))}\n`);
    const { seen, complaints } = await openedLive(
      browser,
      await livePage("moisture-trial", clean),
      {},
      async (tab) => {
        await wake(tab);
        await tab.evaluate(async (text) => {
          const { mullbookSession: session } = globalThis as unknown as {
            mullbookSession: { texts: { name: string }[]; replace(texts: object[]): void };
          };
          const settled = new Promise((done) =>
            document.addEventListener("mullbook:settled", done, { once: true }),
          );
          session.replace([{ name: session.texts[0]!.name, text }]);
          await settled;
        }, dirty);
        await tab.locator(".live-panel summary", { hasText: /^batches/ }).click();
        await tab.locator("#figure-1 .live-ring").focus();
        await tab.keyboard.press("ArrowRight");
        await tab.keyboard.press("ArrowRight");
        return { ...(await looked(tab)), header: await tab.locator("header").first().textContent() };
      },
    );
    expect(complaints).toEqual([]);
    expect(seen).toMatchObject({ ...CLEAN, sideways: 0 });
    expect(seen.header).toContain("<img src=x onerror=alert(1)>");
  });

  test("a figure behind a word that runs to the left stays to its right", async () => {
    const text = demoLogs()
      .find(({ notebook }) => notebook === "moisture-trial")!
      .text.replace("  W3:\n", "  \u05d0\u05d1\u05d2:\n");
    const html = await livePage("moisture-trial", [{ name: "seven-waters.yaml", text }]);
    const { seen, complaints } = await openedLive(browser, html, {}, async (tab) => {
      await tab.locator("#figure-1 .live-ring").focus();
      for (let i = 0; i < 2; i++) await tab.keyboard.press("ArrowRight");
      return tab.evaluate(() => {
        const node = document.querySelector("#figure-1 .live-label p")!.firstChild!;
        const said = node.textContent!;
        const box = (from: number, length: number): DOMRect => {
          const range = document.createRange();
          range.setStart(node, from);
          range.setEnd(node, from + length);
          return range.getBoundingClientRect();
        };
        const figure = said.indexOf(": ");
        return { said, name: box(said.indexOf("\u05d0"), 3).right, colon: box(figure, 1).left };
      });
    });
    expect(complaints).toEqual([]);
    expect(seen.said).toContain("\u05d0\u05d1\u05d2");
    expect(seen.colon).toBeGreaterThanOrEqual(seen.name - 1);
  });
});
