// The units of the bench: spelling, other names, exact size in SI, and where the size comes from.

import type { Dimension } from "./unit.ts";
import type { UnitRow } from "./unit-table-row.ts";
import { volumeRows } from "./unit-table-volume.ts";

const mass: Dimension = [1, 0, 0, 0];
const length: Dimension = [0, 1, 0, 0];
const time: Dimension = [0, 0, 1, 0];
const frequency: Dimension = [0, 0, -1, 0];
const speed: Dimension = [0, 1, -1, 0];
const temperature: Dimension = [0, 0, 0, 1];
const force: Dimension = [1, 1, -2, 0];
const pressure: Dimension = [1, -1, -2, 0];
const energy: Dimension = [1, 2, -2, 0];
const power: Dimension = [1, 2, -3, 0];

const si = "exact: SI";
const yardAndPound = "exact: international yard and pound of 1959, NIST SP 811 appendix B";
const gravity = "exact: standard gravity 9.80665 m/s² (CGPM 1901), NIST SP 811 appendix B";
const water = "exact: conventional column of water, 1000 kg/m³ and standard gravity, NIST SP 811 appendix B";

/** lb = 0.453 592 37 kg. */
const pound = 45_359_237;
/** g_n = 9.806 65 m/s². */
const gn = 980_665;

