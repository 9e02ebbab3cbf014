// Labels that give the opening: "0.425 mm", "425 µm", "0.385 ± 0.01 mm".

import type { Checked } from "../issue.ts";
import type { Sieve } from "./sieve.ts";
import { notStandard, olderPrint, openingOutOfRange, openingPlusMinus } from "./sieve-label-issues.ts";
import { nearestStandardSieve, plainDigits, standardSieve } from "./sieve-table.ts";
import { standardToleranceMm } from "./sieve-tolerance.ts";

const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
const unit = "(mm|µm|um|microns?)";
const pattern = new RegExp(String.raw`^${number} ?(?:${unit} ?)?(?:(?:±|\+/-|\+-) ?${number} ?)?${unit}?$`);

const mmPer = (name: string) => (name === "mm" ? 1 : 0.001);
const inRange = (mm: number) => mm >= 0.02 && mm <= 125;
const digits = (mm: number) => Number(mm.toPrecision(9));

/** Undefined where the label is not of this kind. Text: lower case, single spaces; label: as typed. */
export function readOpeningLabel(text: string, label: string): Checked<Sieve> | undefined {
  const found = pattern.exec(text);
  if (!found) return undefined;
  const [, value, first, plusMinus, last] = found;
  const ownUnit = first ?? last;
  if (ownUnit === undefined) return undefined;
  if (plusMinus === undefined && first !== undefined && last !== undefined) return undefined;
  const openingMm = digits(Number(value) * mmPer(ownUnit));
  if (!inRange(openingMm)) return { issues: [openingOutOfRange(label, otherUnit(Number(value), ownUnit))] };
  if (plusMinus === undefined) return fromOpening(openingMm, label);
  const toleranceMm = digits(Number(plusMinus) * mmPer(last ?? ownUnit));
  if (toleranceMm >= openingMm) return { issues: [openingPlusMinus(label)] };
  return fromOpeningWithin(openingMm, toleranceMm);
}

function otherUnit(value: number, typed: string): string | undefined {
  const [mm, name] = typed === "mm" ? [value / 1000, "µm"] : [value, "mm"];
  return inRange(mm) ? `${plainDigits(value)} ${name}` : undefined;
}

function fromOpening(openingMm: number, label: string): Checked<Sieve> {
  const standard = standardSieve(openingMm);
  if (standard) {
    const { sieve, older } = standard;
    const issues = older ? [olderPrint(label, sieve.label, plainDigits(sieve.openingMm))] : [];
    return { value: sieve, issues };
  }
  // Nobody vouches for a cloth's opening: twice what a test sieve is allowed. Our own assumption.
  const toleranceMm = 2 * standardToleranceMm(openingMm);
  const value = Object.freeze({
    label: `${plainDigits(openingMm)} mm`,
    series: "cloth",
    openingMm,
    toleranceMm,
  } as const);
  const nearest = nearestStandardSieve(openingMm);
  const named = nearest.series === "iso" ? nearest.label : `${nearest.label}, ${nearest.openingMm} mm`;
  return { value, issues: [notStandard(label, toleranceMm.toPrecision(2), named)] };
}

/** With a ± of the founder's own: a standard sieve keeps its name, and an older print is not assumed. */
function fromOpeningWithin(openingMm: number, toleranceMm: number): Checked<Sieve> {
  const standard = standardSieve(openingMm);
  if (standard && !standard.older) {
    return { value: Object.freeze({ ...standard.sieve, toleranceMm }), issues: [] };
  }
  const label = `${plainDigits(openingMm)} ± ${plainDigits(toleranceMm)} mm`;
  return { value: Object.freeze({ label, series: "cloth", openingMm, toleranceMm }), issues: [] };
}
