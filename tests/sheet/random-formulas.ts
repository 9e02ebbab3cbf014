// Random formulas over doubtful columns, and how far the interval that was not drawn is from one of very many draws.

import { type Cell, figure, type Spread, sheet, spread } from "../../lib/index.ts";
import type { Seeded } from "../seeded.ts";

/** Of a random formula in a, b, c, d and a shared bias: sums, products, quotients, powers, roots, logarithms. */
export function randomFormula(random: Seeded, depth = 3): string {
  if (depth <= 0) return random.pick(["a", "b", "c", "d", "2", "0.5"]);
  const part = (): string => randomFormula(random, depth - random.integer(1, 2));
  switch (random.integer(0, 7)) {
    case 0:
    case 1:
      return `(${part()} + ${part()})`;
    case 2:
      return `(${part()} - ${part()})`;
    case 3:
      return `(${part()} * ${part()})`;
    case 4:
      return `(${part()} / ${part()})`;
    case 5:
      return `sqrt(${part()})`;
    case 6:
      return `(${part()})^${random.pick([2, 3])}`;
    default:
      return `ln(${part()})`;
  }
}

/** Four figures with a ± of a random shape and a size from 0.01 to 10 percent; two share a bias. */
function inputs(random: Seeded): { readonly [name: string]: Spread } {
  const kinds = ["rectangular", "triangular", "normal"] as const;
  const of = (name: string): Spread => {
    const mean = random.uniform(1, 20);
    const halfWidth = mean * 10 ** random.uniform(-4, -1);
    return spread({ mean, halfWidth, kind: random.pick(kinds), source: name });
  };
  const bias = spread({ mean: 0, halfWidth: 10 ** random.uniform(-3, -1), source: "bias", doubt: "rig" });
  const biased = (own: Spread): Spread => ({
    value: own.value,
    sources: [...own.sources, ...bias.sources],
    fill(out, start, drawing) {
      own.fill(out, start, drawing);
      for (const source of bias.sources) drawing.add(source, 0.01, out, start);
    },
  });
  return { a: biased(of("a")), b: biased(of("b")), c: of("c"), d: of("d") };
}

export interface Miss {
  readonly formula: string;
  /** Largest of the two ends, in percent of the half-width. */
  readonly percent: number;
}

/** Undefined where the cell has no figure, no ±, or was drawn. */
export function missOf(random: Seeded, draws: number): Miss | undefined {
  const formula = randomFormula(random);
  const row = inputs(random);
  const columns = { a: "number", b: "number", c: "number", d: "number", y: `= ${formula}` };
  const cell: Cell = sheet({ columns, rows: [row] }).cell(0, "y");
  if (cell.kind !== "figure" || cell.figure.sources.length === 0) return undefined;
  const { value, low, high, sources } = cell.figure;
  const plain = figure(cell.figure);
  if (!(high > low) || (plain.low === low && plain.high === high)) return undefined;
  const many = figure({ value, sources, fill: (...given) => cell.figure.fill(...given) }, { draws });
  const half = (many.high - many.low) / 2;
  return { formula, percent: (100 * Math.max(Math.abs(low - many.low), Math.abs(high - many.high))) / half };
}
