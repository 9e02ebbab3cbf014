// The founder's own sheets in a log: columns, formulas, rows, a foot, charts, an experiment.

import { formulaText } from "./make-formula.ts";
import { a, either, group, listOf, type Make, named, oneOf, text } from "./make-parts.ts";

/** Formulas over the columns below. */
const columnFormula: Make = (dice, wrong) =>
  text(
    `"${(
      dice.chance(wrong * 2)
        ? formulaText(dice)
        : dice.pick([
            "damp - dry",
            "100 * (damp - dry) / damp",
            "percentOf(damp - dry, damp)",
            "damp / dry",
            "sqrt(damp * dry)",
            "if(damp > dry, damp, dry)",
            "round(damp, 1)",
            "damp - mean(damp)",
            "max(damp, dry)",
            "damp / basis",
            "(damp - dry) ^ 2",
            "ln(damp / dry)",
            "damp + share",
            "made - made",
            "lookUp('other', bag, 'dry')",
            "moisture / 2",
            "clamp(damp, dry, damp)",
            "count(damp > dry)",
            "1 / (damp - damp)",
            "quantile(damp, 0.5)",
          ])
    ).replace(/["\\]/g, "\\$&")}"`,
  );
const cell = (...words: readonly string[]): Make => oneOf(...words);
const row = group(
  ["bag", cell("Alder", "Birch", "Cedar", "12", "constructor"), 95],
  ["made", cell("2026-05-02", "2026-06-01"), 80],
  ["damp", cell("52.4", "50.1 ± 0.1 g", "48.0 g ± 0.2 g", "1.8 oz"), 95],
  ["dry", cell("47.6", "47.1 ± 0.2", "44.0 (sd)", "0.044 kg"), 95],
  ["share", cell("5.0", "7 ± 0.1"), 60],
);
const sheet = group(
  ["title", a("words"), 30],
  ["note", a("words"), 10],
  ["values", named(["basis", "bore"], cell("50.0 mm ± 0.2 mm", "2.5 kg", "7")), 40],
  [
    "columns",
    group(
      ["bag", oneOf("text")],
      ["made", either(oneOf("date"), group(["kind", oneOf("date")])), 80],
      [
        "damp",
        either(
          oneOf("g"),
          group(
            ["unit", oneOf("g", "kg")],
            ["scale", oneOf("shed scale"), 50],
            ["±", oneOf("0.1 g", "0.1 g (sd)"), 30],
          ),
        ),
      ],
      ["dry", either(oneOf("g"), group(["unit", oneOf("g")], ["scale", oneOf("shed scale"), 50]))],
      ["share", group(["unit", oneOf('"% of dry mix"', "number")], ["title", a("words"), 30]), 60],
      ["moisture", group(["unit", oneOf('"% of damp mass"', "g", "number")], ["formula", columnFormula]), 80],
      ["second", group(["formula", columnFormula]), 50],
    ),
  ],
  ["rows", either(listOf(row, 1, 5), listOf(row, 1, 5), oneOf("rows.csv"))],
  [
    "foot",
    named(
      ["mean moisture", "spread", "count"],
      either(
        oneOf("mean(moisture)", "sd(damp)", "count(damp)", "max(damp) - min(damp)"),
        columnFormula,
        group(["formula", columnFormula], ["unit", oneOf("g", "%")]),
      ),
    ),
    60,
  ],
  [
    "charts",
    listOf(
      group(
        ["x", oneOf("bag", "damp", "made")],
        ["y", oneOf("moisture", "dry", "second")],
        ["line", oneOf("straight", "curve"), 30],
        ["band", oneOf("40 to 60 g", "3 to 5 %"), 20],
        ["title", a("words"), 20],
      ),
      1,
      2,
    ),
    40,
  ],
);
export const sheets = named(["bags", "other", "moisture", "__proto__"], sheet, 40);

const lines = either(a("words"), listOf(a("words"), 1, 3));
export const experiment = group(
  ["question", oneOf("Does it pay?", "does it <xx-markup> pay", "x".repeat(300))],
  ["expected", lines, 40],
  ["changed", lines, 60],
  ["held", lines, 40],
  ["measured", lines, 40],
  ["departures", lines, 20],
  ["left out", lines, 20],
  ["open", lines, 30],
  ["review", lines, 20],
  ["by", a("words"), 40],
  ["where", a("words"), 30],
  ["from", a("date"), 40],
  ["to", a("date"), 40],
  ["version", a("count"), 20],
);
