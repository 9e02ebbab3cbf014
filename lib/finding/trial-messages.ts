// The sentences of a trial, figure first: one function each, plain strings in.

import { phraseMessage } from "../message.ts";
import { findingMessage } from "./finding-message.ts";

const curves = "y = b₀ + b₁u + b₂u² by least squares, u the centred axis; limits by Student's t";

export const aimAt = findingMessage(
  "trial/aim",
  ["good", "doubt"],
  (place: string, axis: string, doubt: string, knownInPart: boolean) => ({
    tone: doubt === "" ? "good" : "doubt",
    text: `${place} ${axis} is where a new batch most surely meets the ranges that are wanted${doubt === "" ? "" : `; ${doubt}`}.`,
    because: [
      "There the chances of all properties, by curve and scatter of a batch, have the largest product.",
      "The interval is of the same place worked out for every draw of the curves.",
      ...(knownInPart
        ? [
            "A part of the rigs' own doubt is not known (see the ± that say at least): the interval is at least so wide.",
          ]
        : []),
    ],
    formula:
      "aim = the place where the product over the tests of Φ((high − ŷ)/s) − Φ((low − ŷ)/s) is largest, s the scatter of a batch",
    source: "Our own; draws of curves by propagation of distributions, JCGM 101:2008",
  }),
);

export const aimOpen = findingMessage(
  "trial/aim-open",
  "doubt",
  (place: string, axis: string, side: string) => ({
    text: `${place} ${axis} is the best place that was tried, at its ${side} end: a better one may lie beyond, so there is no ± on it.`,
    because: [
      side === "wetter"
        ? "One batch a small step wetter, for the bench only, would tell: over-wet sand is never poured on."
        : "One batch a small step further would tell.",
    ],
    source: "Our own: more than one draw in forty has its best place at an end",
  }),
);

export const aimByTube = findingMessage("trial/aim-by-tube", "note", (compactability: string) => ({
  text: `${compactability} compactability is what your own curve has at that aim: temper to it by the tube.`,
  because: ["The ± holds the interval of the curve there, and that of the aim along its slope."],
}));

export const moreWindows = findingMessage("trial/more-windows", "doubt", (windows: string, axis: string) => ({
  text: `${windows} ${axis}: there too the chance is a half or better, with a stretch between in which it is not.`,
  because: [
    "Look at the chart: two stretches mean that a range is passed on its way up and on its way down.",
  ],
}));

export const chanceAtAim = findingMessage(
  "trial/chance",
  "note",
  (chance: string, narrower: string, wider: string, knownInPart: boolean) => ({
    text: `${chance} in 100 new batches made there, on days like these, would be expected to meet all of the ranges at once.`,
    because: [
      `With every range a tenth narrower it is ${narrower}, a tenth wider ${wider}.`,
      ...(knownInPart
        ? [
            "A part of the rigs' own doubt is not known (see the ± that say at least): the chance may be lower.",
          ]
        : []),
      "It is the chance of meeting the ranges, and says nothing of a sound casting.",
    ],
    source:
      "Our own; on simulated founders 70 in 100 came true in 71 to 75, and in 81 where the sand met the ranges with ease",
  }),
);

/** first, second: "67 in 100 new batches of short mull at 3.187 (95 %: 3.162 to 3.263) % of damp mass". */
export const aimsInBlocks = findingMessage(
  "trial/aims-in-blocks",
  ["good", "doubt"],
  (first: string, second: string, doubt: string, knownInPart: boolean) => ({
    tone: doubt === "" ? "good" : "doubt",
    text: `${first}, and ${second}, would be expected to meet all of the ranges at once${doubt === "" ? "" : `; ${doubt}`}.`,
    because: [
      "Each by the curve that both share, moved by its own offset, with the doubt of that offset.",
      "Aim and window as drawn stand at the mean of the two, in which no batch is made: so no chance is told there.",
      ...(knownInPart
        ? [
            "A part of the rigs' own doubt is not known (see the ± that say at least): the chance may be lower.",
          ]
        : []),
      "It is the chance of meeting the ranges, and says nothing of a sound casting.",
    ],
    source:
      "Our own; on simulated founders 70 in 100 came true in 71 to 75, and in 81 where the sand met the ranges with ease",
  }),
);

