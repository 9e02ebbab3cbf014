// Sieves against printed tables, two formulas of the standard, and the weavers' arithmetic.

import { expect, test } from "vitest";
import { clothOpenAreaPercent, clothOpeningMm } from "../../lib/sand/cloth.ts";
import { astmSieves } from "../../lib/sand/sieve-table-astm.ts";
import { britishSieves } from "../../lib/sand/sieve-table-british.ts";
import { isoOpeningsMm, isoPrincipalMm, isoSupplementaryMm } from "../../lib/sand/sieve-table-iso.ts";
import { largestOpeningMm, standardToleranceMm } from "../../lib/sand/sieve-tolerance.ts";

// Number → wires per inch and phi, worked out by hand from the openings and wires of ASTM E11-17 and
// ISO 3310-1:2016.
const printed: readonly (readonly [number, number, number])[] = [
  [4, 4.0, -2.25],
  [5, 4.7, -2.0],
  [6, 5.5, -1.74],
  [7, 6.5, -1.49],
  [8, 7.6, -1.24],
  [10, 8.8, -1.0],
  [12, 10.2, -0.77],
  [14, 12.0, -0.49],
  [16, 14.0, -0.24],
  [18, 16.3, 0.0],
  [20, 18.8, 0.23],
  [25, 21.9, 0.49],
  [30, 25.4, 0.74],
  [35, 31.2, 1.0],
  [40, 36.0, 1.23],
  [45, 43.9, 1.49],
  [50, 50.8, 1.74],
  [60, 62.0, 2.0],
  [70, 72.2, 2.24],
  [80, 83.3, 2.47],
  [100, 101.6, 2.74],
  [120, 118.1, 3.0],
  [140, 143.5, 3.24],
  [170, 166.0, 3.47],
  [200, 203.2, 3.74],
  [230, 235.2, 3.99],
  [270, 285.4, 4.24],
  [325, 329.9, 4.47],
  [400, 373.5, 4.72],
  [450, 423.3, 4.97],
  [500, 508.0, 5.32],
  [635, 635.0, 5.64],
];

test("the numbers of the US table are those of ASTM E11-17", () => {
  expect(astmSieves.map((row) => row.number)).toEqual(printed.map(([number]) => number));
});

test.each(printed)(
  "No. %i: opening and wire give %f wires per inch, the opening gives phi %f",
  (number, count, phi) => {
    const { openingMm, wireMm } = astmSieves.find((row) => row.number === number)!;
    expect(Math.abs(25.4 / (openingMm + wireMm) - count)).toBeLessThanOrEqual(0.0501);
    expect(Math.abs(-Math.log2(openingMm) - phi)).toBeLessThanOrEqual(0.00501);
  },
);

// ISO 3310-1, Y = w^0.98/27 + 1.6 µm (from memory), against the column of ASTM E11-17.
test.each(astmSieves.map((row) => [row.number, row.toleranceUm, row.openingMm] as const))(
  "No. %i: the standard's formula gives the printed tolerance of %f µm",
  (_, toleranceUm, openingMm) => {
    const rounding = openingMm >= 1 ? 0.5 : 0.05;
    expect(Math.abs(standardToleranceMm(openingMm) * 1000 - toleranceUm)).toBeLessThanOrEqual(
      rounding + 1e-9,
    );
  },
);

// ISO 3310-1, X = 2w^0.75/3 + 4w^0.25 µm (from memory), against the column of ASTM E11-17.
test.each(astmSieves.map((row) => [row.number, row.largestMm, row.openingMm] as const))(
  "No. %i: the standard's formula gives the printed largest opening of %f mm",
  (_, largestMm, openingMm) => {
    const rounding = openingMm >= 1 ? 0.005 : 0.0005;
    expect(Math.abs(largestOpeningMm(openingMm) - largestMm)).toBeLessThanOrEqual(rounding + 1e-9);
  },
);

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

// Wire-weavers' terminology sheets: w = 25.4/n − d; open area (w/p)²; worked by hand.
test.each([
  [40, 0.25, 0.385],
  [100, 0.1, 0.154],
  [80, 0.12, 0.1975],
  [60, 0.12, 0.3033],
  [60, 0.16, 0.2633],
  [60, 0.19, 0.2333],
])("%i mesh with %f mm wire opens %f mm", (countPerInch, wireMm, openingMm) => {
  expect(clothOpeningMm({ countPerInch, wireMm })).toBeCloseTo(openingMm, 4);
});

test("40 mesh with 0.25 mm wire is 36.8 % open: 0.385 of 0.635 mm, squared", () => {
  expect(clothOpenAreaPercent({ countPerInch: 40, wireMm: 0.25 })).toBeCloseTo(36.76, 2);
});
