import { expect, test } from "vitest";
import type { Grading } from "../../lib/sand/grading.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { screens } from "../../lib/sand/screens.ts";
import { NATURAL_BONDED } from "./curve-sands.ts";

const read = (retained: Record<string, number>): Grading => readGrading(retained).value!;

test("a sand heavy in the pan: three screens, and the pan is none", () => {
  // 19.4, 25.1, 24.7 % of the grain on 140, 200, 270; 21.1 % in the pan.
  const { count, labels, apart, afs } = screens(read(NATURAL_BONDED));
  expect({ count, labels, apart, afs }).toEqual({
    count: 3,
    labels: ["No. 140", "No. 200", "No. 270"],
    apart: [],
    afs: true,
  });
});

test("a sieve that holds enough but stands apart does not lengthen the run", () => {
  const split = screens(
    read({ "No. 20": 15, "No. 30": 0, "No. 40": 5, "No. 50": 40, "No. 70": 38, "No. 100": 2, pan: 0 }),
  );
  expect(split.count).toBe(2);
  expect(split.labels).toEqual(["No. 50", "No. 70"]);
  expect(split.sharePercent).toBeCloseTo(78, 12);
  expect(split.apart).toEqual(["No. 20"]);
});

test("of two runs of one length the fuller one counts", () => {
  const { labels } = screens(
    read({ "No. 30": 20, "No. 40": 20, "No. 50": 5, "No. 70": 25, "No. 100": 25, "No. 140": 5, pan: 0 }),
  );
  expect(labels).toEqual(["No. 70", "No. 100"]);
});

test("exactly 10 % counts, also where the division is not exact", () => {
  expect(screens(read({ "No. 50": 0.3, "No. 70": 2.4, "No. 100": 0.3, pan: 0 })).count).toBe(3);
  // 100 × 0.03 / 0.30 is 9.999999999999998 in doubles.
  expect(screens(read({ "No. 50": 0.03, "No. 70": 0.01, "No. 100": 0.26, pan: 0 })).apart).toEqual([
    "No. 50",
  ]);
  expect(screens(read({ "No. 50": 0.29, "No. 70": 2.42, "No. 100": 0.29, pan: 0 })).count).toBe(1);
});

test("a missing AFS sieve or a strange one is said", () => {
  const gap = screens(read({ "No. 50": 30, "No. 100": 60, pan: 10 }));
  expect(gap.afs).toBe(false);
  expect(gap.issues[0]!.message).toContain("No. 70 is missing");
  const iso = screens(read({ "No. 50": 30, "0.25 mm": 60, "No. 70": 10, pan: 0 }));
  expect(iso.afs).toBe(false);
  // An AFS opening in mm is the AFS sieve.
  expect(screens(read({ "0.3 mm": 50, "0.212 mm": 50, pan: 0 })).afs).toBe(true);
});

test("all in the pan: no screen, and misuse throws", () => {
  const fine = read({ "No. 200": 0, pan: 5 });
  expect(screens(fine)).toMatchObject({ count: 0, labels: [], sharePercent: 0, apart: [] });
  expect(() => screens(fine, 0)).toThrow(RangeError);
});
