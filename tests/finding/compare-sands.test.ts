// Same sand or another?

import { expect, test } from "vitest";
import { compareSands } from "../../lib/finding/compare-sands.ts";
import { sandReports } from "../../lib/finding/sand-report.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { sievedPortion } from "../../lib/log/sieved-portion.ts";
import { curveFigures } from "../../lib/sand/curve-figure.ts";

const head = `format: 1
scales: { pocket scale: { reads to: 0.01 g, within: 0.02 g } }
sieve sets: { one: { frame: 200 mm }, two: { frame: 200 mm } }
sands:
`;
const sand = (name: string, sievings: readonly string[]): string =>
  `  ${name}:\n    state: new\n    sievings:\n${sievings.map((one) => `      - ${one}\n`).join("")}`;
const sieving = (portion: string, shift: number, more = "sieve set: one, repeat of: grab"): string => {
  const masses = [0.5, 8 - shift, 20, 16 + shift, 4.5, 0.7, 0.3].map((mass) => mass.toFixed(2));
  const labels = ["No. 50", "No. 70", "No. 100", "No. 140", "No. 200", "No. 270", "pan"];
  const held = labels.map((label, k) => `${label}: ${masses[k]}`).join(", ");
  return `{ date: 2026-03-02, portion: ${portion}, scale: pocket scale, washed: yes, ${more}, start: 50 g, retained: { ${held} } }`;
};
const reportsOf = (text: string) => sandReports(readLog(text, { name: "log.yaml" }).value!);

test("grabs far apart are two sands; a sand against itself is not told apart", () => {
  const [a, b, c] = reportsOf(
    head +
      sand("A", [sieving("1", 0), sieving("2", 0.2), sieving("3", 0.1)]) +
      sand("B", [sieving("1", 5), sieving("2", 5.2), sieving("3", 5.1)]) +
      sand("C", [sieving("1", 0.1), sieving("2", 0.25), sieving("3", 0)]),
  );
  const apart = compareSands(a!, b!)!;
  expect(apart.finding.code).toBe("compare/another");
  expect(apart.difference.low).toBeGreaterThan(0);
  expect(apart.finding.because.at(-1)).toContain("furthest apart at No. 70");
  expect(compareSands(a!, c!)!.finding.code).toBe("compare/not-told-apart");
});

test("single sievings far apart: it is said that the handful may be it", () => {
  const [a, b] = reportsOf(head + sand("A", [sieving("1", 0)]) + sand("B", [sieving("1", 6)]));
  expect(compareSands(a!, b!)!.finding.code).toBe("compare/apart-but-unrepeated");
});

test("one set cancels the openings; two sets, or none named, do not", () => {
  const width = (more: string): number => {
    const [a, b] = reportsOf(head + sand("A", [sieving("1", 0)]) + sand("B", [sieving("1", 1, more)]));
    const { low, high } = compareSands(a!, b!)!.difference;
    return high - low;
  };
  expect(width("sieve set: one")).toBeLessThan(0.4 * width("sieve set: two"));
});

test("grabs and splits are never pooled together", () => {
  const splits = "sieve set: one, repeat of: split";
  const [a] = reportsOf(
    head +
      sand("A", [sieving("1", 0), sieving("2", 1.5)]) +
      sand(
        "B",
        ["1", "2", "3", "4", "5"].map((portion, k) => sieving(portion, 0.02 * k, splits)),
      ),
  );
  expect(a!.fineness.scatter).toMatchObject({ degreesOfFreedom: 1, pooled: false });
});

test("points of a curve: shares add to 100, intervals hold their middles, mixed stacks throw", () => {
  const { value } = readLog(head + sand("A", [sieving("1", 0)]), { name: "log.yaml" });
  const portion = sievedPortion(value!.sands[0]!.sievings[0]!);
  const figures = curveFigures("A", [portion]);
  expect(figures.reduce((all, { retained }) => all + retained.value, 0)).toBeCloseTo(100, 9);
  for (const { passing, retained } of figures) {
    expect(passing.low).toBeLessThanOrEqual(passing.value + 1e-9);
    expect(passing.high).toBeGreaterThanOrEqual(passing.value - 1e-9);
    expect(retained.high).toBeGreaterThanOrEqual(retained.value - 1e-9);
  }
  const shorter = { ...portion, held: portion.held.slice(1) };
  expect(() => curveFigures("A", [portion, shorter])).toThrow("one stack");
});
