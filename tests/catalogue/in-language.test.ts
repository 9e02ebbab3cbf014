// Every demo page in a made-up language: findings, issues, cautions and the page's own words come out in it, figures as they were.

import { expect, test } from "vitest";
import { inLanguage, type Page, writeHtml, writeMarkdown } from "../../lib/index.ts";
import { everyBlock, type LaidPage, layOut } from "../../lib/page/lay-out.ts";
import { demos, notebookOf, readDemo } from "../demos.ts";
import { leftIn, madeUp, unmarked } from "./made-up-language.ts";

const draw = async (): Promise<string> => "<svg></svg>";

async function demoPage(name: string, file: string): Promise<Page> {
  const { value, issues } = readDemo(name, file);
  const page = (await notebookOf(name)).run(value!);
  return { ...page, issues: [...issues, ...page.issues] };
}

const figures = (text: string): string[] => text.match(/\d[\d.,/]*/g) ?? [];

/** Sentences that messages give, and what they are said with. */
function told(laid: LaidPage) {
  const blocks = laid.sections.flatMap((section) => everyBlock(section.blocks));
  const findings = blocks.flatMap((block) => (block.kind === "finding" ? [block.finding] : []));
  const cautions = blocks.flatMap((block) => (block.kind === "caution" ? [block.caution] : []));
  return { findings, cautions, issues: laid.issues };
}

/** Where two texts part, but for white space: nowhere is "". */
function unlike(a: string, b: string): string {
  const [one, two] = [a, b].map((text) => text.replace(/[\s|-]+/g, " ")) as [string, string];
  let k = 0;
  while (k < one.length && one[k] === two[k]) k++;
  return k === one.length && k === two.length
    ? ""
    : `${one.slice(k - 30, k + 60)} // ${two.slice(k - 30, k + 60)}`;
}

