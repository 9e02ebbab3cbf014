// What a log holds of each stage of the guide, and what it lacks: parts of sentences, plain strings in.

import { phraseMessage } from "../message.ts";

export const sandsNamed = phraseMessage("guide/sands", (names: string) => `Sand on record: ${names}.`);
export const noSand = phraseMessage("guide/no-sand", () => "No sand is named yet.");

export const sandFineness = phraseMessage(
  "guide/fineness",
  (sand: string, figure: string, portions: string) =>
    `${sand}: grain fineness number ${figure}, from ${portions}.`,
);
export const sievedWithClay = phraseMessage(
  "guide/with-clay",
  (sand: string) => `${sand} was sieved with its clay, which gives no fineness number.`,
);
export const noSieving = phraseMessage("guide/no-sieving", () => "No sieving is written down.");
export const oneSieving = phraseMessage(
  "guide/one-sieving",
  () => "No second portion yet: without it nobody knows how well your sievings repeat.",
);

export const scaleKnown = phraseMessage("guide/scale", (name: string, step: string, within: string) =>
  within === "" ? `${name} reads to ${step}.` : `${name} reads to ${step} and is right within ${within}.`,
);
export const noScale = phraseMessage("guide/no-scale", () => "No scale is named.");
export const scaleUnchecked = phraseMessage(
  "guide/scale-unchecked",
  (names: string) => `Not checked with known weights: ${names}.`,
);

export const rigBlow = phraseMessage(
  "guide/rig",
  (name: string, joules: string) => `${name}: ${joules} J a blow.`,
);
export const rigWithout = phraseMessage(
  "guide/rig-without-blow",
  (name: string) => `${name}: weight and drop of its rammer are not written down.`,
);
export const airRig = phraseMessage("guide/air-rig", (name: string) => `${name}: an air rig.`);
export const repeatsMade = phraseMessage(
  "guide/repeats",
  (test: string, times: string, batch: string) => `${test} was made ${times} times on ${batch}.`,
);
export const noRig = phraseMessage("guide/no-rig", () => "No rig is named.");
export const noRepeats = phraseMessage(
  "guide/no-repeats",
  () => "No test was made three times on one batch, so nobody knows how well the rigs repeat.",
);
export const blankMissing = phraseMessage("guide/no-blank", (names: string) => `Never run empty: ${names}.`);

export const recipeComesTo = phraseMessage(
  "guide/recipe",
  (clay: string, moisture: string) =>
    `The recipe comes to ${clay} of clay in the dry mix and ${moisture} of water in the damp mass.`,
);
export const batchesMadeUp = phraseMessage("guide/made-up", (count: string) => `${count} made up by weight.`);
export const recipeLacks = phraseMessage(
  "guide/recipe-lacks",
  (lack: string) => `The recipe does not say its ${lack}.`,
);
export const noRecipe = phraseMessage(
  "guide/no-recipe",
  () => "No recipe and no batch by weight is written down.",
);

export const trialBatches = phraseMessage(
  "guide/trial",
  (count: string, levels: string, low: string, high: string) =>
    `${count} at ${levels}, ${low} to ${high} % of damp mass.`,
);
export const noTrial = phraseMessage("guide/no-trial", () => "No batch of a moisture trial is written down.");
export const moreBatches = phraseMessage(
  "guide/more-batches",
  () => "An aim wants five batches at four waters or more.",
);

export const rangesWanted = phraseMessage(
  "guide/ranges",
  (tests: string) => `Ranges are wanted for ${tests}.`,
);
export const noRanges = phraseMessage("guide/no-ranges", () => "Nothing is wanted of the sand yet.");
export const aimFound = phraseMessage(
  "guide/aim",
  (place: string, unit: string) => `${place} ${unit} is where a new batch most surely meets what is wanted.`,
);
export const aimOpen = phraseMessage(
  "guide/aim-open",
  () => "The batches do not give an aim with both its ends yet: make the batch that the trial's page names.",
);

export const heapWeighs = phraseMessage("guide/heap", (mass: string) => `The heap is ${mass}.`);
export const heapEvents = phraseMessage(
  "guide/events",
  (pours: string, others: string) => `${pours} and ${others} are on record.`,
);
export const heapTests = phraseMessage(
  "guide/tests",
  (property: string, count: string) => `${property} was tested on ${count}.`,
);
export const noHeap = phraseMessage("guide/no-heap", () => "Nothing of a heap is written down.");
export const heapUnweighed = phraseMessage("guide/heap-unweighed", () => "The heap was not weighed.");
export const fewTests = phraseMessage(
  "guide/few-tests",
  (least: string) => `A chart wants ${least} values of one test by one method.`,
);

export const castingsSeen = phraseMessage(
  "guide/castings",
  (castings: string, days: string, faulty: string) =>
    `${castings} of ${days} looked over, ${faulty} with a fault.`,
);
export const noCastings = phraseMessage("guide/no-castings", () => "No casting was looked over.");
export const noQuestion = phraseMessage(
  "guide/no-question",
  () => "No pair of a fault and what it is held against is named beforehand.",
);

export const asks = phraseMessage("guide/asks", (question: string) => `The experiment asks: ${question}`);
export const noExperiment = phraseMessage("guide/no-experiment", () => "No experiment is written down.");
export const experimentLacks = phraseMessage(
  "guide/experiment-lacks",
  (parts: string) => `The experiment does not say ${parts}.`,
);

/** Why the caution of weighing dry sand stands before a sack is opened. */
export const sandBought = phraseMessage(
  "caution/trigger-sand-bought",
  () => "because dry sand is bought, tipped and washed",
);
