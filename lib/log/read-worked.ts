// A test's number as the founder worked it out, checked against what beginners mix up.

import type { Place } from "../issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { compactabilityIssues } from "../sand/compactability.ts";
import type { TestName } from "./batch.ts";
import { dryBasis, washBasis } from "./complaints-test.ts";
import { inUnit } from "./measured.ts";
import type { Report } from "./node.ts";
import type { Measured } from "./types.ts";
import { workedUnits } from "./worked-units.ts";

/** The quantity in the test's own unit; what cannot be that is reported and gives nothing. */
export function workedOf(
  test: TestName,
  quantity: Quantity,
  place: Place,
  report: Report,
): Measured | undefined {
  const { unit, most, aboveZero } = workedUnits[test];
  const of = quantity.unit?.of;
  const { value, text } = quantity;
  if (test === "moisture" && of !== undefined && isDryBasis(of)) {
    report(dryBasis(text, plain(value), plain((100 * value) / (100 + value))), place);
    return undefined;
  }
  if (test === "clay by wash") {
    const ofMix = washedOfDryMix(value, of);
    if (ofMix === undefined) {
      report(
        washBasis(
          text,
          plain(value),
          plain((100 * value) / (100 + value)),
          plain(value / (1 - usualMoisture / 100)),
        ),
        place,
      );
      return undefined;
    }
    return inUnit({ ...withoutUnit(quantity), value: ofMix }, place, { what: test, unit, most }, report);
  }
  if (test === "compactability" && quantity.unit?.kind !== "plain") {
    const impossible = compactabilityIssues(value).find(({ severity }) => severity === "error");
    if (impossible) {
      report(impossible, place);
      return undefined;
    }
  }
  const plainPercent = quantity.unit?.kind === "percent" && isOwnBasis(test, of);
  return inUnit(
    plainPercent ? withoutUnit(quantity) : quantity,
    place,
    { what: test, unit, most, aboveZero },
    report,
  );
}

/** For the three readings of a clay share; moisture in the middle of the usual range of bentonite sands. */
const usualMoisture = 3.5;

/** "dry", "dry mass", "dry mix", "the dry sand", "solids". */
function isDryBasis(of: string): boolean {
  return /\bdry\b|\bdried\b|\bsolids?\b/.test(of);
}

/** Other words for a test's own basis. */
function isOwnBasis(test: TestName, of: string | undefined): boolean {
  if (of === undefined) return true;
  if (test === "moisture") return /^(damp|wet) (mass|sand|mix)$|^damp$|^wet$/.test(of);
  return test === "compactability" && /height/.test(of);
}

/** Clay by wash in % of the dried sample, which is the dry mix; undefined where the basis is not said or cannot be turned. */
function washedOfDryMix(value: number, of: string | undefined): number | undefined {
  if (of === undefined) return undefined;
  if (/^(dry|dried) (mix|mass|sample)$|^sample$/.test(of)) return value;
  return of === "sand" ? (100 * value) / (100 + value) : undefined;
}

function withoutUnit({ unit: _, ...rest }: Quantity): Quantity {
  return rest;
}

/** At most two decimals, without trailing zeros. */
function plain(value: number): string {
  return String(Number(value.toFixed(2)));
}
