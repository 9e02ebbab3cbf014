// A figure: a spread, and what its draws say. Worked out when first read, then kept.

import { drawQuantiles, heavyTailed, summary } from "./draw-summary.ts";
import { drawing, drawsOf, isWhole } from "./drawing.ts";
import { percentsOf, type Share, type Shared, sharesOf } from "./figure-shares.ts";
import { keptColumn } from "./kept-column.ts";
import { keptOr } from "./kept-said.ts";
import { tenDigits } from "./print-number.ts";
import { drawsUsual } from "./scores.ts";
import type { Source } from "./source.ts";
import type { Drawing, Spread } from "./spread.ts";

/**
 * What comes out of combine and figure: a spread with its mean, its sd and its 95 % interval. All but value and sources
 * are worked out when they are first read: read them by name, or take them out, const { low, high } = figure. A copy by
 * { ...figure } has none of them, and structuredClone throws; toJSON() gives a plain object, and so JSON.stringify and
 * console.log show all.
 * @example JSON.parse(JSON.stringify(combine(([a]) => 2 * a!, [spread("12 ± 1 g")]))).value // 24
 */
export interface Figure extends Spread {
  readonly mean: number;
  /** Standard deviation of the draws; NaN where a source has two or fewer degrees of freedom. */
  readonly sd: number;
  /** Ends of the 95 % interval: the 2.5 % and 97.5 % quantiles of the draws. */
  readonly low: number;
  readonly high: number;
  /** Largest first. They need not add to 100: see actTogether. */
  readonly shares: readonly Share[];
  /** True when the shares miss the whole by more than a tenth: the sources act together. */
  readonly actTogether: boolean;
  /** Any quantile of the draws, p from 0 to 1. */
  quantile(p: number): number;
  /** A plain copy of all the numbers: value, mean, sd, low, high, shares, actTogether. */
  toJSON(): FigureNumbers;
}

export type FigureNumbers = Pick<Figure, "value" | "mean" | "sd" | "low" | "high" | "shares" | "actTogether">;

/** A plain copy of what a figure says, worked out where it was not yet. */
export function numbersOf(figure: FigureNumbers): FigureNumbers {
  const { value, mean, sd, low, high, shares, actTogether } = figure;
  return { value, mean, sd, low, high, shares, actTogether };
}

export interface FigureOptions {
  readonly draws?: number;
  /** All draws of the spread, to be reordered; for one whose draws come with those of others. */
  readonly drawn?: () => Float64Array;
  /** By which inputs a source came in. */
  readonly inputsWith?: (source: Source) => readonly string[];
}

/**
 * The figure of a spread. draws: a power of two, 4,096 unless asked for.
 * A spread without sources is exact: sd 0, low and high its value.
 * @example figure(spread("12.4 ± 0.1 g")).high // 12.495
 */
export function figure(spread: Spread, options: FigureOptions = {}): Figure {
  return new DrawnFigure(spread, options);
}

class DrawnFigure implements Figure, Held {
  readonly value: number;
  readonly sources: readonly Source[];
  readonly #spread: Spread;
  readonly #count: number | undefined;
  readonly #drawnElsewhere: (() => Float64Array) | undefined;
  readonly #inputsWith: FigureOptions["inputsWith"];
  /** All of it in order, while it is held. */
  #column: Float64Array | undefined;
  /** In another order than drawn; kept once a quantile was asked for, since more will be. */
  #unordered: Float64Array | undefined;
  #key: string | null | undefined = null;
  #whole: Summary | undefined;
  #shares: Shared | undefined;

