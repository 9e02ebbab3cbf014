// Readings that should agree and don't: with their neighbours, with the rest of the log, with what sand can be.

import { issueMessage } from "../message.ts";

export const psiAmongKPa = issueMessage(
  "log/psi-among-kpa",
  "error",
  (what: string, text: string, others: string, ifPsi: string) => ({
    message: `"${text}" for ${what} has no unit; as kPa it is far below the other batches (about ${others} kPa), as psi it is ${ifPsi} kPa and fits them. It is left out.`,
    remedy: `Write \`${text} psi\`, or \`${text} kPa\` if it was so weak.`,
  }),
);

export const fitsAsPsi = issueMessage(
  "log/fits-as-psi",
  "warning",
  (what: string, text: string, others: string, ifPsi: string) => ({
    message: `"${text}" for ${what} is far below the other batches (about ${others} kPa); the same number in psi is ${ifPsi} kPa and would fit them.`,
    remedy:
      "Look at the note of the day: if the number was psi, write psi; if the sand was so weak, leave it.",
  }),
);

export const kPaAmongPsi = issueMessage(
  "log/kpa-among-psi",
  "error",
  (what: string, text: string, asKPa: string, others: string) => ({
    message: `"${text}" for ${what} is ${asKPa} kPa, far above the other batches (about ${others} kPa); the same number in kPa fits them. It is left out.`,
    remedy: "If the number is kPa, write kPa; if not, look whether it was converted already.",
  }),
);

export const convertedTwice = issueMessage(
  "log/converted-twice",
  "warning",
  (what: string, text: string, others: string, ifKPa: string) => ({
    message: `"${text}" for ${what} is far above the other batches (about ${others} kPa); turned from psi to kPa once less it would be ${ifKPa} kPa and fit them.`,
    remedy: "Look whether a figure in kPa was taken for psi and multiplied by 6.895.",
  }),
);

export const fractionForPercent = issueMessage(
  "log/fraction-for-percent",
  "error",
  (what: string, text: string, percent: string) => ({
    message: `"${text}" for ${what} is below one per cent, which no moulding sand has; percentages run from 0 to 100 here. It is left out.`,
    remedy: `If a fraction was meant, write \`${what}: ${percent}\`; else look for a decimal point that slipped.`,
  }),
);

export const fractionOrPercent = issueMessage(
  "log/fraction-or-percent",
  "warning",
  (what: string, text: string, percent: string) => ({
    message: `"${text}" for ${what} is read as ${text} %, hardly any water; as a fraction it would be ${percent}.`,
    remedy: `Write the sign: \`${what}: ${percent}\` or \`${what}: ${text} %\`.`,
  }),
);

export const thousandfold = issueMessage(
  "log/g-for-kg",
  "error",
  (part: string, text: string, share: string, better: string) => ({
    message: `"${text}" of ${part} cannot be: that would be ${share}. The recipe is left out, the tests stand.`,
    remedy: `Did you mean ${better}? A number without a unit is read as kg.`,
  }),
);

export const compactabilityUnmoved = issueMessage(
  "log/compactability-unmoved",
  "note",
  (batches: string, low: string, high: string, rho: string) => ({
    message: `Over ${batches} batches from ${low} to ${high} % moisture compactability does not rise with the water (rank correlation ${rho}), as it does in sand of one recipe.`,
    remedy:
      "Look at the riddle, at how the tube is filled and struck off, at the height of the drop and the count of blows, and whether the moisture samples were taken from the same sand.",
  }),
);

export const boreUnlikely = issueMessage(
  "log/bore-unlikely",
  "warning",
  (what: string, text: string, better: string) => ({
    message: `${what} of "${text}" is outside 20 to 150 mm, where the tubes for sand specimens are; every figure of it goes with its square.`,
    remedy: better === "" ? "Measure the inside of the tube, and write it with its unit." : better,
  }),
);

export const scaleUnnamed = issueMessage("log/scale-unnamed", "note", (where: string, count: string) => ({
  message: `No scale is named for what was weighed ${where} (${count}), so the ± there does not hold the weighing.`,
  remedy:
    "Declare the scale, `scales: { kitchen scale: { reads to: 0.1 g } }`, and add `scale: kitchen scale` to the readings.",
}));
