// Hostile names where a log has names: of its files, of units, of columns, of sands and of batches; written, live, in
// the log beside the page, in messages, Markdown and CSV. Nothing runs, nothing turns a line round, nothing is lost.

import type { Browser, Page as Tab } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { type LogText, readLog, writeCsv, writeMarkdown } from "../../lib/index.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { written } from "./demo-pages.ts";
import { CLEAN, looked } from "./hostile-look.ts";
import { livePage } from "./live-edit-page.ts";
import { openedLive, wake } from "./open-live.ts";
import { opened } from "./open-page.ts";

/** What a browser would run, what ends an attribute or a quote, what turns a line round, what is as long as a book. */
const NAMES = {
  markup: "<img src=x onerror=alert(1)>",
  script: "</script><script>alert(2)</script>",
  quotes: `a"b'c\`d " onfocus="alert(3)" autofocus="`,
  turned: "\u202ednuor\u2066\u2067 \u05d0\u05d1\u05d2",
  link: "[a](javascript:alert(4)) ![b](http://evil.invalid/) | c",
  formula: `=HYPERLINK("http://evil.invalid";"d")`,
  long: "L".repeat(10_000),
} as const;
const kinds = Object.keys(NAMES) as (keyof typeof NAMES)[];
const quoted = (text: string): string => JSON.stringify(text);

/** Invented, as are all its figures. A unit is no name: one that is none is to be told, and no more. */
function sheetsLog(name: string): { readonly texts: readonly LogText[]; readonly csv: string } {
  const csv = `${name.slice(0, 200)}.csv`;
  const cell = `"${name.replaceAll('"', '""')}"`;
  return {
    csv,
    texts: [
      {
        name: `${name.slice(0, 200)}.yaml`,
        text: `format: 1
title: Two jars
invented: yes
sheets:
  ${quoted(name)}:
    columns:
      jar: text
      ${quoted(`${name} x`)}: g
      wet: ${quoted(`g${name.slice(0, 400)}`)}
      more: { unit: g, formula: ${quoted(`${name} + 1`)} }
    rows: ${quoted(csv)}
  typed:
    columns: { jar: text, dry: g, ${quoted(name)}: ${quoted(name.slice(0, 400))} }
    rows:
      - { jar: A, dry: 10.0, ${quoted(name)}: 3 }
      - { jar: ${quoted(name)}, dry: 10.2, ${quoted(name)}: ${quoted(name)} }
`,
      },
      { name: csv, text: `jar,"${`${name} x`.replaceAll('"', '""')}",wet\n${cell},10,14\nB,11,${cell}\n` },
    ],
  };
}

function trialLog(name: string): readonly LogText[] {
  const batch = (k: number): string => `  ${quoted(`${name} ${k}`)}:
    date: 2026-04-11
    order: ${k}
    made of: { ${quoted(`${name} sand`)}: 4 kg, bentonite: 350 g, water: ${84 + 20 * k} g, scale: ${quoted(`${name} scale`)} }
    moisture: { method: oven, damp: 150.${k} g, dry: ${146.1 - k} g, scale: ${quoted(`${name} scale`)} }
    compactability: { filled: 120 mm, rammed: ${80 - 6 * k} mm, rig: ${quoted(`${name} tube`)} }
    squeeze: ${Math.min(5, 1 + k)}
`;
  return [
    {
      name: `${name.slice(0, 200)}.yaml`,
      text: `format: 1
title: ${quoted(name)}
invented: yes
metal: aluminium
bond: bentonite
scales:
  ${quoted(`${name} scale`)}: { reads to: 0.1 g, within: 0.2 g }
rigs:
  ${quoted(`${name} tube`)}: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3 }
sands:
  ${quoted(`${name} sand`)}: { state: new }
batches:
${[1, 2, 3, 4].map(batch).join("")}`,
    },
  ];
}

const readAll = ([log, ...csv]: readonly LogText[]) =>
  readLog(log!.text, {
    name: log!.name,
    files: Object.fromEntries(csv.map(({ name, text }) => [name, text])),
  });

