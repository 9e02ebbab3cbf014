// Mulling trials, and the muller itself.

import { mullingTooFew } from "./complaints-season.ts";
import { fieldsOf, mapOf, textOf, uniqueEntries } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { given } from "./given.ts";
import { mullerKeys, mullingKeys, mullingReadingKeys } from "./heap-keys.ts";
import type { LoggedMuller, MullingReading, MullingTrial } from "./heap-record.ts";
import { measuredOf } from "./measured.ts";
import { type Entry, type LogNode, type MapNode, plainName, type Report } from "./node.ts";
import { compactabilityIn, mapsOf, massIn, moistureIn, numberIn, strengthIn } from "./read-season-fields.ts";

export function readMulling(entry: Entry | undefined, report: Report): MullingTrial[] {
  const map = mapOf(entry?.value, "mulling", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap((one) => {
    const name = one.key.trim();
    if (plainName(name) === "note") {
      textOf(one.value, name, report);
      return [];
    }
    const body = mapOf(one.value, name, report);
    return body ? [trialOf(name, body, one, report)] : [];
  });
}

function trialOf(name: string, map: MapNode, { keyPlace }: Entry, report: Report): MullingTrial {
  const fields = fieldsOf(map, mullingKeys, `of the mulling "${name}"`, report);
  textOf(fields.get("note"), "note", report);
  const loadKg = massIn({ fields, report }, "load");
  const readings = mapsOf(fields.get("readings"), "readings", report)
    .flatMap((one) => readingOf(one, report) ?? [])
    .sort((a, b) => a.minutes.value - b.minutes.value);
  const times = new Set(readings.map(({ minutes }) => minutes.value)).size;
  if (times < 4 && !fields.holed) report(mullingTooFew(name, String(times)), keyPlace);
  return { name, ...given({ loadKg }), readings, place: keyPlace };
}

function readingOf(map: MapNode, report: Report): MullingReading | undefined {
  const fields = fieldsOf(map, mullingReadingKeys, "of a reading while mulling", report);
  textOf(fields.get("note"), "note", report);
  const reader = { fields, report };
  const minutes = numberIn(reader, "minutes", "min", 10_000, { aboveZero: false });
  const greenCompressionKPa = strengthIn(reader);
  const more = given({
    compactabilityPercent: compactabilityIn(reader),
    moisturePercent: moistureIn(reader, "moisture"),
  });
  return minutes && greenCompressionKPa && { minutes, greenCompressionKPa, ...more, place: map.place };
}

/** "60", as well as "60 : 1" and "60 to 1". */
function reductionOf(node: LogNode | undefined, report: Report): Measured | undefined {
  const text = node?.kind === "text" ? { ...node, text: node.text.replace(/\s*(?::|to)\s*1\s*$/, "") } : node;
  return measuredOf(text, { what: "reduction", unit: "", most: 100_000, aboveZero: true }, report);
}

export function readMuller(entry: Entry | undefined, report: Report): LoggedMuller | undefined {
  const map = mapOf(entry?.value, "muller", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, mullerKeys, "of the muller", report);
  textOf(fields.get("note"), "note", report);
  const reader = { fields, report };
  return {
    ...given({
      motorRpm: numberIn(reader, "motor", "rpm", 100_000),
      reduction: reductionOf(fields.get("reduction"), report),
      panDiameterMm: numberIn(reader, "pan diameter", "mm", 10_000),
      wheelWidthMm: numberIn(reader, "wheel width", "mm", 5000),
      wheels: numberIn(reader, "wheels", "", 20),
      ploughs: numberIn(reader, "ploughs", "", 20),
      loadKg: massIn(reader, "load"),
      minutes: numberIn(reader, "minutes", "min", 10_000),
      sandC: numberIn(reader, "sand", "°C", 500, { least: -30, aboveZero: false }),
    }),
    place: entry.keyPlace,
  };
}
