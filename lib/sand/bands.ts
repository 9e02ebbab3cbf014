// Typical ranges, looked up for one metal and one bond.

import { invariant } from "../issue.ts";
import { anyMetalBands } from "./any-metal-bands.ts";
import type { Band, BandProperty } from "./band.ts";
import { benchBandsBentonite } from "./bench-bands-bentonite.ts";
import { benchBandsNatural } from "./bench-bands-natural.ts";
import { classTableBandsBentonite, classTableBandsNatural } from "./class-table-bands.ts";
import { bentoniteFinenessBands } from "./fineness-bands-bentonite.ts";
import { naturalFinenessBands } from "./fineness-bands-natural.ts";
import { type Bond, bondNames, type Metal, metalNames } from "./metals.ts";

const all: readonly Band[] = [
  ...naturalFinenessBands,
  ...bentoniteFinenessBands,
  ...benchBandsBentonite,
  ...anyMetalBands,
  ...classTableBandsBentonite,
  ...benchBandsNatural,
  ...classTableBandsNatural,
];

/**
 * The typical ranges that are known for a metal in a bond, the deciding ones and those from memory alike (see
 * decides); sources that disagree all stand. An empty list: none is known.
 *
 * metal: one of metalNames; bond: one of bondNames, and never left out, since a range for natural sand is a
 * steam hazard in bentonite sand where moisture is meant. Anything else throws.
 *
 *     bands({ metal: "grey iron", bond: "bentonite", property: "fineness" })[0]   // 55 to 70, read
 */
export function bands({
  metal,
  bond,
  property,
}: {
  metal: Metal;
  bond: Bond;
  property?: BandProperty;
}): readonly Band[] {
  invariant(bond !== undefined, `bands needs a bond: one of ${bondNames.join(", ")}.`);
  if (!bondNames.includes(bond))
    throw new RangeError(`No bond "${bond}": it is one of ${bondNames.join(", ")}.`);
  if (!metalNames.includes(metal))
    throw new RangeError(`No metal "${metal}": it is one of ${metalNames.join(", ")}.`);
  return Object.freeze(
    all.filter(
      (band) =>
        band.metal === metal && band.bond === bond && (property === undefined || band.property === property),
    ),
  );
}
