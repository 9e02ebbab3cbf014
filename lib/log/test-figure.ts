// A reading of a home rig as the trade's number, with its budget of doubt.

import type { Checked, Issue } from "../issue.ts";
import { lift } from "../quantity/combine.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, linear, movedBy, spreadOfQuantity } from "../quantity/spread-of.ts";
import type { Batch, TestName, TestReading } from "./batch.ts";
import { emptyReading, figureUnsteady } from "./complaints-test.ts";
import { methodDoubt } from "./drying-doubt.ts";
import type { Measured } from "./figure-types.ts";
import { fingerprint } from "./fingerprint.ts";
import { howTested } from "./how-tested.ts";
import { type DoubtfulInput, doubtfulInput } from "./input-doubt.ts";
import { readingInputs } from "./reading-inputs.ts";
import type { TestFormula } from "./test-number.ts";
import { workedUnits } from "./worked-units.ts";

export interface TestFigure {
  readonly test: TestName;
  /** "% of damp mass", "kPa", "g/cm³"; the empty string for a bare number. */
  readonly unit: string;
  readonly value: number;
  /** With every source of doubt that is known. */
  readonly spread: Spread;
  /** With the sources that other readings share alone (rig, method): what is drawn over repeats or over a fit. */
  readonly shared: Spread;
  readonly method?: string;
  readonly rig?: string;
  /** What the ± does not hold, so that it is "at least": "weighing", "scale check", "blank run", "reading", "method". */
  readonly missing: readonly string[];
  /** What was assumed in the place of a ± that was not written. */
  readonly assumed: readonly string[];
  /** How it was found, a sentence for a page. */
  readonly rigWords: string;
  /** In plain signs; undefined for a number that was worked out elsewhere. */
  readonly formula?: string;
}

/**
 * The trade's number of one reading: moisture % of damp mass, compactability % of height, strengths kPa, permeability
 * number at 20 °C, density g/cm³, clay by wash % of dry mix, squeeze step 1 to 5.
 * Budget: reading (steps of scale and ruler, levels, time), rig (bias of the scale, bore, vessel, blank; one source for
 * all readings of a rig), method (what clay still holds after drying; one source for all of a method).
 * A ± in the log goes before the instrument's; without either, an assumption of our own that `assumed` says.
 * A number worked out elsewhere has the ± that was written, else "reading" is missing.
 * batch: whose reading it is; it gives the sources their names.
 * No value, with an issue, where a reading is missing or where within its ± the test may come out at anything.
 * Source of each formula: the plain functions of the sand folder.
 * Example: moisture { damp: 152.4 g, dry: 147.3 g } on a scale of 0.1 g: 3.35 ± 0.08 % of damp mass.
 */
export function testFigure(reading: TestReading, batch: Batch): Checked<TestFigure> {
  // A page asks for each figure several times, and a log that was read never changes.
  if (!Object.isFrozen(reading) || !Object.isFrozen(batch)) return workedOut(reading, batch);
  const before = known.get(reading);
  if (before?.batch === batch) return before.checked;
  const checked = workedOut(reading, batch);
  known.set(reading, { batch, checked });
  return checked;
}

/** A batch that only moved in its file has the figures that it had; those that could not be had name their places. */
export function carryFigures(from: Batch, to: Batch): void {
  from.readings.forEach((reading, i) => {
    const before = known.get(reading);
    if (before?.batch === from && before.checked.issues.length === 0)
      known.set(to.readings[i]!, { batch: to, checked: before.checked });
  });
}

const known = new WeakMap<TestReading, { readonly batch: Batch; readonly checked: Checked<TestFigure> }>();

