// Sieves: the series of the standards. Tolerances, wires and cloth are rows of rows-sieves.ts.

import { expect, test } from "vitest";
import { astmSieves } from "../../lib/sand/sieve-table-astm.ts";
import { britishSieves } from "../../lib/sand/sieve-table-british.ts";
import { isoOpeningsMm, isoPrincipalMm, isoSupplementaryMm } from "../../lib/sand/sieve-table-iso.ts";

const numbers = [4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 100, 120, 140, 170, 200, 230, 270, 325, 400, 450, 500, 635]; // biome-ignore format: as the table runs

test("the numbers of the US table are those of ASTM E11-17", () => {
  expect(astmSieves.map((row) => row.number)).toEqual(numbers);
});

test("ASTM E11-17: the average opening of a No. 100 lies between 143.4 and 156.6 µm", () => {
  const { openingMm, toleranceUm } = astmSieves.find((row) => row.number === 100)!;
  expect(openingMm * 1000 - toleranceUm).toBeCloseTo(143.4, 9);
  expect(openingMm * 1000 + toleranceUm).toBeCloseTo(156.6, 9);
});

test("ISO 565: the principal series steps by about the square root of two, and the US openings are its supplement", () => {
  isoPrincipalMm.slice(1).forEach((mm, k) => {
    expect(Math.abs(isoPrincipalMm[k]! / mm / Math.SQRT2 - 1)).toBeLessThan(0.03);
  });
  const us = astmSieves.map((row) => row.openingMm).filter((mm) => mm >= 0.038);
  expect(us).toEqual(isoSupplementaryMm);
  expect(isoOpeningsMm.length).toBe(new Set(isoOpeningsMm).size);
});

// ISO 3: the preferred numbers of series R20 are 10^(k/20), rounded by at most 1.5 %, as 3.55 to 3.6 (from memory).
test("every ISO opening of the R20 series is a rounded preferred number", () => {
  const r20 = isoOpeningsMm.filter((mm) => !isoSupplementaryMm.includes(mm) || isoPrincipalMm.includes(mm));
  for (const mm of r20) {
    const step = 20 * Math.log10(mm);
    expect(Math.abs(10 ** ((step - Math.round(step)) / 20) - 1)).toBeLessThan(0.015);
  }
});

// Old BS 410 (from memory): each mesh had the opening of a US sieve, as older tables set them side by side.
test.each([
  [16, 18],
  [22, 25],
  [30, 35],
  [44, 45],
  [60, 60],
  [72, 70],
  [85, 80],
  [100, 100],
  [120, 120],
  [150, 140],
  [200, 200],
  [240, 230],
  [300, 270],
])("BS %i has the opening of No. %i", (british, us) => {
  const opening = britishSieves.find((row) => row.number === british)!.openingMm;
  expect(opening).toBe(astmSieves.find((row) => row.number === us)!.openingMm);
});