  /** A member that may be taken out by its name alone. */
  readonly quantile = (p: number): number => {
    if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p is 0 to 1, not ${p}`);
    return keptOr(this.#keyed(), `quantile ${p}`, () => {
      return tenDigits(drawQuantiles(this.#anyOrder(), [p])[0]!);
    });
  };

  constructor(spread: Spread, { draws, drawn, inputsWith }: FigureOptions) {
    this.value = spread.value;
    this.sources = spread.sources;
    this.#spread = spread;
    this.#count = draws;
    this.#drawnElsewhere = drawn;
    this.#inputsWith = inputsWith;
  }

  get content(): string | undefined {
    return this.#spread.content;
  }

  fill(out: Float64Array, start: number, plan: Drawing): void {
    const named = this.sources.length > 0 && this.sources.every(({ id }) => id !== undefined);
    if (named && plan.count === (this.#count ?? drawsUsual) && isWhole(plan))
      out.set(this.#inOrder().subarray(start, start + out.length));
    else this.#spread.fill(out, start, plan);
  }

  get mean(): number {
    return this.#summary().mean;
  }

  get sd(): number {
    return this.#summary().sd;
  }

  get low(): number {
    return this.#summary().low;
  }

  get high(): number {
    return this.#summary().high;
  }

  get shares(): readonly Share[] {
    return this.#shared().shares;
  }

  get actTogether(): boolean {
    return this.#shared().actTogether;
  }

  toJSON(): FigureNumbers {
    return numbersOf(this);
  }

  /** What console.log prints under Node, which would not see the getters: a sign that all may use, and no import. */
  [Symbol.for("nodejs.util.inspect.custom")](): FigureNumbers {
    return this.toJSON();
  }

  letGo(): void {
    this.#column = undefined;
  }

  #plan(): { count?: number } {
    return this.#count === undefined ? {} : { count: this.#count };
  }

  #draw(): Float64Array {
    if (this.sources.length === 0) return Float64Array.of(this.value);
    if (this.#column) return this.#column.slice();
    return this.#drawnElsewhere?.() ?? drawsOf(this.#spread, drawing(this.sources, this.#plan()));
  }

  /** Whoever asks for a quantile prints the ends as well: one drawing tells both. */
  #anyOrder(): Float64Array {
    if (this.#unordered) return this.#unordered;
    const draws = this.#draw();
    this.#summary(draws);
    this.#unordered = draws;
    return draws;
  }

  /** From run to run where the content is known. */
  #inOrder(): Float64Array {
    const { content } = this.#spread;
    if (content !== undefined)
      return keptColumn(`${this.#count ?? drawsUsual} draws of ${content}`, () => this.#draw());
    if (!this.#column) {
      this.#column = this.#draw();
      hold(this);
    }
    return this.#column;
  }

  #keyed(): string | undefined {
    if (this.#key === null) this.#key = keyOf(this.#spread, this.#count);
    return this.#key;
  }

  /** draws: of this figure in their order, where somebody has just drawn them; they are in another order afterwards. */
  #summary(draws?: Float64Array): Summary {
    this.#whole ??= keptOr(this.#keyed(), "", () =>
      summary(draws ?? this.#draw(), heavyTailed(this.sources)),
    );
    return this.#whole;
  }

  #shared(): Shared {
    if (!this.#shares) {
      const percents = keptOr(this.#keyed(), "shares", () =>
        percentsOf(this.#spread, this.#plan(), this.#summary()),
      );
      this.#shares = sharesOf(this.#spread, percents, this.#inputsWith);
    }
    return this.#shares;
  }
}

type Summary = ReturnType<typeof summary>;

/** A figure whose draws are held in their order once it is part of another, since it will be of more. */
interface Held {
  letGo(): void;
}

/** Few at a time: of thousands of figures each would be large. */
const holders: Held[] = [];
const mostHeld = 64;
let oldest = 0;

function hold(holder: Held): void {
  holders[oldest]?.letGo();
  holders[oldest] = holder;
  oldest = (oldest + 1) % mostHeld;
}

/** Undefined for an exact number, and where nobody can tell what the draws hang on. */
function keyOf({ sources, content }: Spread, count = drawsUsual): string | undefined {
  return sources.length === 0 || content === undefined ? undefined : `${count} ${content}`;
}
