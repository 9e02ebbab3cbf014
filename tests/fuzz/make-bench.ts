// Sections of a log that come from the bench: scales, sieves, rigs, sands, batches, trials.

import { a, either, type Field, group, listOf, type Make, named, oneOf, text } from "./make-parts.ts";
import { hostile } from "./make-scalars.ts";
import { afsNumbers } from "./make-sieves.ts";

const scaleName = oneOf("shed scale", "heavy scale");
const rigName = oneOf("tube", "column");

export const scales = named(
  ["shed scale", "heavy scale"],
  group(
    ["reads to", oneOf("0.1 g", "0.01 g", "1 g", "0.05 oz")],
    ["within", oneOf("0.2 g", "2 g"), 60],
    ["note", a("words"), 10],
  ),
  90,
);
export const sieveSets = named(
  ["home stack"],
  group(["frame", oneOf("200 mm", "8 in"), 80], ["checked", a("yesNo"), 60], ["note", a("words"), 10]),
);
export const rigs = named(
  ["tube", "column"],
  group(
    ["bore", oneOf("50 mm", "51.0 mm ± 0.1 mm", "2 in")],
    ["tube", oneOf("120 mm"), 70],
    ["rammer", oneOf("2 kg", "2.50 kg"), 50],
    ["drop", oneOf("161 mm"), 50],
    ["blows", oneOf("3"), 50],
    ["ruler", oneOf("0.5 mm"), 30],
    ["column", oneOf("100 mm"), 30],
    ["blank", oneOf("2 mm"), 20],
    ["note", a("words"), 10],
  ),
  90,
);

/** Shares of what was put on the top sieve, so that the sum is about right. */
const retained: Make = (dice, wrong) => {
  const labels = dice.some(afsNumbers, 70);
  const weights = [...labels, "pan"].map(() => dice.integer(0, 40));
  const all = Math.max(
    1,
    weights.reduce((sum, one) => sum + one, 0),
  );
  return {
    kind: "map",
    entries: [...labels, "pan"].map((label, k) => [
      dice.chance(wrong) ? dice.pick([...hostile, "425 µm", "BS 60", "0.3 mm", "#50", "40 mesh"]) : label,
      text(dice.chance(wrong) ? dice.pick(hostile) : ((weights[k]! / all) * 100).toFixed(1)),
    ]),
  };
};
const sieving = group(
  ["date", a("date"), 90],
  ["portion", oneOf("A", "B", "C", "top"), 80],
  ["repeat of", oneOf("split", "grab"), 50],
  ["scale", scaleName, 60],
  ["sieve set", oneOf("home stack"), 30],
  ["minutes", oneOf("10", "15"), 40],
  ["washed", a("yesNo"), 50],
  ["unit", oneOf("g", "percent"), 10],
  ["start", oneOf("100 g", "100.0 g ± 0.1 g"), 80],
  ["retained", retained],
  ["note", a("words"), 10],
);
export const sands = named(
  ["Quarry Lane sand", "Brickfield sand", "constructor"],
  group(
    ["state", oneOf("new", "used")],
    ["note", a("words"), 10],
    ["sievings", listOf(sieving, 1, 3), 90],
    ["sievings file", oneOf("sievings.csv"), 12],
  ),
  50,
);

const reading = (...fields: readonly Field[]): Make =>
  group(...fields, ["rig", rigName, 60], ["scale", scaleName, 40], ["note", a("words"), 5]);
const moisture = either(
  reading(
    ["method", oneOf("oven", "pan", "microwave")],
    ["dish", oneOf("40.0 g"), 20],
    ["damp", oneOf("152.4 g", "148.5 g")],
    ["dry", oneOf("147.3 g", "143.9 g")],
  ),
  a("moisture"),
);
const load = (): Make =>
  reading(
    ["load", a("kilograms")],
    ["height", a("millimetres"), 60],
    ["diameter", a("millimetres"), 85],
    ["mass", a("grams"), 20],
  );
const strength = either(a("strength"), load(), listOf(load(), 1, 4));
const compactability = either(
  a("compactability"),
  listOf(reading(["filled", oneOf("120 mm"), 70], ["rammed", oneOf("66 mm", "70.5 mm", "61 mm")]), 1, 3),
  reading(["method", oneOf("two weighings")], ["loose", oneOf("180 g")], ["packed", oneOf("320 g")]),
);
const permeability = either(
  a("gfn"),
  reading(
    ["method", oneOf("falling column")],
    ["from", oneOf("200 mm")],
    ["to", oneOf("100 mm")],
    ["seconds", oneOf("15.8", "21 s")],
    ["height", oneOf("50 mm"), 80],
  ),
  reading(
    ["method", oneOf("constant head")],
    ["air", oneOf("2000 ml")],
    ["water", oneOf("100 mm")],
    ["seconds", a("seconds")],
    ["height", oneOf("50 mm"), 80],
  ),
);
const batch = group(
  ["date", a("date"), 90],
  ["order", a("count"), 50],
  ["block", oneOf("first", "second"), 30],
  ["sand", oneOf("Quarry Lane sand"), 20],
  ["same heap", a("yesNo"), 5],
  [
    "made of",
    group(
      ["sand", a("kilograms")],
      ["bentonite", a("grams")],
      ["water", a("grams"), 90],
      ["sand moisture", a("percent"), 30],
      ["bentonite moisture", a("percent"), 30],
      ["scale", scaleName, 30],
    ),
    50,
  ],
  ["mulled", a("minutes"), 50],
  ["stood", a("hours"), 30],
  ["moisture", either(moisture, listOf(moisture, 1, 3)), 85],
  ["compactability", compactability, 70],
  ["green compression", strength, 80],
  ["green shear", strength, 10],
  ["permeability", permeability, 40],
  [
    "density",
    reading(["mass", oneOf("155 g", "158.2 g")], ["height", oneOf("50 mm")], ["diameter", oneOf("50 mm")]),
    20,
  ],
  ["squeeze", oneOf("1", "2", "3", "4", "5"), 50],
  ["left out", a("words"), 8],
  ["note", a("words"), 10],
);
export const batches = named(["W1", "W2", "W3", "W4", "W5", "toString", "No. 6", "~7/8"], batch, 70);
export const trial = group(["axis", oneOf("moisture", "clay", "compactability")]);
export const aims = named(
  ["moisture", "compactability", "green compression", "permeability"],
  either(a("range"), oneOf("42 to 48 %", "50 to 100 kPa", "at least 60", "at most 5 %")),
);
export const mulling = named(
  ["by hand", "barrel"],
  group(
    ["load", a("kilograms")],
    [
      "readings",
      listOf(
        group(
          ["minutes", a("minuteCount")],
          ["green compression", a("strength")],
          ["compactability", a("compactability"), 40],
          ["moisture", a("moisture"), 30],
        ),
        1,
        7,
      ),
    ],
  ),
);
