// What else differed between pours with a fault and without: scrap, temperature, degassing, alloy.

import { median } from "../numbers/summary.ts";
import type { CastPour } from "../trial/cast-pours.ts";
import type { CastingPrint } from "./casting-print.ts";

/**
 * Facts of the pour that lie apart, but for the one that is asked about: degassed in unlike shares, alloys of unlike
 * names, medians of scrap share or temperature that differ. Plainly told and not tested.
 */
export function pourDifferences(
  withIt: readonly CastPour[],
  without: readonly CastPour[],
  asked: string,
  print: CastingPrint,
): string[] {
  const measured = (what: string, unit: string, get: (pour: CastPour) => number | undefined): string[] => {
    const [own, other] = [withIt, without].map((pours) => pours.flatMap((pour) => get(pour) ?? []));
    if (what === asked || own!.length === 0 || other!.length === 0) return [];
    const [a, b] = [median(own!), median(other!)];
    if (a === b) return [];
    const [shownA, shownB] = [print.number(a, { unit }), print.number(b, { unit })];
    return [`${what} ${shownA} against ${shownB} (medians of ${own!.length} and ${other!.length})`];
  };
  return [
    ...measured("scrap share", "%", ({ pour }) => pour?.scrapSharePercent?.value),
    ...measured("pouring temperature", "°C", ({ pour }) => pour?.atC?.value),
    ...degassed(withIt, without, asked),
    ...alloys(withIt, without),
  ];
}

function degassed(withIt: readonly CastPour[], without: readonly CastPour[], asked: string): string[] {
  const [own, other] = [withIt, without].map((pours) => pours.flatMap(({ pour }) => pour?.degassed ?? []));
  if (asked === "degassed" || own!.length === 0 || other!.length === 0) return [];
  const yes = (all: readonly boolean[]): number => all.filter(Boolean).length;
  if (yes(own!) * other!.length === yes(other!) * own!.length) return [];
  return [`degassed ${yes(own!)} of ${own!.length} against ${yes(other!)} of ${other!.length}`];
}

function alloys(withIt: readonly CastPour[], without: readonly CastPour[]): string[] {
  const [own, other] = [withIt, without].map((pours) =>
    [...new Set(pours.flatMap(({ pour }) => pour?.alloy ?? []))].sort(),
  );
  const same = own!.join(", ") === other!.join(", ");
  if (same || own!.length === 0 || other!.length === 0) return [];
  return [`alloy ${own!.join(", ")} against ${other!.join(", ")}`];
}
