// A founder's own aims, prefilled from the usual ranges: where from, and how far that can be trusted.

import type { Issue } from "../issue.ts";
import { type Band, type BandProperty, type BandTag, decides } from "./band.ts";
import { bands } from "./bands.ts";
import type { Bond, Metal } from "./metals.ts";
import {
  aimFromNaturalSand,
  aimNotKnown,
  aimsAreWeak,
  permeabilityAimNeedsFineness,
} from "./typical-issues.ts";

/** Properties that a trial has aims for; density and fineness are not aimed at but found. */
const aimed = ["moisture", "compactability", "green compression", "permeability", "clay"] as const;

export interface AimFromBand {
  readonly property: BandProperty;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly basis?: string;
  readonly tag: BandTag;
  /** True where the band was read as a recommendation, so that it may decide; else the aim is a hint. */
  readonly decides: boolean;
  /** "3.5 to 4.5 % of damp mass, from a usual range (read: …)". */
  readonly says: string;
  readonly band: Band;
}

/**
 * Aims to start from, one for each of moisture, compactability, green compression, permeability and clay that a band
 * is known for: a founder's own aims replace them, and each says which band and which tag it comes from.
 *
 * Chosen for each property: a band of the practice asked for before one that names none (bands of another practice
 * are passed over); then a recommendation that was read, our own proposal, common practice, from memory, and last the
 * range of sands that served. practice: "hand-rammed" unless said otherwise, as bands() lists them.
 * gfn: the sand's grain fineness number. A permeability band goes with a fineness; without gfn, or with one outside
 * the band's own range, permeability is left out with an issue.
 * metal and bond as in bands(); anything else throws. A property without a band is named in a note.
 * Source: each band's own.
 *
 *     aimsFromBands({ metal: "aluminium", bond: "bentonite" }).aims[0]   // moisture, 3.5 to 4.5 % of damp mass, read
 */
export function aimsFromBands({
  metal,
  bond,
  practice = "hand-rammed",
  gfn,
}: {
  metal: Metal;
  bond: Bond;
  practice?: string;
  gfn?: number;
}): { readonly aims: readonly AimFromBand[]; readonly issues: readonly Issue[] } {
  const known = bands({ metal, bond });
  const issues: Issue[] = [];
  const aims: AimFromBand[] = [];
  for (const property of aimed) {
    const fitting = known.filter(
      (band) => band.property === property && (band.practice === undefined || band.practice === practice),
    );
    const withFineness = fitting.filter((band) => goesWith(band, gfn));
    const [best] = [...withFineness].sort((a, b) => rank(a, practice) - rank(b, practice));
    if (best) aims.push(aimOf(best));
    else if (fitting.length > 0)
      issues.push(permeabilityAimNeedsFineness([...new Set(fitting.flatMap(finenessWords))]));
    else issues.push(aimNotKnown(property, metal, bond, practice));
  }
  if (bond === "natural" && aims.some(({ property }) => property === "moisture"))
    issues.push(aimFromNaturalSand());
  const weak = aims.filter((aim) => !aim.decides).map(({ property }) => property);
  if (weak.length > 0) issues.push(aimsAreWeak(weak));
  return { aims: Object.freeze(aims), issues };
}

function goesWith({ property, goesWithFineness: range }: Band, gfn: number | undefined): boolean {
  if (property !== "permeability") return true;
  return range !== undefined && gfn !== undefined && gfn >= range.low && gfn <= range.high;
}

const tagOrder: readonly BandTag[] = ["read", "derived", "our own", "common practice", "from memory"];

/** Lower is better: what decides, then recommendations by tag, then what served; within each the practice itself first. */
function rank(band: Band, practice: string): number {
  const worked = band.claim === "worked" ? 100 : 0;
  return worked + 10 * tagOrder.indexOf(band.tag) + (band.practice === practice ? 0 : 5);
}

function aimOf(band: Band): AimFromBand {
  const { property, low, high, unit, basis, tag, clayIs, source } = band;
  const what = clayIs === undefined ? "" : ` ${clayIs}`;
  const of = basis === undefined ? "" : ` of ${basis}`;
  return Object.freeze({
    property,
    low,
    high,
    unit,
    ...(basis === undefined ? {} : { basis }),
    tag,
    decides: decides(band),
    says: `${low} to ${high} ${unit}${what}${of}, from a usual range (${tag}): ${source}.`,
    band,
  });
}

function finenessWords({ goesWithFineness: range }: Band): string[] {
  return range ? [`${range.low} to ${range.high}`] : [];
}
