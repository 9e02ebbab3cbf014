// Worked examples of doubt (GUM, its Supplement 1, Eurachem) laid out as sheets: the figures that combine() gives in
// tests/reference/gum.test.ts and tests/quantity/combine.test.ts, where each is quoted with its source.

import { expect, test } from "vitest";
import {
  type CellSpec,
  type Figure,
  figure,
  type SheetSpec,
  type Spread,
  sheet,
  spread,
} from "../../lib/index.ts";
import { lowerTriangle } from "../../lib/numbers/cholesky.ts";
import { mean } from "../../lib/numbers/summary.ts";
import { linear } from "../../lib/quantity/spread-of.ts";

function near(ours: number, printed: number, tolerance: number): void {
  expect(Math.abs(ours - printed), `${ours} against ${printed}`).toBeLessThan(tolerance);
}

/** One row, one formula a name: as the page shows it, and the same figure by 65,536 draws. */
function worked(formulas: { readonly [name: string]: string }, row: { readonly [name: string]: CellSpec }) {
  const typed = Object.fromEntries(Object.keys(row).map((name) => [name, "number"]));
  const asked = Object.fromEntries(Object.entries(formulas).map(([name, formula]) => [name, `= ${formula}`]));
  const spec: SheetSpec = { columns: { ...typed, ...asked }, rows: [row] };
  const made = sheet(spec);
  expect(made.issues).toEqual([]);
  return (name: string): { shown: Figure; drawn: Figure } => {
    const cell = made.cell(0, name);
    if (cell.kind !== "figure") throw new Error(`no figure in ${name}`);
    const { value, sources } = cell.figure;
    const fill: Spread["fill"] = (...given) => cell.figure.fill(...given);
    return { shown: cell.figure, drawn: figure({ value, sources, fill }, { draws: 65_536 }) };
  };
}

// GUM H.1, lengths in nm.
test("GUM H.1: 838 nm past 50 mm, u 34 with the second-order terms", () => {
  const { shown, drawn } = worked(
    {
      past: "standard + difference - standard * (unlike * (warm + swing) + expansion * gradient) - 50000000",
    },
    {
      standard: spread({ mean: 50_000_623, sd: 25, source: "standard" }),
      difference: spread({ mean: 215, sd: Math.hypot(5.8, 3.9, 6.7), source: "difference" }),
      expansion: spread({ mean: 11.5e-6, halfWidth: 2e-6, source: "expansion" }),
      warm: spread({ mean: -0.1, sd: 0.2, source: "warm" }),
      swing: spread({ mean: 0, halfWidth: 0.5, kind: "arcsine", source: "swing" }),
      unlike: spread({ mean: 0, halfWidth: 1e-6, source: "unlike" }),
      gradient: spread({ mean: 0, halfWidth: 0.05, source: "gradient" }),
    },
  )("past");
  near(drawn.mean, 838, 0.5);
  near(drawn.sd, 33.807, 0.25);
  // 4,096 draws scatter an sd by about 1 %.
  near(shown.sd, 33.807, 0.7);
  const part = (id: string): number =>
    shown.sd * Math.sqrt((shown.shares.find((share) => share.id === id)?.percent ?? 0) / 100);
  near(part("standard"), 25, 0.3);
  near(part("gradient"), 16.6, 0.2);
});

// GUM H.2: voltage, current and phase that move together; the phase enters through its cosine and sine, which a sheet
// takes from a script, so that each is a spread of the same three sources.
test("GUM H.2: resistance, reactance and impedance from readings that move together", () => {
  const readings = [
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ];
  const means = readings.map((list) => mean(list));
  const covariance = readings.map((a, i) =>
    readings.map((b, j) => a.reduce((all, v, k) => all + (v - means[i]!) * (b[k]! - means[j]!), 0) / 20),
  );
  const lower = lowerTriangle(covariance);
  const sources = ["first", "second", "third"].map(
    (id) => ({ id, kind: "repeat", shape: { kind: "normal" } }) as const,
  );
  const [V, I, phase] = lower.map((row, i) =>
    linear(
      means[i]!,
      sources.map((source, k) => ({ scale: row[k]!, source })),
    ),
  ) as [Spread, Spread, Spread];
  const turned = (by: (angle: number) => number): Spread => ({
    value: by(phase.value),
    sources: phase.sources,
    fill(out, start, drawing) {
      phase.fill(out, start, drawing);
      for (let j = 0; j < out.length; j++) out[j] = by(out[j]!);
    },
  });
  const of = worked(
    { R: "V / I * cosine", X: "V / I * sine", Z: "sqrt(R^2 + X^2)" },
    { V, I, cosine: turned(Math.cos), sine: turned(Math.sin) },
  );
  for (const [name, value, sd] of [
    ["R", 127.732, 0.071],
    ["X", 219.847, 0.295],
    ["Z", 254.26, 0.236],
  ] as const) {
    near(of(name).shown.mean, value, 0.001);
    near(of(name).shown.sd, sd, 0.0015);
    near(of(name).drawn.sd, sd, 0.0015);
  }
});

