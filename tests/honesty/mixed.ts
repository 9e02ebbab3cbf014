// A batch in the mixing pan: weighed by the founder, with clay that holds water of its own.

import { mixShares } from "../../lib/sand/mix-shares.ts";
import type { FoundersScale } from "./instruments.ts";

export interface Mixed {
  /** As the log has it. */
  readonly line: string;
  /** As it truly was. */
  readonly shares: ReturnType<typeof mixShares>;
}

export interface Mix {
  readonly sandG: number;
  readonly clayG: number;
  readonly waterG: number;
  readonly sandMoisturePercent: number;
  readonly clayMoisturePercent: number;
}

/** written: what the log says of the moistures of sand and clay, each to within half a point or as its ± says. */
export function mixed(
  scale: FoundersScale,
  { sandG, clayG, waterG, ...moistures }: Mix,
  written: { readonly sand: string; readonly clay: string },
): Mixed {
  return {
    line: `    made of: { sand: ${scale.weigh(sandG)} g, sand moisture: ${written.sand}, bentonite: ${scale.weigh(clayG)} g, bentonite moisture: ${written.clay}, water: ${scale.weigh(waterG)} g, scale: ${scale.name} }\n`,
    shares: mixShares({ sandKg: sandG / 1000, clayKg: clayG / 1000, waterKg: waterG / 1000, ...moistures }),
  };
}

/** Water to pour so that the mix comes to this moisture of damp mass, g. */
export function waterFor(
  percent: number,
  { sandG, clayG, sandMoisturePercent, clayMoisturePercent }: Omit<Mix, "waterG">,
): number {
  const sand = (sandG * sandMoisturePercent) / 100;
  const clay = (clayG * clayMoisturePercent) / 100;
  const dry = sandG - sand + clayG - clay;
  return Math.max(0, (dry * percent) / (100 - percent) - sand - clay);
}
