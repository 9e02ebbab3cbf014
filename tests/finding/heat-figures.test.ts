// Heat and burn-out from a log's pours.

import { expect, test } from "vitest";
import { heatFigures } from "../../lib/finding/heat-figures.ts";
import { heapLog } from "../page/heap-weather-log.ts";

const of = (change: { readonly [section: string]: string } = {}) => heatFigures(heapLog(change));

test("sections thin to thick, the planned one among them, all in proportion", () => {
  const { sections, perSection, pouredC, pouredKg, pours } = of()!;
  expect(sections.map(({ sectionMm, pours: n, planned }) => [sectionMm, n, planned])).toEqual([
    [5, 0, true],
    [8, 1, false],
    [14, 1, false],
  ]);
  expect([pouredC, pouredKg, pours]).toEqual([725, 5.5, 2]);
  const [five, , fourteen] = sections;
  expect(fourteen!.depthMm[500].high / five!.depthMm[500].high).toBeCloseTo(2.8, 10);
  expect(fourteen!.freezing.low / five!.freezing.low).toBeCloseTo(2.8 ** 2, 10);
  expect(perSection[316].low).toBeGreaterThan(perSection[500].high);
  expect(perSection[500].low).toBeGreaterThan(perSection[638].high);
});

test("10 mm of aluminium: 500 °C to 2.16 mm, frozen within 57 s or so, as worked by hand", () => {
  // Another program's 10 mm plate from 720 °C in one sand: 500 °C to 2.16 mm, freezing by Chvorinov with superheat 57 s.
  const { sections } = of({
    planned: "",
    events: "[{ date: 2026-05-02, pour: { metal: 1 kg, at: 720 °C, section: 10 mm } }]",
  })!;
  const { depthMm, freezing } = sections[0]!;
  expect(depthMm[500].low < 2.16 && depthMm[500].high > 2.15).toBe(true);
  expect(freezing.low < 57 && freezing.high > 57).toBe(true);
});

test("live clay: newest measured, else wanted, else the recipe's, on the basis of the dry mix", () => {
  expect(of()!.liveClay).toEqual({ percent: 6.8, from: "measured 2026-05-09" });
  const wanted = of({ measured: "[]", wanted: "{ moisture: 3.4 %, live clay: 8.7 % of sand }" })!.liveClay!;
  expect(wanted.percent).toBeCloseTo(8.7 / 1.087, 6);
  expect(wanted.from).toBe("as wanted");
  const recipe = { measured: "[]", recipe: "{ basis: per 100 of sand, clay: 8.7, moisture: 3.4 % }" };
  expect(of(recipe)!.liveClay!.percent).toBeCloseTo(8.7 / 1.087, 6);
  expect(of(recipe)!.liveClay!.from).toMatch(/taken as live/);
  const damp = { measured: "[{ date: 2026-05-09, moisture: 4 %, live clay: 7.2 % of damp mass }]" };
  expect(of(damp)!.liveClay!.percent).toBeCloseTo(7.5, 6);
  expect(of({ measured: "[]" })!.liveClay).toBeUndefined();
});

test("sand to metal from flask and casting; none without them", () => {
  expect(of()!.sandToMetal).toBeCloseTo((1.6 * 13.1) / 2.5, 6);
  expect(
    of({ flask: "{ volume: 14 L, casting volume: 0.9 L, density: 1.5 g/cm³ }" })!.sandToMetal,
  ).toBeCloseTo((1.5 * 13.1) / 2.5, 6);
  expect(of({ flask: "" })!.sandToMetal).toBeUndefined();
});

test("nothing without pours or plan, or without a metal; a pour below freezing counts as just above it", () => {
  expect(of({ events: "[]", planned: "" })).toBeUndefined();
  expect(of({ metal: "" })).toBeUndefined();
  const cold = of({ events: "[{ date: 2026-05-02, pour: { metal: 1 kg, at: 600 °C, section: 8 mm } }]" })!;
  expect(cold.pouredC).toBeCloseTo(661.3, 6);
  expect(of({ events: "[]" })!.pouredSaid).toBe(false);
});
