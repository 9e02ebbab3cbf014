// The sentences of a write-up that are not findings: plain strings in.

const unsaid = (names: string): string => (names === "" ? "" : `; not said of ${names}`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const heldAlike = (what: string, amount: string, notSaid: string): string =>
  `${capital(what)}: ${amount} in every batch${unsaid(notSaid)}.`;

export const heldBut = (what: string, amount: string, others: string, notSaid: string): string =>
  `${capital(what)}: ${amount} in every batch but ${others}${unsaid(notSaid)}.`;

export const varied = (what: string, least: string, most: string, notSaid: string): string =>
  `${capital(what)}: from ${least} to ${most}${unsaid(notSaid)}.`;

/** groups: "6 of short mull and 6 of long mull", or nothing. */
export const wasMade = (
  batches: string,
  levels: string,
  groups: string,
  days: string,
  tests: string,
): string =>
  `${batches}${levels}${groups === "" ? "" : `, ${groups},`} ${batches.startsWith("1 ") ? "was" : "were"} made${days === "" ? "" : ` (${days})`}${tests === "" ? "" : ` and tested for ${tests}`}.`;

export const nothingMade = "This log has no batch yet, so there is nothing to tell but what is asked.";

/** apart: "12 ± 4 kPa more green compression"; alike: "permeability (-2 ± 6)". */
export const toldApart = (
  where: string,
  second: string,
  first: string,
  apart: string,
  alike: string,
): string =>
  apart === ""
    ? `${where}${second} and ${first} cannot be told apart by these batches in ${alike}.`
    : `${where}${second} had ${apart} than ${first}${alike === "" ? "" : `; they cannot be told apart in ${alike}`}.`;

/** As typed; each closed with a full stop. */
export const wasExpected = (expected: readonly string[]): string =>
  `Expected beforehand: ${expected.map((text) => (/[.!?]$/.test(text) ? text : `${text}.`)).join(" ")}`;

export const openEnd = (side: string): string =>
  `The best place that was tried is the ${side} end: what lies beyond is not known.`;

export const fewBatches = (batches: string, levels: string): string =>
  `${batches} at ${levels}: from five batches at three levels on there are curves that bend, and chances.`;

export const noCurve = (tests: string): string =>
  `No curve could be laid through ${tests}: the batches are too few, or at too few levels.`;

export const leanedOn = (tests: string): string =>
  `The curve of ${tests} leans on a published slope, for want of batches; the founder's own batches would take its place from five on.`;

export const thinRepeats = (tests: string): string =>
  `Nothing was tested twice on one batch in ${tests}, so the scatter of the test is not known apart from that of the batch.`;

export const lacksWeighing = (tests: string): string =>
  `The scale of ${tests} is not named, so its share is missing from the ±: name it and what it reads to.`;
export const lacksScaleCheck = (tests: string): string =>
  `The scale of ${tests} was never checked with known weights: bottled water of a known volume is one.`;
export const lacksBlankRun = (tests: string): string =>
  `No blank run of the rig for ${tests}: a run without a specimen would tell what the rig itself takes.`;
export const lacksMethod = (tests: string): string =>
  `What the method of ${tests} reads off by is not known: one batch dried in the oven at 105 °C (220 °F) as well would tell.`;
export const lacksReading = (tests: string): string =>
  `${capital(tests)} stands in the log as a number without a ±: the raw readings would give it one.`;

export const wentAlong = (what: string, axis: string): string =>
  `${capital(what)} went along with the ${axis}, so the two cannot be told apart: the same batches in a shuffled order would part them.`;

export const notLookedAt = (what: string): string =>
  `Whether ${what} went along with what was varied: the log does not say it for enough batches.`;

export const theseBlocksOnly = (blocks: string): string =>
  `The curves hold for ${blocks} alone: how far another day or bag would lie off is not known from two.`;

export const otherRig =
  "The bias of tube, scale and air vessel is shared by all batches and is not in a repeat's interval: another founder's rig adds its own.";

export const farBatch = (batch: string, test: string): string =>
  `${batch} lies far off the curve of ${test}, and nothing in the log says why: make it again.`;

export const poorForm = (test: string): string =>
  `The curve of ${test} does not follow its batches: batches of one level agree with each other better than with it.`;

export const oneSand = (sand: string): string => `All batches are of ${sand}; another sand was not tried.`;

export const lackOf = {
  question: "The question: question, under experiment.",
  changed: "What was changed from batch to batch, and what was held: changed and held, under experiment.",
  expected: "What was expected beforehand: expected, under experiment.",
  measured: "How it was made and measured, step by step: measured, under experiment.",
  version: "A version, so that a later one can be told from this: version, under experiment.",
  open: "What the founder holds to be open: open, under experiment.",
  days: "The days: a date at every batch.",
  recipe: (names: string): string => `What went into ${names}: made of, at the batch.`,
  order: (names: string): string => `The order of ${names}: order, at the batch.`,
  mulled: (names: string): string => `The minutes of mulling of ${names}: mulled, at the batch.`,
  stood: (names: string): string => `The minutes that ${names} stood before the tests: stood, at the batch.`,
  rig: (tests: string): string => `The rig for ${tests}: rig, at the reading.`,
  ramming: (names: string): string =>
    `Rammer, drop and blows of ${names}, for the energy that packs the specimen: under rigs.`,
  sieving: "The fineness of the sand: a sieving under sands, and sand at every batch.",
} as const;

export const nextAfter = {
  first: "Make five batches at three levels or more, in a shuffled order, and test each alike.",
  likeOthers: "Mull and rest it like the others.",
  likeBlock: (block: string): string =>
    `Make it like the batches of ${block}: by these curves they meet the ranges most surely.`,
  thin: "Make batches until there are five at three levels or more, the new ones where the gaps are widest.",
  confirm: "Make the batch at the aim once more, and test it twice, to confirm it.",
  unconfound: "Shuffle the order of what went along with the axis, so that the two can be told apart.",
  again: (order: string): string =>
    `To repeat the whole, make the batches fresh and in a shuffled order of your own, such as ${order}.`,
} as const;
