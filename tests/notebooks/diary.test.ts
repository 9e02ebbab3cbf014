// The diary on logs that are short, spoiled or odd; its demo page is held by demo-pages.test.ts.

import { expect, test } from "vitest";
import { diaryFindings, type Page, readLog, sheet, writeMarkdown } from "../../lib/index.ts";
import { dateOfDay, dayOf } from "../../lib/numbers/days.ts";
import { limitFormulas } from "../../lib/page/diary-result.ts";
import { controlReport } from "../../lib/trial/control-report.ts";
import notebook from "../../notebooks/diary.ts";
import { promisesIn } from "../forbidden-words.ts";

const head = "format: 1\nmetal: aluminium\nbond: bentonite\n";
const run = (text: string): Page => notebook.run(readLog(head + text, { name: "heap.yaml" }).value!);
const codes = (page: Page): string[] =>
  page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => {
      const inner = block.kind === "fold" ? block.blocks : [block];
      return inner.flatMap((one) => (one.kind === "finding" ? [one.finding.code] : []));
    }),
  );
const wobble = [62, 66, 60, 64, 62, 66, 60, 64];
const rows = (values: readonly number[], unit = "kPa") =>
  `measured:\n${values
    .map(
      (value, i) =>
        `  - { date: ${dateOfDay(dayOf("2026-01-03") + 7 * i)}, green compression: ${value} ${unit} ± 1 ${unit} }`,
    )
    .join("\n")}\n`;
const moved = rows([...wobble, ...wobble, ...wobble, 40, 41, 40]);

test("an empty heap: no figure, and what to do", async () => {
  const page = run("events: [ { date: 2026-05-02, lost: 1.5 kg } ]\n");
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("holds no dated test of a heap");
  expect(page.sections.find(({ role }) => role === "cautions")).toBeDefined();
});

test("few values: the points stand alone, and none is called steady", async () => {
  const page = run(rows(wobble.slice(0, 5)));
  expect(codes(page)).toEqual(["diary/few"]);
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("has 5");
  expect(markdown).not.toMatch(/in hand and steady/i);
});

test("a line that cannot be read leaves the others", () => {
  const spoiled = moved.replace("green compression: 41 kPa ± 1 kPa", "green compression: soft");
  const { value, issues } = readLog(head + spoiled, { name: "heap.yaml" });
  expect(issues.filter(({ severity }) => severity === "error")[0]!.place).toMatchObject({ line: 30 });
  expect(controlReport(value!).controlled[0]!.series.values).toHaveLength(26);
});

test("what has moved comes first, with its figure, its rule and its rate of false alarms", async () => {
  const page = run(moved);
  expect(codes(page)[0]).toBe("diary/moved");
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toMatch(
    /Green compression has moved: its last 7 values have a mean of .* ± .* kPa, below/,
  );
  expect(markdown).toContain("once in 370");
  expect(markdown).toMatch(/Of 100 such charts of a heap that has not moved, about \d+/);
  expect(promisesIn(markdown)).toEqual([]);
  expect(markdown).toContain("not that this is good sand");
});

test("the answer says how often a heap that never moved gives a signal, and names what to test again", async () => {
  const { markdown } = await writeMarkdown(run(moved));
  const answer = markdown.slice(0, markdown.indexOf("## "));
  expect(answer).toMatch(/Of 100 heaps that never moved, up to about \d+ show some signal/);
  expect(answer).toContain("another test, not for clay or water");
  expect(markdown).toContain("Test green compression once more, from a fresh sample");
});

test("a signal that has passed is no movement: it is told with how often chance gives one", async () => {
  const page = run(rows([...wobble, ...wobble, ...wobble.slice(0, 4), 78, ...wobble]));
  expect(codes(page)).toContain("diary/signal-passed");
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toMatch(
    /none stands at its last value.*Of 100 heaps that have not moved, about \d+ show one/,
  );
  expect(markdown).not.toMatch(/has moved:|had moved/);
});

test("the events of the days of a change are named, else the last before them", async () => {
  const lost = (date: string) => `${moved}events: [ { date: ${date}, lost: 1 kg, note: "storm" } ]\n`;
  expect((await writeMarkdown(run(lost("2026-06-18")))).markdown).toContain(
    'Marked in those days: lost on 2026-06-18, "storm".',
  );
  expect((await writeMarkdown(run(lost("2026-02-01")))).markdown).toContain(
    'Nothing is marked in those days; the last mark before them is lost on 2026-02-01, "storm".',
  );
});

