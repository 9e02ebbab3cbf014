// What a report says further: out of reach, apart, wild, at least, the log's own fineness, surfaces, few batches.

import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";
import { type TrialReport, trialReport } from "../../lib/trial/trial-report.ts";

const wet = [2.6, 3, 3.4, 3.8, 4.2, 4.8];
const wobble = [0.6, -0.9, 0.4, -0.2, 1, -0.8];

interface Written {
  readonly aims?: string;
  readonly head?: string;
  readonly rows?: readonly string[];
}

/** Invented batches whose compactability rises by ten points for 1 % and whose strength tops at 3.3 %. */
const usual = wet.map((m, i) => {
  const compactability = (34 + 10 * (m - 2.6) + wobble[i]!).toFixed(1);
  const strength = (75 - 10 * (m - 3.3) ** 2 + wobble[5 - i]!).toFixed(1);
  return `moisture: ${m} ± 0.1 %, compactability: ${compactability} ± 1 %, green compression: ${strength} ± 2 kPa`;
});

function reportOf({ aims, head = "", rows = usual }: Written): TrialReport {
  const batches = rows.map((row, i) => `  B${i + 1}: { date: 2026-07-1${i % 10}, ${row} }`).join("\n");
  const text = `format: 1\n${head}${aims ? `aims: { ${aims} }\n` : ""}batches:\n${batches}\n`;
  const { value, issues } = readLog(text, { name: "log.yaml" });
  expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
  return trialReport(value!);
}

test("a strength that no water reaches: by how much, where, and that only this stands in the way", () => {
  const { unreachable, apart, aimed } = reportOf({
    aims: "compactability: 42 to 48 %, green compression: 90 to 110 kPa",
  });
  expect(aimed).toEqual(["compactability", "green compression"]);
  expect(apart).toEqual([]);
  expect(unreachable).toHaveLength(1);
  const [{ test: which, side, at, best, short, onlyThis }] = unreachable as [(typeof unreachable)[number]];
  expect([which, side, onlyThis]).toEqual(["green compression", "too low", true]);
  expect(Math.abs(at - 3.3)).toBeLessThan(0.2);
  expect(short.value).toBeCloseTo(90 - best, 9);
  expect(Math.abs(short.value - 15)).toBeLessThan(2);
  expect(short.low).toBeLessThan(short.value);
  expect(short.high).toBeGreaterThan(short.value);
});

test("two out of reach: neither alone stands in the way; too high as well as too low", () => {
  const { unreachable } = reportOf({ aims: "compactability: 5 to 10 %, green compression: 90 to 110 kPa" });
  expect(unreachable.map(({ test: which, side, onlyThis }) => [which, side, onlyThis])).toEqual([
    ["compactability", "too high", false],
    ["green compression", "too low", false],
  ]);
});

test("each met somewhere and never together: the pair, and where each is met", () => {
  const { unreachable, apart } = reportOf({
    aims: "compactability: 50 to 60 %, green compression: 72 to 90 kPa",
  });
  expect(unreachable).toEqual([]);
  expect(apart).toHaveLength(1);
  const [{ tests, aAt, bAt }] = apart as [(typeof apart)[number]];
  expect(tests).toEqual(["compactability", "green compression"]);
  expect(aAt.low).toBeGreaterThan(bAt.high);
  expect(aAt.high).toBeCloseTo(4.8, 9);
});

test("aims that are met together: nothing out of reach, nothing apart", () => {
  const { unreachable, apart, wild } = reportOf({
    aims: "compactability: 42 to 48 %, green compression: 60 to 90 kPa",
  });
  expect([unreachable, apart, wild]).toEqual([[], [], []]);
});

test("a wild batch is named with its property", () => {
  const rows = [...usual, ...usual.slice(1, 4)].map((row, i) =>
    i === 3 ? row.replace(/green compression: [\d.]+/, "green compression: 40") : row,
  );
  const { wild } = reportOf({ aims: "green compression: 60 to 90 kPa", rows });
  expect(wild.map(({ test: which, batch }) => [which, batch])).toEqual([["green compression", "B4"]]);
  expect(wild[0]!.off).toBeLessThan(-20);
  expect(wild[0]!.p).toBeLessThan(0.05);
});

test("repeats at a level: one test of the form for each property, over the batches that are repeated", () => {
  const { lackOfFit } = reportOf({ aims: "green compression: 60 to 90 kPa", rows: [...usual, ...usual.slice(1, 4)].map((row, i) => (i < 6 ? row : row.replace(/(compactability|compression): (\d+)/g, (_, name, whole) => `${name}: ${Number(whole) + (i % 2 === 0 ? 1 : -1)}`))) }); // biome-ignore format: one log
  expect(lackOfFit.map(({ test: which }) => which)).toEqual(["compactability", "green compression"]);
  for (const { p, df } of lackOfFit) {
    expect(df).toEqual([3, 3]);
    expect(p).toBeGreaterThan(0.01);
  }
});

