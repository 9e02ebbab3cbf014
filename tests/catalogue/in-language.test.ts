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
