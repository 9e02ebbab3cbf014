// What can be wrong with a recipe, its prices, and shares that don't say of what.

import { issueMessage } from "../message.ts";

/** ofSand, ofMix, ofDamp: what the share would be of the dry mix, read each way. */
export const shareBasis = issueMessage(
  "log/share-basis",
  "error",
  (what: string, text: string, ofSand: string, ofMix: string, ofDamp: string, remedy: string) => ({
    message: `"${text}" for ${what} does not say of what: per 100 of sand it is ${ofSand} % of dry mix, of dry mix ${ofMix} %, of damp mass ${ofDamp} % of dry mix at 3.5 % moisture. It is left out.`,
    remedy,
  }),
);

export const unknownShareBasis = issueMessage(
  "log/unknown-share-basis",
  "error",
  (what: string, text: string) => ({
    message: `"${text}" for ${what} is a share of something that a heap is not counted in, so it is left out.`,
    remedy: `Write it \`per 100 of sand\`, \`% of dry mix\` or \`% of damp mass\`.`,
  }),
);

export const twoBases = issueMessage(
  "log/two-bases",
  "error",
  (what: string, text: string, basis: string) => ({
    message: `"${text}" for ${what} names another basis than the recipe's (${basis}), so it is left out.`,
    remedy: "Write every share of a recipe on its one basis, as bare numbers.",
  }),
);

export const massForShare = issueMessage(
  "log/mass-for-share",
  "error",
  (what: string, text: string, basis: string) => ({
    message: `"${text}" for ${what} is a weight, and this recipe counts ${basis}, so it is left out.`,
    remedy: "Write the bare number; or `basis: by weight`, with sand, clay and additives each as a weight.",
  }),
);

export const weightsWithoutSand = issueMessage("log/weights-without-sand", "error", () => ({
  message:
    "The recipe is by weight and does not say how much sand its clay goes to, so nothing can be worked out.",
  remedy: "Add `sand: 25 kg`, as weighed, beside `clay: 1.5 kg`.",
}));

export const noBucketWeighed = issueMessage("log/no-bucket-weighed", "error", (what: string, of: string) => ({
  message: `The recipe counts ${what} in buckets and does not say what one holds, so it is left out.`,
  remedy: `Weigh a struck-off bucket and add \`bucket of: { ${of}: 13.5 kg }\`.`,
}));

export const moistureAndWater = issueMessage("log/moisture-and-water", "warning", () => ({
  message: "The recipe says both the moisture that is wanted and a weight of water; the moisture is read.",
  remedy: "Take one of `moisture` and `water` out.",
}));

export const waterByShare = issueMessage("log/water-by-share", "warning", (basis: string) => ({
  message: `This recipe counts ${basis}, where water is what is worked out, so its own is left out.`,
  remedy: "Write `moisture: 3.4 %`; or `basis: by weight`, with sand, clay and water each as a weight.",
}));

export const shareTooLarge = issueMessage("log/share-too-large", "error", (what: string, text: string) => ({
  message: `"${text}" for ${what} leaves no sand, or hardly any, so it is left out.`,
  remedy: "Check the decimal point and the basis: moulding sands hold 3 to 30 % of clay.",
}));

export const recipeOfNothing = issueMessage("log/recipe-of-nothing", "warning", () => ({
  message: "The recipe does not say how much is to be made, so it has shares and no weights.",
  remedy: "Add `make: 120 kg` (damp, all together) or `sand: 100 kg` (as weighed).",
}));

export const makeAndSand = issueMessage("log/make-and-sand", "warning", () => ({
  message: "The recipe says both what is to be made and how much sand there is; what is to be made is read.",
  remedy: "Take one of `make` and `sand` out.",
}));

export const recipeWithoutMoisture = issueMessage("log/recipe-without-moisture", "warning", () => ({
  message: "The recipe does not say what moisture is wanted, so its water is not worked out.",
  remedy: "Add `moisture: 3.4 % of damp mass`.",
}));

export const recipeWithoutClay = issueMessage("log/recipe-without-clay", "warning", () => ({
  message: "The recipe names no clay, so nothing can be worked out from it.",
  remedy: "Add `clay: 8.7`, counted on the recipe's basis.",
}));

export const panAboveHeap = issueMessage("log/pan-above-heap", "note", (pan: string, make: string) => ({
  message: `The muller pan takes ${pan}, more than the ${make} to be made: it is one load.`,
  remedy: "Nothing to do, unless one of the two is a slip.",
}));

export const bucketOfUnknown = issueMessage(
  "log/bucket-of-unknown",
  "warning",
  (name: string, known: string) => ({
    message: `No "${name}" goes into the recipe, so its bucket is left out.`,
    remedy: `Name one of: ${known}.`,
  }),
);

export const priceOfUnknown = issueMessage(
  "log/price-of-unknown",
  "warning",
  (name: string, near: string, known: string) => ({
    message: `"${name}" is nothing that this log buys, so its price is not used.`,
    remedy: near === "" ? `Known here: ${known}.` : `Did you mean "${near}"? Known: ${known}.`,
  }),
);

export const priceIncomplete = issueMessage(
  "log/price-incomplete",
  "warning",
  (name: string, missing: string) => ({
    message: `The price of "${name}" lacks \`${missing}\`, so it is left out.`,
    remedy: `Write \`${name}: { cost: 9.50, for: 25 kg }\`.`,
  }),
);
