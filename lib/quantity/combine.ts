// A plain function lifted over draws: what comes out has a ± of its own, and knows where it is from.

import { invariant } from "../issue.ts";
import { borrowed, giveBack } from "./columns.ts";
import { contentOfCall } from "./content.ts";
import { type Figure, type FigureOptions, figure } from "./figure.ts";
import { recordOf } from "./named-row.ts";
import type { Source } from "./source.ts";
import { type Drawing, isSpread, type Spread } from "./spread.ts";

export type Input = Spread | number;

/** Inputs by name, or in a list. */
export type Inputs = { readonly [name: string]: Input } | readonly Input[];

/** What one call of the lifted function receives, for one draw. Read it, don't keep it: it is used again. */
export type Values<Given extends Inputs> = Given extends readonly Input[]
  ? ArrayLike<number> & Iterable<number>
  : { readonly [Name in keyof Given]: number };

/**
 * The figure fn(inputs), with the doubt of every input carried through it by draws, so that a source shared
 * by two inputs cancels or adds as it should (x − x is 0 ± 0).
 * fn: a plain function of numbers; it must be pure, and must not keep the record or list it is given.
 * inputs: spreads, figures of an earlier combine, or plain numbers, by name or in a list.
 * draws: 4,096 unless another power of two is asked for. Nothing is drawn until a property is read; so the figure is
 * no plain record, and { ...figure } copies neither its ends nor its shares: take figure.toJSON() for a copy.
 * as: as of lift, where the same figure is asked for again and again.
 * Each of its shares names the inputs that it came in by.
 * Method: propagation of distributions (JCGM 101:2008) with stratified scores.
 * Example: combine(({ wet, dry }) => (100 * (wet - dry)) / wet,
 *   { wet: spread("52.4 ± 0.1 g"), dry: spread("50.6 ± 0.1 g") }) → mean 3.435, low 3.144, high 3.727
 */
export function combine<const Given extends Inputs>(
  fn: (values: Values<Given>) => number,
  inputs: Given,
  options: FigureOptions & { readonly as?: string } = {},
): Figure {
  const inputsWith = (source: Source): readonly string[] => inputsThat(inputs, source);
  return figure(lift(fn, inputs, options.as), { ...options, inputsWith });
}

/** Names of those inputs that hold the source, or another of its id. */
function inputsThat(inputs: Inputs, source: Source): readonly string[] {
  const same = (one: Source): boolean => one === source || (one.id !== undefined && one.id === source.id);
  const holds = ([, input]: [string, Input]): boolean => isSpread(input) && input.sources.some(same);
  return Object.entries<Input>(inputs)
    .filter(holds)
    .map(([name]) => name);
}

/**
 * combine without the figure: a spread to be used inside another.
 * as: names fn and all that it holds beside its inputs, so that what its draws say is kept from one run to the next; two
 * functions of one name must be one function. Without it all is worked out anew.
 * @example figure(lift(([a, b]) => a! - b!, [spread("5 ± 1 g"), 2])).value // 3
 */
export function lift<const Given extends Inputs>(
  fn: (values: Values<Given>) => number,
  inputs: Given,
  as?: string,
): Spread {
  return new Lifted(fn as (values: unknown) => number, inputs, as);
}

class Lifted implements Spread {
  readonly value: number;
  readonly sources: readonly Source[];
  readonly #fn: (values: unknown) => number;
  /** Undefined for a list. */
  readonly #names: readonly string[] | undefined;
  readonly #given: readonly Input[];
  readonly #as: string | undefined;
  #content: string | null | undefined = null;

  constructor(fn: (values: unknown) => number, inputs: Inputs, as: string | undefined) {
    this.#fn = fn;
    this.#names = Array.isArray(inputs) ? undefined : Object.keys(inputs);
    this.#given = Object.values<Input>(inputs);
    this.#as = as;
    const out = new Float64Array(1);
    this.#work(this.#given.map(middleOf), [], [], out);
    this.value = out[0]!;
    this.sources = sourcesOf(this.#given);
  }

  get content(): string | undefined {
    if (this.#as === undefined) return undefined;
    if (this.#content === null) this.#content = contentOfCall(this.#as, this.#names, this.#given);
    return this.#content;
  }

  fill(out: Float64Array, start: number, drawing: Drawing): void {
    const { moves } = drawing;
    const middle = this.#given.map(middleOf);
    const moving: number[] = [];
    const columns: Float64Array[] = [];
    for (const [k, input] of this.#given.entries()) {
      if (typeof input === "number" || input.sources.length === 0) continue;
      if (moves && !input.sources.some(moves)) {
        // One draw stands for all: no column of it need be read.
        const one = borrowed(1);
        input.fill(one, start, drawing);
        middle[k] = one[0]!;
        giveBack(one);
        continue;
      }
      const column = borrowed(out.length);
      input.fill(column, start, drawing);
      moving.push(k);
      columns.push(column);
    }
    this.#work(middle, moving, columns, out);
    for (const column of columns) giveBack(column);
  }

  #work(
    middle: readonly number[],
    moving: readonly number[],
    columns: readonly Float64Array[],
    out: Float64Array,
  ): void {
    if (this.#names) workRecord(this.#fn, this.#names, middle, moving, columns, out);
    else workList(this.#fn, middle, moving, columns, out);
  }
}

/** In the order in which they first come. */
function sourcesOf(given: readonly Input[]): readonly Source[] {
  const moving = given.flatMap((input) =>
    typeof input === "number" || input.sources.length === 0 ? [] : [input.sources],
  );
  return moving.length === 1 ? moving[0]! : [...new Set(moving.flat())];
}

/** Calls fn for each draw. moving: which inputs the columns belong to; the others stay at their middle. */
function workList(
  fn: (values: unknown) => number,
  middle: readonly number[],
  moving: readonly number[],
  columns: readonly Float64Array[],
  out: Float64Array,
): void {
  const values = Float64Array.from(middle);
  for (let j = 0; j < out.length; j++) {
    for (let k = 0; k < columns.length; k++) values[moving[k]!] = columns[k]![j]!;
    out[j] = fn(values);
  }
}

/** The same with the values by name. */
function workRecord(
  fn: (values: unknown) => number,
  names: readonly string[],
  middle: readonly number[],
  moving: readonly number[],
  columns: readonly Float64Array[],
  out: Float64Array,
): void {
  const record = recordOf(names);
  const { row } = record;
  record.free = false;
  row.set(middle);
  try {
    for (let j = 0; j < out.length; j++) {
      for (let k = 0; k < columns.length; k++) row[moving[k]!] = columns[k]![j]!;
      out[j] = fn(record.values);
    }
  } finally {
    record.free = true;
  }
}

function middleOf(input: Input | undefined): number {
  if (isSpread(input)) return input.value;
  invariant(
    typeof input === "number",
    'inputs are spreads, figures or numbers; of a text such as "12.4 ± 0.1 g" make one by spread',
  );
  return input;
}
