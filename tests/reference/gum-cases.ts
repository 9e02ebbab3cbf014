// Worked examples of the GUM (JCGM 100:2008), its Supplement 1 (JCGM 101:2008) and others, by the public combine and
// spread with 65,536 draws. Each gives the figures that the rows of rows-uncertainty.ts hold.

import { combine, type Figure, lift, type Spread, spread } from "../../lib/index.ts";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";
import { mean } from "../../lib/numbers/summary.ts";
import { drawing, drawsOf } from "../../lib/quantity/drawing.ts";

const draws = { draws: 65_536 };
/** Worked out once, when first asked for. */
function once<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
}

/** The narrowest interval that holds a share of the draws: JCGM 101:2008 7.7. */
export function shortest(figure: Figure, share: number): [number, number] {
  const sorted = drawsOf(figure, drawing(figure.sources, { count: draws.draws })).sort();
  const held = Math.round(share * sorted.length);
  let best = 0;
  for (let k = 0; k + held < sorted.length; k++) {
    if (sorted[k + held]! - sorted[k]! < sorted[best + held]! - sorted[best]!) best = k;
  }
  return [sorted[best]!, sorted[best + held]!];
}

// GUM H.1, a gauge block compared with a standard: lengths in nm, l = l_s + d − l_s(δα·θ + α_s·δθ).
const length = (v: {
  readonly standard: number;
  readonly difference: number;
  readonly expansion: number;
  readonly warm: number;
  readonly swing: number;
  readonly unlike: number;
  readonly gradient: number;
}): number =>
  v.standard +
  v.difference -
  v.standard * (v.unlike * (v.warm + v.swing) + v.expansion * v.gradient) -
  50_000_000;

/** GUM H.1 to the second order, nm past 50 mm. */
export const gaugeBlock = once(() => {
  return combine(
    length,
    {
      standard: spread({ mean: 50_000_623, sd: 25, source: "standard" }),
      difference: spread({ mean: 215, sd: Math.hypot(5.8, 3.9, 6.7), source: "difference" }),
      expansion: spread({ mean: 11.5e-6, halfWidth: 2e-6, source: "expansion" }),
      warm: spread({ mean: -0.1, sd: 0.2, source: "warm" }),
      swing: spread({ mean: 0, halfWidth: 0.5, kind: "arcsine", source: "swing" }),
      unlike: spread({ mean: 0, halfWidth: 1e-6, source: "unlike" }),
      gradient: spread({ mean: 0, halfWidth: 0.05, source: "gradient" }),
    },
    draws,
  );
});
/** The part of one source: its u alone. */
export const partOf = (figure: Figure, id: string): number =>
  figure.sd * Math.sqrt((figure.shares.find((share) => share.id === id)?.percent ?? 0) / 100);

/** JCGM 101:2008, 9.5: the same with Student's t and inexact limits. */
export const gaugeBlockByDraws = once(() => {
  return combine(
    ({ standard, repeats, random, systematic, ...rest }) =>
      length({ standard, difference: 215 + repeats + random + systematic, ...rest }),
    {
      standard: spread({ mean: 50_000_623, sd: 25, df: 18, source: "standard" }),
      repeats: spread({ mean: 0, sd: 5.8, df: 24, source: "repeats" }),
      random: spread({ mean: 0, sd: 3.9, df: 5, source: "random" }),
      systematic: spread({ mean: 0, sd: 6.7, df: 8, source: "systematic" }),
      expansion: spread({ mean: 11.5e-6, halfWidth: 2e-6, source: "expansion" }),
      warm: spread({ mean: -0.1, sd: 0.2, source: "warm" }),
      swing: spread({ mean: 0, halfWidth: 0.5, kind: "arcsine", source: "swing" }),
      unlike: spread({
        mean: 0,
        halfWidth: 1e-6,
        kind: "curvilinear trapezoid",
        edge: 0.1,
        source: "unlike",
      }),
      gradient: spread({
        mean: 0,
        halfWidth: 0.05,
        kind: "curvilinear trapezoid",
        edge: 0.5,
        source: "gradient",
      }),
    },
    draws,
  );
});

