// A fraction written for a percentage: 0.45 for 45 %.

import type { Issue } from "../issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { TestName } from "./batch.ts";
import { fractionForPercent } from "./complaints-agreement.ts";

/**
 * Below this no moulding sand stands, in %; a bare number below it is a fraction of one or a slip (our own: compactability
 * 15 to 75 %, moisture 1.5 to 12 %, clay 3 to 30 % are as fractions 0.15 to 0.75, 0.015 to 0.12, 0.03 to 0.3).
 */
const fractionsBelow: { readonly [test in TestName]?: number } = {
  compactability: 1,
  moisture: 0.15,
  "clay by wash": 0.35,
};

/** The complaint, where all the numbers are fractions by their size; a % sign keeps small moistures and clays as they are. */
export function fractionMeant(
  test: TestName,
  text: string,
  quantities: readonly Pick<Quantity, "value" | "unit">[],
): Issue | undefined {
  const below = fractionsBelow[test];
  if (below === undefined) return undefined;
  const small = quantities.every(({ value, unit }) => {
    if (unit && (unit.kind !== "percent" || test !== "compactability")) return false;
    return value >= 0 && value <= below;
  });
  if (!small || quantities.every(({ value }) => value === 0)) return undefined;
  const percent = quantities.map(({ value }) => Number((100 * value).toPrecision(6)));
  const basis = test === "clay by wash" ? " of dry mix" : "";
  return fractionForPercent(test, text, `${percent.join(" to ")} %${basis}`);
}
