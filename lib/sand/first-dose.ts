// Water is a first dose: A now, mull, test again; about B in all.

import { combine, type Input } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { requireBelow100, requireFromZero } from "./require.ts";
import { dryMixToAddKg, waterNeedKg } from "./water-to-add.ts";

/** Share of the chance that the first dose is already too much. */
const TOO_MUCH = 0.1;

export type FirstDose =
  /** Add nowKg, mull, test again; expect to need inAllKg, the first dose with it. */
  | { readonly verdict: "add"; readonly nowKg: number; readonly inAllKg: Figure }
  /** The heap cannot be told from its aim: no water now, mull and test again. */
  | { readonly verdict: "hold"; readonly nowKg: 0; readonly inAllKg: Figure }
  /** Water must go, loseKg of it, by drying; or dryMixKg of dry sand with the heap's own share of dry clay go in. */
  | {
      readonly verdict: "too wet";
      readonly nowKg: 0;
      readonly loseKg: Figure;
      readonly dryMixKg: number;
      readonly ways: readonly string[];
    };

/** Moisture from which compactability may already be falling, % of damp mass: our own. */
const WET_FROM = 5;

/** How an over-wet heap is brought back, mildest first. Common practice. */
const dryingWays = Object.freeze([
  "Spread the sand a hand deep where air moves over it, turn it every half hour, and test again after each turn.",
  "Keep it out of the mould until it has come back: over-wet sand can erupt under metal.",
  "In a hurry, mull in dry sand together with its share of dry clay, with a mask on; dry sand alone thins the clay.",
]);

/**
 * How much water to add at once, from moisture. The need of water, heap (to − from) / (100 − to), is drawn with the
 * doubt of all three; nowKg is its 10 % quantile, so that nine times in ten it is not too much, and inAllKg its middle
 * with its ±. Where the need has more than nine chances in ten of being below zero the heap is too wet; where neither
 * holds it cannot be told from its aim.
 *
 * heapKg: damp mass, > 0, kg. fromOfDampPercent, toOfDampPercent: % of damp mass, below 100. Spreads, figures or
 * numbers; a number has no doubt. Else RangeError.
 * Source: mass balance; the 10 % quantile is our own. A kitchen scale's moisture is often worse than the hand:
 * firstDoseByCompactabilityKg steers better.
 * @example
 * firstDoseKg({ heapKg: 50, fromOfDampPercent: spread("2.6 ± 0.3 %"), toOfDampPercent: 3.5 })
 * // { verdict: "add", nowKg: 0.34, inAllKg: { value: 0.47, low: 0.32, high: 0.61 } }
 */
export function firstDoseKg(
  wetting: {
    readonly heapKg: Input;
    readonly fromOfDampPercent: Input;
    readonly toOfDampPercent: Input;
  },
  options: { readonly draws?: number } = {},
): FirstDose {
  const { heapKg, fromOfDampPercent, toOfDampPercent } = wetting;
  const inputs = { heapKg, fromOfDampPercent, toOfDampPercent };
  return doseOf(
    combine(waterNeedKg, inputs, { ...options, as: "water need" }),
    combine(lossKg, inputs, { ...options, as: "water to lose" }),
    () =>
      dryMixToAddKg({
        heapKg: middle(heapKg),
        fromOfDampPercent: middle(fromOfDampPercent),
        toOfDampPercent: middle(toOfDampPercent),
      }),
  );
}

/**
 * How much water to add at once, from compactability and the founder's own water sensitivity: moisture is to move by
 * sensitivity × (to − from) / 10, and the water follows as in firstDoseKg.
 *
 * heapKg: damp mass, > 0, kg. from…, to…: compactability, % of height. sensitivityPercent: points of moisture for 10
 * of compactability (waterSensitivity), 0 or more, as found on the dry side: past its top compactability falls with
 * more water, so a sodden heap reads dry. From a moisture of 5 % on the answer is to hold; below zero in a draw counts as zero. moistureOfDampPercent: about what the heap
 * holds, 3.5 unless given; a point of it moves the water by a hundredth. Spreads, figures or numbers. Else RangeError.
 * Source: TJFS-109 for the sensitivity; mass balance. ± 2 points of compactability are about ± 0.04 % water.
 * @example
 * firstDoseByCompactabilityKg({ heapKg: 50, fromCompactabilityPercent: 35, toCompactabilityPercent: 45,
 *   sensitivityPercent: 0.21 }) // { verdict: "add", nowKg: 0.109 }
 */
export function firstDoseByCompactabilityKg(
  wetting: {
    readonly heapKg: Input;
    readonly fromCompactabilityPercent: Input;
    readonly toCompactabilityPercent: Input;
    readonly sensitivityPercent: Input;
    readonly moistureOfDampPercent?: Input;
  },
  options: { readonly draws?: number } = {},
): FirstDose {
  const { heapKg, fromCompactabilityPercent, toCompactabilityPercent, sensitivityPercent } = wetting;
  const inputs = {
    heapKg,
    from: fromCompactabilityPercent,
    to: toCompactabilityPercent,
    sensitivity: sensitivityPercent,
    moisture: wetting.moistureOfDampPercent ?? 3.5,
  };
  const middles = {
    heapKg: middle(heapKg),
    from: middle(inputs.from),
    to: middle(inputs.to),
    sensitivity: middle(inputs.sensitivity),
    moisture: middle(inputs.moisture),
  };
  requireFromZero("firstDoseByCompactabilityKg", {
    fromCompactabilityPercent: middles.from,
    toCompactabilityPercent: middles.to,
    sensitivityPercent: middles.sensitivity,
    moistureOfDampPercent: middles.moisture,
  });
  requireBelow100("firstDoseByCompactabilityKg", {
    fromCompactabilityPercent: middles.from,
    toCompactabilityPercent: middles.to,
  });
  const needKg = combine((values) => waterNeedKg(wettingOf(values)), inputs, {
    ...options,
    as: "water need by compactability",
  });
  if (middles.moisture >= WET_FROM) return { verdict: "hold", nowKg: 0, inAllKg: needKg };
  return doseOf(
    needKg,
    combine((values) => lossKg(wettingOf(values)), inputs, {
      ...options,
      as: "water to lose by compactability",
    }),
    () => dryMixToAddKg(wettingOf(middles)),
  );
}

function wettingOf(values: {
  readonly heapKg: number;
  readonly from: number;
  readonly to: number;
  readonly sensitivity: number;
  readonly moisture: number;
}): { heapKg: number; fromOfDampPercent: number; toOfDampPercent: number } {
  const rise = (Math.max(0, values.sensitivity) * (values.to - values.from)) / 10;
  return {
    heapKg: values.heapKg,
    fromOfDampPercent: values.moisture,
    toOfDampPercent: values.moisture + rise,
  };
}

const lossKg = (wetting: Parameters<typeof waterNeedKg>[0]): number => -waterNeedKg(wetting);

const middle = (input: Input): number => (typeof input === "number" ? input : input.value);

function doseOf(needKg: Figure, loseKg: Figure, dryMixKg: () => number): FirstDose {
  const nowKg = needKg.quantile(TOO_MUCH);
  if (nowKg > 0) return { verdict: "add", nowKg, inAllKg: needKg };
  if (needKg.quantile(1 - TOO_MUCH) < 0)
    return { verdict: "too wet", nowKg: 0, loseKg, dryMixKg: dryMixKg(), ways: dryingWays };
  return { verdict: "hold", nowKg: 0, inAllKg: needKg };
}
