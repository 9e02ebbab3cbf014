// The write-up on whole logs: the summary, what is held and lacking, and that its figures are those of the trial's own page.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Block, type Log, type Page, readLog, writeMarkdown } from "../../lib/index.ts";
import clayTrial from "../../notebooks/clay-trial.ts";
import moistureTrial from "../../notebooks/moisture-trial.ts";
import notebook from "../../notebooks/write-up.ts";

const demo = (path: string): string =>
  readFileSync(join(import.meta.dirname, `../../data-demo/${path}.yaml`), "utf8");
const logOf = (text: string): Log => readLog(text, { name: "log.yaml" }).value!;
const run = (text: string): Page => notebook.run(logOf(text));
const plain = (page: Page): string[] =>
  page.answer.map((text) =>
    typeof text === "string"
      ? text
      : text.map((piece) => (typeof piece === "string" ? piece : Object.values(piece)[0])).join(""),
  );
const sectionOf = (page: Page, title: string) => page.sections.find((one) => one.title === title)!;
const items = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) => (block.kind === "list" ? block.items.map(String) : []));

const whole = demo("write-up/two-mullings");

test("three sentences: what was made, what the blocks differ by with its ±, the aim", () => {
  const answer = plain(run(whole));
  expect(answer).toHaveLength(4);
  expect(answer[0]).toMatch(/^12 batches at 7 levels .* 6 of short mull and 6 of long mull, were made/);
  expect(answer[1]).toMatch(
    /^At the same moisture, long mull had 1\d\.\d ± \d\.\d kPa \(1\d ± \d %\) more green compression/,
  );
  expect(answer[1]).toContain("cannot be told apart in permeability");
  expect(answer[2]).toBe(
    "Expected beforehand: Longer mulling adds about a fifth to green compression at the same water. Permeability stays as it is.",
  );
  expect(answer[3]).toMatch(
    /^\d\d in 100 new batches of short mull at .* and 99 or more in 100 of long mull at /,
  );
});

test("the figures are those of the pages that the trials have of their own", () => {
  const clays = demo("clay-trial/two-clays");
  expect(run(clays).figures).toMatchObject(clayTrial.run(logOf(clays)).figures);
  const waters = demo("moisture-trial/seven-waters");
  expect(run(waters).figures).toMatchObject(moistureTrial.run(logOf(waters)).figures);
});

test("coefficients of a fit come out as least squares by hand: compactability of the seven waters at their middle", () => {
  const [fit] = run(demo("moisture-trial/seven-waters")).figures.fits as [
    { coefficients: number[]; from: number; to: number; batches: number; degreesOfFreedom: number },
  ];
  expect(fit).toMatchObject({ batches: 7, degreesOfFreedom: 4 });
  // Moisture and compactability by plain arithmetic from the log's weighings and heights; normal equations by Cramer.
  const rows = [
    [152.6, 148.5, 79.0],
    [153.0, 148.4, 71.5],
    [151.2, 146.2, 70.8],
    [147.8, 142.5, 65.4],
    [148.2, 142.3, 60.4],
    [152.1, 145.3, 54.5],
    [147.1, 139.7, 50.8],
  ].map(([damp, dry, rammed]) => [(100 * (damp! - dry!)) / damp!, (100 * (120 - rammed!)) / 120] as const);
  const [from, to] = [Math.min(...rows.map(([x]) => x)), Math.max(...rows.map(([x]) => x))];
  const u = rows.map(([x]) => (2 * x - from - to) / (to - from));
  const s = (k: number) => u.reduce((all, one) => all + one ** k, 0);
  const t = (k: number) => u.reduce((all, one, i) => all + one ** k * rows[i]![1], 0);
  const det = (m: number[][]): number =>
    m[0]![0]! * (m[1]![1]! * m[2]![2]! - m[1]![2]! * m[2]![1]!) -
    m[0]![1]! * (m[1]![0]! * m[2]![2]! - m[1]![2]! * m[2]![0]!) +
    m[0]![2]! * (m[1]![0]! * m[2]![1]! - m[1]![1]! * m[2]![0]!);
  const normal = [0, 1, 2].map((i) => [0, 1, 2].map((j) => s(i + j)));
  const solved = [0, 1, 2].map(
    (j) => det(normal.map((row, i) => row.map((one, k) => (k === j ? t(i) : one)))) / det(normal),
  );
  expect([fit.from, fit.to]).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
  solved.forEach((value, k) => {
    expect(fit.coefficients[k]).toBeCloseTo(value, 8);
  });
});

