// What each test is written down as: its methods and their fields. The reader, the rig figures and the bench cards share it.

import type { TestName } from "./batch.ts";
import type { MeasuredField } from "./measured.ts";

export interface TestField extends MeasuredField {
  /** Its key in the log; `what` says the same. */
  readonly key: string;
  /** Its name in TestReading.raw, which ends in its unit. */
  readonly raw: string;
  readonly needed: boolean;
  /** Field of the rig that supplies it where the reading does not. */
  readonly fromRig?: string;
  /** What is to be written there, for a card: "mass of the damp sand". */
  readonly says: string;
}

export interface TestForm {
  readonly test: TestName;
  /** Methods that are written down alike; empty where there is only one way. */
  readonly methods: readonly string[];
  readonly fields: readonly TestField[];
}

type Options = Partial<Pick<TestField, "needed" | "fromRig" | "alsoIn" | "least" | "aboveZero">>;

const field = (
  key: string,
  raw: string,
  unit: string,
  most: number,
  says: string,
  options: Options = {},
): TestField => ({ key, what: key, raw, unit, most, aboveZero: true, needed: true, says, ...options });

const optional = { needed: false } as const;
const grams = (key: string, raw: string, says: string, options?: Options) =>
  field(key, raw, "g", 20_000, says, options);
const millimetres = (key: string, raw: string, says: string, options?: Options) =>
  field(key, raw, "mm", 2000, says, options);
const column = (key: string, raw: string, says: string) => millimetres(key, raw, says, { alsoIn: ["mmH2O"] });

const diameter = millimetres("diameter", "diameterMm", "diameter of the specimen", { fromRig: "boreMm" });
const height = millimetres("height", "heightMm", "height of the specimen");
const load = field(
  "load",
  "loadKg",
  "kg",
  500,
  "everything that lay on it when it broke, disc and pail too",
  {
    alsoIn: ["kgf"],
  },
);
const specimen = [
  diameter,
  { ...height, needed: false },
  grams("mass", "massG", "mass of the specimen", optional),
];
const seconds = field("seconds", "seconds", "s", 36_000, "time that it took");
const air = [
  height,
  diameter,
  field("temperature", "airC", "°C", 60, "temperature of the air", {
    ...optional,
    least: -30,
    aboveZero: false,
  }),
];

export const testForms: readonly TestForm[] = [
  {
    test: "moisture",
    methods: ["oven", "pan", "microwave"],
    fields: [
      grams("dish", "dishG", "mass of the empty dish, if it was weighed with the sand", optional),
      grams("damp", "dampG", "mass of the damp sand"),
      grams("dry", "dryG", "mass of the same sand when it had stopped losing mass"),
      field("dried at", "driedAtC", "°C", 400, "temperature that it was dried at", optional),
    ],
  },
  {
    test: "compactability",
    methods: ["height"],
    fields: [
      millimetres("filled", "filledMm", "height of the loose sand, struck off level", { fromRig: "tubeMm" }),
      millimetres("rammed", "rammedMm", "height after three blows"),
    ],
  },
  {
    test: "compactability",
    methods: ["two weighings"],
    fields: [
      grams("loose", "looseG", "sand that fills the tube loose, struck off level"),
      grams("packed", "packedG", "sand that fills the same tube when rammed in"),
    ],
  },
  {
    test: "compactability",
    methods: ["pressed"],
    fields: [
      millimetres("filled", "filledMm", "height of the loose sand, struck off level", { fromRig: "tubeMm" }),
      millimetres("pressed", "rammedMm", "height after pressing at 100 N/cm²"),
    ],
  },
  { test: "green compression", methods: [], fields: [load, ...specimen] },
  { test: "green shear", methods: [], fields: [load, ...specimen] },
  { test: "splitting", methods: [], fields: [load, diameter, height, specimen[2]!] },
  {
    test: "permeability",
    methods: ["constant head"],
    fields: [
      field("air", "airMl", "ml", 1e6, "air that went through"),
      column("water", "waterMm", "pressure, in mm of water"),
      seconds,
      ...air,
    ],
  },
  {
    test: "permeability",
    methods: ["aspirator"],
    fields: [
      field("drawn", "airMl", "ml", 1e6, "water that ran out, so air that was drawn through"),
      column("suction", "waterMm", "suction, in mm of water"),
      seconds,
      ...air,
    ],
  },
  {
    test: "permeability",
    methods: ["falling column"],
    fields: [
      millimetres("column", "columnMm", "bore of the water column", { fromRig: "columnMm" }),
      column("from", "fromMm", "difference of the water levels at the start"),
      column("to", "toMm", "difference of the water levels at the end"),
      seconds,
      ...air,
    ],
  },
  {
    test: "permeability",
    methods: ["bleeding vessel"],
    fields: [
      field("vessel", "vesselMl", "ml", 1e6, "volume of the vessel and its hose", { fromRig: "vesselMl" }),
      column("from", "fromMm", "pressure at the start, in mm of water"),
      column("to", "toMm", "pressure at the end, in mm of water"),
      seconds,
      ...air,
    ],
  },
  {
    test: "density",
    methods: [],
    fields: [grams("mass", "massG", "mass of the specimen"), height, diameter],
  },
  {
    test: "clay by wash",
    methods: [],
    fields: [
      grams("dry", "dryG", "mass of the dried sand before the wash"),
      grams("grain", "grainG", "mass of the dried grain that was left"),
    ],
  },
  { test: "squeeze", methods: [], fields: [] },
];

export const testNames: readonly TestName[] = [...new Set(testForms.map(({ test }) => test))];

/** The forms of one test, one for each way of writing it down. */
export function formsOf(test: TestName): readonly TestForm[] {
  return testForms.filter((form) => form.test === test);
}