const scaled = (within: string) =>
  `scales:\n  kitchen scale: { reads to: 0.1 g${within} }\nrigs:\n  tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 163 mm, blows: 3 }\n`;

test("a scale that was never checked makes aim and chance 'at least', a checked one does not", () => {
  const rows = wet.map((m, i) => {
    const load = (14.2 - 1.5 * (m - 3.3) ** 2 + 0.1 * wobble[i]!).toFixed(2);
    return `compactability: ${(10 * m + 8).toFixed(1)} ± 1 %, green compression: { load: ${load} kg, height: 50 mm, rig: tube, scale: kitchen scale }`;
  });
  const aims = "green compression: 60 to 90 kPa";
  const of = (within: string) => reportOf({ aims, rows, head: scaled(within) });
  const [checked, unchecked] = [of(", within: 0.2 g"), of("")];
  expect(checked.result).toBeDefined();
  expect([checked.atLeast, unchecked.atLeast]).toEqual([false, true]);
  expect(reportOf({ aims, rows: rows.slice(0, 3), head: scaled("") }).atLeast).toBe(false);
});

const sieved = (name: string) => `  ${name}:
    state: new
    sievings:
      - date: 2026-04-18
        washed: yes
        retained: { No. 6: 0, No. 12: 0, No. 20: 0, No. 30: 0, No. 40: 4.00, No. 50: 16.00, No. 70: 38.00, No. 100: 28.00, No. 140: 9.00, No. 200: 3.00, No. 270: 1.00, pan: 1.00 }
`;

test("the log's own sieving gives the fineness that the permeability's usual range goes with", () => {
  const head = `metal: aluminium\nbond: bentonite\nsands:\n${sieved("river")}`;
  const rows = wet.map((m) => `moisture: ${m} ± 0.1 %, permeability: ${60 + m} ± 3`);
  const { gfn } = reportOf({ head, rows });
  // By hand: Σ mass × multiplier (30, 40, 50, 70, 100, 140, 200, 300) over 100 g.
  const shares = [4, 16, 38, 28, 9, 3, 1, 1];
  const multipliers = [30, 40, 50, 70, 100, 140, 200, 300];
  const byHand = shares.reduce((all, share, i) => all + (share * multipliers[i]!) / 100, 0);
  expect(gfn).toBeCloseTo(byHand, 6);
  const two = `${head}${sieved("pit")}`;
  expect(reportOf({ head: two, rows }).gfn).toBeUndefined();
  const named = rows.map((row) => `${row}, sand: pit`);
  expect(reportOf({ head: two, rows: named }).gfn).toBeCloseTo(byHand, 6);
  const { value } = readLog(`format: 1\n${head}`, { name: "log.yaml" });
  expect(trialReport(value!, { gfn: 90 }).gfn).toBe(90);
});

test("three batches of bentonite sand: a published slope helps compactability; without the bond, or with natural, none", () => {
  const rows = usual.slice(1, 4);
  const of = (head: string) =>
    reportOf({ rows, head }).properties.find(({ test: which }) => which === "compactability")!.curve;
  expect(of("bond: bentonite\n").form).toBe("published slope");
  expect(of("bond: bentonite\n").prior!.says).toContain("10 to 48 points");
  expect([of("").form, of("bond: natural\n").form]).toEqual(["straight line", "straight line"]);
});

test("water and clay varied together give surfaces over both; one sand at one clay gives none", () => {
  const rows = [0.3, 0.4, 0.5].flatMap((clay) =>
    [0.12, 0.16, 0.2].map((water, i) => {
      const strength = 40 + 60 * clay - 4000 * (water - 0.16) ** 2 + wobble[i]!;
      return `made of: { sand: 5.00 kg ± 0.01 kg, bentonite: ${clay} kg ± 0.002 kg, water: ${water} kg ± 0.002 kg }, green compression: ${strength.toFixed(1)} ± 2 kPa`;
    }),
  );
  const { surfaces, axis } = reportOf({ rows, head: "trial: { axis: moisture }\n" });
  expect(axis).toBe("moisture");
  expect(surfaces.map(({ test: which, other }) => [which, other])).toEqual([["green compression", "clay"]]);
  expect(surfaces[0]!.surface.form).toBe("quadratic");
  expect(reportOf({}).surfaces).toEqual([]);
});
