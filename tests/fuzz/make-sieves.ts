// Labels of sieves: real ones in every way of writing, numbers that no sieve has, and slips.

import type { Dice } from "./dice.ts";
import { hostile } from "./make-scalars.ts";

/** ASTM E11, the usual stack of a fineness number. */
export const afsNumbers = [
  "No. 6",
  "No. 12",
  "No. 20",
  "No. 30",
  "No. 40",
  "No. 50",
  "No. 70",
  "No. 100",
  "No. 140",
  "No. 200",
  "No. 270",
];

const number = (dice: Dice): string =>
  dice.chance(70)
    ? dice.pick(["6", "12", "20", "30", "40", "50", "60", "70", "100", "140", "200", "270", "325", "635"])
    : `${dice.integer(0, dice.pick([10, 100, 1000, 1e6]))}`;
const opening = (dice: Dice): string =>
  dice.pick([
    () =>
      dice.pick([
        "0.425",
        "0.3",
        "0.297",
        "0.212",
        "0.150",
        "1.18",
        "0.075",
        ".5",
        "0",
        "00.3",
        "1e-3",
        "0.0000001",
        "999999",
      ]),
    () => `${dice.integer(1, 5000) / 1000}`,
  ])();
const space = (dice: Dice): string => dice.pick(["", " ", " ", "  ", "\t", "\u00a0", "\u202f"]);

const forms: readonly ((dice: Dice) => string)[] = [
  (dice) =>
    `${dice.pick(["No.", "No", "no.", "NO", "#", "US", "U.S.", "ASTM", "ASTM E11", "us no.", "Nº", "№"])}${space(dice)}${number(dice)}`,
  (dice) => `${dice.pick(["BS", "B.S.", "bs 410", "BS 410 mesh"])}${space(dice)}${number(dice)}`,
  (dice) =>
    `${opening(dice)}${space(dice)}${dice.pick(["mm", "millimetres", "MM", "in", "inch", "cm", "m", ""])}`,
  (dice) =>
    `${dice.pick(["425", "300", "212", "150", "75", "0", "1000", number(dice)])}${space(dice)}${dice.pick(["µm", "μm", "um", "micron", "microns", ""])}`,
  (dice) => `${opening(dice)} ${dice.pick(["±", "+/-", "+-"])} ${opening(dice)} mm`,
  (dice) => `${number(dice)}${space(dice)}mesh,${space(dice)}${opening(dice)} mm wire`,
  (dice) =>
    `${number(dice)} ${dice.pick(["x", "×", "by"])} ${number(dice)} mesh, ${opening(dice)}/${opening(dice)} mm wire`,
  (dice) => `${number(dice)} mesh`,
  (dice) => dice.pick(["pan", "Pan", "bottom", "tray", "bottom pan", "pans", "the pan", "PAN ", "pan."]),
  (dice) => dice.pick(hostile),
];

export function sieveLabel(dice: Dice): string {
  const label = dice.pick(forms)(dice);
  if (!dice.chance(20)) return label;
  const at = dice.integer(0, label.length);
  return dice.pick([
    () => label.toUpperCase(),
    () => `${label} sieve`,
    () => ` ${label} `,
    () => label.slice(0, at) + label.slice(at + 1),
    () => label.slice(0, at) + dice.pick([..."0O1lI.,±/-# x“"]) + label.slice(at),
    () => label.replace(/0/g, "O"),
    () => `“${label}”`,
  ])();
}

/** A stack: labels, one a line. */
export const sieveStackText = (dice: Dice): string =>
  Array.from({ length: dice.integer(1, 9) }, () =>
    (dice.chance(60) ? dice.pick([...afsNumbers, "pan"]) : sieveLabel(dice)).replace(/[\r\n]/g, " "),
  ).join("\n");
