// What can be wrong with a batch, with batches taken together, with rigs and with aims.

import { issueMessage } from "../message.ts";

export const noBatchDate = issueMessage("log/no-batch-date", "note", () => ({
  message: "The batch has no date, so a change with time cannot be told from the trial itself.",
  remedy: "Write the day that it was tested: `date: 2026-03-02`.",
}));

export const noTests = issueMessage("log/no-tests", "warning", () => ({
  message: "Nothing was tested on this batch, or nothing that can be read.",
  remedy: "Add a test, e.g. `compactability: 45 %`; `mullbook card` lists the bench cards.",
}));

export const orderNotWhole = issueMessage("log/order-not-whole", "warning", (text: string) => ({
  message: `"${text}" is no place in an order, so the order is taken as not said.`,
  remedy: "Write 1 for the batch that was made and tested first, 2 for the next.",
}));

export const leftOutWithoutWhy = issueMessage("log/left-out-without-why", "warning", () => ({
  message: "It is not said why this batch is left out, so it counts like the others.",
  remedy: "Write why: `left out: the tube was wet`; or take the line away.",
}));

export const orderTwice = issueMessage("log/order-twice", "warning", (order: string, other: string) => ({
  message: `The batch "${other}" of the same day has the order ${order} as well.`,
  remedy: "Number the batches of a day as they were made and tested: 1, 2, 3 ...",
}));

export const sameBatchTwice = issueMessage("log/same-batch-twice", "error", (line: string) => ({
  message: `A batch of this name and date stands on line ${line} already; only that one is read.`,
  remedy: "Give this one another name; repeats of a test belong in one batch, as a list.",
}));

export const ozOfWater = issueMessage(
  "log/oz-of-water",
  "warning",
  (text: string, asMass: string, us: string, imperial: string) => ({
    message: `"${text}" of water is read as weight: ${asMass} g. As fluid ounces it would be ${us} g (US) or ${imperial} g (imperial).`,
    remedy: "Write g, or ml, or US fl oz or imp fl oz.",
  }),
);

export const clayBasis = issueMessage(
  "log/clay-basis",
  "error",
  (what: string, text: string, ofDamp: string, ofMix: string, ofSand: string) => ({
    message: `"${text}" of ${what} does not say of what: it may be ${ofDamp}, ${ofMix} or ${ofSand}.`,
    remedy: `Write the mass that went in, or the basis: \`${what}: ${text} of dry mix\`, \`of damp mass\` or \`of sand\`.`,
  }),
);

export const clayShareAlone = issueMessage("log/clay-share-alone", "error", (what: string, text: string) => ({
  message: `"${text}" of ${what} cannot be turned into a mass: what it is a share of is not given, or is no mass of this batch.`,
  remedy: `Write the mass of the ${what}, or the sand and the water by mass and the share \`of dry mix\`, \`of damp mass\` or \`of sand\`.`,
}));

export const recipeWithoutSand = issueMessage("log/recipe-without-sand", "warning", () => ({
  message: "The recipe says what was added but not how much sand there was, so no share can be worked out.",
  remedy: "Write `sand: 10 kg` under `made of:`.",
}));

export const recipeAgainstMoisture = issueMessage(
  "log/recipe-against-moisture",
  "warning",
  (recipe: string, measured: string, guess: string) => ({
    message: `By what went in, the batch holds ${recipe} % water of its damp mass; the moisture test says ${measured} %. ${guess}`,
    remedy:
      "Weigh a second sample, and write `sand moisture:` under `made of:` where the sand was damp before.",
  }),
);

export const sameAxis = issueMessage(
  "log/same-axis",
  "note",
  (axis: string, value: string, other: string) => ({
    message: `At ${value} ${axis} this batch is a repeat of "${other}": it tells how batches scatter, and nothing of the curve.`,
    remedy: `Nothing to do if that was meant; for the curve, make the next one ${axis === "clay" ? "with more or less clay" : "wetter or drier"}.`,
  }),
);

export const moreAtOne = issueMessage("log/more-at-one", "note", (axis: string, batches: string) => ({
  message: `${batches} from here on repeat a ${axis} that another batch has already.`,
  remedy: "Nothing to do if that was meant.",
}));

export const allAtOne = issueMessage("log/all-at-one", "note", (axis: string, value: string) => ({
  message: `All batches stand at about ${value} ${axis}, so no curve against it can be drawn.`,
  remedy: "Make the next batches on both sides of it, at least half a point apart in moisture.",
}));

export const missingTest = issueMessage("log/missing-test", "note", (test: string, names: string) => ({
  message: `${test} was not tested on ${names}; the other batches are used.`,
  remedy: "Test it on every batch of the trial where you can: a gap makes the curve less sure there.",
}));

export const methodsMixed = issueMessage(
  "log/methods-mixed",
  "warning",
  (test: string, method: string, others: string) => ({
    message: `Here ${test} was found by ${method}, elsewhere in the log by ${others}; the two do not read alike and are kept apart.`,
    remedy: "Test one batch both ways to see by how much they differ, and keep to one method within a trial.",
  }),
);

export const notARange = issueMessage(
  "log/not-a-range",
  "error",
  (what: string, text: string, example: string) => ({
    message: `"${text}" for ${what} is not a range from low to high.`,
    remedy: `Write both ends and the unit, e.g. \`${what}: ${example}\`.`,
  }),
);

export const rangeTurned = issueMessage("log/range-turned", "error", (what: string, text: string) => ({
  message: `The range "${text}" for ${what} does not go from low to high.`,
  remedy: "Write the lower end first; the two ends must differ.",
}));

export const noBatchColumn = issueMessage("log/csv-no-batch-column", "error", () => ({
  message: "The first row names no column `batch`, so the rows have no names.",
  remedy:
    "Begin with a row of names: batch, date, order, then one column a figure, e.g. compactability, or moisture damp and moisture dry.",
}));

export const rowWithoutBatch = issueMessage("log/csv-row-without-batch", "error", () => ({
  message: "This row does not say which batch it belongs to, so it is left out.",
  remedy: "Write the name of the batch; rows of one name are repeats of its tests.",
}));

export const rowsDisagree = issueMessage(
  "log/csv-rows-disagree",
  "warning",
  (column: string, text: string, first: string) => ({
    message: `Here ${column} is "${text}", in an earlier row of the same batch "${first}"; the earlier one is read.`,
    remedy: "Write it in the batch's first row only, or give this batch another name.",
  }),
);
