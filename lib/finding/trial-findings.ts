// Decides what is worth saying of a trial.

import type { TestName } from "../log/batch.ts";
import { printNumber } from "../quantity/print.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { keptOutFindings } from "./kept-out-findings.ts";
import { aimFindings, capital } from "./trial-aim-findings.ts";
import { axisInWords, axisName, axisPlaces } from "./trial-axis.ts";
import * as say from "./trial-messages.ts";
import { inOwnUnits, type PrintTest } from "./trial-print.ts";
import { reachFindings } from "./trial-reach-findings.ts";
import { instrumentFindings, rigFindings } from "./trial-rig-findings.ts";
import { shapeFindings } from "./trial-shape-findings.ts";
import { levelTop, noLevelTop, noSurface, twoVaried } from "./trial-shape-messages.ts";
import { uncheckedFindings } from "./unchecked.ts";

const tones = ["error", "doubt", "good", "note"];

/**
 * What a trial says, the weightiest first: what cannot be told apart, the aim, aims out of reach, then curves, batches
 * and rigs by tone. print: a test's number with its unit as the page prints it.
 * @example trialFindings(trialReport(log)).map(({ text }) => text)
 */
export function trialFindings(report: TrialReport, print: PrintTest = inOwnUnits): readonly Finding[] {
  if (report.rows.length === 0) return keptOutFindings(report);
  const rest = [
    ...shapeFindings(report, print),
    ...surfaceFindings(report),
    ...instrumentFindings(report),
    ...rigFindings(report.rows),
    ...uncheckedFindings(report),
  ];
  // What cannot be told apart casts doubt on all that follows.
  return [
    ...together(report),
    ...aimFindings(report),
    ...reachFindings(report, print),
    ...keptOutFindings(report),
    ...rest.sort((a, b) => tones.indexOf(a.tone) - tones.indexOf(b.tone)),
  ];
}

function together(report: TrialReport): readonly Finding[] {
  const name = axisName(report);
  const stepped = report.confounded.some(({ companion }) => companion === "one heap wetted step by step");
  if (stepped) return [say.oneHeap(name)];
  return report.confounded.map(({ companion, rho, block, batches }) => {
    if (batches !== undefined) return say.partHeap(name, batches, report.rows.length);
    if (block !== undefined) return say.dayAtOneEnd(block, name, Math.abs(rho) >= 1);
    return say.goesTogether(capital(companion), name, Math.abs(rho) >= 0.95);
  });
}

/** A property over two things at once: where it is highest, or why that cannot be told. */
function surfaceFindings(report: TrialReport): readonly Finding[] {
  const name = axisName(report);
  // One sentence for all properties that fail alike.
  const without = new Map<string, TestName[]>();
  for (const { test, other, surface } of report.surfaces) {
    if (surface.top) continue;
    const key = `${other}\n${surface.why ?? "the batches bend no surface"}`;
    without.set(key, [...(without.get(key) ?? []), test]);
  }
  const none = [...without].map(([key, tests]) => {
    const [other, why] = key.split("\n") as [string, string];
    return noSurface(listed(tests), name, other, why);
  });
  const tops = report.surfaces.flatMap(({ test, other, surface }) => {
    if (!surface.top) return [];
    const { kind, x, other: there, region } = surface.top;
    const unit = axisInWords({ axis: other });
    const place = `${printNumber(x, axisPlaces(report))} ${axisInWords(report)} and ${printNumber(there, 2)} ${unit}`;
    const reach = region
      ? `${printNumber(region.x.low, axisPlaces(report))} to ${printNumber(region.x.high, axisPlaces(report))} and ${printNumber(region.other.low, 2)} to ${printNumber(region.other.high, 2)}`
      : "";
    return [kind === "maximum" ? levelTop(test, place, reach) : noLevelTop(test, kind)];
  });
  const fitted = report.surfaces.find(({ surface }) => surface.form !== "none");
  const both = fitted ? [twoVaried(name, axisName({ axis: fitted.other }))] : [];
  return [...both, ...tops, ...none];
}
