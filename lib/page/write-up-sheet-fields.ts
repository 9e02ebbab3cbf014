// What may stand in a write-up's data sheet: every field that a batch of the log has typed.

import type { Batch, Recipe, TestName, TestReading } from "../log/batch.ts";
import { formsOf, testNames } from "../log/test-forms.ts";
import { workedUnits } from "../log/worked-units.ts";
import { squeezeSteps } from "../sand/squeeze.ts";
import type { TableCell } from "./blocks.ts";
import { typedCell } from "./write-up-rigs.ts";

export interface SheetField {
  /** "Load 2". */
  readonly head: string;
  /** "load": without the number of a repeat. */
  readonly name: string;
  /** What it belongs to: "green compression", "weighed in"; the empty string: the batch itself. */
  readonly of: string;
  /** True for what follows a first reading, under whose head it is said what they belong to. */
  readonly again?: boolean;
  /** Of the cells' plain numbers; the empty string where they have none. */
  readonly unit: string;
  /** Undefined where the batch has no such reading; empty where it has one and does not say this of it. */
  readonly cell: (batch: Batch) => TableCell | undefined;
}

/** In the order of the bench: the batch, what was weighed in, each test with its repeats; only what any batch says. */
export function sheetFields(batches: readonly Batch[]): readonly SheetField[] {
  const all = [...ofBatch, ...ofRecipe, ...testNames.flatMap((test) => ofTest(test, batches))];
  return all.filter(({ cell }) => batches.some((batch) => (cell(batch)?.text ?? "") !== ""));
}

function words(name: string, of: string, pick: (batch: Batch) => string | undefined): SheetField {
  return { head: capital(name), name, of, unit: "", cell: (batch) => ({ text: pick(batch) ?? "" }) };
}

const ofBatch: readonly SheetField[] = [
  words("block", "", ({ block }) => block),
  // Blocks that are sands are told once.
  words("sand", "", ({ sand, block }) => (sand === block ? undefined : sand)),
];

type Part = Exclude<keyof Recipe, "scale">;
const parts: readonly (readonly [part: Part, name: string, unit: string])[] = [
  ["sandKg", "sand", "kg"],
  ["sandMoisturePercent", "water in the sand", "% of damp mass"],
  ["clayKg", "clay", "kg"],
  ["clayMoisturePercent", "water in the clay", "% of damp mass"],
  ["additiveKg", "additive", "kg"],
  ["waterKg", "water", "kg"],
];

const ofRecipe: readonly SheetField[] = [
  ...parts.map(
    ([part, name, unit]): SheetField => ({
      head: capital(name),
      name,
      of: "weighed in",
      unit,
      cell: ({ recipe }) => recipe && typedCell(recipe[part]),
    }),
  ),
  words("scale", "weighed in", ({ recipe }) => recipe?.scale?.name),
];

/** The fields of a test, each for the first reading of a batch, the second, and so on. */
function ofTest(test: TestName, batches: readonly Batch[]): readonly SheetField[] {
  const readingsOf = ({ readings }: Batch): TestReading[] => readings.filter((one) => one.test === test);
  const most = Math.max(0, ...batches.map((batch) => readingsOf(batch).length));
  const raw = formsOf(test).flatMap(({ fields }) => fields);
  const once = raw.filter((field, k) => raw.findIndex((other) => other.raw === field.raw) === k);
  const each = (name: string, unit: string, of: (reading: TestReading) => TableCell): SheetField[] =>
    Array.from({ length: most }, (_, k) => ({
      head: most > 1 ? `${capital(name)} ${k + 1}` : capital(name),
      name,
      of: test,
      unit,
      ...(k > 0 || name === test ? { again: true } : {}),
      cell: (batch) => {
        const reading = readingsOf(batch)[k];
        return reading && of(reading);
      },
    }));
  const told = (name: string, of: (reading: TestReading) => string | undefined): SheetField[] =>
    each(name, "", (reading) => ({ text: of(reading) ?? "" }));
  return [
    ...once.flatMap(({ key, raw: field, unit }) => each(key, unit, ({ raw: own }) => typedCell(own[field]))),
    ...each(test, workedUnits[test].unit, workedCell),
    ...told("method", ({ method }) => method),
    ...told("rig", ({ rig }) => rig?.name),
    ...told("scale", ({ scale }) => scale?.name),
  ];
}

function workedCell({ test, worked }: TestReading): TableCell {
  const cell = typedCell(worked);
  const step = test === "squeeze" ? squeezeSteps.find((one) => one.step === worked?.value) : undefined;
  return step ? { ...cell, text: `${step.step}: ${step.name}` } : cell;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
