// A spread from what a founder or a script says of it.

import { hasError, invariant } from "../issue.ts";
import { normalQuantile, studentTQuantile } from "../numbers/distributions.ts";
import { contentOfCall, contentOfNumber, contentOfTerms } from "./content.ts";
import type { Quantity } from "./quantity.ts";
import { readQuantity } from "./read-quantity.ts";
import { readUnit } from "./read-unit.ts";
import { scoreSd } from "./scores.ts";
import type { Shape, Source, SourceKind } from "./source.ts";
import type { Drawing, Spread } from "./spread.ts";
import type { Unit } from "./unit.ts";

export interface SpreadSpec {
  readonly mean: number;
  /** One standard deviation; for t the scale (the standard error of the mean). One of sd and halfWidth. */
  readonly sd?: number;
  /** Half-width: the bound of the bounded shapes; the 95 % half-width for normal and t. */
  readonly halfWidth?: number;
  /**
   * The shape of the scatter; by default normal with sd, t with df, rectangular with halfWidth. Or one of the five
   * kinds of doubt, as `doubt` takes them, with the shape by default.
   */
  readonly kind?: Shape["kind"] | SourceKind;
  /** Degrees of freedom of t. */
  readonly df?: number;
  /** How inexact the half-width itself is, 0 to 1: curvilinear trapezoid. */
  readonly edge?: number;
  /** As unitNamed reads it: "g", "% of damp mass". */
  readonly unit?: Unit | string;
  /** Id of the source: spreads that name the same one move together. Default: a source of its own. */
  readonly source?: string;
  /** Which of the five kinds of doubt. Default "reading". */
  readonly doubt?: SourceKind;
  readonly says?: string;
}

/** A spread with one source and a unit. */
export interface SimpleSpread extends Spread {
  readonly unit?: Unit;
}

/**
 * A number with its ±: mean + scale × score of one source.
 * A text is read as a quantity: the ± is "surely within" (rectangular) unless (sd) or (95 %) follows.
 * Negative or non-finite widths, both sd and halfWidth, a kind that is none, an unreadable text or unit: throws.
 * Example: combine(({ m }) => m / 2, { m: spread("12.4 ± 0.1 g") }).low → 6.1525
 */
export function spread(from: string | SpreadSpec): SimpleSpread {
  if (typeof from !== "string") return spreadOfSpec(from);
  const { value, issues } = readQuantity(from);
  invariant(value && !hasError(issues), issues[0]?.message ?? `${from} cannot be read as a quantity`);
  return spreadOfQuantity(value);
}

/** The spread of a quantity as typed; spec adds source, doubt and words. */
export function spreadOfQuantity(
  quantity: Pick<Quantity, "value" | "plusMinus" | "unit">,
  spec: Pick<SpreadSpec, "source" | "doubt" | "says"> = {},
): SimpleSpread {
  const { value: mean, plusMinus, unit } = quantity;
  const known = { ...spec, mean, ...(unit ? { unit } : {}) };
  if (!plusMinus) return { ...constant(mean), ...(unit ? { unit } : {}) };
  if (plusMinus.meaning === "sd") return spreadOfSpec({ ...known, sd: plusMinus.size });
  const kind = plusMinus.meaning === "95 %" ? "normal" : "rectangular";
  return spreadOfSpec({ ...known, halfWidth: plusMinus.size, kind });
}

/** A number without doubt. */
export function constant(value: number): Spread {
  return { value, sources: [], content: contentOfNumber(value), fill: (out) => void out.fill(value) };
}

/** mean + scale × score of the source. */
export function shifted(mean: number, scale: number, source: Source): Spread {
  return linear(mean, [{ scale, source }]);
}

/** mean + Σ scale × score. An engine reads objects of one class fast, and those with getters of their own slowly. */
class Linear implements SimpleSpread {
  readonly value: number;
  readonly sources: readonly Source[];
  declare readonly unit?: Unit;
  readonly #terms: Terms;
  #content: string | null | undefined = null;

  constructor(mean: number, terms: Terms, unit?: Unit) {
    this.value = mean;
    this.#terms = terms.every(({ scale }) => scale !== 0) ? terms : terms.filter(({ scale }) => scale !== 0);
    this.sources = this.#terms.map(({ source }) => source);
    if (unit) this.unit = unit;
  }

