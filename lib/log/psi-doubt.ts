// A bare number for a strength that is so small that it may be psi.

import type { Issue } from "../issue.ts";
import { printNumber } from "../quantity/print.ts";
import { unitNamed } from "../quantity/read-unit.ts";
import { convert } from "../quantity/unit.ts";
import type { TestName } from "./batch.ts";
import { psiForKPa } from "./complaints-test.ts";
import { looksLikePsiBelow } from "./worked-units.ts";

/** kPa in one psi: 6.894757 (NIST SP 811). */
export const kPaPerPsi = convert(1, unitNamed("psi")!, unitNamed("kPa")!);

/** value: as read, in kPa. Undefined for a number that is large enough, or a test that is no strength. */
export function psiDoubt(test: TestName, text: string, value: number): Issue | undefined {
  const below = looksLikePsiBelow[test];
  if (below === undefined || value >= below) return undefined;
  const ifPsi = printNumber(value * kPaPerPsi, value < 2 ? 1 : 0);
  return psiForKPa(test, text, printNumber(value / kPaPerPsi, 1), ifPsi);
}
