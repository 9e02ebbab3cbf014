// Test practice: loads, balances, portions, screens, concentration, fines.

import { expect, test } from "vitest";
import { concentration } from "../../lib/sand/concentration.ts";
import { gradingCurve } from "../../lib/sand/curve.ts";
import { fines } from "../../lib/sand/fines.ts";
import { gapGraded } from "../../lib/sand/gap-graded.ts";
import { massBalance } from "../../lib/sand/mass-balance.ts";
import { areaLoadG, fiveLayersG, overload } from "../../lib/sand/overload.ts";
import { portionAdvice } from "../../lib/sand/portion.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { screens } from "../../lib/sand/screens.ts";
import { uniformity } from "../../lib/sand/uniformity.ts";
import { KOREAN_PAGE } from "../sand/curve-sands.ts";

const korean = readGrading(KOREAN_PAGE).value!;

test("five layers on a 200 mm frame: about 22, 32 and 62 g", () => {
  // McManus 1965 for the five layers; grams by hand at 60 % packing.
  expect([0.09, 0.128, 0.25].map((grainMm) => fiveLayersG(grainMm, 200).toFixed(0))).toEqual([
    "22",
    "32",
    "62",
  ]);
});

test("limit by area: 200 g on an 8 in sieve, 469 g on a 12 in one", () => {
  // ASTM C136. The diameter that sieves is half an inch less than that of the frame (from memory).
  expect(Math.abs(areaLoadG(0.3, 7.5 * 25.4) - 200)).toBeLessThan(1);
  expect(areaLoadG(0.3, 11.5 * 25.4).toFixed(0)).toBe("469");
});

test("200 g on a No. 200 pass the limit by area and lie many layers deep", () => {
  const { layers, verdict } = overload({ openingMm: 0.075, frameMm: 200, massG: 200 });
  expect(layers).toBeGreaterThan(40);
  expect(verdict).toBe("crowded");
});

test("a three-screen sand: 50 g crowd no sieve, 100 g do", () => {
  const crowded = (portionG: number) =>
    korean.fractions.filter(
      ({ openingMm, mass }, i) =>
        openingMm > 0 &&
        overload({
          openingMm,
          frameMm: 200,
          massG: (mass * portionG) / korean.total,
          ...(i > 0 ? { nextOpeningMm: korean.fractions[i - 1]!.openingMm } : {}),
        }).verdict !== "good",
    );
  expect(crowded(50)).toEqual([]);
  expect(crowded(100).map(({ label }) => label)).toEqual(["No. 100"]);
});

test("balance: 0.3 % is for acceptance, beyond 1 % the sieving is done again", () => {
  // ASTM C136 0.3 %; EN 933-1 1 % (from memory). 50 g: 0.15 and 0.5 g.
  const verdict = (retained: number) => massBalance({ startG: 50, retainedG: [retained] }).verdict;
  expect([49.85, 49.84, 49.5, 49.49].map(verdict)).toEqual(["good", "look", "look", "redo"]);
});

test("portion: 50 g on 200 mm, 12 to 25 g on 100 mm", () => {
  expect(portionAdvice({ frameMm: 200, portionG: 50 })).toMatchObject({ lowG: 50, verdict: "good" });
  const small = portionAdvice({ frameMm: 100, portionG: 20 });
  expect([small.lowG, small.highG]).toEqual([12.5, 25]);
});

test("sand of the Korean page: three screens, 70 to 140; 94.7 of 99.0 on three sieves, 2.6 of 99.0 fines", () => {
  // Figures by hand from the printed percentages 33.1, 50.1, 11.5, 1.7, 0.4, 0.5.
  expect(screens(korean)).toMatchObject({ count: 3, labels: ["No. 70", "No. 100", "No. 140"], afs: true });
  const three = concentration(korean)!;
  expect(three.labels).toEqual(["No. 70", "No. 100", "No. 140"]);
  expect(three.sharePercent).toBeCloseTo((100 * 94.7) / 99, 9);
  expect(concentration(korean, 4)!.sharePercent).toBeCloseTo((100 * 96.4) / 99, 9);
  expect(fines(gradingCurve(korean)).percent).toBeCloseTo((100 * 2.6) / 99, 9);
});

test("three model mixes that show why one number is not enough", () => {
  // ABIFA, Fundição & Matérias-Primas, Oct 2019: 80 % equal on three sieves, 20 % on No. 6, in the pan, on No. 140.
  const mix = (where: string) => {
    const empty = { "No. 6": 0, "No. 12": 0, "No. 20": 0, "No. 30": 0, "No. 40": 0 };
    const main = { "No. 50": 80 / 3, "No. 70": 80 / 3, "No. 100": 80 / 3 };
    const fine = { "No. 140": 0, "No. 200": 0, "No. 270": 0, pan: 0 };
    return readGrading({ ...empty, ...main, ...fine, [where]: 20 }).value!;
  };
  const say = (where: string) => {
    const sand = mix(where);
    return [
      concentration(sand)!.sharePercent.toFixed(0),
      screens(sand).count,
      fines(gradingCurve(sand)).percent!.toFixed(0),
      gapGraded(sand).gaps.length,
    ];
  };
  expect(say("No. 6")).toEqual(["80", 3, "0", 1]);
  expect(say("pan")).toEqual(["80", 3, "20", 1]);
  expect(say("No. 140")).toEqual(["80", 4, "0", 0]);
});

test("MK and GG of the Korean sand by their definition, figures by hand", () => {
  // Giesserei-Lexikon: MK at 50 % passing; GG from 4/3 to 2/3 of it. Passing by hand from the printed percentages.
  const passing = {
    "0.300": (100 * 97.3) / 99,
    "0.212": (100 * 64.2) / 99,
    "0.150": (100 * 14.1) / 99,
    "0.106": (100 * 2.6) / 99,
  };
  const mk = Math.exp(
    Math.log(0.15) +
      ((50 - passing["0.150"]) / (passing["0.212"] - passing["0.150"])) * Math.log(0.212 / 0.15),
  );
  const upper =
    passing["0.212"] +
    (Math.log((mk * 4) / 3 / 0.212) / Math.log(0.3 / 0.212)) * (passing["0.300"] - passing["0.212"]);
  const lower =
    passing["0.106"] +
    (Math.log((mk * 2) / 3 / 0.106) / Math.log(0.15 / 0.106)) * (passing["0.150"] - passing["0.106"]);
  const { mkMm, ggPercent } = uniformity(gradingCurve(korean));
  expect(mkMm).toBeCloseTo(mk, 9);
  expect(ggPercent).toBeCloseTo(upper - lower, 6);
});
