// What can be wrong with a batch, with batches taken together, with rigs and with aims.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const noBatchDate = (): Issue =>
  issue(
    "note",
    "no-batch-date",
    "The batch has no date, so a change with time cannot be told from the trial itself.",
    "Write the day that it was tested: `date: 2026-03-02`.",
  );

export const noTests = (): Issue =>
  issue(
    "warning",
    "no-tests",
    "Nothing was tested on this batch, or nothing that can be read.",
    "Add a test, e.g. `compactability: 45 %`; `mullbook card` lists the bench cards.",
  );

export const orderNotWhole = (text: string): Issue =>
  issue(
    "warning",
    "order-not-whole",
    `"${text}" is no place in an order, so the order is taken as not said.`,
    "Write 1 for the batch that was made and tested first, 2 for the next.",
  );

export const orderTwice = (order: string, other: string): Issue =>
  issue(
    "warning",
    "order-twice",
    `The batch "${other}" of the same day has the order ${order} as well.`,
    "Number the batches of a day as they were made and tested: 1, 2, 3 ...",
  );

export const sameBatchTwice = (line: string): Issue =>
  issue(
    "error",
    "same-batch-twice",
    `A batch of this name and date stands on line ${line} already; only that one is read.`,
    "Give this one another name; repeats of a test belong in one batch, as a list.",
  );

export const ozOfWater = (text: string, asMass: string, us: string, imperial: string): Issue =>
  issue(
    "warning",
    "oz-of-water",
    `"${text}" of water is read as weight: ${asMass} g. As fluid ounces it would be ${us} g (US) or ${imperial} g (imperial).`,
    "Write g, or ml, or US fl oz or imp fl oz.",
  );

export const clayBasis = (what: string, text: string, ofDamp: string, ofMix: string, ofSand: string): Issue =>
  issue(
    "error",
    "clay-basis",
    `"${text}" of ${what} does not say of what: it may be ${ofDamp}, ${ofMix} or ${ofSand}.`,
    `Write the mass that went in, or the basis: \`${what}: ${text} of dry mix\`, \`of damp mass\` or \`of sand\`.`,
  );

export const clayShareAlone = (what: string, text: string): Issue =>
  issue(
    "error",
    "clay-share-alone",
    `"${text}" of ${what} cannot be turned into a mass: what it is a share of is not given, or is no mass of this batch.`,
    `Write the mass of the ${what}, or the sand and the water by mass and the share \`of dry mix\`, \`of damp mass\` or \`of sand\`.`,
  );

export const recipeWithoutSand = (): Issue =>
  issue(
    "warning",
    "recipe-without-sand",
    "The recipe says what was added but not how much sand there was, so no share can be worked out.",
    "Write `sand: 10 kg` under `made of:`.",
  );

export const recipeAgainstMoisture = (recipe: string, measured: string, guess: string): Issue =>
  issue(
    "warning",
    "recipe-against-moisture",
    `By what went in, the batch holds ${recipe} % water of its damp mass; the moisture test says ${measured} %. ${guess}`,
    "Weigh a second sample, and write `sand moisture:` under `made of:` where the sand was damp before.",
  );

export const sameAxis = (axis: string, value: string, other: string): Issue =>
  issue(
    "note",
    "same-axis",
    `At ${value} ${axis} this batch is a repeat of "${other}": it tells how batches scatter, and nothing of the curve.`,
    `Nothing to do if that was meant; for the curve, make the next one ${axis === "clay" ? "with more or less clay" : "wetter or drier"}.`,
  );

export const moreAtOne = (axis: string, batches: string): Issue =>
  issue(
    "note",
    "more-at-one",
    `${batches} from here on repeat a ${axis} that another batch has already.`,
    "Nothing to do if that was meant.",
  );

export const allAtOne = (axis: string, value: string): Issue =>
  issue(
    "note",
    "all-at-one",
    `All batches stand at about ${value} ${axis}, so no curve against it can be drawn.`,
    "Make the next batches on both sides of it, at least half a point apart in moisture.",
  );

export const missingTest = (test: string, names: string): Issue =>
  issue(
    "note",
    "missing-test",
    `${test} was not tested on ${names}; the other batches are used.`,
    "Test it on every batch of the trial where you can: a gap makes the curve less sure there.",
  );

export const methodsMixed = (test: string, method: string, others: string): Issue =>
  issue(
    "warning",
    "methods-mixed",
    `Here ${test} was found by ${method}, elsewhere in the log by ${others}; the two do not read alike and are kept apart.`,
    "Test one batch both ways to see by how much they differ, and keep to one method within a trial.",
  );

export const notARange = (what: string, text: string, example: string): Issue =>
  issue(
    "error",
    "not-a-range",
    `"${text}" for ${what} is not a range from low to high.`,
    `Write both ends and the unit, e.g. \`${what}: ${example}\`.`,
  );

export const rangeTurned = (what: string, text: string): Issue =>
  issue(
    "error",
    "range-turned",
    `The range "${text}" for ${what} does not go from low to high.`,
    "Write the lower end first; the two ends must differ.",
  );

export const noBatchColumn = (): Issue =>
  issue(
    "error",
    "csv-no-batch-column",
    "The first row names no column `batch`, so the rows have no names.",
    "Begin with a row of names: batch, date, order, then one column a figure, e.g. compactability, or moisture damp and moisture dry.",
  );

export const rowWithoutBatch = (): Issue =>
  issue(
    "error",
    "csv-row-without-batch",
    "This row does not say which batch it belongs to, so it is left out.",
    "Write the name of the batch; rows of one name are repeats of its tests.",
  );

export const rowsDisagree = (column: string, text: string, first: string): Issue =>
  issue(
    "warning",
    "csv-rows-disagree",
    `Here ${column} is "${text}", in an earlier row of the same batch "${first}"; the earlier one is read.`,
    "Write it in the batch's first row only, or give this batch another name.",
  );
