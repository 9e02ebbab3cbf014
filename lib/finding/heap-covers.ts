// What a season's water would be, did the heap stand under another cover between pours.

import type { HeapCover } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { linearAt } from "../numbers/interpolate.ts";
import { normalCumulative } from "../numbers/normal.ts";
import type { OwnBurnOut } from "../trial/own-burn-out.ts";
import { weatherWater } from "./weather-water.ts";

const told: { readonly [cover in HeapCover]: string } = {
  none: "uncovered",
  sheet: "under a sheet",
  lid: "under a lid",
};

const places = Array.from({ length: 41 }, (_, i) => (i + 0.5) / 41);
/** Scores of a pour that no plan comes to: the weather's own, apart from those of the pours. */
const beyondThePlan = 1001;

/**
 * The water that the log's weather takes in place of what the record says dried from pour to pour, kg for each draw of the
 * burn-out, for the heap uncovered and covered; steam at the pour and sand that is shaken out hot are not in it. Empty where the log says nothing of weather, or not enough.
 */
export function dryingUnderCovers(
  log: Log,
  burnOut: Pick<OwnBurnOut, "now" | "scores">,
): readonly { readonly name: string; readonly driedKg: Float64Array }[] {
  const weather = weatherWater(log)?.known;
  if (!weather) return [];
  const scores = burnOut.scores(beyondThePlan);
  const shares = Float64Array.from(burnOut.now, (_, i) => normalCumulative(scores[i]!));
  return weather.each
    .filter(({ cover }) => cover !== "lid")
    .map(({ cover, lost }) => {
      const quantiles = places.map((place) => lost.figure.quantile(place));
      const driedAt = (p: number): number =>
        linearAt(places, quantiles, Math.min(places.at(-1)!, Math.max(places[0]!, p)));
      return {
        name: `dried by ${Math.round(weather.hours)} h ${told[cover]} alone`,
        driedKg: shares.map(driedAt),
      };
    });
}