function workedOut(reading: TestReading, batch: Batch): Checked<TestFigure> {
  const { test, worked, method, rig, place } = reading;
  const id = readingId(reading, batch);
  const common = {
    test,
    unit: workedUnits[test].unit,
    rigWords: howTested(reading),
    ...(method === undefined ? {} : { method }),
    ...(rig ? { rig: rig.name } : {}),
  };
  const way = methodDoubt(reading, batch);
  if (worked) {
    const says = `${test} as written`;
    const spread = spreadOfQuantity(
      { value: worked.value, ...(worked.plusMinus ? { plusMinus: worked.plusMinus } : {}) },
      { source: `${test} as written, ${id}`, says },
    );
    const missing = worked.plusMinus || test === "squeeze" ? [] : ["reading"];
    const figure = {
      ...common,
      value: worked.value,
      missing: [...missing, ...way.missing],
      assumed: way.assumed,
    };
    return { value: { ...figure, ...withMethod(spread, constant(worked.value), way.terms) }, issues: [] };
  }
  const found = readingInputs(reading);
  if (!found) return refused({ ...emptyReading(test, "its readings"), place });
  const inputs = found.inputs.map((input) => doubtfulInput(input, { reading, batch, id }));
  const at = numberAt(found.formula);
  if (unsteady(at, inputs)) return refused({ ...figureUnsteady(test), place });
  const as = JSON.stringify([test, method ?? "", found.formula.formula]);
  const spread = lifted(as, at, inputs);
  const shared = lifted(as, at, inputs.map(sharedAlone));
  const told = (part: "missing" | "assumed") => inputs.flatMap((input) => input[part] ?? []);
  return {
    value: {
      ...common,
      value: spread.value,
      ...withMethod(spread, shared, way.terms),
      missing: distinct([...told("missing"), ...way.missing]),
      assumed: distinct([...told("assumed"), ...way.assumed]),
      formula: found.formula.formula,
    },
    issues: [],
  };
}

function refused(issue: Issue): Checked<TestFigure> {
  return { issues: [issue] };
}

/** By name, date and figures; of readings that are alike in every figure, by which of them it is. */
function readingId(reading: TestReading, batch: Batch): string {
  const figures = figuresOf(reading);
  const { test } = reading;
  const alike = batch.readings.filter((other) => other.test === test && figuresOf(other) === figures);
  const which = Math.max(0, alike.indexOf(reading));
  return `${batch.id} / ${reading.test} ${fingerprint(figures)}${which === 0 ? "" : ` again ${which}`}`;
}

function figuresOf({ test, method, raw, worked }: TestReading): string {
  // The same figure typed in another unit comes back with other last digits.
  const digits = ({ value }: Measured) => String(Number(value.toPrecision(9)));
  const parts = Object.entries(raw).map(([name, one]) => `${name}=${digits(one)}`);
  return [test, method ?? "", worked ? digits(worked) : "", ...parts].join(";");
}

type Terms = readonly { readonly scale: number; readonly source: Source }[];

function withMethod(spread: Spread, shared: Spread, terms: Terms): { spread: Spread; shared: Spread } {
  if (terms.length === 0) return { spread, shared };
  const way = linear(0, terms);
  const plus = (one: Spread) => lift((parts) => parts[0]! + parts[1]!, [one, way], "sum of two");
  return { spread: plus(spread), shared: plus(shared) };
}

/** Draws that a formula refuses are rare, since corners were tried: they count as the middle. */
function lifted(as: string, at: NumberAt, inputs: readonly DoubtfulInput[]): Spread {
  const middle = at(inputs.map(({ spread }) => spread.value))!;
  return lift(
    (values) => at(values) ?? middle,
    inputs.map(({ spread }) => spread),
    as,
  );
}

/** Only what other readings share moves: the rest stands at its middle. */
function sharedAlone(input: DoubtfulInput): DoubtfulInput {
  const spread = movedBy(input.spread, ({ kind }) => kind === "rig" || kind === "method", "shared alone");
  return spread === input.spread ? input : { ...input, spread };
}

type NumberAt = (values: ArrayLike<number>) => number | undefined;

/** The formula as a function of a list, which its record reads by name: writing the names anew costs more than a formula. */
const numberAt = onceFor(({ number, inputs }: TestFormula): NumberAt => {
  let row: ArrayLike<number> = [];
  const named = {};
  Object.keys(inputs).forEach((name, k) => {
    Object.defineProperty(named, name, { enumerable: true, get: () => row[k]! });
  });
  return (values) => {
    row = values;
    try {
      const result = number(named);
      return Number.isFinite(result) ? result : undefined;
    } catch (error) {
      if (error instanceof RangeError) return undefined;
      throw error;
    }
  };
});

/** True where the formula breaks at some corner of what the readings may be. */
function unsteady(at: NumberAt, inputs: readonly DoubtfulInput[]): boolean {
  const moving = inputs.flatMap(({ reach }, i) => (reach > 0 ? [i] : []));
  const values = inputs.map(({ spread }) => spread.value);
  for (let corner = 0; corner < 2 ** moving.length; corner++) {
    moving.forEach((i, bit) => {
      const { spread, reach } = inputs[i]!;
      values[i] = spread.value + (corner & (2 ** bit) ? reach : -reach);
    });
    if (at(values) === undefined) return true;
  }
  return false;
}

const distinct = (texts: readonly string[]): string[] => [...new Set(texts)];
