// What can be wrong with a recipe, its prices, and shares that don't say of what.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

/** ofSand, ofMix, ofDamp: what the share would be of the dry mix, read each way. */
export const shareBasis = (
  what: string,
  text: string,
  ofSand: string,
  ofMix: string,
  ofDamp: string,
  remedy: string,
): Issue =>
  issue(
    "error",
    "share-basis",
    `"${text}" for ${what} does not say of what: per 100 of sand it is ${ofSand} % of dry mix, of dry mix ${ofMix} %, of damp mass ${ofDamp} % of dry mix at 3.5 % moisture. It is left out.`,
    remedy,
  );

export const unknownShareBasis = (what: string, text: string): Issue =>
  issue(
    "error",
    "unknown-share-basis",
    `"${text}" for ${what} is a share of something that a heap is not counted in, so it is left out.`,
    `Write it \`per 100 of sand\`, \`% of dry mix\` or \`% of damp mass\`.`,
  );

export const twoBases = (what: string, text: string, basis: string): Issue =>
  issue(
    "error",
    "two-bases",
    `"${text}" for ${what} names another basis than the recipe's (${basis}), so it is left out.`,
    "Write every share of a recipe on its one basis, as bare numbers.",
  );

export const massForShare = (what: string, text: string, basis: string): Issue =>
  issue(
    "error",
    "mass-for-share",
    `"${text}" for ${what} is a weight, and this recipe counts ${basis}, so it is left out.`,
    "Write the bare number; or `basis: by weight`, with sand, clay and additives each as a weight.",
  );

export const weightsWithoutSand = (): Issue =>
  issue(
    "error",
    "weights-without-sand",
    "The recipe is by weight and does not say how much sand its clay goes to, so nothing can be worked out.",
    "Add `sand: 25 kg`, as weighed, beside `clay: 1.5 kg`.",
  );

export const noBucketWeighed = (what: string, of: string): Issue =>
  issue(
    "error",
    "no-bucket-weighed",
    `The recipe counts ${what} in buckets and does not say what one holds, so it is left out.`,
    `Weigh a struck-off bucket and add \`bucket of: { ${of}: 13.5 kg }\`.`,
  );

export const moistureAndWater = (): Issue =>
  issue(
    "warning",
    "moisture-and-water",
    "The recipe says both the moisture that is wanted and a weight of water; the moisture is read.",
    "Take one of `moisture` and `water` out.",
  );

export const waterByShare = (basis: string): Issue =>
  issue(
    "warning",
    "water-by-share",
    `This recipe counts ${basis}, where water is what is worked out, so its own is left out.`,
    "Write `moisture: 3.4 %`; or `basis: by weight`, with sand, clay and water each as a weight.",
  );

export const shareTooLarge = (what: string, text: string): Issue =>
  issue(
    "error",
    "share-too-large",
    `"${text}" for ${what} leaves no sand, or hardly any, so it is left out.`,
    "Check the decimal point and the basis: moulding sands hold 3 to 30 % of clay.",
  );

export const recipeOfNothing = (): Issue =>
  issue(
    "warning",
    "recipe-of-nothing",
    "The recipe does not say how much is to be made, so it has shares and no weights.",
    "Add `make: 120 kg` (damp, all together) or `sand: 100 kg` (as weighed).",
  );

export const makeAndSand = (): Issue =>
  issue(
    "warning",
    "make-and-sand",
    "The recipe says both what is to be made and how much sand there is; what is to be made is read.",
    "Take one of `make` and `sand` out.",
  );

export const recipeWithoutMoisture = (): Issue =>
  issue(
    "warning",
    "recipe-without-moisture",
    "The recipe does not say what moisture is wanted, so its water is not worked out.",
    "Add `moisture: 3.4 % of damp mass`.",
  );

export const recipeWithoutClay = (): Issue =>
  issue(
    "warning",
    "recipe-without-clay",
    "The recipe names no clay, so nothing can be worked out from it.",
    "Add `clay: 8.7`, counted on the recipe's basis.",
  );

export const panAboveHeap = (pan: string, make: string): Issue =>
  issue(
    "note",
    "pan-above-heap",
    `The muller pan takes ${pan}, more than the ${make} to be made: it is one load.`,
    "Nothing to do, unless one of the two is a slip.",
  );

export const bucketOfUnknown = (name: string, known: string): Issue =>
  issue(
    "warning",
    "bucket-of-unknown",
    `No "${name}" goes into the recipe, so its bucket is left out.`,
    `Name one of: ${known}.`,
  );

export const priceOfUnknown = (name: string, near: string, known: string): Issue =>
  issue(
    "warning",
    "price-of-unknown",
    `"${name}" is nothing that this log buys, so its price is not used.`,
    near === "" ? `Known here: ${known}.` : `Did you mean "${near}"? Known: ${known}.`,
  );

export const priceIncomplete = (name: string, missing: string): Issue =>
  issue(
    "warning",
    "price-incomplete",
    `The price of "${name}" lacks \`${missing}\`, so it is left out.`,
    `Write \`${name}: { cost: 9.50, for: 25 kg }\`.`,
  );
