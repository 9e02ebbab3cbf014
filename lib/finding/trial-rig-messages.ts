// The sentences of rigs and methods: plain strings in.

import { findingMessage } from "./finding-message.ts";

export const wallLeak = findingMessage("rig/wall-leak", "note", () => ({
  text: "A leak between specimen and tube is in no ± of permeability: it lets air past the sand, and the number reads high.",
  because: [
    "To see it, run the rig once on a sealed plug of wax or wood, as high and as wide as the specimen and greased like it: what that reads is the leak, and comes off every number.",
    "A ring of grease at the wall keeps it small (common practice).",
  ],
  formula: "permeability = measured − that of the plug; flows side by side add",
}));

export const otherMethod = findingMessage(
  "rig/other-method",
  "note",
  (test: string, method: string, usual: string, batches: string, differences: string) => ({
    text: `${batches}: ${test} by ${method}, kept apart from ${usual} and off its curve.`,
    because: [
      ...(differences === "" ? [] : [`By ${method} less by ${usual}: ${differences}.`]),
      differences === ""
        ? "Test one batch both ways, and the difference is known."
        : "Where the two differ by more than their ±, one of them is off: oven at 105 °C (220 °F) is the one to go by for moisture (common practice).",
    ],
  }),
);

export const tooFewForOrder = findingMessage("trial/order-unchecked", "note", (batches: string) => ({
  text: `${batches} cannot show whether the trial order went along with what was varied.`,
  because: [
    "Make them in a shuffled order and write it at each batch: from four on it is looked at, with what else went along.",
  ],
}));

export const unchecked = findingMessage("trial/unchecked", "note", (what: string) => ({
  text: `Whether ${what} went along with what was varied could not be checked: the log does not say it for enough batches.`,
  because: ["Write it at each batch: what goes along cannot be told apart afterwards."],
}));
