// The number of a reading without its ±: what checks compare, at a hundredth of the work of a figure.

import type { TestReading } from "./batch.ts";
import { readingInputs } from "./reading-inputs.ts";

/** In the test's own unit, as testFigure has it; undefined where a reading is missing or the formula refuses them. */
export function plainNumber(reading: TestReading): number | undefined {
  if (reading.worked) return reading.worked.value;
  const found = readingInputs(reading);
  if (!found || found.inputs.some(({ measured, role }) => !measured && role !== "air" && role !== "blank")) {
    return undefined;
  }
  const { formula, inputs } = found;
  try {
    return formula.number(
      Object.fromEntries(
        inputs.map(({ name, role, measured }) => [name, measured?.value ?? (role === "air" ? 20 : 0)]),
      ),
    );
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
