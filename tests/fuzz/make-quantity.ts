// Quantities as typed: numbers of every writing, units known and not, ± in every place; and what is none.

import type { Dice } from "./dice.ts";
import { hostile, right } from "./make-scalars.ts";

const units = [
  ..."g kg mg lb oz mm cm m µm in ft kPa psi MPa °C °F K L ml % s min h rpm m/s g/cm³ kg/m³ N lbf cm² cm4 1/kg days mmH2O kgf t".split(
    " ",
  ),
  "% of sand",
  "% of damp mass",
  "% of dry mix",
  "US fl oz",
  "imp gal",
  "°F difference",
  "gal",
  "grms",
  "kgg",
  "stone",
  "g/",
  "/g",
  "g g",
  "%%",
  "",
];
const digits = (dice: Dice, most: number): string =>
  Array.from({ length: dice.integer(1, most) }, () => dice.integer(0, 9)).join("");

const numbers: readonly ((dice: Dice) => string)[] = [
  (dice) => digits(dice, 4),
  (dice) => `${digits(dice, 3)}.${digits(dice, 4)}`,
  (dice) => `.${digits(dice, 3)}`,
  (dice) => `${digits(dice, 2)}.`,
  (dice) => `${digits(dice, 1)}.${digits(dice, 2)}e${dice.pick(["", "+", "-", "−"])}${digits(dice, 2)}`,
  (dice) => `${dice.integer(1, 9)} ${dice.integer(1, 31)}/${dice.pick(["2", "32", "64", "0", "3"])}`,
  (dice) => `${dice.integer(0, 99)}/${dice.integer(0, 64)}`,
  (dice) => `${dice.integer(0, 9)}${dice.pick([..."½¼¾⅛⅞⅓"])}`,
  (dice) => `${digits(dice, 3)},${digits(dice, 3)}`,
  (dice) => `${digits(dice, 3)}${dice.pick([" ", "\u202f", "'", "_", "\u00a0"])}${digits(dice, 3)}`,
  (dice) =>
    dice.pick([
      "1e999",
      "-1e999",
      "1e-999",
      "0x10",
      "1_000",
      "١٢",
      "½",
      "−5",
      "1,5",
      "٣٫٥",
      "１２",
      "NaN",
      "∞",
      "-0",
      "1e308",
      "9e307",
      "5e-324",
      "00012",
      "1.2.3",
      "1e",
      "1e+",
      "e5",
      "+",
      "-",
      ".",
    ]),
  (dice) => digits(dice, 40),
];
const signed = (dice: Dice): string =>
  `${dice.pick(["", "", "", "", "-", "+", "−", "–", "- "])}${dice.pick(numbers)(dice)}`;
const space = (dice: Dice): string => dice.pick([" ", " ", "", "\u00a0", "\u202f", "  ", "\t"]);
const figure = (dice: Dice): string => `${signed(dice)}${space(dice)}${dice.pick(units)}`;
const meaning = (dice: Dice): string =>
  dice.pick(["", "", "", " (sd)", " (95 %)", " (SD)", " (k=2)", "(95%)", " (", " )"]);

export function quantityText(dice: Dice): string {
  switch (dice.integer(0, 7)) {
    case 0:
      return dice.pick(hostile);
    case 1:
      return dice.pick(Object.values(right))(dice);
    case 2:
      return figure(dice);
    case 3:
      return `${signed(dice)}${space(dice)}${dice.pick(["±", "+/-", "+-", "±±"])}${space(dice)}${figure(dice)}${meaning(dice)}`;
    case 4:
      return `${figure(dice)} ${dice.pick(["±", "+/-", "+-"])} ${figure(dice)}${meaning(dice)}`;
    case 5:
      return `${dice.integer(0, 9)} ${dice.pick(["lb", "ft", "h", "kg"])} ${dice.integer(0, 20)} ${dice.pick(["oz", "in", "min", "g"])}`;
    case 6:
      return `${figure(dice)} ${dice.pick(["to", "-", "–", "..", "x", "and"])} ${figure(dice)}`;
    default:
      return Array.from({ length: dice.integer(0, 14) }, () =>
        dice.pick([..."0123456789.,'/-+±e ()%gklboz°C²½\u2009\u2212"]),
      ).join("");
  }
}
