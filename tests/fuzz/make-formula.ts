// Formulas: whole trees over named columns, words in any order, sound ones with slips, long and deep ones.

import { formulaFunctions } from "../../lib/sheet/functions.ts";
import { names } from "../sheet/formula-scope.ts";
import type { Dice } from "./dice.ts";
import { hostile } from "./make-scalars.ts";

const known = [...names.keys(), "damp", "made"];
const leaves = [
  "1",
  "2",
  "0",
  "0.5",
  "100",
  "1e3",
  "5 g",
  "3 mm",
  "2 kPa",
  "20 °C",
  "1/2 in",
  "pi",
  '"Alder"',
  '"2026-05-02"',
];
const signs = [
  " + ",
  " - ",
  " * ",
  " / ",
  "^",
  " < ",
  " <= ",
  " == ",
  " != ",
  " and ",
  " or ",
  "-",
  "*",
  "/",
  " − ",
  "×",
  "÷",
];
const scraps = [
  ..."+ - * / ^ ( ) ( ) , , ? : < > <= == != = % and or not ² √ . ; [ ] { } \" ' # & | ! **".split(" "),
  ...'0 1 2.5 1e3 5 g 3 mm 20 °C "Alder" "makers" "mass" lookUp( sum( mean( count( if( to in g² m/s kg/m³'.split(
    " ",
  ),
];

/** A tree whose parts may or may not go together. */
function tree(dice: Dice, depth: number): string {
  if (depth <= 0 || dice.chance(20)) return dice.chance(65) ? dice.pick(known) : dice.pick(leaves);
  const part = (): string => tree(dice, depth - dice.integer(1, 2));
  switch (dice.integer(0, 9)) {
    case 0:
      return `(${part()})`;
    case 1:
      return `-${part()}`;
    case 2:
    case 3: {
      const { name, least, most } = dice.pick(formulaFunctions);
      const count = dice.chance(90) ? dice.integer(least, Math.min(most, least + 2)) : dice.integer(0, 4);
      return `${name}(${Array.from({ length: count }, part).join(", ")})`;
    }
    case 4:
      return `if(${part()} ${dice.pick(["<", ">", "==", ">="])} ${part()}, ${part()}, ${part()})`;
    case 5:
      return dice.pick([
        "mean(wet)",
        "sum(n)",
        'lookUp("makers", bag, "mass")',
        "(wet - dry) / wet",
        "percentOf(wet - dry, wet)",
        "(inside - outside)",
        "(tested - made)",
      ]);
    default:
      return `${part()}${dice.pick(signs)}${part()}`;
  }
}

/** Arithmetic of plain numbers, as mathjs reads it too: a, b and the functions that both have. */
export function plainFormula(dice: Dice, depth = dice.integer(1, 5)): string {
  if (depth <= 0 || dice.chance(15))
    return dice.pick(["a", "b", "c", "0", "1", "2", "3", "0.5", "1.25e1", ".75", "pi"]);
  const part = (): string => plainFormula(dice, depth - dice.integer(1, 2));
  switch (dice.integer(0, 5)) {
    case 0:
      return `(${part()})`;
    case 1:
      return `-${part()}`;
    case 2:
      return `${dice.pick(["abs", "sqrt", "exp", "ln", "round", "floor", "ceil", "cbrt", "log10", "log2"])}(${part()})`;
    case 3:
      return `${dice.pick(["min", "max"])}(${part()}, ${part()})`;
    default:
      return `${part()}${dice.pick([" + ", " - ", " * ", " / ", "^", "-", "*"])}${part()}`;
  }
}

const wordsInAnyOrder = (dice: Dice): string =>
  Array.from({ length: dice.integer(1, 14) }, () =>
    dice.pick([
      dice.pick(known),
      dice.pick(scraps),
      dice.pick(scraps),
      `${dice.pick(formulaFunctions).name}(`,
    ]),
  ).join(dice.pick([" ", ""]));

function withSlips(dice: Dice, text: string): string {
  let slipped = text;
  for (let k = dice.integer(1, 3); k > 0; k--) {
    const at = dice.integer(0, slipped.length);
    const put = dice.chance(50) ? dice.pick(scraps) : dice.pick(hostile);
    slipped = slipped.slice(0, at) + (dice.chance(60) ? put : "") + slipped.slice(at + dice.integer(0, 2));
  }
  return slipped;
}

const longOne = (dice: Dice): string => {
  const part = dice.pick([
    "n + ",
    "-",
    "not ",
    "2^",
    "1/",
    "(",
    "sqrt(",
    "1<",
    "n ? ",
    "max(1,",
    "5 m/",
    "wet * ",
    "²",
    "if(n>1,n,",
  ]);
  return (
    part.repeat(dice.integer(1, 300)).slice(0, dice.integer(1, 2100)) +
    dice.pick(["1", "n", "", ")".repeat(200)])
  );
};

export function formulaText(dice: Dice): string {
  const sort = dice.integer(0, 99);
  if (sort < 60) return tree(dice, dice.integer(1, 5));
  if (sort < 75) return plainFormula(dice).replace(/\b[abc]\b/g, "n");
  if (sort < 85) return wordsInAnyOrder(dice);
  if (sort < 97) return withSlips(dice, tree(dice, 3));
  if (sort < 98) return dice.pick(hostile);
  return longOne(dice);
}