const { long, ...short } = NAMES;
// Back-ticks are tried by themselves: an escaped one would begin code for the reader of Markdown below.
const atOnce = Object.values(short).join(" ").replaceAll("`", "");
/** One by one where DEMOS=all. */
const cases: readonly {
  readonly kind: string;
  readonly notebook: string;
  readonly texts: readonly LogText[];
}[] = [
  { kind: "all at once", notebook: "own-sheets", texts: sheetsLog(atOnce).texts },
  { kind: "all at once", notebook: "moisture-trial", texts: trialLog(atOnce) },
  { kind: "long", notebook: "moisture-trial", texts: trialLog(long) },
  ...(process.env.DEMOS === "all"
    ? kinds.flatMap((kind) => [
        { kind, notebook: "own-sheets", texts: sheetsLog(NAMES[kind]).texts },
        { kind, notebook: "moisture-trial", texts: trialLog(NAMES[kind]) },
      ])
    : []),
];

/** Signs that turn a line round, outside what closes what it opened. */
const TURNING = /[\u202a-\u202e\u2066\u2067]/;

describe.skipIf(withoutBrowser)("hostile names in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  }, 60_000);

  test.each(cases)(
    "$kind, $notebook: in page, log beside it, messages, Markdown and CSV",
    async (one) => {
      const { kind, notebook, texts } = one;
      const { value, issues } = readAll(texts);
      expect(value).toBeDefined();
      for (const { message, remedy = "" } of issues)
        expect(message.length + remedy.length).toBeLessThan(25_000);
      const { page, html } = await written(notebook, value!, issues);
      const asWritten = await opened(browser, html, {}, looked);
      expect(asWritten.complaints).toEqual([]);
      expect(asWritten.seen).toMatchObject({ ...CLEAN, sideways: 0 });
      expect(asWritten.seen.words).toBeGreaterThan(500);

      const live = await openedLive(browser, await livePage(notebook, texts), { width: 360 }, async (tab) => {
        await wake(tab);
        await unfolded(tab);
        await faultyAtFirst(tab);
        return looked(tab);
      });
      expect(live.complaints).toEqual([]);
      expect(live.seen).toMatchObject({ ...CLEAN, sideways: 0 });

      const { markdown, files } = await writeMarkdown(page);
      expect(markdown).not.toMatch(TURNING);
      // Outside code, no sign of a name begins markup or a link.
      const words = markdown
        .replace(/^ {0,3}(`{3,})[\s\S]*?^ {0,3}\1/gm, "")
        .replace(/(`+)[^`][\s\S]*?\1/g, "");
      expect(words).not.toMatch(/(?<!\\)<(?:img|script|svg|\/script)/i);
      expect(words).not.toMatch(/(?<!\\)\]\((?!#|[\w./-]+\.svg\)|data\/)/);
      for (const path of Object.keys(files)) expect(path).toMatch(/^[^<>"|?*\\\u202a-\u202e]{1,200}$/);
      for (const [file, text] of Object.entries(writeCsv(page))) {
        expect(file).toMatch(/^[a-z0-9-]+\.csv$/);
        expect(text).not.toMatch(TURNING);
        expect(text).not.toMatch(/(?:^|[\n,])"?[=@]/);
      }
      if (kind === "markup" || kind === "all at once")
        expect(html).toContain("&lt;img src=x onerror=alert(1)");
    },
    120_000,
  );
});

async function unfolded(tab: Tab): Promise<void> {
  for (let deep = 0; deep < 4; deep++) {
    await tab.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>(".live-panel details"))
        fold.open = true;
    });
    await tab.waitForTimeout(100);
  }
}

/** A mistake typed into the log, so that a message is told there, in the bar and on the page. */
async function faultyAtFirst(tab: Tab): Promise<void> {
  const field = tab.locator(`.live-panel input[data-key$='"dry"]']`).first();
  await field.fill("1,5 <img src=y onerror=alert(9)> \u202e");
  await field.press("Enter");
  await tab.locator(".live-unsaved").waitFor();
  await tab.waitForTimeout(300);
}
