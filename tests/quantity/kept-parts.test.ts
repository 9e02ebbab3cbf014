// What is shared between figures, or kept, is the same in every digit as what is worked out alone.

import { expect, test } from "vitest";
import { combine } from "../../lib/quantity/combine.ts";
import { combineParts } from "../../lib/quantity/combine-parts.ts";
import { contentOf } from "../../lib/quantity/content.ts";
import { drawing, drawsOf, isWhole, openDrawing } from "../../lib/quantity/drawing.ts";
import { figure } from "../../lib/quantity/figure.ts";
import { keptFirstDraws } from "../../lib/quantity/kept-draws.ts";
import { onceFor } from "../../lib/quantity/once-for.ts";
import type { Drawing, Spread } from "../../lib/quantity/spread.ts";
import { constant, spread, without } from "../../lib/quantity/spread-of.ts";

const weighed = (mean: number, source: string) => spread({ mean, halfWidth: 0.3, source });

test("parts of one call are what combine gives of each alone, quantiles and shares too", () => {
  const inputs = { wet: weighed(52.4, "wet"), dry: weighed(50.6, "dry") };
  const parts = combineParts(
    ({ wet, dry }) => ({ lost: wet - dry, share: (100 * (wet - dry)) / wet }),
    inputs,
    ["lost", "share"],
    "lost and its share",
  );
  const lost = combine(({ wet, dry }) => wet - dry, inputs);
  const share = combine(({ wet, dry }) => (100 * (wet - dry)) / wet, inputs);
  for (const [one, other] of [
    [parts.lost, lost],
    [parts.share, share],
  ] as const) {
    const told = ({ value, mean, sd, low, high, shares, quantile }: typeof one) =>
      JSON.stringify([value, mean, sd, low, high, quantile(0.1), shares]);
    expect(told(one)).toBe(told(other));
  }
});

test("a figure within others has the draws of its spread, whatever was asked of it before", () => {
  const made = weighed(5, "inner");
  const inner = figure(made);
  const plain: Spread = {
    value: made.value,
    sources: made.sources,
    fill: (out, start, drawing) => made.fill(out, start, drawing),
  };
  const other = weighed(2, "other");
  const difference = (of: Spread) => combine((v) => v[0]! - v[1]! * v[1]!, [of, other]);
  const [before, low] = [difference(inner).high, inner.low];
  expect(before).toBe(difference(plain).high);
  expect(inner.quantile(0.025)).toBe(low);
  expect(difference(inner).high).toBe(before);
  // A count of its own, a kind held still: neither may read what was drawn for all.
  expect(combine((v) => v[0]!, [inner], { draws: 64 }).sd).toBe(
    combine((v) => v[0]!, [plain], { draws: 64 }).sd,
  );
  expect(figure(without(inner, "reading")).sd).toBe(0);
});

test("one source drawn alone: what stands still is filled at once, to the same digits", () => {
  const [a, b] = [weighed(5, "a"), weighed(7, "b")];
  const whole = combine((v) => v[0]! * v[1]!, [figure(a), figure(b)]);
  const plan = drawing(whole.sources, { only: "a" });
  const slow: Drawing = { count: plan.count, add: plan.add };
  expect(drawsOf(whole, plan)).toEqual(drawsOf(whole, slow));
  expect(isWhole(plan) || isWhole(slow) || isWhole(openDrawing())).toBe(false);
});

test("the first draws are the first of all of them", () => {
  const of = weighed(3, "first of many");
  const all = drawsOf(of, drawing(of.sources, { count: 4096 }));
  expect(keptFirstDraws(of, 1024, 4096)).toEqual(all.slice(0, 1024));
});

test("content of plain data: what differs differs, and a spread counts by its draws", () => {
  const texts = [
    { a: 1, b: [2, "x"] },
    { a: 1, b: [2, "y"] },
    { a: 1, b: ["2", "x"] },
    { a: 1, b: [[2], "x"] },
    { a: 1, c: [2, "x"] },
    { a: 1, b: undefined },
    { a: weighed(1, "s"), b: [2, "x"] },
    { a: weighed(1, "t"), b: [2, "x"] },
  ].map(contentOf);
  expect(texts.every((text) => text !== undefined)).toBe(true);
  expect(new Set(texts).size).toBe(texts.length);
  expect(contentOf({ a: constant(1) })).toBe(contentOf({ a: 1 }));
  expect(contentOf({ a: spread({ mean: 1, sd: 1 }) })).toBeUndefined();
  expect(contentOf({ a: () => 1 })).toBeUndefined();
  expect(contentOf({ a: -0 })).toBeUndefined();
});

test("once for a record, anew for another", () => {
  let calls = 0;
  const of = onceFor(({ x }: { x: number }) => [x + calls++]);
  const one = { x: 1 };
  expect(of(one)).toBe(of(one));
  expect(of({ x: 1 })).not.toBe(of(one));
  expect(calls).toBe(2);
});
