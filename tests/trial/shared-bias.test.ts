// The bias that all readings of a property share, against a plain sum of every batch's own draws.

import { expect, test } from "vitest";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { drawing, drawsOf } from "../../lib/quantity/drawing.ts";
import { figure } from "../../lib/quantity/figure.ts";
import type { Spread } from "../../lib/quantity/spread.ts";
import { linear } from "../../lib/quantity/spread-of.ts";
import { sharedBias } from "../../lib/trial/shared-bias.ts";
import { batchLog } from "../bench/batch-log.ts";

const scale = { id: "bias of a scale", kind: "rig", shape: { kind: "rectangular" } } as const;
const tube = { id: "bore of a tube", kind: "rig", shape: { kind: "normal" } } as const;
const shared = (count: number): Spread[] =>
  Array.from({ length: count }, (_, i) =>
    linear(40 + i / 7, [
      { scale: 0.1 + i / 1000, source: { ...scale } },
      { scale: 0.3, source: { ...tube } },
    ]),
  );
const drawn = (one: Spread): Float64Array => drawsOf(one, drawing(one.sources));

function plainly(all: readonly Spread[]): number[] {
  const middle = all.reduce((sum, { value }) => sum + value, 0);
  const columns = all.map(drawn);
  return Array.from(
    { length: 4096 },
    (_, j) => (columns.reduce((sum, column) => sum + column[j]!, 0) - middle) / all.length,
  );
}

test.each([1, 5, 32, 33, 200])("of %i batches the mean of what each shares, less its middle", (count) => {
  const all = shared(count);
  const draws = drawn(sharedBias(all)!);
  const expected = plainly(all);
  for (let j = 0; j < draws.length; j++) expect(Math.abs(draws[j]! - expected[j]!)).toBeLessThan(1e-12);
});

test("a part that was remembered gives the digits of one worked out anew", () => {
  const all = shared(100);
  const before = drawn(sharedBias(all)!);
  const changed = [...all.slice(0, 70), shared(200)[150]!, ...all.slice(71)];
  const edited = drawn(sharedBias(changed)!);
  expect(edited).not.toEqual(before);
  const anew = shared(100);
  anew[70] = shared(200)[150]!;
  expect(edited).toEqual(drawn(sharedBias(anew)!));
  expect(drawn(sharedBias(all)!)).toEqual(before);
});

test("a source that is held still, or one without an id, is drawn as in any sum", () => {
  const all = shared(40);
  const bias = sharedBias(all)!;
  const alone = drawsOf(bias, drawing(bias.sources, { only: scale.id }));
  expect(figure(bias).shares.map(({ id }) => id)).toEqual([tube.id, scale.id]);
  expect(Math.max(...alone)).toBeLessThanOrEqual(0.1 + 20 / 1000);
  const unnamed = linear(3, [{ scale: 1, source: { kind: "rig", shape: { kind: "normal" } } }]);
  const with41 = sharedBias([...all, unnamed])!;
  expect(drawn(with41)).not.toEqual(drawn(sharedBias(all)!));
});

test("a batch that an edit left alone keeps its figures, and the edited one does not", () => {
  const { batches } = readLog(batchLog(8), { name: "a.yaml" }).value!;
  const once = batchFigures({ batches }).figures;
  const other = batches.with(
    3,
    readLog(batchLog(8).replace(/damp: 150/g, "damp: 151"), { name: "a.yaml" }).value!.batches[3]!,
  );
  const again = batchFigures({ batches: other }).figures;
  again.forEach((row, i) => {
    expect(row === once[i]).toBe(i !== 3);
  });
  expect(again[3]!.tests.moisture!.value).not.toBe(once[3]!.tests.moisture!.value);
  // Repeats that scatter otherwise are pooled over all: every single test's ± is another.
  const wider = batches.with(
    3,
    readLog(batchLog(8).replace(/load: 1/g, "load: 3"), { name: "a.yaml" }).value!.batches[3]!,
  );
  const scattered = batchFigures({ batches: wider }).figures;
  expect(scattered[0]!.tests["green compression"]!.repeat).not.toEqual(
    once[0]!.tests["green compression"]!.repeat,
  );
  expect(scattered[0]!.tests.compactability).toBe(once[0]!.tests.compactability);
});
