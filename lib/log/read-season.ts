// Weather, flask and plan: what a forecast of the heap starts from.

import { burntSand, castingAboveFlask, humidityFraction } from "./complaints-season.ts";
import { fieldsOf, mapOf, textOf } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { given } from "./given.ts";
import { flaskKeys, planKeys, weatherKeys } from "./heap-keys.ts";
import type { LoggedFlask, LoggedPlan, LoggedWeather } from "./heap-record.ts";
import type { Entry, Report } from "./node.ts";
import { type FieldReader, massIn, moistureIn, numberIn } from "./read-season-fields.ts";

function sectionOf(
  entry: Entry | undefined,
  what: string,
  known: readonly string[],
  report: Report,
): (FieldReader & { readonly place: Entry["keyPlace"] }) | undefined {
  const map = mapOf(entry?.value, what, report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, known, `of ${what}`, report);
  textOf(fields.get("note"), "note", report);
  return { fields, report, place: entry.keyPlace };
}

export function readWeather(entry: Entry | undefined, report: Report): LoggedWeather | undefined {
  const section = sectionOf(entry, "weather", weatherKeys, report);
  if (!section) return undefined;
  const cold = { least: -60, aboveZero: false };
  const airC = numberIn(section, "air", "°C", 60, cold);
  if (airC && airC.value > 50) report(burntSand(airC.text), airC.place);
  const humidityPercent = numberIn(section, "humidity", "%", 100, { aboveZero: false });
  if (humidityPercent && isFraction(humidityPercent))
    report(humidityFraction(humidityPercent.text, humidityPercent.value), humidityPercent.place);
  return {
    ...given({
      airC,
      sandC: numberIn(section, "sand", "°C", 500, cold),
      humidityPercent: humidityPercent && !isFraction(humidityPercent) ? humidityPercent : undefined,
      windMS: numberIn(section, "wind", "m/s", 60, { aboveZero: false }),
      windAtM: numberIn(section, "wind at", "m", 100),
      hours: numberIn(section, "hours", "h", 10_000),
      startPercent: moistureIn(section, "start"),
      wantPercent: moistureIn(section, "want"),
    }),
    place: section.place,
  };
}

/** No air outdoors is as dry as one per cent. */
const isFraction = ({ value, text }: Measured): boolean => value > 0 && value <= 1 && !text.includes("%");

export function readFlask(entry: Entry | undefined, report: Report): LoggedFlask | undefined {
  const section = sectionOf(entry, "flask", flaskKeys, report);
  if (!section) return undefined;
  const volumeL = numberIn(section, "volume", "l", 1e6);
  const castingVolumeL = numberIn(section, "casting volume", "l", 1e6);
  const densityGCm3 = numberIn(section, "density", "g/cm³", 3);
  const fits = !volumeL || !castingVolumeL || castingVolumeL.value < volumeL.value;
  if (!fits) report(castingAboveFlask(castingVolumeL.text, volumeL.text), castingVolumeL.place);
  return {
    ...given(fits ? { volumeL, castingVolumeL, densityGCm3 } : { densityGCm3 }),
    place: section.place,
  };
}

export function readPlan(entry: Entry | undefined, report: Report): LoggedPlan | undefined {
  const section = sectionOf(entry, "planned", planKeys, report);
  if (!section) return undefined;
  return {
    ...given({
      pours: numberIn(section, "pours", "", 10_000),
      metalKg: massIn(section, "metal"),
      sectionMm: numberIn(section, "section", "mm", 2000),
      everyDays: numberIn(section, "every", "d", 1000),
      lostKg: massIn(section, "lost"),
    }),
    place: section.place,
  };
}
