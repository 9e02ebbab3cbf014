// The heap of a log: its mass, or buckets counted; what is wrong with it is said at its place. Invented figures.

import { expect, test } from "vitest";
import { hasError, type Issue } from "../../lib/issue.ts";
import * as complaints from "../../lib/log/complaints-heap.ts";
import { heapFigure } from "../../lib/log/heap.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { issueOf } from "./helpers.ts";

const head = `format: 1
metal: aluminium
bond: bentonite
scales:
  luggage scale: { reads to: 0.1 kg, within: 0.05 kg }
  barn scale: { reads to: 0.5 kg }
`;
const tail = "batches:\n  Heron 1: { date: 2026-04-11, compactability: 45 % }\n";
const withHeap = (line: string) => readLog(`${head}${line}\n${tail}`, { name: "heap.yaml" });
function massOf(line: string) {
  const { value, issues } = withHeap(line);
  expect(hasError(issues), issues.map(({ message }) => message).join("\n")).toBe(false);
  return heapFigure(value!)!;
}

test("a mass with its ±: rectangular, 95 % of it within 0.95 of the bound", () => {
  const { figure, missing } = massOf("heap: { mass: 120 kg ± 5 kg }");
  expect(figure.value).toBe(120);
  expect(figure.high).toBeCloseTo(120 + 0.95 * 5, 2);
  expect(missing).toEqual([]);
});

test("a mass on a scale, and one on none", () => {
  // Triangular ± 0.5 kg: 95 % within 0.5 (1 − √0.05) = 0.388.
  const barn = massOf("heap: { mass: 120 kg, scale: barn scale }");
  expect(barn.figure.high - 120).toBeCloseTo(0.5 * (1 - Math.sqrt(0.05)), 2);
  expect(barn.missing).toEqual(["scale check"]);
  const bare = massOf("heap: { mass: 120 kg }");
  expect([bare.figure.low, bare.figure.high, ...bare.missing]).toEqual([120, 120, "weighing"]);
});

test("buckets: the ± of one stands for all of them", () => {
  const { figure, missing } = massOf("heap: { buckets: 11, bucket: 10.8 kg ± 0.3 kg }");
  expect(figure.value).toBeCloseTo(118.8, 10);
  expect(figure.low).toBeCloseTo(118.8 - 0.95 * 3.3, 2);
  expect(missing).toEqual([]);
});

test("buckets weighed, gross and empty: their scatter counts, as by hand", () => {
  const line =
    "heap: { buckets: 8, bucket: [14.2 kg, 14.6 kg, 14.4 kg], empty: 0.9 kg, scale: luggage scale }";
  const { figure, missing } = massOf(line);
  expect(withHeap(line).value?.heapKg?.value).toBeCloseTo(108, 10);
  expect(figure.value).toBeCloseTo(108, 10);
  // 8 √((1 − 3/8)/3) · 0.2 · t(2) 4.303 = 3.14, and a little for the scale; 4,096 draws hold an end to 1.6 %.
  expect((figure.high - figure.low) / 2).toBeGreaterThan(3.09);
  expect((figure.high - figure.low) / 2).toBeLessThan(3.35);
  expect(missing).toEqual([]);
  expect(figure.sources.map(({ id }) => id)).toContain("bias of luggage scale");
  expect(massOf("heap: { buckets: 8, bucket: 13.5 kg }").missing).toEqual([
    "other buckets",
    "scale check",
    "weighing",
  ]);
});

test("a log without a heap has no figure of one", () => {
  expect(heapFigure(withHeap("note: none").value!)).toBeUndefined();
});

const cases: readonly (readonly [code: string, line: string, at: string])[] = [
  ["log/heap-without-mass", "heap: { note: in the shed }", "heap:"],
  ["log/heap-without-mass", "heap: { buckets: 11 }", "heap:"],
  ["log/heap-twice", "heap: { mass: 120 kg, buckets: 11, bucket: 10.8 kg }", "buckets"],
  ["log/buckets-not-whole", "heap: { buckets: 10.5, bucket: 10.8 kg }", "10.5"],
  ["log/more-weighed-than-there", "heap: { buckets: 1, bucket: [10.8 kg, 10.9 kg] }", "10.8"],
  ["log/bucket-below-empty", "heap: { buckets: 9, bucket: 0.8 kg, empty: 0.9 kg }", "0.8"],
  ["log/wrong-unit", "heap: { mass: 12 l }", "12 l"],
  ["log/wrong-unit", "heap: { buckets: 11 kg, bucket: 10.8 kg }", "11 kg"],
  ["log/not-above-zero", "heap: { mass: 0 }", "0"],
];

test.each(cases)("%s: %s", (code, line, at) => {
  const result = withHeap(line);
  const found = issueOf(result, code);
  expect(`${head}${line}`.slice(found.place?.offset).startsWith(at)).toBe(true);
  expect(result.value?.batches[0]?.readings).toHaveLength(1);
  const kept = code === "log/heap-twice";
  expect(result.value?.heapKg !== undefined).toBe(kept);
});

test("every complaint has its case above", () => {
  const made = (Object.values(complaints) as ((...words: string[]) => Issue)[]).map((one) => one("x", "x"));
  const triggered = new Set(cases.map(([code]) => code));
  expect(made.map(({ code }) => code).filter((code) => !triggered.has(code))).toEqual([]);
});
