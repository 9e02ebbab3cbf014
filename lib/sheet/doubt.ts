// The ± of cells and foot figures: worked out when it is read, by the shorter of two ways.

import { drawQuantiles, heavyTailed, summary } from "../quantity/draw-summary.ts";
import { openDrawing } from "../quantity/drawing.ts";
import { type Figure, type FigureNumbers, figure, numbersOf } from "../quantity/figure.ts";
import type { Share } from "../quantity/figure-shares.ts";
import { keptOr } from "../quantity/kept-said.ts";
import { tenDigits } from "../quantity/print-number.ts";
import { drawsUsual, scoreSd } from "../quantity/scores.ts";
import type { Source } from "../quantity/source.ts";
import type { Drawing, Spread } from "../quantity/spread.ts";
import { contentOfNode } from "./content-of-node.ts";
import { lostDraws, mostLost, numbersAmong } from "./lost-draws.ts";
import type { OneNode, Points, RowNode } from "./node.ts";
import { linesOf, type Term } from "./one-lines.ts";
import { pointsOf } from "./points.ts";
import type { Doubted } from "./row-lines.ts";
import type { LostDraws, SheetFigure } from "./sheet-types.ts";
import { anySource, namedOnce, sourcesOfCell, sourcesOfOne } from "./sources-of.ts";
import { bendOf, type Ends, type Straight, straightOf, straightQuantile } from "./straight.ts";

export interface Doubt {
  /** Exact where nothing under it has a ±. */
  cell(node: RowNode, row: number): SheetFigure;
  one(node: OneNode): SheetFigure;
  /** Percent of the draws in which a condition holds, of those in which it can be told. */
  holdsPercent(node: RowNode | OneNode, row: number): number;
}

/** From this many sources on, shares are taken to the first order instead of drawing once for each. */
const manySources = 24;

/** How one figure is worked out. */
interface Way {
  readonly value: number;
  straight(): Straight | undefined;
  /** All draws, in an array of its own. */
  draws(): Float64Array;
  /** Of those draws. */
  lost(draws: Float64Array): LostDraws | undefined;
  terms(): ReadonlyMap<string, Term> | undefined;
  sources(): Source[];
  /** True where a source has no standard deviation. */
  heavy(): boolean;
  points(points: Points): Float64Array | number;
  /** All that the draws hang on; undefined where nobody can tell. */
  content(): string | undefined;
  nameOf(source: Source): string;
}

export function doubtOf(doubted: Doubted): Doubt {
  const lines = linesOf(doubted);
  const heavyOnes = new Map<OneNode, boolean>();
  let points: Points | undefined;
  const drawn = (): Points => {
    points ??= pointsOf(openDrawing(), 0, drawsUsual);
    return points;
  };

  class CellWay implements Way {
    declare readonly value: number;
    declare private readonly node: RowNode;
    declare private readonly row: number;
    constructor(node: RowNode, row: number) {
      this.value = node.values[row]!;
      this.node = node;
      this.row = row;
    }
    straight(): Straight | undefined {
      if (!this.node.smooth || this.node.far) return undefined;
      const line = lines.cell(this.node, this.row);
      const bend = line && bendOf(line.expansion, line.sources);
      if (!line || !bend) return undefined;
      const { value, first, rest } = line.expansion;
      return straightOf(value, { scales: first, sources: line.sources }, bend, rest);
    }
    draws(): Float64Array {
      return copied(this.points(drawn()));
    }
    lost(draws: Float64Array): LostDraws | undefined {
      return lostDraws(this.node, this.row, draws, drawn());
    }
    terms(): ReadonlyMap<string, Term> | undefined {
      const line = lines.cell(this.node, this.row);
      return line && lines.termsOf(line);
    }
    sources(): Source[] {
      return sourcesOfCell(this.node, this.row);
    }
    heavy(): boolean {
      return anySource(this.node, this.row, heavyTailed, heavyOnes);
    }
    points(points: Points): Float64Array | number {
      return points.row(this.node, this.row);
    }
    content(): string | undefined {
      return contentOfNode(this.node, this.row);
    }
    nameOf(source: Source): string {
      return doubted.nameOf(source);
    }
  }

  class OneWay implements Way {
    declare readonly value: number;
    declare private readonly node: OneNode;
    constructor(node: OneNode) {
      this.value = node.value;
      this.node = node;
    }
    straight(): Straight | undefined {
      const line = lines.one(this.node);
      if (!line.straight || !(line.variance > 0)) return undefined;
      const terms = [...line.terms.values()];
      const w = (name: string): number => {
        const term = line.terms.get(name);
        return term ? term.scale * scoreSd(term.source.shape) ** 2 : 0;
      };
      const bend = { shift: line.shift, along: line.bend(w) / line.variance };
      const first = { scales: terms.map(({ scale }) => scale), sources: terms.map(({ source }) => source) };
      return straightOf(this.value, first, bend, line.rest);
    }
    draws(): Float64Array {
      return copied(this.points(drawn()));
    }
    lost(draws: Float64Array): LostDraws | undefined {
      return lostDraws(this.node, 0, draws, drawn());
    }
    terms(): ReadonlyMap<string, Term> {
      return lines.one(this.node).terms;
    }
    sources(): Source[] {
      return sourcesOfOne(this.node);
    }
    heavy(): boolean {
      return anySource(this.node, 0, heavyTailed, heavyOnes);
    }
    points(points: Points): Float64Array | number {
      return points.one(this.node);
    }
    content(): string | undefined {
      return contentOfNode(this.node, 0);
    }
    nameOf(source: Source): string {
      return doubted.nameOf(source);
    }
  }

  return {
    cell: (node, row) => (node.doubtful ? new DrawnFigure(new CellWay(node, row)) : exact(node.values[row]!)),
    one: (node) => (node.doubtful ? new DrawnFigure(new OneWay(node)) : exact(node.value)),
    holdsPercent(node, row) {
      const draws = numbersAmong((node.per === "row" ? new CellWay(node, row) : new OneWay(node)).draws());
      return (100 * draws.reduce((all, holds) => all + holds, 0)) / draws.length;
    },
  };
}

