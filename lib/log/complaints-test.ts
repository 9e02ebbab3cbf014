// What can be wrong with a reading of a test.

import { issueMessage } from "../message.ts";

export const psiForKPa = issueMessage(
  "log/psi-for-kpa",
  "warning",
  (what: string, text: string, asPsi: string, ifPsi: string) => ({
    message: `"${text}" for ${what} is read as kPa: ${text} kPa is ${asPsi} psi, very little; ${text} psi would be ${ifPsi} kPa.`,
    remedy: `Write the unit: ${text} psi or ${text} kPa.`,
  }),
);

export const dryBasis = issueMessage(
  "log/dry-basis",
  "error",
  (text: string, value: string, ofDamp: string) => ({
    message: `"${text}" counts the water of the dry mass, as soil tests do; a log's moisture is of the damp mass. ${value} % of the dry mass is ${ofDamp} % of the damp mass.`,
    remedy: `Write ${ofDamp} % if the figure is of the dry mass, ${value} % if it is of the damp mass after all.`,
  }),
);

export const washBasis = issueMessage(
  "log/wash-basis",
  "error",
  (text: string, ofMix: string, ofSand: string, ofDamp: string) => ({
    message: `"${text}" does not say of what: it may be of the dry mix (${ofMix} % of dry mix), per 100 of sand (${ofSand} % of dry mix), or of the damp mass (${ofDamp} % of dry mix at 3.5 % moisture).`,
    remedy: `Write the one that is meant, e.g. \`clay by wash: ${ofMix} % of dry mix\`.`,
  }),
);

export const dishAboveDry = issueMessage("log/dish-above-dry", "error", (dish: string, dry: string) => ({
  message: `The empty dish weighs ${dish}, the dish with the dry sand only ${dry}.`,
  remedy:
    "Where a dish is given, damp and dry are weighed with it; leave `dish` out if the scale was set to zero with it.",
}));

export const levelNotFalling = issueMessage("log/level-not-falling", "error", (from: string, to: string) => ({
  message: `The pressure goes from ${from} to ${to}, but air that flows through the sand lets it fall.`,
  remedy: "Write the difference of the levels at the start as `from`, that at the end as `to`.",
}));

export const densityImpossible = issueMessage(
  "log/density-impossible",
  "error",
  (density: string, from: string) => ({
    message: `The specimen would have ${density} (${from}), which no rammed sand has.`,
    remedy:
      "Look for cm in the place of mm, a radius in the place of the diameter, and the tare of the tube.",
  }),
);

export const numberOverflows = issueMessage("log/number-overflows", "error", (test: string) => ({
  message: `The readings of ${test} give a number that is larger than any, so the test is left out.`,
  remedy: "Look at their size: one of them is next to nothing, or has far too many digits.",
}));

export const missingField = issueMessage(
  "log/missing-field",
  "error",
  (test: string, missing: string, says: string) => ({
    message: `This reading of ${test} lacks \`${missing}\` (${says}), so it is left out.`,
    remedy: `Add \`${missing}: ...\` to it, or write the number that you worked out: \`${test}: ...\`.`,
  }),
);

export const emptyReading = issueMessage("log/empty-reading", "error", (test: string, fields: string) => ({
  message: `No figure of ${test} is given, so it is left out.`,
  remedy: `Write the number itself, or the readings: ${fields}.`,
}));

export const methodUnsaid = issueMessage("log/method-unsaid", "warning", (test: string, methods: string) => ({
  message: `It is not said by which method ${test} was found; methods differ and are never mixed.`,
  remedy: `Add \`method: ...\`, one of: ${methods}.`,
}));

export const methodNeeded = issueMessage("log/method-needed", "error", (test: string, methods: string) => ({
  message: `The fields do not tell by which method ${test} was tested, so it is left out.`,
  remedy: `Add \`method: ...\`, one of: ${methods}.`,
}));

export const notAStep = issueMessage("log/not-a-step", "error", (text: string, steps: string) => ({
  message: `"${text}" is no step of the squeeze.`,
  remedy: `Write a whole number from 1 to 5: ${steps}.`,
}));

export const figureUnsteady = issueMessage("log/figure-unsteady", "error", (test: string) => ({
  message: `Within the ± of its readings this test of ${test} may come out at anything, so no figure is given.`,
  remedy: "Read more finely, or take a longer time, a larger difference or a larger sample.",
}));
