// One way of mulling against another: how many times as long, and whether both end at the same strength.

import { studentTCumulative } from "../numbers/student-t.ts";
import { drawQuantiles } from "../quantity/draw-summary.ts";
import { drawing, drawsOf } from "../quantity/drawing.ts";
import type { Source } from "../quantity/source.ts";
import type { Spread } from "../quantity/spread.ts";
import type { MullingCurve, MullingTime } from "./mulling-curve.ts";

export interface MullingComparison {
  readonly slower: string;
  readonly quicker: string;
  readonly sharePercent: number;
  /** How many times as long the slower takes: middle and 95 % interval; 0 and ∞ are open ends. */
  readonly times: { readonly value: number; readonly low: number; readonly high: number };
  /** Chance, 0 to 1, that the slower is slower in truth. */
  readonly chance: number;
  /** True where the interval of times does not hold 1. */
  readonly told: boolean;
}

const draws = 4096;
const tabled = 128;

/**
 * Ratio of two curves' times to a share of full bond, by draws from the profile of each, taken as independent, since
 * a share has no bias of the rig. Where a time is open its draws are infinite; two that are infinite together say nothing
 * of the ratio and are counted half as 0, half as ∞. The one with the shorter middle is called the quicker.
 * Source: propagation of distributions (JCGM 101:2008) of confidence distributions; our own use.
 * @example mullingComparison(hand, machine, 95).times // { value: 2.4, low: 1.3, high: Infinity }
 */
export function mullingComparison(
  first: MullingCurve,
  second: MullingCurve,
  sharePercent: number,
): MullingComparison {
  const [a, b] = [first.timeTo(sharePercent), second.timeTo(sharePercent)];
  const swapped = a.value < b.value;
  const [slower, quicker] = swapped ? [second, first] : [first, second];
  const [long, short] = swapped ? [b, a] : [a, b];
  const spreads = [timeSpread(slower, long), timeSpread(quicker, short)] as const;
  const plan = drawing(
    spreads.flatMap(({ sources }) => sources),
    { count: draws },
  );
  const [longs, shorts] = spreads.map((spread) => drawsOf(spread, plan));
  const ratios = longs!.map((time, i) => ratio(time, shorts![i]!, i));
  const chance = ratios.filter((one) => one > 1).length / draws;
  const [low, value, high] = drawQuantiles(ratios, [0.025, 0.5, 0.975]);
  const times = { value: value!, low: low!, high: high! };
  return {
    slower: slower.name,
    quicker: quicker.name,
    sharePercent,
    times,
    chance,
    told: times.low > 1,
  };
}

function ratio(long: number, short: number, draw: number): number {
  if (Number.isFinite(long) && short > 0 && Number.isFinite(short)) return long / short;
  if (long === short) return draw % 2 === 0 ? 0 : Number.MAX_VALUE;
  return long > short ? Number.MAX_VALUE : 0;
}

/** The time as draws of one source whose score is Student's t. */
function timeSpread(curve: MullingCurve, time: MullingTime): Spread {
  const source: Source = {
    id: `minutes to ${time.sharePercent} % of full bond, ${curve.name}`,
    kind: "repeat",
    shape: { kind: "t", df: curve.degreesOfFreedom },
  };
  const table = Array.from({ length: tabled }, (_, k) => time.quantile((k + 0.5) / tabled));
  return {
    value: time.value,
    sources: [source],
    fill(out, start, plan) {
      out.fill(0);
      plan.add(source, 1, out, start);
      for (let j = 0; j < out.length; j++) {
        const p = studentTCumulative(out[j]!, curve.degreesOfFreedom);
        out[j] = table[Math.min(tabled - 1, Math.floor(p * tabled))]!;
      }
    },
  };
}
