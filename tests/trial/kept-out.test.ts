// A batch that the log leaves out: every figure is that of a log without it, and it is shown all the same.

import { expect, test } from "vitest";
import { trialFindings } from "../../lib/finding/trial-findings.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import { trialCharts } from "../../lib/page/trial-charts.ts";
import { trialData } from "../../lib/page/trial-data.ts";
import { type TrialReport, trialReport } from "../../lib/trial/trial-report.ts";
import { demos, notebookOf, readDemo } from "../demos.ts";

const why = "the tube was wet when it was filled.";
const leave =
  (name: string, reason = why) =>
  (text: string) =>
    text.replace(`\n  ${name}:\n`, `\n  ${name}:\n    left out: ${reason}\n`);
/** The log as it would be had the batch never been made. */
const without = (name: string) => (text: string) =>
  text.replace(new RegExp(`\\n  ${name}:\\n(?:    .*\\n)+`), "\n");
const seven = (change?: (text: string) => string) =>
  readDemo("moisture-trial", "seven-waters.yaml", change).value!;

/** What a report says in numbers: functions are called at fixed places, batches named. */
function numbers(report: TrialReport): unknown {
  const { keptOut: _, shown: __, counting: ___, ...rest } = report;
  const plain = JSON.stringify(rest, (key, value: unknown) => {
    // Places and texts in the file move with the line that is added.
    if (key === "place" || key === "at" || key === "issues") return undefined;
    return value;
  });
  const curves = report.properties.map(({ curve }) => [3, 3.5, 4].map((x) => curve.at(x) ?? null));
  return { rest: JSON.parse(plain) as unknown, curves };
}

test.each([
  ["moisture-trial", "seven-waters.yaml", "W3"],
  ["moisture-trial", "seven-waters.yaml", "W1"],
  ["clay-trial", "two-clays.yaml", "old clay 7"],
])(
  "%s, %s without %s: curves, aim, chances, next batch, checks and repeats as if it had not been made",
  (notebook, file, name) => {
    const axis = notebook === "clay-trial" ? { axis: "clay" as const } : {};
    const out = trialReport(readDemo(notebook, file, leave(name)).value!, axis);
    const never = trialReport(readDemo(notebook, file, without(name)).value!, axis);
    expect(never.rows.map(({ batch }) => batch.name)).not.toContain(name);
    expect(out.keptOut.map(({ row }) => row.batch.name)).toEqual([name]);
    expect(out.shown.length).toBe(out.rows.length + 1);
    expect(numbers(out)).toEqual(numbers(never));
    expect(numbers(out)).not.toEqual(numbers(trialReport(readDemo(notebook, file).value!, axis)));
  },
);

test("the finding gives the reason and the aim of the log without the line", () => {
  const report = trialReport(seven(leave("W3")));
  const whole = trialReport(seven());
  expect(numbers(report.counting(["W3"]))).toEqual(numbers(whole));
  const [found] = trialFindings(report).filter(({ code }) => code === "trial/kept-out");
  const aim = (of: TrialReport) => trialFindings(of).find(({ code }) => code === "trial/aim")!.text;
  const place = (text: string) => text.slice(0, text.indexOf(" % moisture of damp mass"));
  expect(found!.text).toBe(
    `W3 is left out: the tube was wet when it was filled. With it the aim would be ${place(aim(whole))} instead of ${place(aim(report))} % moisture of damp mass.`,
  );
  expect(place(aim(whole))).not.toBe(place(aim(report)));
});

test("without an aim it says so, for one batch and for many in one sentence", () => {
  const noAims = (text: string) => text.replace(/aims:\n(?: .*\n)+/, "").replace("metal: aluminium\n", "");
  const one = trialFindings(trialReport(seven((text) => noAims(leave("W2")(text)))));
  expect(one.find(({ code }) => code === "trial/kept-out")!.text).toMatch(
    /With it or without, there is no aim\.$/,
  );
  const names = ["W1", "W2", "W4", "W6"];
  const few = trialFindings(
    trialReport(seven((text) => names.reduce((now, name) => leave(name)(now), text))),
  );
  const told = few.filter(({ code }) => code === "trial/kept-out").map(({ text }) => text);
  expect(told).toHaveLength(1);
  expect(told[0]).toMatch(
    /^W1, W2, W4 and W6 are left out: the tube .* With them the aim would be 3\..*; without, there is none\.$/,
  );
});

test("a reason is asked for, and without one the batch counts", () => {
  for (const [empty, code] of [
    ["yes", "log/left-out-without-why"],
    ["no", "log/left-out-without-why"],
    ["''", "log/empty-value"],
  ] as const) {
    const { value, issues } = readDemo("moisture-trial", "seven-waters.yaml", leave("W3", empty));
    expect(issues.map((issue) => [issue.code, issue.place?.line])).toContainEqual([code, 59]);
    expect(trialReport(value!).rows).toHaveLength(7);
  }
});

test("a batch of a CSV file is left out by a column", () => {
  const text = "format: 1\nbatches file: b.csv\n";
  const csv =
    "batch,date,moisture,compactability,left out\nA,2026-05-01,3 %,40 %,\nB,2026-05-01,4 %,47 %,bag was torn\n";
  const { value, issues } = readLog(text, { name: "log.yaml", files: { "b.csv": csv } });
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  expect(value!.batches.map(({ keptOut }) => keptOut?.why)).toEqual([undefined, "bag was torn"]);
});

test("it stands in the tables with its mark and reason, and on the panels hollow and crossed", () => {
  const report = trialReport(seven(leave("W3")));
  const data = JSON.stringify(trialData(report.shown));
  expect(data).toContain("W3 (left out)");
  expect(data).toContain(`W3: ${why}`);
  const chart = trialCharts(report).find(({ name }) => name === "response")!;
  const spec = JSON.stringify(chart.spec(720));
  expect(spec).toContain("left-out-1");
  expect(spec).toContain("outline-crosses-1");
  expect(spec).toContain("left out by the log");
  expect(chart.alt).toContain(`(left out by the log: ${why})`);
  expect(chart.table.rows.filter((row) => String(row[2]) === "W3, left out of the fit")).toHaveLength(3);
  expect(JSON.stringify(trialCharts(trialReport(seven())).map((one) => one.spec(720)))).not.toContain(
    "crosses",
  );
});

test("pages say what they are without, the write-up under what was left out", async () => {
  for (const [name, file] of demos.filter(([name]) =>
    ["moisture-trial", "clay-trial", "write-up"].includes(name),
  )) {
    const first = readDemo(name, file).value!.batches[1]!.name;
    const log = readDemo(name, file, leave(first)).value!;
    if (!log.batches.some(({ keptOut }) => keptOut)) continue;
    const page = (await notebookOf(name)).run(log);
    const text = (await writeMarkdown(page, { draw: async () => "<svg></svg>" } as never)) as unknown;
    const words = JSON.stringify(text);
    expect(words).toContain(
      name === "write-up"
        ? `${first}: left out of every curve`
        : `This is without ${first}, left out by the log`,
    );
  }
});
