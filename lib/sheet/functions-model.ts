// How a model of the sand is called from a formula: its arguments by their order, each in a unit.

import { Misuse } from "../issue.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import type { Unit } from "../quantity/unit.ts";

export interface ModelArgument {
  readonly name: string;
  /** Undefined: a plain number. */
  readonly unit: Unit | undefined;
  /** Another kind of unit that says the same: a pressure in mm of water beside the height of the water in mm. */
  readonly also: Unit | undefined;
  readonly optional: boolean;
}

/** A model as a formula calls it: arguments by their order, numbers in the unit of each. */
export interface ArrayModel {
  readonly name: string;
  readonly args: readonly ModelArgument[];
  /** Of the result; undefined: a plain number. */
  readonly unit: Unit | undefined;
  /** NaN where the model gives no figure; RangeError as the model throws it. Left-out arguments are undefined. */
  readonly call: (values: readonly (number | undefined)[]) => number;
}

type Result = number | null;
type IsOptional<A, K extends keyof A> = undefined extends A[K] ? true : false;
/** The unit of every argument, no more and no fewer, "?" at the end of those that may be left out. */
type UnitsOf<A> = {
  readonly [K in keyof A]-?: IsOptional<A, K> extends true ? `${string}?` : string;
};

function argument([name, text]: readonly [string, string]): ModelArgument {
  const [unit = "", also = ""] = text.replace(/\?$/, "").split("|");
  return { name, optional: text.endsWith("?"), unit: unitOrNone(unit), also: unitOrNone(also) };
}

const unitOrNone = (text: string): Unit | undefined => (text === "" ? undefined : known(text));

function known(text: string): Unit {
  // A millionth of a pascal stands in no table of the bench's units.
  if (text === "µPa·s") return { ...known("mPa·s"), text, factor: 1e-6 };
  const unit = unitNamed(text);
  if (!unit) throw new Misuse(`there is no unit ${text}`);
  return unit;
}

export type Draft = Omit<ArrayModel, "name">;

/** A model that takes a record: its arguments in the order of units, which is the record's own but for those that may be left out: they come last. */
export function byRecord<A extends object>(
  model: (record: A) => Result,
  units: UnitsOf<A>,
  result: string,
): Draft {
  const args = Object.entries(units as Record<string, string>).map(argument);
  // One record is filled anew for every call: models read it and don't keep it.
  const record: Record<string, number | undefined> = {};
  const call: ArrayModel["call"] = (values) => {
    for (let k = 0; k < args.length; k++) record[args[k]!.name] = values[k];
    return model(record as A) ?? Number.NaN;
  };
  return { args, unit: unitOrNone(result), call };
}

/** A model that takes its arguments one after the other. */
export function byOrder<A extends readonly number[]>(
  model: (...values: A) => Result,
  units: Readonly<Record<string, string>>,
  result: string,
): Draft {
  const args = Object.entries(units).map(argument);
  const call: ArrayModel["call"] = (values) => model(...(values as unknown as A)) ?? Number.NaN;
  return { args, unit: unitOrNone(result), call };
}
