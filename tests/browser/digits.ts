// Figures of many kinds as text, to be worked out in node and in a browser alike. Imports nothing of node.

import {
  combine,
  finenessFigure,
  type GrainFineness,
  grainFineness,
  readLog,
  readSieveLabel,
  type Share,
  type Spread,
  type SpreadSpec,
  spread,
  writeCsv,
  writeJson,
} from "../../lib/index.ts";
import notebook from "../../notebooks/grain-fineness.ts";
import { elevenMm, homeStack, plausibleSand, sievedShares } from "../sand/plausible-sands.ts";
import { seeded } from "../seeded.ts";

export interface LogText {
  readonly name: string;
  readonly text: string;
}

/** One line a figure, its numbers with every digit that they have. */
export function digits(logs: readonly LogText[]): string[] {
  return [...combined(), ...sieved(), ...logs.flatMap(pageOf)];
}

const shapes: { readonly [name: string]: Omit<SpreadSpec, "mean"> } = {
  normal: { sd: 0.013 },
  "t, 3 df": { sd: 0.013, df: 3 },
  "t, 2 df": { sd: 0.013, df: 2 },
  rectangular: { halfWidth: 0.02 },
  triangular: { halfWidth: 0.03, kind: "triangular" },
  arcsine: { halfWidth: 0.02, kind: "arcsine" },
  "curvilinear trapezoid": { halfWidth: 0.02, kind: "curvilinear trapezoid", edge: 0.3 },
};

type Values = { readonly a: number; readonly b: number; readonly c: number };
const functions: { readonly [name: string]: (values: Values) => number } = {
  "share lost": ({ a, b }) => (100 * (b - a)) / b,
  product: ({ a, b, c }) => a * b * c,
  power: ({ a, c }) => a ** (2 + c / 10),
  logarithm: ({ a, b, c }) => Math.log(a * b) + Math.log1p(c),
  decay: ({ a, b, c }) => b * Math.exp(-a / c),
  root: ({ a, b, c }) => Math.sqrt(a * a + b * b + c * c),
  wave: ({ a, b, c }) => Math.sin(a) + Math.cos(b) + Math.atan2(a, c),
};

function combined(): string[] {
  return Object.entries(shapes).flatMap(([shape, doubt]) =>
    Object.entries(functions).flatMap(([name, fn]) =>
      [1024, 4096].map((draws) => {
        const input = (mean: number, source: string): Spread => spread({ ...doubt, mean, source });
        const inputs = { a: input(1.37, "ruler"), b: input(2.41, "scale"), c: input(1.05, "scale") };
        const { mean, sd, low, high, shares } = combine(fn as (values: object) => number, inputs, { draws });
        return `${name}, ${shape}, ${draws}: ${[mean, sd, low, high].join(" ")} ${parts(shares)}`;
      }),
    ),
  );
}

/** Invented sands, each on a stack of its own, weighed to 0.01 g; every third on the eleven sieves. */
function sieved(): string[] {
  const random = seeded(20_261);
  return Array.from({ length: 30 }, (_, n) => {
    const { kind, passing } = plausibleSand(random);
    const openings = n % 3 === 0 ? [...elevenMm] : homeStack(random);
    const labels = [...openings.map((mm) => `${Number(mm.toPrecision(4))} mm`), "pan"];
    const held = sievedShares(passing, openings).map((mass) => Math.round(100 * mass) / 100);
    const retained = Object.fromEntries(labels.map((label, k) => [label, held[k]!]));
    const plain = grainFineness({ retained });
    const { figure } = finenessFigure({
      name: `sand ${n}`,
      portions: [
        {
          id: `sand ${n}`,
          set: "the set",
          loss: 0.4,
          held: labels.map((label, k) => {
            const { value: sieve } = readSieveLabel(label);
            const mass = spread({
              mean: held[k]!,
              halfWidth: 0.01,
              kind: "triangular",
              source: `${label} ${n}`,
            });
            return { label, mass, ...(sieve && sieve !== "pan" ? { sieve } : {}) };
          }),
        },
      ],
      pooled: { sd: 0.6, of: "grab", degreesOfFreedom: 6 },
    });
    const { mean, sd, low, high, shares } = figure;
    return `${n} ${kind}: ${tenDigits(plain)} ${[mean, sd, low, high].join(" ")} ${parts(shares)}`;
  });
}

/** A share below a millionth of a percent is the rounding of the draws about a number of another size. */
function parts(shares: readonly Share[]): string {
  const real = shares.filter(({ percent }) => percent >= 1e-6);
  return real.map(({ id, percent }) => `${id} ${percent}`).join(", ");
}

/** Plain numbers carry every bit that the engine gave; whatever writes them out rounds them to ten digits. */
function tenDigits({ gfn, possible, likely, finesPercent }: GrainFineness): string {
  const figures = { gfn, possible, likely, finesPercent };
  return JSON.stringify(figures, (_, value) =>
    typeof value === "number" ? Number(value.toPrecision(10)) : value,
  );
}

/** Everything of a page that is words and figures. */
function pageOf({ name, text }: LogText): string[] {
  const page = notebook.run(readLog(text, { name }).value!);
  return [writeJson(page), ...Object.values(writeCsv(page))].flatMap((file) => file.split("\n"));
}
