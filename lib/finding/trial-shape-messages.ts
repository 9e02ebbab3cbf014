// The sentences of curves and of batches that do not belong to them, figure first: plain strings in.

import { findingMessage } from "./finding-message.ts";

export const wildBatch = findingMessage(
  "trial/wild-batch",
  "doubt",
  (batch: string, test: string, off: string, side: "above" | "below", p: string) => ({
    text: `${off} ${side} the curve through the others lies ${test} of ${batch}: look at its readings, and make that batch again. It is kept until you decide.`,
    because: [
      `By chance a batch lies so far off with p = ${p}, the number of batches counted in.`,
      "A slip of the pen, a dry tube, a specimen that stood: look there first. Leave it out only for a reason that you can name.",
    ],
    formula:
      "t = residual/(s₍ᵢ₎√(1 − hᵢ)), the batch left out of its own s; p times the batches (Bonferroni)",
    source: "Cook & Weisberg, Residuals and Influence in Regression",
  }),
);

export const misfit = findingMessage(
  "trial/misfit",
  "doubt",
  (test: string, f: string, degrees: readonly [number, number], p: string) => ({
    text: `The curve of ${test} does not follow the batches: F = ${f} with ${degrees[0]} and ${degrees[1]} degrees of freedom, p = ${p}.`,
    because: [
      "Batches at one place agree with each other better than with the curve. Trust the points there more than the line.",
      "A batch between the places where it misses most tells which form is right.",
    ],
    formula: "F = (misfit/its degrees of freedom)/(scatter within places/its degrees of freedom)",
    source: "Draper & Smith, Applied Regression Analysis: pure error and lack of fit",
  }),
);

export const densityUnknown = findingMessage("trial/density-unknown", "note", (test: string) => ({
  text: `The density of some specimens is not known, so the figures of ${test} are joined in one curve unchecked.`,
  because: [
    "Figures at unlike densities do not belong on one curve: weigh each specimen, and they can be told apart.",
  ],
}));

export const publishedSlope = findingMessage(
  "trial/published-slope",
  "note",
  (test: string, says: string, source: string) => ({
    text: `${test}: your batches are few, so what is published of its slope helps the curve. ${says}`,
    because: ["No aim and no chance rest on it; five batches at three places make a curve of your own."],
    source,
  }),
);

export const theseBlocksOnly = findingMessage("trial/these-blocks-only", "note", () => ({
  text: "The intervals of a new batch hold for days and bags like these, not for a new day or bag.",
  because: ["Three days or bags, each named under block, let their scatter be counted in."],
}));

export const twoVaried = findingMessage("trial/two-varied", "doubt", (axis: string, other: string) => ({
  text: `${capital(other)} was varied as well as ${axis}: on the curves over ${axis} alone its effect stands as scatter, so chances there come out low. Read the surfaces over both.`,
  because: ["A trial with one of the two held still gives a curve, an aim and a chance over the other."],
}));

const stationary = "Stationary point of a quadratic surface; Box & Draper, Response Surfaces";

export const levelTop = findingMessage(
  "trial/surface-top",
  "good",
  (test: string, place: string, region: string) => ({
    text: `${place}: there ${test} is highest over both at once${region === "" ? "" : `, within ${region}`}.`,
    because: ["From one surface through all batches that have both figures."],
    source: stationary,
  }),
);

export const noLevelTop = findingMessage("trial/surface-no-top", "note", (test: string, kind: string) => ({
  text: `No highest place of ${test} over both at once: what the surface has is a ${kind}.`,
  because: ["A saddle, a ridge or a place outside what was tried is no aim."],
  source: stationary,
}));

export const noSurface = findingMessage(
  "trial/no-surface",
  "note",
  (test: string, a: string, b: string, why: string) => ({
    text: `${capital(test)} over ${a} and ${b} together cannot be told: ${why}.`,
    because: ["Vary one while the other stands still, and the other way round."],
  }),
);

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
