// A share of clay that says of what: per 100 of sand, of the dry mix, of the damp mass.

import { fractionForPercent } from "./complaints-agreement.ts";
import { shareBasis, shareTooLarge, unknownShareBasis } from "./complaints-recipe.ts";
import { textNodeOf } from "./fields.ts";
import { fractionMeant } from "./fraction.ts";
import type { BasedShare, ShareBasis } from "./heap-state.ts";
import { inUnit, quantityOf } from "./measured.ts";
import type { LogNode, Report } from "./node.ts";

/** For the three readings of a share; moisture in the middle of the usual range of bentonite sands. */
const usualMoisture = 3.5;

/** "8 % of dry mix", "8.7 per 100 of sand": any words of a basis, or undefined where there are none that count. */
export function basisNamed(text: string): ShareBasis | undefined {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/^(%|percent|parts?)\s+/, "")
    .replace(/^(of|per|to|in)\s+(100\s+)?(parts?\s+)?(of\s+)?/, "")
    .replace(/^(the|dry|dried)\s+(?=sand$)/, "");
  if (plain === "sand") return "sand";
  if (/^(the )?(dry|dried) (mix|mass|sample)$/.test(plain)) return "dry mix";
  return /^(the )?(damp|wet) (mass|mix|heap|sand)$/.test(plain) ? "damp mass" : undefined;
}

/** The share, on the basis that it names itself. */
export function basedShareOf(
  node: LogNode | undefined,
  what: string,
  report: Report,
): BasedShare | undefined {
  const quantity = shareOf(node, what, report);
  if (!quantity) return undefined;
  const { place, text } = quantity;
  const of = quantity.unit?.of;
  if (of === undefined)
    return void report(threeReadings(what, text, quantity.value, `${what}: ${text} % of dry mix`), place);
  const basis = basisNamed(`of ${of}`);
  if (!basis) return void report(unknownShareBasis(what, text), place);
  return withBasis(quantity, what, basis, report);
}

/** The number as it stands, whatever its unit; where it counts per 100 of sand, in percent of sand. */
export function shareOf(node: LogNode | undefined, what: string, report: Report) {
  const typed = textNodeOf(node, what, report);
  if (!typed) return undefined;
  const quantity = quantityOf({ ...typed, text: typed.text.replace(perHundred, "% of sand") }, what, report);
  return quantity && { ...quantity, text: typed.text.trim() };
}

const perHundred = /\s*(%|parts?)?\s+(per|to|in)\s+100\s+(parts?\s+)?(of\s+)?(the\s+)?(dry\s+)?sand$/i;

export function withBasis(
  quantity: NonNullable<ReturnType<typeof shareOf>>,
  what: string,
  of: ShareBasis,
  report: Report,
): BasedShare | undefined {
  const { place, text, unit: _, ...bare } = quantity;
  const fraction = fractionMeant("clay by wash", text, [bare]);
  const clayOrFraction = what === "live clay" || what === "clay" || what === "bentonite";
  if (fraction && clayOrFraction && !/%/.test(text)) {
    const percent = Number((100 * bare.value).toPrecision(6));
    const meant = of === "sand" ? `${percent} per 100 of sand` : `${percent} % of ${of}`;
    return void report(fractionForPercent(what, text, meant), place);
  }
  const measured = inUnit({ ...bare, text }, place, { what, unit: `% of ${of}`, most: 10_000 }, report);
  if (!measured) return undefined;
  if (measured.value > (of === "sand" ? 100 : 50)) return void report(shareTooLarge(what, text), place);
  return { ...measured, of };
}

/** The complaint that shows a share read in each of the three ways. */
export function threeReadings(what: string, text: string, value: number, line: string) {
  const number = text.replace(/\s*(%|percent|parts?)\s*$/i, "");
  const plain = (percent: number): string => String(Number(percent.toFixed(2)));
  return shareBasis(
    what,
    text,
    plain(toDryMixPercent(value, "sand")),
    plain(value),
    plain(toDryMixPercent(value, "damp mass")),
    `Write the one that is meant, e.g. \`${line.replace(text, number)}\`.`,
  );
}

function toDryMixPercent(value: number, of: ShareBasis): number {
  if (of === "sand") return (100 * value) / (100 + value);
  return of === "dry mix" ? value : value / (1 - usualMoisture / 100);
}
