// Linear least squares against the certified values of NIST/ITL Statistical Reference Datasets (StRD), itl.nist.gov/div898/strd.

import { expect, test } from "vitest";
import { fitLinear } from "../../lib/numbers/least-squares.ts";
import { fitPolynomial } from "../../lib/numbers/polynomial-fit.ts";
import { digits, nistSet, sirstv } from "./nist-data.ts";

interface Figures {
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residualSd: number;
  readonly rSquared: number;
}

/** Compares with the certified values; digits that must agree. */
function agrees(fit: Figures, name: string, least: number, count: number): void {
  const { certified, value } = nistSet(name);
  expect(certified).toHaveLength(count);
  certified.forEach(([estimate, deviation], k) => {
    expect(digits(fit.coefficients[k]!, estimate!), `${name} B${k}`).toBeGreaterThan(least);
    expect(digits(fit.standardErrors[k]!, deviation!), `${name} SD of B${k}`).toBeGreaterThan(least);
  });
  expect(digits(fit.residualSd, value("Standard Deviation")), `${name} residual sd`).toBeGreaterThan(least);
  expect(digits(fit.rSquared, value("R-Squared")), `${name} R²`).toBeGreaterThan(least);
}

function polynomialOf(name: string, degree: number, rows: number, intercept = true) {
  const set = nistSet(name);
  expect(set.rows).toHaveLength(rows);
  const [x, y] = [set.rows.map((row) => row[1]!), set.rows.map((row) => row[0]!)];
  return fitPolynomial(x, y, degree, { intercept });
}

test("Norris: a straight line, to 11 digits", () => {
  agrees(polynomialOf("Norris", 1, 36), "Norris", 11, 2);
});

test("NoInt1, NoInt2: a line through the origin, R² about zero, to 13 digits", () => {
  agrees(polynomialOf("NoInt1", 1, 11, false), "NoInt1", 13, 1);
  agrees(polynomialOf("NoInt2", 1, 3, false), "NoInt2", 13, 1);
});

test("Filip: degree 10, the one that plain normal equations lose, to 12 digits", () => {
  agrees(polynomialOf("Filip", 10, 82), "Filip", 12, 11);
});

test("Wampler3, Wampler4: degree 5 with large scatter, to 9 digits", () => {
  agrees(polynomialOf("Wampler3", 5, 21), "Wampler3", 9, 6);
  agrees(polynomialOf("Wampler4", 5, 21), "Wampler4", 9, 6);
});

test("Wampler1, Wampler2: points on the curve; coefficients to 9 and 12 digits, scatter nothing but rounding", () => {
  const first = polynomialOf("Wampler1", 5, 21);
  const second = polynomialOf("Wampler2", 5, 21);
  for (const b of first.coefficients) expect(digits(b, 1)).toBeGreaterThan(9);
  second.coefficients.forEach((b, k) => {
    expect(digits(b, 10 ** -k)).toBeGreaterThan(12);
  });
  expect(first.residualSd).toBeLessThan(1e-8);
  expect(second.residualSd).toBeLessThan(1e-13);
  expect(first.rSquared).toBe(1);
});

// Wampler5 is Wampler1 plus 100 times what Wampler4 adds to it; its certified values from memory.
test("Wampler5: a hundred times the scatter of Wampler4, to 7 digits", () => {
  const [clean, noisy] = [nistSet("Wampler1").rows, nistSet("Wampler4").rows];
  const y = clean.map((row, i) => row[0]! + 100 * (noisy[i]![0]! - row[0]!));
  const fit = fitPolynomial(
    clean.map((row) => row[1]!),
    y,
    5,
  );
  for (const b of fit.coefficients) expect(digits(b, 1)).toBeGreaterThan(7);
  expect(digits(fit.residualSd, 23601450.2379268)).toBeGreaterThan(13);
  expect(digits(fit.rSquared, 0.0022466892157494)).toBeGreaterThan(11);
});

test("Longley: six columns that move together, to 13 digits", () => {
  const { rows } = nistSet("Longley");
  expect(rows).toHaveLength(16);
  const fit = fitLinear(
    rows.map((row) => [1, ...row.slice(1)]),
    rows.map((row) => row[0]!),
  );
  agrees(fit, "Longley", 13, 7);
  expect(fit.degreesOfFreedom).toBe(9);
});

test("SiRstv: one-way analysis of variance by a column for each instrument, without a column of ones", () => {
  const groups = sirstv();
  expect(groups.map(({ length }) => length)).toEqual([5, 5, 5, 5, 5]);
  const y = groups.flat();
  const design = y.map((_, i) => [0, 1, 2, 3, 4].map((k) => (Math.floor(i / 5) === k ? 1 : 0)));
  const fit = fitLinear(design, y);
  expect(fit.degreesOfFreedom).toBe(20);
  expect(digits(fit.residualSd, 0.104076068334656)).toBeGreaterThan(12);
  expect(digits(fit.residualSumOfSquares, 0.21663656)).toBeGreaterThan(12);
  // R² about the mean: the five columns add to a constant. Three leading digits of y cost it three.
  expect(digits(fit.rSquared, 0.190999039051129)).toBeGreaterThan(11);
});
