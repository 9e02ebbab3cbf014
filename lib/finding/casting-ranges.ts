// The range that a property of the sand is held against beside a fault: the founder's own aim, else a usual range.

import type { TestName } from "../log/batch.ts";
import type { Log } from "../log/types.ts";
import { aimsFromBands } from "../sand/aims-from-bands.ts";
import { type Band, decides } from "../sand/band.ts";
import { bands } from "../sand/bands.ts";
import type { CauseProperty } from "../sand/casting-fault.ts";
import { type Bond, bondNames, metalNamed } from "../sand/metals.ts";

export interface CastingRange {
  readonly low: number;
  readonly high: number;
  /** True for an aim of the founder's own and for a range that was read as a recommendation; else it is a hint. */
  readonly decides: boolean;
  /** "the log's own aim", or where the range comes from, with its tag. */
  readonly source: string;
}

/** gfn: that of the heap, which a permeability goes with. */
export function castingRange(
  property: CauseProperty,
  { aims, metal, bond }: Pick<Log, "aims" | "metal" | "bond">,
  gfn: number | undefined,
): CastingRange | undefined {
  const own = aims.find(({ test }) => test === (property as TestName));
  if (own) return { low: own.low, high: own.high, decides: true, source: "the log's own aim" };
  const named = metal === undefined ? undefined : metalNamed(metal);
  if (!named || !bondNames.includes(bond as Bond)) return undefined;
  const of = { metal: named, bond: bond as Bond };
  const band =
    property === "fineness" || property === "live clay"
      ? firstOf(
          bands({ ...of, property: property === "fineness" ? "fineness" : "clay" }).filter(
            ({ clayIs, claim }) =>
              claim === "recommended" && (property === "fineness" || clayIs === "live bentonite"),
          ),
        )
      : aimsFromBands({ ...of, ...(gfn === undefined ? {} : { gfn }) }).aims.find(
          (aim) => aim.property === property,
        )?.band;
  if (!band) return undefined;
  return {
    low: band.low,
    high: band.high,
    decides: decides(band),
    source: `${band.source} (${band.tag})`,
  };
}

function firstOf(known: readonly Band[]): Band | undefined {
  return known.find(decides) ?? known.find(({ practice }) => practice === "hand-rammed") ?? known[0];
}