function copied(values: Float64Array | number): Float64Array {
  return typeof values === "number" ? Float64Array.of(values) : values.slice();
}

function exact(value: number): SheetFigure {
  return figure({ value, sources: [], fill: (out) => void out.fill(value) });
}

function endsOf(draws: Float64Array, lost: LostDraws | undefined, heavy: boolean): Ends {
  if (!lost) return summary(draws, heavy);
  const { NaN: none } = Number;
  if (lost.percent > mostLost) return { mean: none, sd: none, low: none, high: none };
  return summary(numbersAmong(draws), heavy);
}

/** A class for speed alone: a sheet may show thousands of these. What is printed are members of its own, so that it can be copied. */
class DrawnFigure implements SheetFigure {
  declare readonly value: number;
  declare readonly low: number;
  declare readonly high: number;
  declare readonly lost: LostDraws | undefined;
  declare private readonly way: Way;
  declare private readonly line: Straight | undefined;
  declare private readonly ends: Ends;
  declare private kept: { sources?: Source[]; shares?: Pick<Figure, "shares" | "actTogether"> } | undefined;

  constructor(way: Way) {
    this.value = way.value;
    this.way = way;
    this.line = way.straight();
    const drawn = this.line ? undefined : this.drawnEnds();
    this.lost = drawn?.lost;
    this.ends = this.line ?? drawn!.ends;
    this.low = tenDigits(this.ends.low);
    this.high = tenDigits(this.ends.high);
  }

  private drawnEnds(): { readonly ends: Ends; readonly lost: LostDraws | undefined } {
    const { way } = this;
    return keptOr(way.content(), "ends in a sheet", () => {
      const draws = way.draws();
      const lost = way.lost(draws);
      return { lost, ends: endsOf(draws, lost, way.heavy()) };
    });
  }

  get content(): string | undefined {
    return this.way.content();
  }

  get mean(): number {
    return tenDigits(this.ends.mean);
  }

  get sd(): number {
    return tenDigits(this.ends.sd);
  }

  get sources(): readonly Source[] {
    this.kept ??= {};
    this.kept.sources ??= this.way.sources();
    return this.kept.sources;
  }

  get shares(): readonly Share[] {
    return this.parts().shares;
  }

  get actTogether(): boolean {
    return this.parts().actTogether;
  }

  fill(out: Float64Array, start: number, drawing: Drawing): void {
    const values = this.way.points(pointsOf(drawing, start, out.length));
    if (typeof values === "number") out.fill(values);
    else out.set(values);
  }

  quantile(p: number): number {
    if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p is 0 to 1, not ${p}`);
    const straight = this.line && p > 0 && p < 1 ? straightQuantile(this.line, p) : undefined;
    if (this.lost && this.lost.percent > mostLost) return Number.NaN;
    if (straight !== undefined) return tenDigits(straight);
    return keptOr(this.way.content(), `quantile ${p} in a sheet`, () =>
      tenDigits(drawQuantiles(numbersAmong(this.way.draws()), [p])[0]!),
    );
  }

  toJSON(): FigureNumbers {
    return numbersOf(this);
  }

  /** As for the figures of combine. */
  [Symbol.for("nodejs.util.inspect.custom")](): FigureNumbers {
    return this.toJSON();
  }

  private parts(): Pick<Figure, "shares" | "actTogether"> {
    this.kept ??= {};
    this.kept.shares ??= this.sharesOf();
    return this.kept.shares;
  }

  /** By the first order where the figure is straight or has very many sources; else by drawing one source at a time. */
  private sharesOf(): Pick<Figure, "shares" | "actTogether"> {
    const { sources, way } = this;
    const named = namedOnce(sources, (source) => way.nameOf(source));
    const terms = this.line || this.lost || named.size >= manySources ? way.terms() : undefined;
    if (this.lost) {
      // One source at a time would lose other draws than all together do.
      const straight = terms && [...terms.values()].every(({ scale }) => Number.isFinite(scale));
      if (!straight || !Number.isFinite(this.sd)) return { shares: [], actTogether: false };
    }
    if (!terms || heavyTailed(sources)) {
      const fill: Spread["fill"] = (out, start, plan) => this.fill(out, start, plan);
      return figure({ value: this.value, sources, content: this.content, fill });
    }
    const whole = this.sd ** 2;
    const shares = [...named].map(([name, source]): Share => {
      const scale = terms.get(name)?.scale ?? 0;
      const percent = whole === 0 ? 0 : (100 * (scale * scoreSd(source.shape)) ** 2) / whole;
      return { id: source.id ?? "", source, percent: percent < 1e-6 ? 0 : tenDigits(percent) };
    });
    shares.sort((a, b) => b.percent - a.percent);
    const total = shares.reduce((all, { percent }) => all + percent, 0);
    return { shares, actTogether: whole > 0 && Math.abs(total - 100) > 10 };
  }
}
