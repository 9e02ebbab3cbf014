// A batch that the log leaves out of its trial is in no mean, limit or range of any other page either, and is shown
// there, marked, with its reason.

import { expect, test } from "vitest";
import {
  batchColumns,
  batchFigures,
  controlReport,
  diaryCharts,
  diaryData,
  type Log,
  readLog,
  shownUnits,
  trialBond,
} from "../../lib/index.ts";
import { notebookOf, readDemo } from "../demos.ts";

const why = "the sample stood open overnight";
const leftOut = (log: Log, name: string): Log => ({
  ...log,
  batches: log.batches.map((batch) =>
    batch.name === name ? { ...batch, keptOut: { why, place: batch.place } } : batch,
  ),
});
const without = (log: Log, name: string): Log => ({
  ...log,
  batches: log.batches.filter((batch) => batch.name !== name),
});

test("a diary: the limits are those of a log without it; its values are in the table, its point is crossed", () => {
  const { value } = readDemo("diary", "one-heap.yaml");
  const whole = controlReport(value!);
  // One of those that the limits are from.
  const { name } = whole.controlled[0]!.values[3]!;
  const out = leftOut(value!, name);
  const [report, bare] = [controlReport(out), controlReport(without(value!, name))];
  const limits = (of: typeof report) => of.controlled.map(({ chart, verdict }) => ({ chart, verdict }));
  expect(limits(report)).toEqual(limits(bare));
  expect(limits(report)).not.toEqual(limits(whole));
  const kept = report.diary.series.flatMap(({ keptOut }) => keptOut);
  expect(kept.length).toBeGreaterThan(1);
  expect(kept.every((one) => one.name === name && one.keptOut === why)).toBe(true);
  const units = shownUnits(out);
  const told = JSON.stringify(diaryData(report, units));
  expect(told).toContain("(left out)");
  expect(told).toContain(`${name}, ${kept[0]!.date}: ${why}`);
  const [chart] = diaryCharts(report, units);
  expect(JSON.stringify(chart!.spec(720))).toContain('"left-out"');
  expect(chart!.alt).toContain("1 left out by the log, crossed.");
  expect(chart!.table.rows.filter((row) => row.at(-1) === "left out")).toHaveLength(1);
  const [other] = diaryCharts(bare, units);
  expect(JSON.stringify(other!.spec(720))).not.toContain('"left-out"');
});

test("columns for a script hold the batches that count", () => {
  const log = `format: 1
batches:
  W1: { moisture: 3.0 % }
  W2: { moisture: 3.4 %, left out: torn bag }
  W3: { moisture: 3.8 % }
`;
  const { batch, moisture } = batchColumns(readLog(log, { name: "log.yaml" }).value!);
  expect(batch.values).toEqual(["W1", "W3"]);
  expect(moisture.values.map((one) => one?.value)).toEqual([3, 3.8]);
});

test("the state of the bond: in the table, marked, and not in the span that is told of all", () => {
  const { value } = readDemo("moisture-trial", "seven-waters.yaml");
  const text = (log: Log) => JSON.stringify(trialBond(batchFigures(log).figures, log));
  const lead = (log: Log) => /"strong":"[^"]*"/.exec(text(log))?.[0];
  // The batch at the end of the span, so that the span is another without it.
  const ends = value!.batches.filter(({ name }) => lead(without(value!, name)) !== lead(value!));
  expect(ends.length).toBeGreaterThan(0);
  const { name } = ends[0]!;
  expect(lead(leftOut(value!, name))).toBe(lead(without(value!, name)));
  expect(text(leftOut(value!, name))).toContain(`${name} (left out)`);
});

test("home rigs: said in the answer, in the tables, and in no range, order or repeat", async () => {
  const { value } = readDemo("home-rigs", "three-batches.yaml");
  const name = value!.batches[0]!.name;
  const notebook = await notebookOf("home-rigs");
  const page = notebook.run(leftOut(value!, name));
  expect(JSON.stringify(page.answer)).toContain(`This is without ${name}, left out by the log: ${why}.`);
  expect(JSON.stringify(page.sections.find(({ role }) => role === "data"))).toContain(`${name} (left out)`);
  const findings = (log: Log) =>
    JSON.stringify(notebook.run(log).sections.find(({ role }) => role === "findings"));
  expect(findings(leftOut(value!, name))).toBe(findings(without(value!, name)));
});
