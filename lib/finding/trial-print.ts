// How a finding prints a test's number: the page says in which unit, else the library's own.

import type { TestName } from "../log/batch.ts";
import { workedUnits } from "../log/worked-units.ts";

/** A number of a test with its unit: "45 kPa". */
export type PrintTest = (value: number, test: TestName) => string;

export const inOwnUnits: PrintTest = (value, test) =>
  `${Number(value.toPrecision(3))} ${workedUnits[test].unit}`.trimEnd();
