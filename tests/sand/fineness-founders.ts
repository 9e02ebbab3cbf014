// Founders' sievings with known truth, and how often the whole ± of the fineness number holds it, in %.

import { spread } from "../../lib/quantity/spread-of.ts";
import { finenessFigure, type SievedPortion } from "../../lib/sand/fineness-figure.ts";
import { standardSieve } from "../../lib/sand/sieve-table.ts";
import { standardToleranceMm } from "../../lib/sand/sieve-tolerance.ts";
import { seeded } from "../seeded.ts";
import { trueFineness } from "./home-stack-coverage.ts";
import { elevenMm, plausibleSand, sievedShares } from "./plausible-sands.ts";

/** Four grabs on a full stack of the founder's own, weighed on a scale that steps by 0.1 g. */
export function fourGrabs(founders: number, draws: number): number {
  return coverage(founders, (seed) => founder(seed, elevenMm, { grabs: 4, wander: 0.03, stepG: 0.1, draws }));
}

/** One sieving on six home sieves. */
export function oneSieving(founders: number, draws: number): number {
  const six = [0.85, 0.425, 0.25, 0.15, 0.106, 0.075];
  return coverage(founders, (seed) => founder(seed + 5000, six, { grabs: 1, wander: 0, stepG: 0.1, draws }));
}

/** A founder's own sieves, anywhere within the standard's tolerance, and what they hold, rounded by the scale. */
function founder(
  seed: number,
  openingsMm: readonly number[],
  { grabs, wander, stepG, draws }: { grabs: number; wander: number; stepG: number; draws: number },
) {
  const random = seeded(seed);
  const { passing } = plausibleSand(random);
  const real = openingsMm.map((mm) => mm + random.uniform(-1, 1) * standardToleranceMm(mm));
  const portions = Array.from({ length: grabs }, (_, p): SievedPortion => {
    const stretch = 2 ** (wander * random.normal());
    const held = sievedShares((mm) => passing(mm * stretch), real).map((percent, k) => {
      const mm = openingsMm[k];
      const sieve = mm === undefined ? undefined : standardSieve(mm)!.sieve;
      const grams = stepG * Math.round((0.5 * percent) / stepG);
      const mass = spread({
        mean: grams,
        halfWidth: stepG,
        kind: "triangular",
        source: `weighing ${k}, grab ${p}, founder ${seed}`,
      });
      return { label: sieve?.label ?? "pan", mass, ...(sieve ? { sieve } : {}) };
    });
    return { id: `founder ${seed}, grab ${p}`, set: "own", held };
  });
  return {
    truth: trueFineness(passing),
    ...finenessFigure({ name: `founder ${seed}`, portions, repeatOf: "grab" }, { draws }),
  };
}

function coverage(founders: number, make: (seed: number) => ReturnType<typeof founder>): number {
  let [covered, asked] = [0, 0];
  for (let n = 0; n < founders; n++) {
    const { truth, figure, stacks } = make(n);
    if (!stacks.every(({ canEstimate }) => canEstimate)) continue;
    asked++;
    if (truth >= figure.low - 0.05 && truth <= figure.high + 0.05) covered++;
  }
  return (100 * covered) / asked;
}
