// Fields that several sections of a season share: masses, moistures, times, a list of maps.

import { notAList } from "./complaints-season.ts";
import { type Fields, mapOf } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { fractionMeant } from "./fraction.ts";
import { heapSectionLines } from "./heap-keys.ts";
import { type MeasuredField, measuredOf, quantityOf } from "./measured.ts";
import { isHoled, type LogNode, type MapNode, type Report } from "./node.ts";
import { psiDoubt } from "./psi-doubt.ts";
import { workedOf } from "./read-worked.ts";

export interface FieldReader {
  readonly fields: Fields;
  readonly report: Report;
}

/** The field in a unit; zero only where the field may be nothing. */
export function numberIn(
  { fields, report }: FieldReader,
  key: string,
  unit: string,
  most: number,
  more: Partial<MeasuredField> = {},
): Measured | undefined {
  return measuredOf(fields.get(key), { what: key, unit, most, aboveZero: true, ...more }, report);
}

/** kg; water also by volume. */
export function massIn(reader: FieldReader, key: string): Measured | undefined {
  return numberIn(reader, key, "kg", 1e6, key === "water" ? { alsoIn: ["l"] } : {});
}

/** % of damp mass; soil tests' moisture of the dry mass, and a fraction of one, are complained of. */
export function moistureIn({ fields, report }: FieldReader, key: string): Measured | undefined {
  const quantity = quantityOf(fields.get(key), key, report);
  if (!quantity) return undefined;
  const fraction = quantity.unit ? undefined : fractionMeant("moisture", quantity.text, [quantity]);
  if (fraction && key === "moisture") return void report(fraction, quantity.place);
  return workedOf("moisture", quantity, quantity.place, report);
}

/** % of height. */
export function compactabilityIn({ fields, report }: FieldReader): Measured | undefined {
  const quantity = quantityOf(fields.get("compactability"), "compactability", report);
  if (!quantity) return undefined;
  const fraction = fractionMeant("compactability", quantity.text, [quantity]);
  if (fraction) return void report(fraction, quantity.place);
  return workedOf("compactability", quantity, quantity.place, report);
}

/** kPa; a bare number that is as likely psi is asked about. */
export function strengthIn({ fields, report }: FieldReader): Measured | undefined {
  const quantity = quantityOf(fields.get("green compression"), "green compression", report);
  const strength = quantity && workedOf("green compression", quantity, quantity.place, report);
  if (!quantity || !strength) return undefined;
  const psi = quantity.unit ? undefined : psiDoubt("green compression", strength.text, strength.value);
  if (psi) report(psi, quantity.place);
  return strength;
}

/** The maps of a list; what is none is complained of, and one map alone counts as a list of one. */
export function mapsOf(node: LogNode | undefined, what: string, report: Report): MapNode[] {
  if (!node || (node.kind === "empty" && isHoled(node))) return [];
  if (node.kind === "map") return [node];
  if (node.kind !== "list") {
    report(notAList(what, heapSectionLines[what] ?? `${what}: [ { ... } ]`), node.place);
    return [];
  }
  return node.items.flatMap((item) => mapOf(item, what, report) ?? []);
}
