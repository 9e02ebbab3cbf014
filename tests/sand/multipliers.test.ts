import fc from "fast-check";
import { expect, test } from "vitest";
import { averageGrainSize } from "../../lib/sand/average-grain-size.ts";
import { britishFineness } from "../../lib/sand/british-fineness.ts";
import { usFineness } from "../../lib/sand/grain-fineness.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const grading = (retained: Record<string, number>) => readGrading(retained).value!;
const nothing: Record<string, number> = Object.fromEntries(afsClasses.map(({ label }) => [label, 0]));

test("all on one sieve gives that sieve's multiplier", () => {
  for (const { label, multiplier } of afsClasses) {
    expect(usFineness(grading({ ...nothing, [label]: 7 })).gfn).toBe(multiplier);
  }
});

test("a sieve left out above an empty one cannot have held anything", () => {
  // Nos. 6, 12, 20 are not used and No. 30 held nothing: (1·30 + 3·40)/4 = 37.5 by hand.
  expect(usFineness(grading({ "No. 30": 0, "No. 40": 1, "No. 50": 3, "No. 70": 0, pan: 0 })).gfn).toBe(37.5);
});

test("coarser sieves add to the first class, finer ones to the pan, others to the next finer class", () => {
  const mixed = grading({
    ...nothing,
    "No. 4": 1,
    "No. 6": 2,
    "No. 60": 4,
    "No. 70": 8,
    "No. 325": 16,
    pan: 32,
  });
  // (3·3 + 12·50 + 48·300)/63 by hand.
  expect(usFineness(mixed).gfn).toBeCloseTo(15_009 / 63, 7);
});

test("the unit of the masses does not matter, and the figure stays between 3 and 300", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.01, max: 50, noNaN: true }), { minLength: 12, maxLength: 12 }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (masses, factor) => {
        const by = (k: number) =>
          usFineness(grading(Object.fromEntries(afsClasses.map(({ label }, i) => [label, masses[i]! * k]))))
            .gfn!;
        const gfn = by(1);
        expect(by(factor) / gfn).toBeCloseTo(1, 8);
        expect(gfn).toBeGreaterThanOrEqual(3);
        expect(gfn).toBeLessThanOrEqual(300);
      },
    ),
  );
});

test("British mesh: a US sieve of the same opening serves; grains on BS 10 have no multiplier", () => {
  const retained = { "No. 12": 0, "No. 18": 0, "BS 22": 0, "BS 30": 1, "No. 45": 0, "BS 60": 0, "BS 100": 1, "BS 150": 0, "BS 200": 0, pan: 0 }; // biome-ignore format: one row reads as one stack
  expect(britishFineness(grading(retained)).value!.gfn).toBe(41); // (22 + 60)/2
  const coarse = britishFineness(grading({ ...retained, "No. 12": 1 }));
  expect(coarse.value).toBeUndefined();
  expect(coarse.issues[0]!.code).toBe("sand/no-multiplier");
});

test("British mesh: the US stack is not its own", () => {
  const { value, issues } = britishFineness(grading({ ...nothing, "No. 70": 10, "No. 100": 5, pan: 1 }));
  expect(value).toBeUndefined();
  expect(issues[0]!.message).toContain("British mesh");
  expect(issues[0]!.about).toContain("BS 60");
});

test("average grain size: the US stack is not its own, and the sieves that lack are named", () => {
  const { averageUm, issues } = averageGrainSize({
    retained: { ...nothing, "No. 70": 10, "No. 100": 5, pan: 1 },
  });
  expect(averageUm).toBeNull();
  // 250 µm could have held part of what No. 70 holds, and 180 µm of what No. 100 holds. Nos. 50, 140, 200 and
  // 270 held nothing, so the sieves just above them are not needed; the pan of No. 270 is all below 63 µm.
  expect(issues.map(({ about }) => about)).toEqual(["250 µm, 180 µm"]);
});

test("average grain size: a faulty record gives issues and no figure", () => {
  const { averageUm, issues } = averageGrainSize({ retained: { "0.5 mm": -1, pan: 1 } });
  expect(averageUm).toBeNull();
  expect(issues.map(({ code }) => code)).toEqual(["sand/mass-negative"]);
});