/** Words of the page's own, unmarked. */
const ownWords =
  /(?<!¤)\b(?:Sources<|Source:|Data of figure|What it rests on|How each column is|look again<).{0,40}|(?:\*\*|<b>|## |> )(?:Table \d|Figure \d|Sources|Caution).{0,40}/g;

test.each(demos)("%s, %s", async (name, file) => {
  const page = await demoPage(name, file);
  const { page: other, missing } = inLanguage(page, madeUp);
  expect(missing).toEqual([]);
  const [was, is] = [told(layOut(page)), told(layOut(other))];
  expect(is.findings.length).toBe(was.findings.length);
  for (const [k, finding] of is.findings.entries()) {
    expect(finding.text, finding.code).toContain("¤");
    expect(unmarked(finding.text)).toBe(was.findings[k]!.text);
    expect(finding.because.map(unmarked)).toEqual(was.findings[k]!.because);
  }
  for (const [k, issue] of is.issues.entries()) {
    expect(issue.message, issue.code).toContain("¤");
    expect(unmarked(issue.message)).toBe(was.issues[k]!.message);
  }
  for (const caution of is.cautions)
    for (const text of [caution.trigger, caution.text, ...caution.points, caution.defers])
      expect(leftIn(text), caution.code).toEqual([]);
  const english = (await writeMarkdown(page, { draw })).markdown;
  const { markdown } = await writeMarkdown(other, { draw, words: madeUp });
  expect(figures(markdown)).toEqual(figures(english));
  expect(unlike(unmarked(markdown), english)).toBe("");
  const html = await writeHtml(other, { draw, words: madeUp, lang: "x-marked" });
  for (const text of [markdown, html]) expect(text.match(ownWords) ?? []).toEqual([]);
});

/** Runs of four English words or more that a sentence was given as an argument, but for what the log itself says. */
function runsIn(text: string, log: string): string[] {
  const runs = text.match(/(?<![¤\p{L}])\p{L}{2,}(?:[ ,'’-]+(?!¤)\p{L}[\p{L}'’]*){3,}/gu) ?? [];
  return runs.filter((run) => !log.includes(run));
}

// What a sentence still is given in English: terms with their basis ("of damp mass"), batches told together ("W1 to
// W3, and W5"), and for these codes whole parts of sentences.
const stillGiven: readonly string[] = [
  "blend/fines",
  "blend/shares",
  "casting/fault",
  "casting/ranked",
  "grain/doubt-carrier",
  "grain/inside-band",
  "grain/outside-band",
  "mulling/common-practice",
  "recipe/shares",
  "recipe/water-per-clay",
  "sheet/doubt-carrier",
  "sheet/doubt-spread",
  "standing/range",
  "trial/aim",
  "trial/aims-in-blocks",
  "trial/density-unknown",
  "trial/hangs-on-one",
  "trial/next-batch",
  "trial/no-surface",
  "trial/peak",
  "trial/peak-not-bounded",
  "trial/unchecked",
  "trial/window",
  "water/first-dose",
  "water/hold",
  "water/too-wet",
];

test("the sentences that are still given parts in English are known", async () => {
  const found = new Set<string>();
  for (const [name, file] of demos) {
    const page = inLanguage(await demoPage(name, file), madeUp).page;
    const { findings, issues } = told(layOut(page));
    const log = readDemo(name, file)
      .value!.texts.map(({ text }) => text)
      .join("\n");
    for (const { code, text, because } of findings)
      if ([text, ...because].some((one) => runsIn(one, log).length > 0)) found.add(code);
    for (const { code, message, remedy = "" } of issues)
      if ([message, remedy].some((one) => runsIn(one, log).length > 0)) found.add(code);
  }
  expect([...found].sort()).toEqual(stillGiven);
});

/** What a notebook says itself, by where it stands. */
function ownTexts(page: Page): { readonly [where: string]: number } {
  const laid = layOut(page);
  const blocks = laid.sections.flatMap((section) => everyBlock(section.blocks));
  const texts: { readonly [where: string]: readonly string[] } = {
    "title and question": [laid.title, JSON.stringify(laid.question)],
    answer: laid.answer.map((one) => JSON.stringify(one)),
    "section titles": laid.sections.map(({ title }) => title),
    "prose and lists": blocks.flatMap((block) =>
      block.kind === "prose"
        ? [JSON.stringify(block.text)]
        : block.kind === "list"
          ? block.items.map((one) => JSON.stringify(one))
          : [],
    ),
    "key figures": blocks
      .flatMap((block) => (block.kind === "figures" ? block.figures : []))
      .map(({ label }) => label),
    "captions of tables": blocks.flatMap((block) => (block.kind === "table" ? [block.caption] : [])),
    "captions of charts": blocks.flatMap((block) => (block.kind === "chart" ? [block.chart.caption] : [])),
    folds: blocks.flatMap((block) => (block.kind === "fold" ? [block.summary] : [])),
  };
  return Object.fromEntries(
    Object.entries(texts).map(([where, all]) => [
      where,
      all.filter((text) => leftIn(text).length > 0 && !text.includes("¤")).length,
    ]),
  );
}

test("what the notebook says itself stays English: so much of a page of sieving, and of one of a trial", async () => {
  const sieving = inLanguage(await demoPage("grain-fineness", "two-bags.yaml"), madeUp).page;
  expect(ownTexts(sieving)).toEqual({
    "title and question": 2,
    answer: 2,
    "section titles": 5,
    "prose and lists": 16,
    "key figures": 2,
    "captions of tables": 2,
    "captions of charts": 5,
    folds: 2,
  });
  const trial = inLanguage(await demoPage("moisture-trial", "seven-waters.yaml"), madeUp).page;
  expect(ownTexts(trial)).toEqual({
    "title and question": 2,
    answer: 0,
    "section titles": 6,
    "prose and lists": 18,
    "key figures": 4,
    "captions of tables": 6,
    "captions of charts": 5,
    folds: 5,
  });
});
