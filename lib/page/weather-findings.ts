// What a page says of water for tomorrow, in its own units.

import { listed } from "../finding/batch-names.ts";
import type { Finding } from "../finding/finding.ts";
import * as say from "../finding/weather-messages.ts";
import { type CoveredWater, type WeatherWater, weatherWater } from "../finding/weather-water.ts";
import { heapFigure } from "../log/heap.ts";
import type { Log } from "../log/types.ts";
import type { Figure } from "../quantity/figure.ts";
import { printNumber } from "../quantity/print.ts";
import { airingHours } from "../sand/airing.ts";
import { latentHeatKJKg } from "../sand/humid-air.ts";
import { figureInShownUnit, inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";
import { massText } from "./trial-print.ts";

type System = ShownUnits["recipe"];

export const coverWords = { none: "uncovered", sheet: "a sheet", lid: "a lid" } as const;

/**
 * The findings of water for tomorrow, the answer first; one that says what is missing, or none without `weather:`.
 * @example weatherFindings(log).map(({ text }) => text)
 */
export function weatherFindings(
  log: Log,
  units: ShownUnits = shownUnits(log),
  answer = weatherWater(log),
): readonly Finding[] {
  if (!answer) return [];
  if (!answer.known) return [say.notSaid(listed(answer.missing))];
  const { known } = answer;
  const system = units.recipe;
  const [open, sheet, lid] = known.each as [CoveredWater, CoveredWater, CoveredWater];
  const covered = known.own === "lid" ? lid : sheet;
  const hours = `${printNumber(known.hours, 1).replace(/\.0$/, "")} h`;
  const points = covered.lost.figure.high;
  const lostOpen = say.lostOpen(
    massRange(open.lost.figure, system),
    hours,
    weatherWords(known, system),
    comesTo(open, known),
    known.atLeast,
  );
  const lostCovered = say.lostCovered(
    massText(roundUp(points), system),
    pointsOf(points, log),
    coverWords[known.own === "lid" ? "lid" : "sheet"],
  );
  const [first, second] = known.own === "none" ? [lostOpen, lostCovered] : [lostCovered, lostOpen];
  return [
    ...temperFindings(known, system, hours, open, covered),
    first,
    second,
    ...(open.lost.skinMm > 1
      ? [
          say.drySkin(
            `${printNumber(inShownUnit(open.lost.skinMm, "mm", system).value, system === "US" ? 1 : 0)} ${shownUnit("mm", system)}`,
          ),
        ]
      : []),
    say.openWaterBound(
      massText(open.lost.openWater.airKg, system),
      massText(open.lost.openWater.wetBulbKg, system),
    ),
    ...hotFinding(log, known, system),
  ];
}

function temperFindings(
  known: WeatherWater,
  system: System,
  hours: string,
  open: CoveredWater,
  covered: CoveredWater,
): readonly Finding[] {
  const { want } = known;
  if (want === undefined || !open.temper || !covered.temper) return [];
  const from = known.start === undefined || typeof known.start === "number" ? known.start : known.start.value;
  if (from !== undefined && from > open.temper.high) return [tooWet(known, from, want, system)];
  const { low, high } = open.temper;
  // Dosing goes by the lower end: what is missing is soon added.
  const under = Math.max(want, covered.temper.low);
  return [
    say.coverInstead(
      `${printNumber(want, 2)} % of damp mass`,
      hours,
      `${printNumber(low, 2)} to ${printNumber(high, 2)} %`,
      `${printNumber(under, 2)} %`,
    ),
  ];
}

/** Two inches: a layer that can be turned with a rake. */
const AIRED_MM = 50;

function tooWet(
  { airC, humidityPercent, windMS }: WeatherWater,
  from: number,
  want: number,
  system: System,
): Finding {
  const { low, high } = airingHours({
    layerMm: AIRED_MM,
    fromOfDampPercent: from,
    toOfDampPercent: want,
    airC,
    relativeHumidityPercent: humidityPercent,
    airMS: windMS,
  });
  const layer = inShownUnit(AIRED_MM, "mm", system);
  const hours = Number.isFinite(high)
    ? `${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))} h`
    : "longer than it can be waited for";
  return say.tooWetForIt(
    `${printNumber(from, 2)} %`,
    `${printNumber(want, 2)} % of damp mass`,
    `${printNumber(layer.value, 0)} ${layer.unit}`,
    hours,
  );
}

function hotFinding(log: Log, known: WeatherWater, system: System): readonly Finding[] {
  const sandC = log.weather?.sandC?.value;
  const massKg = heapFigure(log)?.figure.value;
  if (!known.hotSand || sandC === undefined || massKg === undefined) return [];
  const mostKg = (massKg * (sandC - known.airC)) / latentHeatKJKg(Math.min(60, sandC));
  const sand = inShownUnit(sandC, "°C", system);
  return [say.hotSand(`${printNumber(sand.value, 0)} ${sand.unit}`, massText(mostKg, system))];
}

/** ": from 3.80 % it comes down to 3.0 to 3.6 % of damp mass, once it is mixed". */
function comesTo({ after }: CoveredWater, { start }: WeatherWater): string {
  if (!after || start === undefined) return "";
  const from = typeof start === "number" ? start : start.value;
  const to = `${printNumber(after.low, 1)} to ${printNumber(after.high, 1)}`;
  return `: from ${printNumber(from, 2)} % it comes to ${to} % of damp mass, once it is mixed`;
}

/** "0.27 to 1.2 kg": two digits of each end, since the middle says little. */
function massRange(figure: Figure, system: System): string {
  const { low, high, unit } = figureInShownUnit(figure, "kg", system);
  const digits = (x: number): string => String(Number(x.toPrecision(2)));
  return `${digits(Math.max(0, low))} to ${digits(high)} ${unit}`;
}

function pointsOf(kg: number, log: Log): string {
  const massKg = heapFigure(log)?.figure.value;
  if (massKg === undefined) return "";
  return `${printNumber(roundUp((100 * kg) / massKg), 2)} points of moisture`;
}

/** Two digits, never below what it stands for. */
function roundUp(value: number): number {
  if (!(value > 0)) return 0;
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Math.ceil(value / step - 1e-9) * step;
}

function weatherWords({ airC, humidityPercent }: WeatherWater, system: System): string {
  const air = inShownUnit(airC, "°C", system);
  return `${printNumber(air.value, 0)} ${air.unit} and ${printNumber(humidityPercent, 0)} % humidity`;
}