/** What ends a window: a test that gets too low or too high beyond it, or that nothing was tried there. */
export const windowEdge = phraseMessage(
  "trial/window-edge",
  (below: boolean, test: string, side: "too low" | "too high") =>
    `${below ? "Below" : "Above"} it ${test} gets ${side}.`,
);
export const nothingTried = phraseMessage(
  "trial/nothing-tried",
  (below: boolean) => `${below ? "Below" : "Above"} it nothing was tried.`,
);

export const windowIs = findingMessage(
  "trial/window",
  "note",
  (window: string, axis: string, left: string, right: string) => ({
    text: `${window} ${axis}: between these the chance of meeting all of the ranges is a half or better.`,
    because: [left, right].filter((line) => line !== ""),
  }),
);

export const noWindow = findingMessage("trial/no-window", "doubt", (best: string, worst: string) => ({
  text: `${best} in 100 is the best chance anywhere in this trial: the ranges are not met together.`,
  because: [
    `${worst} falls short first. Another clay content, more mulling or another aim is a trial of its own.`,
  ],
}));

export const tooFewBatches = findingMessage(
  "trial/too-few-batches",
  "doubt",
  (batches: string, levels: string) => ({
    text: `${batches} at ${levels}: too few for an aim or a chance, so the points speak for themselves.`,
    because: ["Five batches at three levels are the least that a curve and its scatter can be told from."],
  }),
);

export const noAims = findingMessage("trial/no-aims", "note", () => ({
  text: "No test has a range that is wanted, so there is nothing to aim for yet.",
  because: ["Write aims into the log, or say the metal and the bond, for which usual ranges may be known."],
}));

export const noCurve = findingMessage("trial/no-curve", "doubt", () => ({
  text: "No test with a wanted range was made on enough batches for a curve.",
  because: ["Test every batch for compactability at least: it costs a minute."],
}));

export const usualUsed = findingMessage("trial/usual-ranges-used", "doubt", (tests: string) => ({
  text: `Usual ranges stand in for ${tests}, where you have no aim of your own: they are a start and decide nothing.`,
  because: ["What casts well in your yard is the better aim: write it under aims."],
}));

export const peakAt = findingMessage("trial/peak", "good", (test: string, place: string, axis: string) => ({
  text: `${place} ${axis} is where ${test} is highest.`,
  because: ["The limits are Fieller's, for the turning point of a parabola."],
  formula: "x₀ = −b₁/(2b₂)",
  source: "Fieller 1954; Lind & Mehlum 2010",
}));

export const peakNotBounded = findingMessage("trial/peak-not-bounded", "note", (test: string) => ({
  text: `No peak of ${test} can be told from these batches.`,
  because: ["A straight line through them cannot be ruled out, or the turn lies outside what was tried."],
  source: "Fieller 1954",
}));

export const pointsOnly = findingMessage("trial/points-only", "note", (test: string, count: string) => ({
  text: `${count} of ${test}: the points alone are drawn, since no curve through so few is to be trusted.`,
  because: ["Five batches at three levels make a curve."],
}));

export const straightOnly = findingMessage("trial/straight-only", "note", (test: string) => ({
  text: `${test} is drawn as a straight line, a first guess from few batches.`,
  because: [],
  formula: curves,
}));

export const densityApart = findingMessage(
  "trial/density-apart",
  "doubt",
  (batches: string, test: string) => ({
    text: `${batches}: left out of the curve of ${test}, since its specimens were more than 3 % lighter or heavier than the rest.`,
    because: ["Strength and permeability follow density; figures at unlike densities are not joined."],
  }),
);

