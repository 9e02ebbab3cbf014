// The usual ranges that stand in where a founder has no aim, and the fineness that they go with.

import type { Issue } from "../issue.ts";
import type { Batch, TestName } from "../log/batch.ts";
import { sievedPortion } from "../log/sieved-portion.ts";
import type { Log, Sand, Sieving } from "../log/types.ts";
import { mean } from "../numbers/summary.ts";
import { aimsFromBands } from "../sand/aims-from-bands.ts";
import { finenessFigure } from "../sand/fineness-figure.ts";
import { type Bond, metalNamed } from "../sand/metals.ts";
import type { WantedRange } from "./trial-property.ts";

export interface UsualAims {
  readonly ranges: ReadonlyMap<TestName, WantedRange>;
  readonly issues: readonly Issue[];
}

/** Of the log's metal and bond; none where it says neither. Of tests that nobody made nothing is told. */
export function usualAims(
  { metal, bond }: Pick<Log, "metal" | "bond">,
  gfn: number | undefined,
  tested: readonly TestName[],
): UsualAims {
  const known = metal === undefined ? undefined : metalNamed(metal);
  if (!known || !bond) return { ranges: new Map(), issues: [] };
  const { aims, issues } = aimsFromBands({
    metal: known,
    bond: bond as Bond,
    ...(gfn === undefined ? {} : { gfn }),
  });
  const told = issues.filter(
    ({ code }) => code !== "sand/aim-needs-fineness" || tested.includes("permeability"),
  );
  const ranges = new Map(
    aims.map(({ property, low, high, says }) => [property as TestName, { low, high, says, own: false }]),
  );
  return { ranges, issues: told };
}

/**
 * The grain fineness number of the sand of a trial, by the log's own sieving: of the one sand that the batches name,
 * else of the one sand of the log that was sieved. Undefined where that leaves more than one or none, where the stack is
 * too poor to estimate, or where a used or natural sand was sieved with its clay.
 */
export function finenessOfTrial(
  { sands, bond }: Pick<Log, "sands" | "bond">,
  batches: readonly Batch[],
): number | undefined {
  const named = new Set(batches.flatMap(({ sand }) => sand ?? []));
  const sieved = sands.filter((sand) => usable(sand).length > 0);
  const [sand, ...more] = named.size > 0 ? sieved.filter(({ name }) => named.has(name)) : sieved;
  if (!sand || more.length > 0 || named.size > 1) return undefined;
  const sievings = usable(sand);
  const clayed = sand.state === "used" || bond === "natural";
  if (clayed && sievings.some(({ washed }) => washed !== true)) return undefined;
  const { each, stacks } = finenessFigure({ name: sand.name, portions: sievings.map(sievedPortion) });
  return stacks.every(({ canEstimate }) => canEstimate) ? mean(each) : undefined;
}

function usable({ sievings }: Sand): readonly Sieving[] {
  return sievings.filter((sieving) => sieving.usable);
}
