// What can be wrong with a stack of sieves or with what it held: one message function each.

import { issueMessage } from "../message.ts";

export const repeatedSieve = issueMessage("sand/sieve-repeated", "error", (label: string, first: string) => ({
  about: label,
  message:
    label === first
      ? `"${label}" is listed twice.`
      : `"${label}" is listed although "${first}" has the same opening.`,
  remedy: "Keep one of the two; if both are on your stack, add their masses.",
}));

export const misplacedSieve = issueMessage(
  "sand/sieve-misplaced",
  "warning",
  (upper: string, lower: string) => ({
    about: lower,
    message: `"${upper}" is listed above "${lower}", which is coarser; the stack is taken coarse to fine.`,
    remedy: "Check that the two masses were not written to each other's sieve.",
  }),
);

export const panNotLast = issueMessage("sand/pan-not-last", "warning", (next: string) => ({
  about: "pan",
  message: `The pan is listed above "${next}"; it is taken as the last.`,
  remedy: "Check that the pan's mass stands at the pan.",
}));

export const panMissing = issueMessage("sand/pan-missing", "warning", () => ({
  about: "pan",
  message: "There is no pan, so what passed the finest sieve is not known.",
  remedy: 'Add "pan" with what it held, or 0 where it was weighed and empty.',
}));

export const massNotNumber = issueMessage(
  "sand/mass-not-number",
  "error",
  (label: string, found: string) => ({
    about: label,
    message: `The mass on "${label}" is ${found}, which is not a number.`,
    remedy: "Write the mass in grams or percent, or leave the sieve out if it was not used.",
  }),
);

export const massNegative = issueMessage("sand/mass-negative", "error", (label: string, mass: string) => ({
  about: label,
  message: `The mass on "${label}" is ${mass}, below zero.`,
  remedy: "Weigh it again, and check the tare of the dish.",
}));

export const massesTooLarge = issueMessage("sand/masses-too-large", "error", () => ({
  about: "",
  message: "The masses add to more than can be reckoned with.",
  remedy: "Check the decimal points and the unit: grams or percent.",
}));

export const nothingRetained = issueMessage("sand/nothing-retained", "error", () => ({
  about: "",
  message: "No sieve holds anything, so there is nothing to work out.",
  remedy: "Give the mass that each sieve and the pan held.",
}));

export const schemeSievesMissing = issueMessage(
  "sand/scheme-sieves-missing",
  "error",
  (scheme: string, missing: readonly string[]) => ({
    about: missing.join(", "),
    message: `The ${scheme} cannot be worked out from this stack: ${missing.join(", ")} ${missing.length === 1 ? "is" : "are"} missing, where grains lie.`,
    remedy: "Sieve on the stack of the scheme; nothing is guessed between two sieves here.",
  }),
);

export const noMultiplier = issueMessage("sand/no-multiplier", "error", (scheme: string, label: string) => ({
  about: label,
  message: `The ${scheme} has no multiplier for what ${label} holds.`,
  remedy: "Riddle out what is coarser than sand, and sieve the rest.",
}));