test("the values stand with the newest first, and tests made now and then in a table of their own", () => {
  const gfn = `${moved}  - { date: 2026-01-04, gfn: 58 ± 3 }\n`;
  const tables = run(gfn).sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === "table" && block.name.startsWith("diary-values") ? [block] : [],
    ),
  );
  expect(tables.map(({ columns, rows: all }) => [columns.length, all.length])).toEqual([
    [2, 27],
    [2, 1],
  ]);
  expect(tables[0]!.rows[0]![0]).toBe(dateOfDay(dayOf("2026-01-03") + 7 * 26));
});

test("in US measures the page and its charts say psi, and files keep kPa", async () => {
  const page = run(`units: US\n${moved}`);
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toMatch(/mean of .* psi/);
  expect(markdown).not.toMatch(/\d kPa/);
  const chart = page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((one) => (one.kind === "chart" ? [one.chart] : [])),
  )[0]!;
  expect(chart.table.columns[1]!.unit).toBe("psi");
  expect(chart.data!.columns[1]!.unit).toBe("kPa");
  expect(chart.data!.rows[0]![1]).toBe(62);
  const figures = page.figures["green compression"] as { unit: string; mean: { value: number } };
  expect(figures.unit).toBe("kPa");
});

test("the formulas of the limits are ones that a sheet runs, and give the printed limits", () => {
  const [one] = controlReport(readLog(head + moved, { name: "heap.yaml" }).value!).controlled;
  const { mean, meanMovingRange, lower, upper, rangeUpper } = one!.chart;
  const made = sheet({
    columns: {
      mean: "kPa",
      step: "kPa",
      ...Object.fromEntries(
        Object.entries(limitFormulas).map(([name, formula]) => [`limit ${name}`, { unit: "kPa", formula }]),
      ),
    },
    rows: [{ mean, step: meanMovingRange }],
  });
  expect(made.issues.filter(({ severity }) => severity === "error")).toEqual([]);
  const value = (name: string) => made.column(`limit ${name}`).values[0]!;
  expect([value("lower"), value("upper"), value("step")]).toEqual(
    [lower, upper, rangeUpper].map((limit) => expect.closeTo(limit, 9)),
  );
});

test("a founder's words reach the page as text", async () => {
  const page = run(`${moved}events: [ { date: 2026-05-02, water: 1 kg, note: "<b>rain</b> | frost" } ]\n`);
  const { markdown } = await writeMarkdown(page);
  expect(markdown).not.toContain("<b>rain");
});

test("cautions follow the tests that are named, also those that are only asked for", () => {
  const texts = (text: string) =>
    run(text)
      .sections.find(({ role }) => role === "cautions")!
      .blocks.flatMap((block) => (block.kind === "caution" ? [block.caution.code] : []));
  expect(texts(moved)).toEqual(
    expect.arrayContaining(["caution/over-wet", "caution/dead-weight", "caution/rammer"]),
  );
  expect(texts(moved)).not.toContain("caution/air-vessel");
  expect(texts(`remind: { permeability: 7 days, gfn: monthly }\n${moved}`)).toEqual(
    expect.arrayContaining(["caution/air-vessel", "caution/silica-dust"]),
  );
});

test("every finding has a code of the diary, a sentence, and no promise", () => {
  const texts = [
    moved,
    rows([...wobble, 90, ...wobble]),
    rows(wobble),
    rows([...wobble, ...wobble, ...wobble, ...wobble]),
  ];
  const seen = new Set<string>();
  for (const text of texts) {
    for (const { code, text: sentence, because } of diaryFindings(
      controlReport(readLog(head + text, { name: "a.yaml" }).value!),
    )) {
      seen.add(code);
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(promisesIn([sentence, ...because].join(" "))).toEqual([]);
      expect(sentence).not.toMatch(/NaN|undefined|Infinity/);
    }
  }
  expect([...seen]).toEqual(
    expect.arrayContaining([
      "diary/moved",
      "diary/steady",
      "diary/unsteady",
      "diary/baseline-only",
      "diary/change-suggested",
    ]),
  );
});
