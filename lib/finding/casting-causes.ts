// What a fault is usually put down to in the sand, against where the sand stood on pours with it and without.

import type { Log } from "../log/types.ts";
import { type CauseProperty, causeDecides, type SandCause } from "../sand/casting-fault.ts";
import { castingFaultRows } from "../sand/casting-faults.ts";
import { metalNamed } from "../sand/metals.ts";
import type { CastPour } from "../trial/cast-pours.ts";
import type { FaultCount, FaultsAndSand } from "../trial/faults-and-sand.ts";
import type { SandThatDay } from "../trial/sand-that-day.ts";
import { type CastingRange, castingRange } from "./casting-ranges.ts";
import { placeBatch } from "./placed.ts";
import { taggedSource } from "./tagged-source.ts";

/** Where the sand stood on some pours against the side that the cause is on. */
export interface SideCount {
  /** The whole 95 % interval on that side. */
  readonly on: number;
  /** The interval runs across the edge. */
  readonly notTold: number;
  /** Pours with a test near enough to stand for them. */
  readonly tested: number;
}

export interface CauseStanding {
  readonly cause: SandCause;
  readonly range?: CastingRange;
  readonly withIt?: SideCount;
  readonly without?: SideCount;
  /** True: read in a source, held against a range that decides, and on that side on a pour with the fault. */
  readonly points: boolean;
}

/** The test of the property that stands nearest to the pour; undefined where none is near enough. */
function nearTest({ sand }: CastPour, property: string): SandThatDay | undefined {
  return sand
    .filter((one) => one.series.property === property && one.fresh)
    .sort((a, b) => a.ageDays - b.ageDays)[0];
}

/** The last grain fineness number of the log's diary. */
function heapFineness({ diary }: Pick<FaultsAndSand, "diary">): number | undefined {
  const all = diary.series.filter(({ property }) => property === "fineness").flatMap(({ values }) => values);
  return all.toSorted((a, b) => a.day - b.day).at(-1)?.value;
}

/** In the order of the table; causes of another metal than the log's are passed over. */
export function causeStandings(
  { fault, withIt, without }: FaultCount,
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
): CauseStanding[] {
  const metal = log.metal === undefined ? undefined : metalNamed(log.metal);
  const gfn = heapFineness(report);
  return castingFaultRows[fault].sand
    .filter((cause) => cause.metal === undefined || cause.metal === metal)
    .map((cause): CauseStanding => {
      const { test } = cause;
      const range = test && castingRange(test.property, log, gfn);
      if (!test || !range) return { cause, points: false };
      const counted = (pours: readonly CastPour[]) => sidesOf(pours, test.property, test.side, range);
      const own = counted(withIt);
      const points = causeDecides(cause) && range.decides && own.on > 0;
      return { cause, range, withIt: own, without: counted(without), points };
    });
}

function sidesOf(
  pours: readonly CastPour[],
  property: CauseProperty,
  side: "high" | "low",
  { low, high }: CastingRange,
): SideCount {
  const places = pours.flatMap((pour) => {
    const test = nearTest(pour, property);
    return test ? [placeBatch(pour.name, test.reading, low, high)] : [];
  });
  const wanted = side === "high" ? "above" : "below";
  const edge = side === "high" ? high : low;
  return {
    on: places.filter(({ where, atLeast }) => where === wanted && !atLeast).length,
    notTold: places.filter(
      ({ where, value, atLeast }) =>
        (where === wanted && atLeast) ||
        (where === "not told" && (side === "high" ? value > low : value < high) && Number.isFinite(edge)),
    ).length,
    tested: places.length,
  };
}

/** Where the link of a cause comes from, with its tag. */
export function linkSource({ source, tag }: SandCause): string {
  return taggedSource(source, tag);
}
