// What can be wrong with a weighing, a portion or a loaded sieve: one message function for each code.

import { issueMessage } from "../message.ts";

export const massLost = issueMessage(
  "sand/mass-lost",
  "warning",
  (loss: string, lossPercent: string, withinScale: boolean) => ({
    message: `The sieves and the pan hold ${loss} less than went on, ${lossPercent} % of it${withinScale ? ", which the steps of the scale may explain" : ""}.`,
    remedy: "Brush out the sieves and weigh again, or sieve a new portion and look where dust escapes.",
  }),
);

export const massGained = issueMessage(
  "sand/mass-gained",
  "warning",
  (gain: string, gainPercent: string, withinScale: boolean) => ({
    message: `The sieves and the pan hold ${gain} more than went on, ${gainPercent} % of it${withinScale ? ", which the steps of the scale may explain" : ""}.`,
    remedy: "Check the tare, that the sand was dry, and that no grains of an earlier sand sat in the mesh.",
  }),
);

export const fiveLayersExceeded = issueMessage(
  "sand/sieve-crowded",
  "warning",
  (mass: string, limit: string, layers: string) => ({
    message: `${mass} lie about ${layers} grains deep on this sieve; five layers are ${limit}. Fine grains may be held back.`,
    remedy: "Sieve a smaller portion, or the same one in two parts and add the masses.",
  }),
);

export const areaLoadExceeded = issueMessage(
  "sand/sieve-overloaded",
  "error",
  (mass: string, limit: string) => ({
    message: `${mass} on this sieve is more than its area may carry, ${limit}: what it held is not to be relied on.`,
    remedy: "Sieve a smaller portion, or the same one in two parts and add the masses.",
  }),
);

export const portionTooSmall = issueMessage(
  "sand/portion-small",
  "warning",
  (portion: string, low: string) => ({
    message: `A portion of ${portion} is less than the ${low} that suit sieves of this size.`,
    remedy: "Riffle a larger portion.",
  }),
);

export const portionTooLarge = issueMessage(
  "sand/portion-large",
  "warning",
  (portion: string, high: string) => ({
    message: `A portion of ${portion} is more than the ${high} that suit sieves of this size.`,
    remedy: "Riffle it down; more sand crowds the fine sieves.",
  }),
);

export const portionBelowScale = issueMessage(
  "sand/portion-below-scale",
  "warning",
  (portion: string, step: string, needed: string) => ({
    message: `With a scale that steps by ${step}, ${portion} leaves too few steps on a main sieve; ${needed} would do.`,
    remedy: "Use a finer scale, or add up several portions sieved one after another.",
  }),
);
