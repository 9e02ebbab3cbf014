// The ± of cells and foot figures: worked out when it is read, by the shorter of two ways.

import { drawQuantiles, heavyTailed, summary } from "../quantity/draw-summary.ts";
import { openDrawing } from "../quantity/drawing.ts";
import { type Figure, figure, type Share } from "../quantity/figure.ts";
import { tenDigits } from "../quantity/print-number.ts";
import { drawsUsual, scoreSd } from "../quantity/scores.ts";
import type { Source } from "../quantity/source.ts";
import type { Drawing, Spread } from "../quantity/spread.ts";
import type { OneNode, Points, RowNode } from "./node.ts";
import { linesOf, type Term } from "./one-lines.ts";
import { pointsOf } from "./points.ts";
import type { Doubted } from "./row-lines.ts";
import { namedOnce, sourcesOfCell, sourcesOfOne } from "./sources-of.ts";
import { bendOf, type Ends, type Straight, straightOf } from "./straight.ts";

export interface Doubt {
  /** Exact where nothing under it has a ±. */
  cell(node: RowNode, row: number): Figure;
  one(node: OneNode): Figure;
  /** Percent of the draws in which a condition holds. */
  holdsPercent(node: RowNode | OneNode, row: number): number;
}

/** From this many sources on, shares are taken to the first order instead of drawing once for each. */
const manySources = 24;

interface Way {
  readonly value: number;
  readonly nameOf: (source: Source) => string;
  straight(): Straight | undefined;
  /** All draws, in an array of its own. */
  draws(): Float64Array;
  terms(): ReadonlyMap<string, Term> | undefined;
  sources(): Source[];
  fill(out: Float64Array, start: number, drawing: Drawing): void;
}

export function doubtOf(doubted: Doubted): Doubt {
  const lines = linesOf(doubted);
  let points: Points | undefined;
  const drawn = (): Points => {
    points ??= pointsOf(openDrawing(), 0, drawsUsual);
    return points;
  };
  const copy = (values: Float64Array | number): Float64Array =>
    typeof values === "number" ? Float64Array.of(values) : values.slice();

  function cellWay(node: RowNode, row: number): Way {
    return {
      value: node.values[row]!,
      nameOf: doubted.nameOf,
      straight() {
        if (!node.smooth || node.far) return undefined;
        const line = lines.cell(node, row);
        const bend = line && bendOf(line.expansion, line.sources);
        if (!line || !bend) return undefined;
        const { value, first, rest } = line.expansion;
        return straightOf(value, { scales: first, sources: line.sources }, bend, rest);
      },
      draws: () => copy(drawn().row(node, row)),
      terms() {
        const line = lines.cell(node, row);
        return line && lines.termsOf(line);
      },
      sources: () => sourcesOfCell(node, row),
      fill: (out, start, plan) => fillFrom(pointsOf(plan, start, out.length).row(node, row), out),
    };
  }

  function oneWay(node: OneNode): Way {
    return {
      value: node.value,
      nameOf: doubted.nameOf,
      straight() {
        const line = lines.one(node);
        if (!line.straight || !(line.variance > 0)) return undefined;
        const terms = [...line.terms.values()];
        const w = (name: string): number => {
          const term = line.terms.get(name);
          return term ? term.scale * scoreSd(term.source.shape) ** 2 : 0;
        };
        const bend = { shift: line.shift, along: line.bend(w) / line.variance };
        const first = { scales: terms.map(({ scale }) => scale), sources: terms.map(({ source }) => source) };
        return straightOf(node.value, first, bend, line.rest);
      },
      draws: () => copy(drawn().one(node)),
      terms: () => lines.one(node).terms,
      sources: () => sourcesOfOne(node),
      fill: (out, start, plan) => fillFrom(pointsOf(plan, start, out.length).one(node), out),
    };
  }

  return {
    cell: (node, row) => (node.doubtful ? figureBy(cellWay(node, row)) : exact(node.values[row]!)),
    one: (node) => (node.doubtful ? figureBy(oneWay(node)) : exact(node.value)),
    holdsPercent(node, row) {
      const draws = (node.per === "row" ? cellWay(node, row) : oneWay(node)).draws();
      return (100 * draws.reduce((all, holds) => all + holds, 0)) / draws.length;
    },
  };
}

function exact(value: number): Figure {
  return figure({ value, sources: [], fill: (out) => void out.fill(value) });
}

function fillFrom(values: Float64Array | number, out: Float64Array): void {
  if (typeof values === "number") out.fill(values);
  else out.set(values);
}

function figureBy(way: Way): Figure {
  const sources = once(() => way.sources());
  const ends = once((): Ends & Partial<Straight> => {
    const straight = way.straight();
    if (!straight) return summary(way.draws(), heavyTailed(sources()));
    const { mean, sd, low, high, quantile } = straight;
    return { mean: tenDigits(mean), sd: tenDigits(sd), low: tenDigits(low), high: tenDigits(high), quantile };
  });
  const shares = once(() => sharesBy(way, sources(), ends()));
  return {
    value: way.value,
    get sources() {
      return sources();
    },
    fill: (out, start, plan) => way.fill(out, start, plan),
    get mean() {
      return ends().mean;
    },
    get sd() {
      return ends().sd;
    },
    get low() {
      return ends().low;
    },
    get high() {
      return ends().high;
    },
    get shares() {
      return shares().shares;
    },
    get actTogether() {
      return shares().actTogether;
    },
    quantile(p) {
      if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p is 0 to 1, not ${p}`);
      const straight = ends().quantile?.(p);
      return tenDigits(
        straight === undefined || Number.isNaN(straight) ? drawQuantiles(way.draws(), [p])[0]! : straight,
      );
    },
  };
}

/** By the first order where the figure is straight or has very many sources; else by drawing one source at a time. */
function sharesBy(
  way: Way,
  sources: readonly Source[],
  ends: Ends & Partial<Straight>,
): { readonly shares: readonly Share[]; readonly actTogether: boolean } {
  const named = namedOnce(sources, way.nameOf);
  const terms = ends.quantile || named.size >= manySources ? way.terms() : undefined;
  if (!terms || heavyTailed(sources)) {
    const spread: Spread = {
      value: way.value,
      sources,
      fill: (out, start, plan) => way.fill(out, start, plan),
    };
    return figure(spread);
  }
  const whole = ends.sd ** 2;
  const byName = new Map<string, number>();
  for (const [name, { source, scale }] of terms) byName.set(name, (scale * scoreSd(source.shape)) ** 2);
  const shares = [...named].map(([name, source]): Share => {
    const percent = whole === 0 ? 0 : (100 * (byName.get(name) ?? 0)) / whole;
    return { id: source.id ?? "", source, percent: percent < 1e-6 ? 0 : tenDigits(percent) };
  });
  shares.sort((a, b) => b.percent - a.percent);
  const total = shares.reduce((all, { percent }) => all + percent, 0);
  return { shares, actTogether: whole > 0 && Math.abs(total - 100) > 10 };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