test("what every batch has alike is told once, and the one that differs by name", () => {
  const page = run(whole);
  const held = items(sectionOf(page, "What was asked, changed and held").blocks);
  expect(held).toContain("Sand: 4.00 kg in every batch.");
  expect(held).toContain("Stood: 30 min in every batch but L4 (45 min).");
  const sheet = sectionOf(page, "Data sheet, as typed").blocks;
  expect(items(sheet)).toContain("Green compression: height 50 mm, rig drop tube, scale luggage scale.");
  const table = sheet.find((block) => block.kind === "table")!;
  expect(table.kind === "table" && table.rows).toHaveLength(12);
});

test("the data sheet holds what was typed, to the letter and with its place", () => {
  const lines = whole.split("\n");
  const table = sectionOf(run(whole), "Data sheet, as typed").blocks.find((block) => block.kind === "table")!;
  let seen = 0;
  for (const row of table.kind === "table" ? table.rows : []) {
    for (const cell of row) {
      if (typeof cell === "string" || !cell.at || /^\d:/.test(cell.text)) continue;
      const { line, column } = cell.at;
      expect(lines[line! - 1]!.slice(column! - 1, column! - 1 + cell.text.length)).toBe(cell.text);
      seen += 1;
    }
  }
  expect(seen).toBeGreaterThan(90);
});

test("two sands without blocks are held against each other, and so are their sievings", async () => {
  const page = run(demo("write-up/two-sands"));
  expect(plain(page)[1]).toMatch(
    /^Millrace sand had .* psi more green compression and \d+ ± \d+ less permeability/,
  );
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("Millrace sand was finer than Gorse Hill sand by this much");
  expect(markdown).toContain("The order of the batches: order, at the batch.");
});

test("thin data, no experiment, nothing at all: a page all the same, which says what to write", async () => {
  const bare = run(demo("moisture-trial/seven-waters"));
  expect(bare.question).toBe("What do these batches show?");
  expect(items(sectionOf(bare, "What remains open").blocks)).toContain(
    "The question: question, under experiment.",
  );
  const one = run(
    "format: 1\nexperiment: { question: Why }\nbatches: { W1: { date: 2026-05-09, moisture: 3.1 % } }\n",
  );
  expect(one.question).toBe("Why?");
  expect(plain(one)[0]).toBe("1 batch was made (2026-05-09) and tested for moisture.");
  const none = run("format: 1\nexperiment: { question: Why?, changed: water }\n");
  expect(plain(none)).toEqual(["This log has no batch yet, so there is nothing to tell but what is asked."]);
  for (const page of [bare, one, none])
    expect((await writeMarkdown(page)).markdown).toContain("## The next trial");
});

test("every number in brackets names a source of the list", () => {
  const page = run(whole);
  const told = page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "finding" && block.finding.source ? [block.finding] : [])),
  );
  expect(told.length).toBeGreaterThan(4);
  for (const { text, source } of told) {
    const number = Number(/ \[(\d+)\]$/.exec(text)![1]);
    expect(page.sources[number - 1]).toBe(source);
  }
});

test("the date is the experiment's, the version the founder's, the fingerprint the log's", () => {
  const page = run(whole);
  const { fingerprint } = logOf(whole);
  expect(page.titleBlock).toContainEqual({ label: "Made and tested", text: "2026-09-12 to 2026-09-13" });
  expect(page.titleBlock).toContainEqual({ label: "Fingerprint", text: fingerprint });
  expect(page.colophon[0]).toBe(`Version 1, 2026-09-13. Log log.yaml, fingerprint ${fingerprint}.`);
});

test("metric and US pages have the same figures", () => {
  const text = demo("write-up/two-sands");
  expect(JSON.stringify(run(text.replace("units: US\n", "units: metric\n")).figures)).toBe(
    JSON.stringify(run(text).figures),
  );
});
