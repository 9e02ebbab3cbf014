// The batch that an aim hangs on most, from leverages, against leaving each batch out by a fit of its own.

import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";
import { gridOver } from "../../lib/trial/aim.ts";
import { aimedCurve } from "../../lib/trial/aimed-curves.ts";
import { bestPlace } from "../../lib/trial/best-place.ts";
import { leaveOneOut } from "../../lib/trial/leave-one-out.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";
import { curveThroughRows } from "../../lib/trial/trial-property.ts";
import { type TrialReport, trialReport } from "../../lib/trial/trial-report.ts";
import { batchLog } from "../bench/batch-log.ts";
import { seeded } from "../seeded.ts";

const reportOf = (text: string): TrialReport => trialReport(readLog(text, { name: "many.yaml" }).value!);

/** Every batch left out by fits of their own. */
function slowInfluence({ properties, rows, x, result }: TrialReport) {
  const places = x.map(({ value }) => value);
  const shifts = rows.map((row, i) => {
    const without = places.map((place, k) => (k === i ? Number.NaN : place));
    const curves = properties.flatMap((property) =>
      aimedCurve({ ...property, curve: curveThroughRows(property, rows, without) }),
    );
    const grid = gridOver(
      Math.max(...curves.map(({ curve }) => curve.from)),
      Math.min(...curves.map(({ curve }) => curve.to)),
    );
    const at = bestPlace(curves, grid, (k, place) => curves[k]!.curve.at(grid[place]!)!.mean);
    return { batch: row.batch.name, shift: at - result!.aim.x };
  });
  return shifts.sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift))[0];
}

test.each([8, 20, 60])("of %i batches the same one, by the same shift, to the last digit", (count) => {
  const report = reportOf(batchLog(count));
  expect(report.influence).toEqual(slowInfluence(report));
});

test("with two blocks every batch is left out by fits of their own", () => {
  const blocked = batchLog(16).replace(/order: ([12])$/gm, "order: $1\n    block: first bag");
  const report = reportOf(blocked.replace(/order: ([34])$/gm, "order: $1\n    block: second bag"));
  expect(report.properties[0]!.curve.newBlock).toBe(false);
  expect(report.influence).toEqual(slowInfluence(report));
});

test("a parabola without one batch is that of a fit without it", () => {
  const random = seeded(11);
  const x = Array.from({ length: 40 }, () => random.uniform(2, 5));
  const y = x.map((at, i) => (i === 7 ? Number.NaN : 80 - 6 * (at - 3.4) ** 2 + random.normal()));
  const whole = responseCurve({ x, y }, { peaked: true });
  const quick = leaveOneOut(whole, x)!;
  let refitted = 0;
  for (let i = 0; i < x.length; i++) {
    const without = y.map((value, k) => (k === i ? Number.NaN : value));
    const slow = responseCurve({ x, y: without }, { peaked: true });
    const one = quick(i);
    // The first and the last place are nobody else's.
    expect(one === undefined).toBe(x[i] === whole.from || x[i] === whole.to);
    if (!one) continue;
    refitted++;
    expect([one.from, one.to]).toEqual([slow.from, slow.to]);
    expect(one.fit.residualSd / slow.fit!.residualSd).toBeCloseTo(1, 11);
    for (const at of [2.2, 3.1, 4.6]) expect(one.mean(at)).toBeCloseTo(slow.at(at)!.mean, 10);
  }
  expect(refitted).toBe(38);
});

test("where leaving one out might change the form of the curve, nothing is told from leverages", () => {
  const y = [60, 72, 75, 70, 61];
  expect(leaveOneOut(responseCurve({ x: [2, 3, 3.5, 4, 5], y }, { peaked: true }), [2, 3, 3.5, 4, 5])).toBe(
    undefined,
  );
  const x = [2, 2, 3, 3, 4, 4];
  const three = responseCurve({ x, y: [60, 61, 75, 74, 66, 65] }, { peaked: true });
  expect([three.form, three.levels, leaveOneOut(three, x)]).toEqual(["curve", 3, undefined]);
});
