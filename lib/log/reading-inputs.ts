// The readings that a formula wants: from the reading itself, else from its rig.

import type { TestReading } from "./batch.ts";
import { formsOf, type TestField } from "./test-forms.ts";
import { formulaFor, type InputRole, type TestFormula } from "./test-number.ts";
import type { Measured } from "./types.ts";

export interface ReadingInput {
  readonly name: string;
  readonly role: InputRole;
  /** As the log calls it. */
  readonly key: string;
  /** Undefined for what may be left out: temperature of the air, blank run. */
  readonly measured: Measured | undefined;
  /** True where the rig supplies it. */
  readonly ofRig: boolean;
}

export interface ReadingInputs {
  readonly formula: TestFormula;
  readonly inputs: readonly ReadingInput[];
}

/** Undefined where the test has no formula, or lacks a reading (missingFieldOf tells which). */
export function readingInputs(reading: TestReading): ReadingInputs | undefined {
  const { test, method, raw, rig } = reading;
  const formula = formulaFor(test, method, raw.dishG !== undefined);
  if (!formula || missingFieldOf(reading)) return undefined;
  const fields = fieldsFor(reading);
  const inputs = Object.entries(formula.inputs).map(([name, role]): ReadingInput => {
    const field = fields.find((one) => one.raw === name);
    const own = raw[name];
    const measured = own ?? rig?.fields[field?.fromRig ?? name];
    return {
      name,
      role,
      key: field?.key ?? name,
      measured,
      ofRig: own === undefined && measured !== undefined,
    };
  });
  return { formula, inputs };
}

/** The first field that is needed and stands neither in the reading nor with its rig. */
export function missingFieldOf(reading: TestReading): TestField | undefined {
  const { raw, rig } = reading;
  return fieldsFor(reading).find(
    (field) =>
      field.needed &&
      raw[field.raw] === undefined &&
      (field.fromRig === undefined || rig?.fields[field.fromRig] === undefined),
  );
}

function fieldsFor({ test, method }: TestReading): readonly TestField[] {
  const forms = formsOf(test);
  const form = forms.find(({ methods }) => methods.includes(method ?? "")) ?? forms[0];
  return form?.fields ?? [];
}