// JCGM 101:2008, 9.2.2 to 9.2.4; the interval of 9.2.4 from memory.
test("Supplement 1, 9.2: sums of four: 3.92, 3.88 and 17.0", () => {
  const sum = (parts: readonly Spread[]): Figure => {
    const [a, b, c, d] = parts;
    return worked({ y: "a + b + c + d" }, { a, b, c, d })("y").shown;
  };
  const even = (u: number): Spread => spread({ mean: 0, halfWidth: u * Math.sqrt(3) });
  const normal = sum([1, 2, 3, 4].map(() => spread({ mean: 0, sd: 1 })));
  near(normal.sd, 2, 1e-6);
  near(normal.high, 3.92, 0.005);
  near(sum([1, 1, 1, 1].map(even)).high, 3.88, 0.005);
  near(sum([1, 1, 1, 10].map(even)).low, -17, 0.05);
});

// JCGM 101:2008, 9.3; interval by 10⁷ plain draws.
test("Supplement 1, 9.3: 1.234 mg, u 0.0755, 95 % from 1.084 to 1.383, where first order says 0.0539", () => {
  const { shown, drawn } = worked(
    { off: "(weight + added) * (1 + (air - 1.2) * (1 / own - 1 / reference)) - 100000" },
    {
      weight: spread({ mean: 100_000, sd: 0.05, source: "weight" }),
      added: spread({ mean: 1.234, sd: 0.02, source: "added" }),
      air: spread({ mean: 1.2, halfWidth: 0.1, source: "air" }),
      own: spread({ mean: 8000, halfWidth: 1000, source: "own density" }),
      reference: spread({ mean: 8000, halfWidth: 50, source: "reference density" }),
    },
  )("off");
  near(drawn.sd, 0.0755, 0.0005);
  near(drawn.low, 1.084, 0.0025);
  near(drawn.high, 1.3835, 0.0025);
  // Bent: it was drawn, not taken to the first order.
  near(shown.sd, 0.0755, 0.0025);
  expect(shown.actTogether).toBe(true);
});

// JCGM 101:2008, 9.4 (from memory; exact: mean x² + 2u², variance 4x²u² + 4u⁴).
test("Supplement 1, 9.4: comparison loss at 0, 0.010 and 0.050, where first order gives 0 at 0", () => {
  for (const [x, mean, sd, tolerance] of [
    [0, 50, 50, 0.5],
    [0.01, 150, 112, 1],
    [0.05, 2550, 502.5, 3],
  ] as const) {
    const { shown, drawn } = worked(
      { loss: "1000000 * (a * a + b * b)" },
      {
        a: spread({ mean: x, sd: 0.005, source: "real part" }),
        b: spread({ mean: 0, sd: 0.005, source: "imaginary part" }),
      },
    )("loss");
    near(drawn.mean, mean, tolerance);
    near(drawn.sd, sd, tolerance);
    near(shown.mean, mean, 0.02 * mean);
    near(shown.sd, sd, 0.03 * sd);
  }
});

// Eurachem/CITAC QUAM 2012, example A1.
test("Eurachem A1: 1002.70 mg/L, u 0.8352", () => {
  const { shown } = worked(
    { c: "1000 * m * p / (100 + calibration + fill_ + warm)" },
    {
      m: spread({ mean: 100.28, sd: 0.05, source: "mass" }),
      p: spread({ mean: 0.9999, halfWidth: 0.0001, source: "purity" }),
      calibration: spread({ mean: 0, halfWidth: 0.1, kind: "triangular", source: "flask" }),
      fill_: spread({ mean: 0, sd: 0.02, source: "filling" }),
      warm: spread({ mean: 0, halfWidth: 0.084, source: "temperature" }),
    },
  )("c");
  near(shown.mean, 1002.7, 0.005);
  near(shown.sd, 0.8352, 0.0005);
  expect(shown.shares.map(({ id }) => id).slice(0, 3)).toEqual(["mass", "temperature", "flask"]);
});

// Eurachem/CITAC QUAM 2012, example A2; molar mass 204.2212 g/mol, its u, the burette and the repeats from memory.
test("Eurachem A2: 0.102136 mol/L, u 0.0001005; linearity entering twice", () => {
  const of = worked(
    {
      weighed: "full - empty",
      strength: "1000 * weighed * purity * repeats / (molar * (18.64 + burette + warm))",
    },
    {
      full: "60.545 ± 0.00015",
      empty: "60.1562 ± 0.00015",
      purity: spread({ mean: 1, halfWidth: 0.0005, source: "purity" }),
      molar: spread({ mean: 204.2212, sd: 0.0038, source: "molar mass" }),
      burette: spread({ mean: 0, halfWidth: 0.03, kind: "triangular", source: "burette" }),
      warm: spread({ mean: 0, halfWidth: 18.64 * 2.1e-4 * 3, kind: "normal", source: "temperature" }),
      repeats: spread({ mean: 1, sd: 0.0005, source: "repeats" }),
    },
  );
  near(of("weighed").shown.sd, (0.00015 * Math.SQRT2) / Math.sqrt(3), 1e-9);
  near(of("strength").shown.mean, 0.102136, 1e-6);
  near(of("strength").shown.sd, 0.0001005, 2e-7);
});
