import { expect, test } from "vitest";
import { heapMassKg } from "../../lib/sand/heap-mass.ts";
import { seeded } from "../seeded.ts";

const heap = { name: "bench heap", bucketsKg: [14.2, 14.6, 14.4], count: 8, emptyKg: 0.9, stepKg: 0.1 };

test("buckets × mean net mass", () => {
  const { figure, missing } = heapMassKg(heap);
  expect(figure.value).toBeCloseTo(8 * 13.5, 10);
  expect(missing).toEqual(["scale"]);
});

test("± of three of eight buckets, by hand", () => {
  // s 0.2; 8 √((1 − 3/8)/3) 0.2 = 0.730; t(2) 4.303: ± 3.14; readings add little: 8 × 0.05 for the empty bucket.
  const { figure } = heapMassKg(heap);
  const half = (figure.high - figure.low) / 2;
  expect(half).toBeGreaterThan(3.14);
  expect(half).toBeLessThan(3.3);
  expect(figure.shares[0]!.source.kind).toBe("repeat");
});

test("all weighed: the scatter between buckets is no doubt any more", () => {
  const all = heapMassKg({ ...heap, count: 3, withinKg: 0.05, scale: "luggage scale" });
  expect(all.missing).toEqual([]);
  expect(all.figure.sources.some(({ kind }) => kind === "repeat")).toBe(false);
  expect(all.figure.sources.some(({ id }) => id === "bias of luggage scale")).toBe(true);
});

test("one bucket of many says nothing of the others", () => {
  expect(heapMassKg({ ...heap, bucketsKg: [14.2] }).missing).toEqual(["buckets", "scale"]);
});

test("coverage: 95 % of 2,000 heaps, four of twelve buckets weighed", () => {
  const random = seeded(712);
  let held = 0;
  const runs = 2000;
  for (let run = 0; run < runs; run++) {
    const buckets = Array.from({ length: 12 }, () => 13 + 0.6 * random.normal());
    const truth = buckets.reduce((a, b) => a + b) - 12 * 0.9;
    const read = (kg: number) => Math.round(kg / 0.1) * 0.1;
    const { figure } = heapMassKg(
      {
        name: `heap ${run}`,
        bucketsKg: random.shuffle(buckets).slice(0, 4).map(read),
        count: 12,
        emptyKg: 0.9,
        stepKg: 0.1,
      },
      { draws: 1024 },
    );
    if (truth >= figure.low && truth <= figure.high) held++;
  }
  expect(held / runs).toBeGreaterThan(0.93);
  expect(held / runs).toBeLessThan(0.97);
});

test("misuse throws", () => {
  for (const bad of [{ count: 2 }, { count: 8.5 }, { bucketsKg: [] }, { emptyKg: 20 }, { stepKg: 0 }])
    expect(() => heapMassKg({ ...heap, ...bad })).toThrow(RangeError);
});
