// The state of the bond: published relations, which clay is meant, and where there is no figure.

import { expect, test } from "vitest";
import { bondFigures, modelShare, type OrWhy } from "../../lib/finding/bond-figures.ts";
import { mulledAgainstReference } from "../../lib/finding/mulled-reference.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { logOf, madeOf } from "./trial-logs.ts";

const rowOf = (more: readonly string[] = []) =>
  batchFigures(
    logOf([
      {
        name: "one",
        moisture: "3.5 ± 0.02 % (95 %)",
        compactability: "45 ± 0.2 % (95 %)",
        strength: "137.9 ± 0.5 kPa (95 %)",
        more,
      },
    ]),
  ).figures[0]!;
const figureOf = (one: OrWhy) => ("figure" in one ? one.figure : undefined)!;

test("available and working bond of 20 psi, 3.5 %, 45 %: 6.706, 3.511, 52.4 (ICRI Report 610, worked by its constants)", () => {
  const found = bondFigures(rowOf([madeOf("0.16 kg")]), "bentonite");
  expect(figureOf(found.available).value).toBeCloseTo(6.706, 2);
  expect(figureOf(found.working).value).toBeCloseTo(3.511, 2);
  expect(figureOf(found.mulling).value).toBeCloseTo(52.4, 1);
  // The relation's own doubt is in the ±, and outweighs readings as sharp as these.
  const { low, high, value } = figureOf(found.working);
  expect((high - low) / 2 / value).toBeGreaterThan(0.95 * modelShare);
  expect((high - low) / 2 / value).toBeLessThan(1.1 * modelShare);
});

test("equilibrium moisture at 8 % and 45 %: 3.90 % of damp mass (ICRI Report 610); clay by wash goes before clay added", () => {
  const found = bondFigures(rowOf([madeOf("0.16 kg"), "clay by wash: 8.0 ± 0.1 % of dry mix"]), "bentonite");
  expect(found.clay!.is).toBe("clay by wash");
  expect(found.clay!.says).toContain("silt");
  expect(figureOf(found.equilibrium).value).toBeCloseTo(3.903, 2);
  expect(figureOf(found.moistureAbove).value).toBeCloseTo(3.5 - 3.903, 2);
  expect(bondFigures(rowOf([madeOf("0.16 kg")]), "bentonite").clay!.says).toBe("clay added, taken as live");
});

test("water per clay: 3.5 % water on 7.49 % of the dry mix is 0.484 by mass", () => {
  const found = bondFigures(rowOf([madeOf("0.16 kg")]), "bentonite");
  // 5.00 kg and 0.445 kg less 9 %: 0.40495/5.40495 = 7.492 %; 3.5/(7.492 × 0.965) by hand.
  expect(figureOf(found.waterPerClay).value).toBeCloseTo(3.5 / (7.492 * 0.965), 3);
});

test("outside the ranges, without clay or in a natural sand there is no figure, and why", () => {
  const wet = batchFigures(
    logOf([{ name: "wet", moisture: "6 ± 0.1 %", compactability: "60 ± 1 %", strength: "40 ± 2 kPa" }]),
  ).figures[0]!;
  const found = bondFigures(wet, "bentonite");
  expect("why" in found.available && found.available.why).toContain("moisture of 2 to 5 %");
  expect("why" in found.equilibrium && found.equilibrium.why).toContain("clay is not known");
  const natural = bondFigures(rowOf([madeOf("0.16 kg")]), "natural");
  expect("why" in natural.available && natural.available.why).toContain("for bentonite");
});

test("mulling efficiency: 150 kPa, 40 %, 3.2 % against 180, 42, 3.3 is 81.8 % (TJFS-108), of used sand alone", () => {
  const batches = [
    {
      name: "as used",
      moisture: "3.2 ± 0.02 %",
      compactability: "40 ± 0.2 %",
      strength: "150 ± 1 kPa",
      more: ["mulled: 5 min", "sand: heap sand"],
    },
    {
      name: "mulled on",
      moisture: "3.3 ± 0.02 %",
      compactability: "42 ± 0.2 %",
      strength: "180 ± 1 kPa",
      more: ["mulled: 25 min", "sand: heap sand"],
    },
  ];
  const sand = (state: string) => ["sands:", "  heap sand:", `    state: ${state}`];
  const used = logOf(batches, sand("used"));
  const { mulled, why } = mulledAgainstReference(batchFigures(used).figures, used);
  expect(why).toBeUndefined();
  expect(mulled).toHaveLength(1);
  expect(mulled[0]!.reference).toBe("mulled on");
  expect(mulled[0]!.efficiencyPercent.value).toBeCloseTo(81.8, 1);
  const fresh = logOf(batches, sand("new"));
  expect(mulledAgainstReference(batchFigures(fresh).figures, fresh).why).toContain("new sand and new clay");
  const [alone] = batches;
  const single = logOf([alone!], sand("used"));
  expect(mulledAgainstReference(batchFigures(single).figures, single).why).toContain("needs a reference");
});
