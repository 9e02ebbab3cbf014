// What can be wrong with a weighing, a portion or a loaded sieve: one message function for each code.

import type { Severity } from "../issue.ts";
import { issueMessage } from "../message.ts";

const short = (x: number): string => String(Number(x.toPrecision(3)));

export const massLost = issueMessage(
  "sand/mass-lost",
  ["error", "warning", "note"],
  (lossG: number, lossPercent: number, severity: Severity, withinScale: boolean) => ({
    severity,
    message: `The sieves and the pan hold ${short(lossG)} g less than went on, ${short(lossPercent)} % of it${withinScale ? ", which the steps of the scale may explain" : ""}.`,
    remedy: "Brush out the sieves and weigh again, or sieve a new portion and look where dust escapes.",
  }),
);

export const massGained = issueMessage(
  "sand/mass-gained",
  ["error", "warning", "note"],
  (gainG: number, gainPercent: number, severity: Severity, withinScale: boolean) => ({
    severity,
    message: `The sieves and the pan hold ${short(gainG)} g more than went on, ${short(gainPercent)} % of it${withinScale ? ", which the steps of the scale may explain" : ""}.`,
    remedy: "Check the tare, that the sand was dry, and that no grains of an earlier sand sat in the mesh.",
  }),
);

export const fiveLayersExceeded = issueMessage(
  "sand/sieve-crowded",
  "warning",
  (massG: number, limitG: number, layers: number) => ({
    message: `${short(massG)} g lie about ${short(layers)} grains deep on this sieve; five layers are ${short(limitG)} g. Fine grains may be held back.`,
    remedy: "Sieve a smaller portion, or the same one in two parts and add the masses.",
  }),
);

export const areaLoadExceeded = issueMessage(
  "sand/sieve-overloaded",
  "error",
  (massG: number, limitG: number) => ({
    message: `${short(massG)} g on this sieve is more than its area may carry, ${short(limitG)} g: what it held is not to be relied on.`,
    remedy: "Sieve a smaller portion, or the same one in two parts and add the masses.",
  }),
);

export const portionTooSmall = issueMessage(
  "sand/portion-small",
  "warning",
  (portionG: number, lowG: number) => ({
    message: `A portion of ${short(portionG)} g is less than the ${short(lowG)} g that suit sieves of this size.`,
    remedy: "Riffle a larger portion.",
  }),
);

export const portionTooLarge = issueMessage(
  "sand/portion-large",
  "warning",
  (portionG: number, highG: number) => ({
    message: `A portion of ${short(portionG)} g is more than the ${short(highG)} g that suit sieves of this size.`,
    remedy: "Riffle it down; more sand crowds the fine sieves.",
  }),
);

export const portionBelowScale = issueMessage(
  "sand/portion-below-scale",
  "warning",
  (portionG: number, stepG: number, neededG: number) => ({
    message: `With a scale that steps by ${short(stepG)} g, ${short(portionG)} g leaves too few steps on a main sieve; ${short(neededG)} g would do.`,
    remedy: "Use a finer scale, or add up several portions sieved one after another.",
  }),
);