  get content(): string | undefined {
    if (this.#content === null) this.#content = contentOfTerms(this.value, this.#terms);
    return this.#content;
  }

  fill(out: Float64Array, start: number, drawing: Drawing): void {
    out.fill(this.value);
    for (const { scale, source } of this.#terms) drawing.add(source, scale, out, start);
  }
}

type Terms = readonly { readonly scale: number; readonly source: Source }[];

/** mean + Σ scale × score. */
export function linear(mean: number, terms: Terms): Spread {
  return new Linear(mean, terms);
}

/** The spread with every source of one kind held at its middle. */
export function without(spread: Spread, kind: SourceKind): Spread {
  return movedBy(spread, (source) => source.kind !== kind, `without ${kind}`);
}

/** The spread with only those sources that `moves` takes; the rest stand at their middle. as: names that choice. */
export function movedBy(spread: Spread, moves: (source: Source) => boolean, as: string): Spread {
  const sources = spread.sources.filter(moves);
  if (sources.length === spread.sources.length) return spread;
  return sources.length === 0 ? constant(spread.value) : new MovedBy(spread, sources, moves, as);
}

class MovedBy implements Spread {
  readonly value: number;
  readonly sources: readonly Source[];
  readonly #whole: Spread;
  readonly #moves: (source: Source) => boolean;
  readonly #as: string;

  constructor(whole: Spread, sources: readonly Source[], moves: (source: Source) => boolean, as: string) {
    this.value = whole.value;
    this.sources = sources;
    this.#whole = whole;
    this.#moves = moves;
    this.#as = as;
  }

  get content(): string | undefined {
    return contentOfCall(this.#as, undefined, [this.#whole]);
  }

  fill(out: Float64Array, start: number, drawing: Drawing): void {
    const add: typeof drawing.add = (source, scale, into, from) => {
      if (this.#moves(source)) drawing.add(source, scale, into, from);
    };
    this.#whole.fill(out, start, { ...drawing, add });
  }
}

function spreadOfSpec(spec: SpreadSpec): SimpleSpread {
  const { mean, sd, halfWidth, unit } = spec;
  invariant(Number.isFinite(mean), "the mean of a spread is a finite number");
  invariant((sd === undefined) !== (halfWidth === undefined), "a spread has either sd or halfWidth");
  const width = sd ?? halfWidth!;
  invariant(Number.isFinite(width) && width >= 0, "the width of a spread is zero or more");
  const shape = shapeOf(spec);
  const source: Source = {
    kind: doubtOf(spec),
    shape,
    ...(spec.source === undefined ? {} : { id: spec.source }),
    ...(spec.says === undefined ? {} : { says: spec.says }),
  };
  const scale = width * scalePerWidth(shape, sd !== undefined);
  return new Linear(mean, [{ scale, source }], typeof unit === "string" ? readable(unit) : unit);
}

function readable(text: string): Unit {
  const { value, issues } = readUnit(text);
  invariant(value, issues[0]?.message ?? `${text} cannot be read as a unit`);
  return value;
}

const doubts: readonly string[] = ["reading", "repeat", "rig", "method", "model"] satisfies SourceKind[];

function isDoubt(kind: string | undefined): kind is SourceKind {
  return kind !== undefined && doubts.includes(kind);
}

function doubtOf({ kind, doubt }: SpreadSpec): SourceKind {
  if (!isDoubt(kind)) return doubt ?? "reading";
  invariant(
    doubt === undefined || doubt === kind,
    `a spread is of one kind of doubt, not of ${kind} and ${doubt}`,
  );
  return kind;
}

const kinds: readonly Shape["kind"][] = [
  "normal",
  "t",
  "rectangular",
  "triangular",
  "arcsine",
  "curvilinear trapezoid",
];

function shapeOf({ kind, df, edge, sd }: SpreadSpec): Shape {
  const chosen =
    (isDoubt(kind) ? undefined : kind) ??
    (df !== undefined ? "t" : sd !== undefined ? "normal" : "rectangular");
  invariant(
    kinds.includes(chosen),
    `the kind of a spread is its shape, one of ${kinds.join(", ")}, or its doubt, one of ${doubts.join(", ")}; not "${chosen}"`,
  );
  if (chosen === "t") {
    invariant(df !== undefined && df > 0, "a t spread needs df, its degrees of freedom, above 0");
    return { kind: chosen, df };
  }
  if (chosen === "curvilinear trapezoid") {
    invariant(
      edge !== undefined && edge >= 0 && edge < 1,
      "a curvilinear trapezoid needs edge, 0 to below 1",
    );
    return { kind: chosen, edge };
  }
  return { kind: chosen };
}

/** What multiplies the given width to get the scale of the score. */
function scalePerWidth(shape: Shape, isSd: boolean): number {
  if (shape.kind === "t") return isSd ? 1 : 1 / studentTQuantile(0.975, shape.df);
  if (shape.kind === "normal") return isSd ? 1 : 1 / normalQuantile(0.975);
  return isSd ? 1 / scoreSd(shape) : 1;
}