// GUM H.2: five readings each of a voltage (V), a current (A) and a phase (rad), taken together.
const readings = [
  [5.007, 4.994, 5.005, 4.99, 4.999],
  [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
  [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
];

/** Resistance, reactance and impedance from readings that move together. */
export const impedance = once(() => {
  const means = readings.map((list) => mean(list));
  const covariance = readings.map((a, i) =>
    readings.map((b, j) => a.reduce((all, v, k) => all + (v - means[i]!) * (b[k]! - means[j]!), 0) / (5 * 4)),
  );
  const u = covariance.map((row, i) => Math.sqrt(row[i]!));
  // Three shared sources make the correlation.
  const lower = lowerTriangle(covariance);
  const scores = ["first", "second", "third"].map((source) => spread({ mean: 0, sd: 1, source }));
  const [V, I, phase] = lower.map((row, i) =>
    lift((z) => means[i]! + row[0]! * z[0]! + row[1]! * z[1]! + row[2]! * z[2]!, scores),
  ) as [Spread, Spread, Spread];
  const R = combine(({ V, I, phase }) => (V / I) * Math.cos(phase), { V, I, phase }, draws);
  const X = combine(({ V, I, phase }) => (V / I) * Math.sin(phase), { V, I, phase }, draws);
  const Z = combine(({ V, I }) => V / I, { V, I }, draws);
  const together = (a: Figure, b: Figure): number => {
    const both = combine(({ a, b }) => a + b, { a, b }, draws);
    return (both.sd ** 2 - a.sd ** 2 - b.sd ** 2) / (2 * a.sd * b.sd);
  };
  const correlation = (i: number, j: number): number => covariance[i]![j]! / (u[i]! * u[j]!);
  return { u, correlation, R, X, Z, together };
});

/** JCGM 101:2008, 9.3: a mass standard in air, mg. */
export const massStandard = once(() => {
  return combine(
    ({ weight, added, air, own, reference }) =>
      (weight + added) * (1 + (air - 1.2) * (1 / own - 1 / reference)) - 100_000,
    {
      weight: spread({ mean: 100_000, sd: 0.05, source: "weight" }),
      added: spread({ mean: 1.234, sd: 0.02, source: "added" }),
      air: spread({ mean: 1.2, halfWidth: 0.1, source: "air" }),
      own: spread({ mean: 8000, halfWidth: 1000, source: "own density" }),
      reference: spread({ mean: 8000, halfWidth: 50, source: "reference density" }),
    },
    draws,
  );
});

/** JCGM 101:2008, 9.4: comparison loss in a microwave power meter, millionths: y = x₁² + x₂². */
export const comparisonLoss = (x1: number): Figure =>
  combine(
    ({ a, b }) => 1e6 * (a * a + b * b),
    {
      a: spread({ mean: x1, sd: 0.005, source: "real part" }),
      b: spread({ mean: 0, sd: 0.005, source: "imaginary part" }),
    },
    draws,
  );

/** NIST Technical Note 1900, example E13: thermal expansion of a copper bar, millionths per kelvin. */
export const expansion = once(() => {
  return combine(
    ({ l0, l1, t0, t1 }) => (1e6 * (l1 - l0)) / (l0 * (t1 - t0)),
    {
      l0: spread({ mean: 1.4999, sd: 1e-4 }),
      l1: spread({ mean: 1.5021, sd: 2e-4 }),
      t0: spread({ mean: 288.15, sd: 0.02 }),
      t1: spread({ mean: 373.1, sd: 0.05 }),
    },
    draws,
  );
});

/** NPL report DEM-ES-011, 9.2: ln X, X evenly between 0.1 and 1.1. */
export const logarithm = once(() =>
  combine(({ x }) => Math.log(x), { x: spread({ mean: 0.6, halfWidth: 0.5 }) }, draws),
);

/** Eurachem/CITAC QUAM 2012, example A2: strength of a sodium hydroxide solution, mol/L. The difference of two weighings
 * has the linearity of the balance twice. Molar mass 204.2212 g/mol, its u, the burette and the repeats from memory. */
export const weighed = once(() => {
  return combine(
    ({ full, empty }) => full - empty,
    {
      full: spread({ mean: 60.545, halfWidth: 0.00015, source: "linearity, full" }),
      empty: spread({ mean: 60.1562, halfWidth: 0.00015, source: "linearity, empty" }),
    },
    draws,
  );
});
export const hydroxide = once(() => {
  return combine(
    ({ weighed, purity, molar, burette, warm, repeat }) =>
      (1000 * weighed * purity * repeat) / (molar * (18.64 + burette + warm)),
    {
      weighed: weighed(),
      purity: spread({ mean: 1, halfWidth: 0.0005, source: "purity" }),
      molar: spread({ mean: 204.2212, sd: 0.0038, source: "molar mass" }),
      burette: spread({ mean: 0, halfWidth: 0.03, kind: "triangular", source: "burette" }),
      warm: spread({ mean: 0, halfWidth: 18.64 * 2.1e-4 * 3, kind: "normal", source: "temperature" }),
      repeat: spread({ mean: 1, sd: 0.0005, source: "repeats" }),
    },
    draws,
  );
});

/** Eurachem/CITAC QUAM 2012, example A1: a weighed standard in a flask, mg/L. */
export const flask = once(() => {
  return combine(
    ({ m, p, calibration, fill, warm }) => (1000 * m * p) / (100 + calibration + fill + warm),
    {
      m: spread({ mean: 100.28, sd: 0.05, source: "mass" }),
      p: spread({ mean: 0.9999, halfWidth: 0.0001, source: "purity" }),
      calibration: spread({ mean: 0, halfWidth: 0.1, kind: "triangular", source: "flask" }),
      fill: spread({ mean: 0, sd: 0.02, source: "filling" }),
      warm: spread({ mean: 0, halfWidth: 0.084, source: "temperature" }),
    },
    draws,
  );
});

/** JCGM 101:2008, 9.2: sums of four. */
export const sumOfFour = (parts: readonly Parameters<typeof spread>[0][]): Figure =>
  combine(
    (v) => v[0]! + v[1]! + v[2]! + v[3]!,
    parts.map((part) => spread(part)),
    draws,
  );
