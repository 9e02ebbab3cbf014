// The rows of one sieving: a label and a mass each, sorted coarse to fine.

import { sameSieve } from "../sand/same-sieve.ts";
import { readSieveLabel } from "../sand/sieve-label.ts";
import { emptyMass, misplacedSieve, mixedUnits, repeatedSieve, sumAmongRows } from "./complaints-sieving.ts";
import { inUnit, quantityOf } from "./measured.ts";
import { lostColon } from "./no-colon.ts";
import { type Entry, type MapNode, plainName, type Report } from "./node.ts";
import type { RetainedEntry } from "./types.ts";

export interface Retained {
  readonly unit: "g" | "percent";
  readonly entries: readonly RetainedEntry[];
  /** False only where every row and label could be read and none is the pan. */
  readonly mayHavePan: boolean;
}

/** What people write below a sieving, which no sieve held. */
const sumWords = /^(sub)?(total|sum)s?( (mass|weight|held|retained))?$|^(loss|lost|missing)$/;

/** `said`: the unit that the sieving names, if it names one. */
export function readRetained(map: MapNode, said: "g" | "percent" | undefined, report: Report): Retained {
  const rows = map.entries.flatMap((entry) => {
    const colon = entry.value.kind === "empty" && lostColon(entry.key, []);
    if (colon) report(colon, entry.keyPlace);
    const sum = sumWords.test(plainName(entry.key)) ? sumAmongRows(entry.key) : undefined;
    if (sum) report(sum, entry.keyPlace);
    return colon || sum ? [] : [{ entry, label: readSieveLabel(entry.key), quantity: massOf(entry, report) }];
  });
  const percents = rows.filter(({ quantity }) => quantity && isPercent(quantity)).length;
  const unit = said ?? (percents > rows.length / 2 ? "percent" : "g");

  const entries: RetainedEntry[] = [];
  for (const { entry, label, quantity } of rows) {
    for (const issue of label.issues) report(issue, entry.keyPlace);
    if (!label.value || !quantity) continue;
    // A bare number beside others with % is as unclear as a figure in grams.
    const bareAmongPercent = !quantity.unit && said === undefined && unit === "percent";
    if (bareAmongPercent || (quantity.unit && isPercent(quantity) !== (unit === "percent"))) {
      report(mixedUnits(entry.key, quantity.text, unit === "g" ? "grams" : "percent"), quantity.place);
      continue;
    }
    const field =
      unit === "g"
        ? { what: entry.key, unit: "g", most: 100_000 }
        : { what: entry.key, unit: "%", most: 100.5 };
    // "% of sample" and a bare % count alike here.
    const plain = unit === "percent" ? withoutUnit(quantity) : quantity;
    const mass = inUnit(plain, quantity.place, field, report);
    if (!mass) continue;
    const sieve = label.value === "pan" ? {} : { sieve: label.value };
    entries.push({ label: entry.key, ...sieve, mass, place: entry.keyPlace });
  }
  const mayHavePan =
    rows.length < map.entries.length ||
    rows.some(({ label }) => label.value === undefined || label.value === "pan");
  return { unit, entries: sorted(unrepeated(entries, report), report), mayHavePan };
}

function massOf(entry: Entry, report: Report): ReturnType<typeof quantityOf> {
  const { value } = entry;
  const says = value.kind === "text" ? !/^\s*[|>]?\s*$/.test(value.text) : value.kind !== "empty";
  if (says) return quantityOf(value, entry.key, report);
  report(emptyMass(entry.key), value.place);
  return undefined;
}

function isPercent(quantity: { readonly unit?: { readonly kind: string } }): boolean {
  return quantity.unit?.kind === "percent";
}

function withoutUnit<T extends { readonly unit?: unknown }>(quantity: T): Omit<T, "unit"> {
  const { unit: _, ...rest } = quantity;
  return rest;
}

const openingOf = (entry: RetainedEntry): number => entry.sieve?.openingMm ?? 0;

/** Openings closer than sameSieveWithin are one sieve under two names. */
function unrepeated(entries: readonly RetainedEntry[], report: Report): RetainedEntry[] {
  const kept: RetainedEntry[] = [];
  for (const entry of entries) {
    const opening = openingOf(entry);
    const before = kept.find((other) => sameSieve(openingOf(other), opening));
    if (before) report(repeatedSieve(entry.label, before.label, String(before.place.line)), entry.place);
    else kept.push(entry);
  }
  return kept;
}

/** Coarse to fine, the pan last. A list that runs fine to coarse throughout is an order as good as the other. */
function sorted(entries: readonly RetainedEntry[], report: Report): RetainedEntry[] {
  const falls = entries.slice(1).map((entry, index) => openingOf(entry) < openingOf(entries[index]!));
  const fineFirst = entries.length > 2 && falls.every((fall) => !fall);
  if (!fineFirst) {
    falls.forEach((fall, index) => {
      const [before, entry] = [entries[index]!, entries[index + 1]!];
      if (!fall) report(misplacedSieve(entry.label, before.label), entry.place);
    });
  }
  return [...entries].sort((a, b) => openingOf(b) - openingOf(a));
}
