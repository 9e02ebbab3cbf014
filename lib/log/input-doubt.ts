// What a reading may be off by: as the founder wrote it, else by the instrument, else by an assumption that is said.

import { normalQuantile } from "../numbers/distributions.ts";
import { onceFor } from "../quantity/once-for.ts";
import type { Source, SourceKind } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import type { Batch, TestReading } from "./batch.ts";
import type { ReadingInput } from "./reading-inputs.ts";
import type { InputRole } from "./test-number.ts";
import type { Measured, Scale } from "./types.ts";

export interface DoubtfulInput {
  readonly spread: Spread;
  /** Surely within this much of its value (three standard deviations where it is normal). */
  readonly reach: number;
  /** A part of the doubt that is not known: "weighing", "scale check", "blank run". */
  readonly missing?: string;
  /** What was assumed in the place of a ± that was not written, in plain words. */
  readonly assumed?: string;
}

export interface Bench {
  readonly reading: TestReading;
  readonly batch: Batch;
  /** Of this one reading: from names, date and figures, never from its place in the list. */
  readonly id: string;
}

/** Where nothing is written. Our own, from what a steady hand does with a ruler, a watch and a tube of water. */
const usual: { readonly [role in Exclude<InputRole, "weighing" | "load">]: number } = {
  length: 0.5,
  bore: 0.2,
  "rig volume": 0.02,
  volume: 0.01,
  level: 1,
  time: 0.5,
  air: 10,
  blank: 0,
};
/** These are a share of the value. */
const relative: readonly InputRole[] = ["rig volume", "volume"];
const usualWords: { readonly [role in Exclude<InputRole, "weighing" | "load">]: string } = {
  length: "lengths read to ± 0.5 mm",
  bore: "the bore known to ± 0.2 mm",
  "rig volume": "the vessel's volume known to ± 2 %",
  volume: "volumes of air read to ± 1 %",
  level: "water levels read to ± 1 mm",
  time: "times stopped to ± 0.5 s",
  air: "air at 20 ± 10 °C",
  blank: "",
};

export function doubtfulInput(input: ReadingInput, bench: Bench): DoubtfulInput {
  const { role, measured } = input;
  if (!measured) return notGiven(input, bench);
  if (role === "weighing" || role === "load") return weighed(input, measured, bench);
  const source = sourceOf(input, measured, bench);
  if (measured.plusMinus) return asWritten(measured, source);
  const step = role === "length" ? bench.reading.rig?.fields.rulerMm?.value : undefined;
  if (step !== undefined) {
    // Two ends are read, each to the nearest step.
    const triangular: Source = { ...source, shape: { kind: "triangular" } };
    return { spread: linear(measured.value, [{ scale: step, source: triangular }]), reach: step };
  }
  if (role === "air") return within(measured.value, 2, source, "the thermometer right to ± 2 °C");
  const size = usual[role] * (relative.includes(role) ? measured.value : 1);
  return within(measured.value, size, source, usualWords[role]);
}

function within(value: number, size: number, source: Source, assumed: string): DoubtfulInput {
  const spread = linear(value, [{ scale: size, source }]);
  return { spread, reach: size, ...(assumed === "" ? {} : { assumed }) };
}

function asWritten({ value, plusMinus }: Measured, { id, kind, says }: Source): DoubtfulInput {
  const spread = spreadOfQuantity(
    { value, ...(plusMinus ? { plusMinus } : {}) },
    { ...(id === undefined ? {} : { source: id }), doubt: kind, ...(says === undefined ? {} : { says }) },
  );
  const { size = 0, meaning } = plusMinus ?? {};
  const sd = meaning === "sd" ? size : size / normalQuantile(0.975);
  return { spread, reach: meaning === "surely" ? size : 3 * sd };
}

/** Two roundings to the scale's step, with and without the sample; and the scale's bias, shared by all its weighings. */
function weighed(input: ReadingInput, measured: Measured, bench: Bench): DoubtfulInput {
  const source = sourceOf(input, measured, bench);
  const { scale } = bench.reading;
  const checkless = input.role === "load" && scale?.withinG === undefined ? { missing: "scale check" } : {};
  if (measured.plusMinus) return asWritten(measured, source);
  if (!scale) return { spread: linear(measured.value, []), reach: 0, missing: "weighing" };
  const perGram = input.role === "load" ? 0.001 : 1;
  const [step, off] = [scale.stepG * perGram, (scale.withinG ?? 0) * perGram];
  const spread = linear(measured.value, [
    { scale: step, source: { ...source, shape: { kind: "triangular" } } },
    { scale: off, source: biasOf(scale) },
  ]);
  return { spread, reach: step + off, ...checkless };
}

/** One for all weighings on a scale. */
const biasOf = onceFor(
  ({ name }: Scale): Source => ({
    id: `bias of ${name}`,
    kind: "rig",
    shape: { kind: "rectangular" },
    says: `the bias of the ${name}`,
  }),
);

/** Air is taken at 20 °C; a blank run that was not made is missing from the ±. */
function notGiven(input: ReadingInput, bench: Bench): DoubtfulInput {
  if (input.role !== "air") return { spread: linear(0, []), reach: 0, missing: "blank run" };
  const { batch } = bench;
  const source: Source = {
    id: `air temperature, ${batch.date ?? batch.id}, not measured`,
    kind: "method",
    shape: { kind: "rectangular" },
    says: "the temperature of the air, which was not measured",
  };
  return within(20, usual.air, source, usualWords.air);
}

/** Bore, vessel and blank belong to the rig, or to all readings that name the same size; the rest to this reading. */
function sourceOf(input: ReadingInput, measured: Measured, { reading, batch, id }: Bench): Source {
  const { role, key, ofRig } = input;
  const shape = { kind: "rectangular" } as const;
  const says = `the ${key === "from" || key === "to" ? `level "${key}"` : key}`;
  if (role === "air") {
    const id = `air at ${measured.text}, ${batch.date ?? batch.id}`;
    return { id, kind: "reading", shape, says: `${says} of the air` };
  }
  const shared: readonly InputRole[] = ["bore", "rig volume", "blank"];
  if (!ofRig && !shared.includes(role)) {
    return { id: `${key}, ${id}`, kind: "reading", shape, says: `${says} as read` };
  }
  const owner = ofRig && reading.rig ? reading.rig.name : measured.text;
  const kind: SourceKind = "rig";
  return { id: `${key} of ${owner}`, kind, shape, says: `${says} of ${ofRig ? "the " : ""}${owner}` };
}