export const unitRows: readonly UnitRow[] = [
  { text: "mg", names: ["milligram", "milligrams"], dimension: mass, ratio: [1, 1_000_000], source: si },
  {
    text: "g",
    names: ["gm", "gms", "gram", "grams", "gramme", "grammes"],
    dimension: mass,
    ratio: [1, 1000],
    source: si,
  },
  {
    text: "kg",
    names: ["kilogram", "kilograms", "kilo", "kilos"],
    dimension: mass,
    ratio: [1, 1],
    source: si,
  },
  { text: "t", names: ["tonne", "tonnes", "metric ton"], dimension: mass, ratio: [1000, 1], source: si },
  {
    text: "oz",
    names: ["ounce", "ounces", "oz."],
    dimension: mass,
    ratio: [pound, 1_600_000_000],
    source: yardAndPound,
  },
  {
    text: "lb",
    names: ["lbs", "pound", "pounds", "lb.", "lbs."],
    dimension: mass,
    ratio: [pound, 100_000_000],
    source: yardAndPound,
  },

  {
    text: "µm",
    names: ["um", "micron", "microns", "micrometre", "micrometer"],
    dimension: length,
    ratio: [1, 1_000_000],
    source: si,
  },
  {
    text: "mm",
    names: ["millimetre", "millimeter", "millimetres", "millimeters"],
    dimension: length,
    ratio: [1, 1000],
    source: si,
  },
  {
    text: "cm",
    names: ["centimetre", "centimeter", "centimetres", "centimeters"],
    dimension: length,
    ratio: [1, 100],
    source: si,
  },
  { text: "m", names: ["metre", "meter", "metres", "meters"], dimension: length, ratio: [1, 1], source: si },
  {
    text: "km",
    names: ["kilometre", "kilometer", "kilometres", "kilometers"],
    dimension: length,
    ratio: [1000, 1],
    source: si,
  },
  {
    text: "in",
    names: ["inch", "inches", "in.", '"', "″", "”", "''"],
    dimension: length,
    ratio: [127, 5000],
    source: yardAndPound,
  },
  {
    text: "ft",
    names: ["foot", "feet", "ft.", "'", "′", "’"],
    dimension: length,
    ratio: [381, 1250],
    source: yardAndPound,
  },

  ...volumeRows,

  { text: "s", names: ["sec", "secs", "second", "seconds"], dimension: time, ratio: [1, 1], source: si },
  { text: "min", names: ["mins", "minute", "minutes"], dimension: time, ratio: [60, 1], source: si },
  { text: "h", names: ["hr", "hrs", "hour", "hours"], dimension: time, ratio: [3600, 1], source: si },
  { text: "d", names: ["day", "days"], dimension: time, ratio: [86_400, 1], source: si },

  {
    text: "rpm",
    names: ["r/min", "rev/min", "turns/min", "turns a minute", "revolutions per minute", "turns per minute"],
    dimension: frequency,
    ratio: [1, 60],
    source: "exact: turns are counted as a bare number, 60 s to the minute",
  },
  {
    text: "mph",
    names: ["mi/h", "miles per hour", "mile per hour"],
    dimension: speed,
    ratio: [1_609_344, 3_600_000],
    source: yardAndPound,
  },

  {
    text: "°C",
    names: ["degC", "deg C", "° C", "C", "celsius", "degrees C", "degrees celsius"],
    dimension: temperature,
    ratio: [1, 1],
    offset: 273.15,
    kind: "temperature",
    source: si,
  },
  {
    text: "°F",
    names: ["degF", "deg F", "° F", "F", "fahrenheit", "degrees F", "degrees fahrenheit"],
    dimension: temperature,
    ratio: [5, 9],
    offset: 459.67 / 1.8,
    kind: "temperature",
    source: "exact: t/°C = (t/°F − 32)/1.8, NIST SP 811 appendix B",
  },
  { text: "K", names: ["kelvin"], dimension: temperature, ratio: [1, 1], kind: "temperature", source: si },
  {
    text: "°C difference",
    names: ["Δ°C", "ΔC", "delta °C", "°C of difference", "K difference", "ΔK", "delta K"],
    dimension: temperature,
    ratio: [1, 1],
    kind: "temperature difference",
    source: si,
  },
  {
    text: "°F difference",
    names: ["Δ°F", "ΔF", "delta °F", "°F of difference"],
    dimension: temperature,
    ratio: [5, 9],
    kind: "temperature difference",
    source: "exact: 1 °F of difference is 5/9 K, NIST SP 811 appendix B",
  },

  { text: "N", names: ["newton", "newtons"], dimension: force, ratio: [1, 1], source: si },
  { text: "kN", names: ["kilonewton", "kilonewtons"], dimension: force, ratio: [1000, 1], source: si },
  { text: "gf", names: ["gram-force", "pond"], dimension: force, ratio: [gn, 100_000_000], source: gravity },
  {
    text: "kgf",
    names: ["kilogram-force", "kp", "kilopond"],
    dimension: force,
    ratio: [gn, 100_000],
    source: gravity,
  },
  {
    text: "lbf",
    names: ["pound-force", "pounds-force"],
    dimension: force,
    ratio: [pound * gn, 10_000_000_000_000],
    source: gravity,
  },

  { text: "Pa", names: ["pascal", "pascals"], dimension: pressure, ratio: [1, 1], source: si },
  { text: "mPa", names: ["millipascal"], dimension: pressure, ratio: [1, 1000], source: si },
  { text: "hPa", names: ["hectopascal"], dimension: pressure, ratio: [100, 1], source: si },
  { text: "kPa", names: ["kilopascal", "kilopascals"], dimension: pressure, ratio: [1000, 1], source: si },
  {
    text: "MPa",
    names: ["megapascal", "megapascals"],
    dimension: pressure,
    ratio: [1_000_000, 1],
    source: si,
  },
  { text: "mbar", names: ["millibar", "millibars"], dimension: pressure, ratio: [100, 1], source: si },
  { text: "bar", names: ["bars"], dimension: pressure, ratio: [100_000, 1], source: si },
  {
    text: "psi",
    names: ["lbf/in²", "lb/sq in", "pounds per square inch"],
    dimension: pressure,
    // lbf over (127/5000 m)², the common factor 5000² taken out.
    ratio: [pound * gn, 400_000 * 127 ** 2],
    source: gravity,
  },
  {
    text: "mmH2O",
    names: ["mmH₂O", "mm H2O", "mm of water", "mm water", "mm WC", "mmWC", "mm WG", "mmWG"],
    dimension: pressure,
    ratio: [gn, 100_000],
    source: water,
  },
  {
    text: "cmH2O",
    names: ["cmH₂O", "cm H2O", "cm of water", "cm water", "cm WC", "cmWC", "cm WG", "cmWG"],
    dimension: pressure,
    ratio: [gn, 10_000],
    source: water,
  },
  {
    text: "inH2O",
    names: [
      "inH₂O",
      "in H2O",
      "inches H2O",
      "in of water",
      "inches of water",
      "inch of water",
      "in WC",
      "inWC",
      "in WG",
      "inWG",
    ],
    dimension: pressure,
    ratio: [127 * gn, 500_000],
    source: water,
  },

  { text: "J", names: ["joule", "joules"], dimension: energy, ratio: [1, 1], source: si },
  { text: "kJ", names: ["kilojoule", "kilojoules"], dimension: energy, ratio: [1000, 1], source: si },
  { text: "MJ", names: ["megajoule", "megajoules"], dimension: energy, ratio: [1_000_000, 1], source: si },
  { text: "W", names: ["watt", "watts"], dimension: power, ratio: [1, 1], source: si },
  { text: "kW", names: ["kilowatt", "kilowatts"], dimension: power, ratio: [1000, 1], source: si },
];
