// What remains open by what was worked out: ends, thin places, parts of the ± that are not known.

import type { TestName } from "../log/batch.ts";
import type { TrialProperty } from "../trial/trial-property.ts";
import { leastBatches } from "../trial/trial-report.ts";
import { listed } from "./batch-names.ts";
import { counted } from "./trial-aim-findings.ts";
import { axisName } from "./trial-axis.ts";
import * as say from "./write-up-messages.ts";
import type { WriteUp } from "./write-up-record.ts";

/** A sentence each, the weightiest first. */
export function openQuestions({ report, rows, sands, log }: WriteUp): readonly string[] {
  const { properties, levels, confounded, unchecked, wild, lackOfFit, result } = report;
  if (rows.length === 0) return [];
  const name = axisName(report);
  const thin = report.rows.length < leastBatches || levels < 3;
  const testsOf = (which: (property: TrialProperty) => boolean): string =>
    listed(properties.filter(which).map(({ test }) => test));
  const without = testsOf(({ curve }) => curve.form === "points only");
  const leaning = testsOf(({ curve }) => curve.form === "published slope");
  const blocks = [...new Set(report.rows.flatMap(({ batch }) => batch.block ?? []))];
  const blockBound = properties.some(({ curve }) => curve.newBlock === false) && blocks.length > 1;
  const ends = result?.aim.open;
  const usedSands = new Set(log.batches.flatMap(({ sand }) => sand ?? []));
  return [
    // Density follows the water at like blows: no order of the batches parts them.
    ...confounded
      .filter(({ companion }) => companion !== "density")
      .map(({ companion }) => say.wentAlong(companion, name)),
    ...(thin
      ? [say.fewBatches(counted(report.rows.length, "batch", "batches"), counted(levels, "level", "levels"))]
      : []),
    ...(!thin && without !== "" ? [say.noCurve(without)] : []),
    ...(leaning === "" ? [] : [say.leanedOn(leaning)]),
    ...(ends && (ends.low || ends.high) ? [say.openEnd(endName(report.axis, ends.high))] : []),
    ...wild.map(({ batch, test }) => say.farBatch(batch, test)),
    ...lackOfFit.filter(({ p }) => p < 0.05).map(({ test }) => say.poorForm(test)),
    ...(unchecked.length > 0 && report.rows.length >= 4
      ? [say.notLookedAt(listed(unchecked.map(({ companion }) => companion)))]
      : []),
    ...unknownParts(rows),
    ...(blockBound ? [say.theseBlocksOnly(listed(blocks))] : []),
    ...(properties.length > 0 ? [say.otherRig] : []),
    ...(usedSands.size === 1 && sands.length <= 1 ? [say.oneSand([...usedSands][0]!)] : []),
  ];
}

function endName(axis: string, high: boolean): string {
  if (axis === "moisture") return high ? "wetter" : "drier";
  return high ? "upper" : "lower";
}

const parts: readonly (readonly [part: string, says: (tests: string) => string])[] = [
  ["repeats", say.thinRepeats],
  ["weighing", say.lacksWeighing],
  ["scale check", say.lacksScaleCheck],
  ["blank run", say.lacksBlankRun],
  ["method", say.lacksMethod],
  ["reading", say.lacksReading],
];

/** Each part of a ± that is not known, with the tests that lack it in any batch. */
function unknownParts(rows: WriteUp["rows"]): string[] {
  return parts.flatMap(([part, says]) => {
    const lacking = new Set<TestName>();
    for (const { tests } of rows) {
      for (const one of Object.values(tests)) {
        if (one.missing.includes(part) && one.test !== "squeeze") lacking.add(one.test);
      }
    }
    return lacking.size === 0 ? [] : [says(listed([...lacking]))];
  });
}