export const goesTogether = findingMessage(
  "trial/goes-together",
  "doubt",
  (companion: string, axis: string, wholly: boolean) => ({
    text: `${companion} went along with ${axis}: what each did by itself ${wholly ? "cannot" : "can hardly"} be told from this trial.`,
    because: [
      companionSteps[companion] ??
        "Make the next round in the order that is printed below, each batch mulled and rested alike.",
    ],
    source: "Spearman's ρ of 0.8 or more; threshold our own",
  }),
);

const companionSteps: { readonly [companion: string]: string } = {
  Density:
    "With the same blows density follows the water, so this may be no fault of the trial; strengths at unlike density are another matter.",
  Clay: "Weigh one share of clay into every batch of the next round.",
  Compactability: "Temper every batch of the next round to one compactability.",
  Moisture:
    "More clay takes more water. Temper every batch to one compactability, and only the clay differs.",
};

export const dayAtOneEnd = findingMessage(
  "trial/day-at-one-end",
  "doubt",
  (block: string, axis: string, wholly: boolean) => ({
    text: `${block}: ${wholly ? "all" : "nearly all"} of its batches lie at one end of what was tried, so what ${axis} did ${wholly ? "cannot" : "can hardly"} be told from what else was different then.`,
    because: ["Spread the batches of a day, or of a bag, over the whole range in the next round."],
    source: "Rank-biserial correlation of 0.8 or more; threshold our own",
  }),
);

export const partHeap = findingMessage(
  "trial/part-heap",
  "doubt",
  (axis: string, wetted: number, batches: number) => ({
    text: `${wetted} of ${batches} batches: wetted from the one before, so they were mulled longer and stood longer than the fresh ones; that is in what ${axis} seems to do.`,
    because: ["A fresh batch for each level, in shuffled order, parts them."],
  }),
);

export const oneHeap = findingMessage("trial/one-heap", "doubt", (axis: string) => ({
  text: `One heap wetted step by step: ${axis}, mulling, standing and order all grew together and cannot be told apart.`,
  because: ["A fresh batch for each level, in shuffled order, parts them."],
}));

export const hangsOn = findingMessage("trial/hangs-on-one", "doubt", (batch: string, shift: string) => ({
  text: `${shift}: so far would the aim move if ${batch} were left out. Make that batch again.`,
  because: ["It moves the aim by more than half of its interval."],
}));

export const nextBatch = findingMessage(
  "trial/next-batch",
  "note",
  (place: string, axis: string, now: string, after: string) => ({
    text: `${place} ${axis} is where one more batch would narrow the aim most: from ${now} to about ${after} points wide.`,
    because: ["Worked out by adding one batch to the design, with curve and scatter as they are."],
    formula: "V − V r rᵀ V/(s² + rᵀ V r)",
    source: "Our own: one batch added to the design, all else as it stands",
  }),
);

export const enoughBatches = findingMessage("trial/enough", "note", (now: string) => ({
  text: `${now} points is how wide the aim's interval is, and one more batch would hardly narrow it. Make the batch at the aim once more to confirm it.`,
  because: [
    "No place would narrow it by a tenth, or it is as narrow as your moisture can be hit.",
    "Whether to mould with it is for your own practice to say, not for this page.",
  ],
}));

export const instrumentCarries = findingMessage(
  "trial/instrument",
  "note",
  (points: string, water: string, moisture: string, compactability: boolean) => ({
    text: compactability
      ? `${points} points of compactability tell ${water} % of water apart; your moisture test tells ${moisture}. Steer by compactability.`
      : `${moisture} % of water is what your moisture test tells apart; ${points} points of compactability tell ${water}. Steer by moisture, and watch both.`,
    because: ["From the slope of your own curve of compactability at the aim, and the ± of your figures."],
  }),
);
