// What to do next after a mulling trial: which readings would tell most.

import { enoughMinutes } from "../finding/mulling-findings.ts";
import type { MulledWay, MullingReport } from "../finding/mulling-report.ts";
import { printNumber } from "../quantity/print.ts";
import type { Text } from "./blocks.ts";

/**
 * Steps for each way of mulling, then for the muller.
 * @example mullingNext(mullingReport(log))
 */
export function mullingNext({ ways, logged }: MullingReport): Text[] {
  if (ways.length === 0)
    return [
      "Mull one mix, stop and lock off the machine, take a sample at 1, 2, 4, 8, 15 and 20 minutes after the water, test its green compression strength, and write the readings under mulling.",
    ];
  return [
    ...(logged
      ? ["Stop the machine and unplug it for every sample, also for the last one of an evening."]
      : []),
    ...ways.flatMap(stepsOf),
    ...(logged && !logged.sandC
      ? [
          "Measure the sand's temperature in its middle before it goes back into the muller, and write it as sand.",
        ]
      : []),
    ...(ways.some(({ times }) => Number.isFinite(times.at(-1)?.high))
      ? ["Repeat one reading of the flat part on another day: it shows what a day moves."]
      : []),
  ];
}

function stepsOf({ trial, curve, times, moistureDrift }: MulledWay): Text[] {
  const time = times.at(-1);
  const { name } = trial;
  if (!curve || !time) return [`${name}: read at three different times at least, better at six.`];
  const last = curve.longestMin;
  const steps: Text[] = [];
  if (!Number.isFinite(time.high) || curve.straight)
    steps.push(
      `${name}: mull on and read at ${printNumber(2 * last, 0)} and ${printNumber(3 * last, 0)} minutes, water kept as it is.`,
    );
  else if (time.high > last)
    steps.push(
      `${name}: mull on and read at ${enoughMinutes(time.high)} minutes, which is beyond what was tried; until then its interval leans on the curve's form.`,
    );
  else
    steps.push(
      `${name}: mull ${enoughMinutes(time.high)} minutes after the water with a load like this one; a reading or two near ${printNumber(time.value, 0)} minutes would narrow that.`,
    );
  if (moistureDrift === undefined)
    steps.push(
      `${name}: read moisture with the first and the last sample, to see whether the sand dries while it is mulled.`,
    );
  return steps;
}
