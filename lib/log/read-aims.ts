// The founder's own aims, each a range; and what the trial varies.

import { readQuantity } from "../quantity/read-quantity.ts";
import type { Aim, TrialAxis } from "./batch.ts";
import { notARange, rangeTurned } from "./complaints-batch.ts";
import { choiceOf, fieldsOf, mapOf, textNodeOf, textOf } from "./fields.ts";
import { fractionMeant } from "./fraction.ts";
import type { Entry, LogNode, Report } from "./node.ts";
import { psiDoubt } from "./psi-doubt.ts";
import { workedOf } from "./read-worked.ts";
import { testNames } from "./test-forms.ts";

const examples: { readonly [test: string]: string } = {
  moisture: "3 to 4 %",
  compactability: "42 to 48 %",
  permeability: "40 to 90",
  density: "1.5 to 1.7 g/cm³",
  "clay by wash": "7 to 10 % of dry mix",
  squeeze: "2 to 4",
};

export function readAims(node: LogNode | undefined, report: Report): Aim[] {
  const map = mapOf(node, "aims", report);
  if (!map) return [];
  const fields = fieldsOf(map, [...testNames, "note"], "as an aim", report);
  textOf(fields.get("note"), "note", report);
  return testNames.flatMap((test) => {
    const entry = fields.entry(test);
    return entry ? (aimOf(test, entry, report) ?? []) : [];
  });
}

function aimOf(test: Aim["test"], entry: Entry, report: Report): Aim | undefined {
  const node = textNodeOf(entry.value, test, report);
  if (!node) return undefined;
  const text = node.text.trim();
  const ends = endsOf(text);
  const read = ends?.map((end) => readQuantity(end).value);
  if (!read?.[0] || !read[1]) {
    report(notARange(test, text, examples[test] ?? "50 to 100 kPa"), node.place);
    return undefined;
  }
  const fraction = fractionMeant(test, text, [read[0], read[1]]);
  if (fraction) return void report(fraction, node.place);
  // A unit after the second end holds for both; one complaint of a kind is enough.
  const [low, high] = read.map((end, i) =>
    workedOf(test, end!, node.place, (complaint, place) => {
      if (i === 0 || complaint.severity !== "warning") report(complaint, place);
    }),
  );
  if (!low || !high) return undefined;
  const psi = read[0].unit ? undefined : psiDoubt(test, low.text, low.value);
  if (psi) report(psi, node.place);
  if (!(low.value < high.value)) {
    report(rangeTurned(test, text), node.place);
    return undefined;
  }
  return { test, low: low.value, high: high.value, place: entry.keyPlace };
}

/** "42 to 48 %", "42-48 %", "50 kPa – 100 kPa", "45 ± 3 %": the two ends as quantities, each with the unit. */
function endsOf(text: string): readonly [string, string] | undefined {
  const middle = /^([\d.]+)\s*(?:±|\+\/?-)\s*([\d.]+)\s*(.*)$/.exec(text);
  if (middle) {
    const [value, half] = [Number(middle[1]), Number(middle[2])];
    const end = (x: number) => `${Number(x.toPrecision(12))} ${middle[3]}`;
    return [end(value - half), end(value + half)];
  }
  const range = /^([\d./]+)\s*(.*?)\s*(?:\bto\b|[-–—]|\.\.+)\s*([\d./]+)\s*(.*)$/i.exec(text);
  if (!range) return undefined;
  const [, first = "", firstUnit = "", second = "", secondUnit = ""] = range;
  return [`${first} ${firstUnit || secondUnit}`, `${second} ${secondUnit || firstUnit}`];
}

export function readTrialAxis(node: LogNode | undefined, report: Report): TrialAxis | undefined {
  const map = mapOf(node, "trial", report);
  if (!map) return undefined;
  const fields = fieldsOf(map, ["axis", "note"], "of a trial", report);
  textOf(fields.get("note"), "note", report);
  return choiceOf(fields.get("axis"), "axis", ["moisture", "clay", "compactability"], report);
}
