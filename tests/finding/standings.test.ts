// Where batches stand: sides, chances, one finding a property.

import { expect, test } from "vitest";
import { namesTogether } from "../../lib/finding/batch-names.ts";
import { batchStandings } from "../../lib/finding/standings.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { logOf, madeOf } from "./trial-logs.ts";

const where = { metal: "aluminium", bond: "bentonite" } as const;

test("names: three in a row make a run, two do not", () => {
  const all = ["A", "B", "C", "D", "E"];
  expect(namesTogether(["A", "B", "C", "E"], all)).toBe("A to C and E");
  expect(namesTogether(["D", "A", "B"], all)).toBe("A, B and D");
});

test("one batch is enough, with one finding a property", () => {
  const log = logOf([
    {
      name: "first",
      moisture: "3.9 ± 0.1 % (95 %)",
      compactability: "45 ± 1 % (95 %)",
      strength: "70 ± 4 kPa (95 %)",
      more: [madeOf("0.18 kg")],
    },
  ]);
  const { findings, rows } = batchStandings(batchFigures(log).figures, where);
  expect(findings.map(({ text }) => text.split(": ")[1]!.split(" of first")[0])).toEqual([
    "moisture",
    "compactability",
    "green compression",
    "clay",
  ]);
  // The range that was read stands first; the others are told in what it rests on.
  expect(findings[0]!.text).toBe(
    "3.5 to 4.5 % of damp mass is given for aluminium in bentonite sand: moisture of first lies within.",
  );
  expect(findings[0]!.because.some((line) => line.startsWith("3 to 4.5 % of damp mass is given"))).toBe(true);
  expect(rows.map(({ against }) => against)).toContain("strength by clay");
  expect(rows.map(({ against }) => against)).toContain("temper by clay");
});

test("batches are told together by side, and an edge within the ± cannot be told", () => {
  const log = logOf([
    { name: "W1", moisture: "2.5 ± 0.1 % (95 %)" },
    { name: "W2", moisture: "2.8 ± 0.1 % (95 %)" },
    { name: "W3", moisture: "3.0 ± 0.1 % (95 %)" },
    { name: "W4", moisture: "4.45 ± 0.1 % (95 %)" },
    { name: "W5", moisture: "5.5 ± 0.1 % (95 %)" },
  ]);
  const { findings, rows } = batchStandings(batchFigures(log).figures, where);
  expect(findings[0]!.text).toContain("moisture of W1 to W3 lies below, of W5 above; W4 cannot be told.");
  // 0.05 within the edge is 0.98 standard deviations: Φ(0.98) = 0.836 (table of the normal distribution).
  expect(findings[0]!.because).toContain(
    "Chance that it lies within: W4 84 in 100. A narrower ± would tell.",
  );
  const sides = rows.filter(({ against }) => against === "usual range").map(({ where: side }) => side);
  expect(sides).toEqual(["below", "below", "below", "not told", "above"]);
  // Over-wet bentonite sand: the hazard stands in the finding.
  expect(findings[0]!.because.join(" ")).toContain("erupt as steam");
});

test("what the trial varies on purpose is no cause for doubt; else a range that was read decides", () => {
  const log = logOf([{ name: "dry", moisture: "2.5 ± 0.1 % (95 %)" }]);
  const rows = batchFigures(log).figures;
  expect(batchStandings(rows, where).findings[0]!.tone).not.toBe("good");
  expect(batchStandings(rows, { ...where, varied: "moisture" }).findings[0]!.tone).toBe("note");
});

test("nothing is known of the metal: nothing is held against a range", () => {
  const log = logOf([{ name: "one", moisture: "3.9 ± 0.1 %" }]);
  expect(batchStandings(batchFigures(log).figures, {}).findings).toEqual([]);
});

test("permeability is held against the usual range of its fineness alone", () => {
  const log = logOf([{ name: "one", permeability: "60 ± 3 (95 %)" }]);
  const rows = batchFigures(log).figures;
  expect(batchStandings(rows, where).findings).toEqual([]);
  const [found] = batchStandings(rows, { ...where, gfn: 80 }).findings;
  expect(found!.text).toContain("25 to 110 is given for aluminium");
});
