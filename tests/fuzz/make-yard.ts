// Sections of a log that come from the heap, the pours and the season.

import { a, either, type Field, group, listOf, type Make, named, oneOf } from "./make-parts.ts";

export const heap = group(
  ["mass", a("heapKg"), 90],
  ["clay kind", oneOf("sodium bentonite", "calcium bentonite"), 30],
  ["shape", oneOf("heap", "bin", "layer"), 30],
  ["cover", oneOf("sheet", "none", "lid"), 30],
  ["buckets", a("count"), 10],
  ["bucket", a("kilograms"), 10],
  ["empty", a("kilograms"), 10],
  ["exposed", oneOf("1.2 m2"), 10],
  ["depth", oneOf("300 mm"), 10],
  ["note", a("words"), 10],
);
export const recipe = group(
  ["basis", oneOf("per 100 of sand", "of dry mix", "of damp mass", "by weight")],
  ["clay", oneOf("8.7", "7", "2.2 kg"), 90],
  ["sand", a("kilograms"), 30],
  ["water", a("kilograms"), 20],
  ["additives", named(["wood flour", "coal dust"], oneOf("0.5", "1")), 20],
  ["moisture", a("moisture"), 80],
  ["sand moisture", a("percent"), 50],
  ["clay moisture", a("percent"), 50],
  ["make", a("heapKg"), 60],
  ["muller pan", oneOf("12 kg"), 30],
  ["bucket of", named(["sand", "clay"], a("kilograms")), 10],
);
const price = group(["cost", oneOf("9.50", "14", "1e3")], ["for", oneOf("25 kg", "55 lb")]);
export const prices = group(
  ["currency", oneOf("crowns", "<xx-markup>"), 90],
  ["sand", price, 70],
  ["bentonite", price, 70],
  ["Quarry Lane sand", price, 20],
);
const state = (...more: readonly Field[]): Make =>
  group(
    ...more,
    ["moisture", a("moisture"), 60],
    ["live clay", a("liveClay"), 60],
    ["gfn", a("gfn"), 50],
    ["fines", a("percent"), 20],
    ["compactability", a("compactability"), 20],
    ["green compression", a("strength"), 20],
  );
export const wanted = state();
export const measured = listOf(state(["date", a("date")]), 1, 4);
const pour = group(
  ["metal", a("kilograms")],
  ["alloy", a("words"), 30],
  ["at", a("pouring"), 60],
  ["section", oneOf("8 mm", "1/4 in"), 50],
  ["scrap share", oneOf("30 %", "60 %"), 30],
  ["degassed", a("yesNo"), 30],
);
const happening: Make = (dice, wrong) =>
  group(
    ["date", a("date")],
    dice.pick<Field>([
      ["pour", pour],
      ["lost", a("kilograms")],
      ["rebond", group(["clay", a("kilograms")], ["clay moisture", a("percent"), 50])],
      ["new sand", either(a("kilograms"), group(["mass", a("kilograms")]))],
      ["water", a("kilograms")],
      ["tested", state()],
      ["weather", a("words")],
    ]),
    ["note", a("words"), 10],
  )(dice, wrong);
export const events = listOf(happening, 1, 12);
export const planned = group(
  ["pours", a("count")],
  ["metal", a("kilograms")],
  ["section", oneOf("8 mm"), 70],
  ["every", a("days"), 80],
  ["lost", a("kilograms"), 20],
);
export const flask = group(
  ["volume", a("litres")],
  ["casting volume", oneOf("0.9 L"), 80],
  ["density", oneOf("1.6 g/cm3"), 20],
);
export const weather = group(
  ["air", a("celsius")],
  ["sand", a("celsius"), 20],
  ["humidity", oneOf("60 %", "100 %", "0 %"), 90],
  ["wind", a("wind"), 70],
  ["wind at", oneOf("10 m", "2 m"), 30],
  ["hours", a("hours"), 80],
  ["start", a("moisture"), 70],
  ["want", a("moisture"), 50],
);
const fault = oneOf("gas holes", "pinholes", "rough skin", "swells", "misruns", "scabs", "penetration");
export const castings = listOf(
  group(
    ["date", a("date")],
    ["name", oneOf("lamp base", "hinge", "pulley")],
    ["of pour", a("date"), 10],
    ["faults", either(listOf(fault, 1, 2), oneOf("none"), fault)],
    ["note", a("words"), 10],
  ),
  1,
  10,
);
export const questions = listOf(
  group(
    ["fault", fault],
    ["against", oneOf("moisture", "permeability", "degassed", "at", "scrap share", "compactability")],
    ["limit", oneOf("4 %", "48 %", "720 °C", "80"), 30],
  ),
  1,
  4,
);
export const muller = group(
  ["motor", a("rpm"), 90],
  ["reduction", oneOf("60", "48"), 80],
  ["pan diameter", oneOf("500 mm"), 80],
  ["wheel width", oneOf("60 mm"), 60],
  ["wheels", a("count"), 60],
  ["ploughs", a("count"), 20],
  ["load", a("kilograms"), 60],
  ["minutes", a("minuteCount"), 60],
  ["sand", a("celsius"), 20],
);
export const blend = group(
  ["of", listOf(oneOf("Quarry Lane sand", "Brickfield sand"), 2, 2)],
  ["to", group(["gfn", a("gfn"), 80], ["fines", a("percent"), 10], ["note", a("words"), 5])],
);
export const remind = named(
  ["moisture", "compactability", "green compression", "gfn", "clay by wash"],
  a("days"),
);
