// The summary of a write-up: what was made, what came out, and how sure that is.

import { printFigure, printNumber } from "../quantity/print.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { counted } from "./trial-aim-findings.ts";
import { axisName, axisPlaces, axisUnit } from "./trial-axis.ts";
import * as say from "./write-up-messages.ts";
import type { WriteUp } from "./write-up-record.ts";
import { daysText } from "./write-up-record.ts";

/** Two blocks held against each other in one test. */
export interface Compared {
  readonly test: string;
  readonly first: string;
  readonly second: string;
  readonly atLike: boolean;
  /** In the unit that is printed. */
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** In percent of the first. */
  readonly share?: { readonly percent: number; readonly low: number; readonly high: number };
  readonly finding: Finding;
}

const decides = [
  "trial/aims-in-blocks",
  "trial/aim",
  "trial/aim-open",
  "trial/no-window",
  "trial/no-aims",
  "trial/no-curve",
];
const together = ["trial/one-heap", "trial/part-heap", "trial/day-at-one-end", "trial/goes-together"];

/**
 * Three sentences: what was made; what the blocks differ by, else the aim or why there is none; then what casts doubt
 * on it, else the aim, the chance, or the first thing that is open. Between the last two what was expected beforehand.
 */
export function writeUpAnswer(
  writeUp: WriteUp,
  found: readonly Finding[],
  compared: readonly Compared[],
  open: readonly string[],
): readonly string[] {
  const { report, rows } = writeUp;
  if (rows.length === 0) return [say.nothingMade];
  const has = (codes: readonly string[]): string[] =>
    found.filter(({ code }) => codes.includes(code)).map(({ text }) => text);
  // Density follows the water of its own accord: worth a finding, and no doubt of the whole.
  const grave = report.confounded.findIndex(({ companion }) => companion !== "density");
  // Of blocks that were not held against each other along the axis, what went along with it says little.
  const doubt = grave < 0 || compared[0]?.atLike === false ? [] : has(together).slice(grave, grave + 1);
  const aim = has(report.why === "too few batches" ? ["trial/too-few-batches"] : decides);
  const lines = [
    ...differences(compared, axisName(report)),
    ...doubt,
    ...aim,
    ...has(["trial/chance"]),
    ...open,
  ];
  // What was expected stands right after what was found, in the founder's own words.
  const [first, ...more] = lines.slice(0, 2);
  const expected = writeUp.record?.expected.map(({ text }) => text) ?? [];
  return [
    made(writeUp),
    ...(first === undefined ? [] : [first]),
    ...(expected.length === 0 || report.rows.length === 0 ? [] : [say.wasExpected(expected)]),
    ...more,
  ];
}

function made(writeUp: WriteUp): string {
  const { report, rows } = writeUp;
  const places = report.x.map(({ value }) => value);
  const digits = Math.min(2, axisPlaces(report));
  const span =
    places.length < 2
      ? ""
      : ` at ${counted(report.levels, "level", "levels")} from ${printNumber(Math.min(...places), digits)} to ${printNumber(Math.max(...places), digits)} ${axisUnit(report)}`;
  const blocks = [...new Set(rows.flatMap(({ batch }) => batch.block ?? []))];
  const groups = blocks.map(
    (name) => `${rows.filter(({ batch }) => batch.block === name).length} of ${name}`,
  );
  const tests = [...new Set(rows.flatMap(({ tests }) => Object.keys(tests)))];
  return say.wasMade(
    counted(rows.length, "batch", "batches"),
    span,
    groups.length > 1 ? listed(groups) : "",
    daysText(writeUp) ?? "",
    listed(tests),
  );
}

/** One sentence over all tests; where the first test's comparison is in doubt, its own finding says why. */
function differences(compared: readonly Compared[], axis: string): string[] {
  const [lead] = compared;
  if (!lead) return [];
  if (lead.finding.tone === "doubt") return [lead.finding.text];
  const sure = compared.filter(({ finding }) => finding.tone !== "doubt");
  const apart = sure.filter(({ low, high }) => low > 0 || high < 0);
  const alike = sure.filter((one) => !apart.includes(one));
  return [
    say.toldApart(
      lead.atLike ? `At the same ${axis}, ` : "",
      lead.second,
      lead.first,
      listed(apart.map(amount)),
      listed(
        alike.map(({ test, difference, low, high, unit, share }) => {
          const size = printFigure({ value: difference, low, high, unit }).text;
          return `${test} (${size}${share ? `, ${shareText(share)}` : ""})`;
        }),
      ),
    ),
  ];
}

function shareText({ percent, low, high }: NonNullable<Compared["share"]>): string {
  return printFigure({ value: percent, low, high, unit: "%" }).text;
}

function amount({ test, difference, low, high, unit, share }: Compared): string {
  const size = printFigure({
    value: Math.abs(difference),
    low: difference < 0 ? -high : low,
    high: difference < 0 ? -low : high,
    unit,
  }).text;
  const inPercent = share ? ` (${shareText(share)})` : "";
  return `${size}${inPercent} ${difference > 0 ? "more" : "less"} ${test}`;
}
