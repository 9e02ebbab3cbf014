// The names that a log knows, by what they belong to.

import { heapSectionKeys, heapSectionLines } from "./heap-keys.ts";

export const logKeys: readonly string[] = [
  "format",
  "title",
  "founder",
  "note",
  "invented",
  "metal",
  "bond",
  "units",
  "scales",
  "sieve sets",
  "sands",
  "rigs",
  "aims",
  "trial",
  "heap",
  "batches",
  "batches file",
  "sheets",
  "experiment",
  ...heapSectionKeys,
];

/** How a section is written, for a remedy; the others are a name and a value on one line. */
export const sectionLines: { readonly [key: string]: string } = {
  scales: "scales: { kitchen scale: { reads to: 0.1 g } }",
  "sieve sets": "sieve sets: { home stack: { frame: 200 mm } }",
  rigs: "rigs: { home tube: { bore: 50 mm, tube: 120 mm } }",
  sands: "sands:",
  batches: "batches:",
  aims: "aims: { compactability: 42 to 48 % }",
  trial: "trial: { axis: moisture }",
  sheets: "sheets:",
  heap: "heap: { mass: 120 kg ± 5 kg }",
  experiment: "experiment: { question: Does a longer mull raise green strength? }",
  ...heapSectionLines,
};

export const sandKeys = ["state", "note", "sievings", "sievings file"] as const;

export const sievingKeys = [
  "date",
  "portion",
  "repeat of",
  "scale",
  "sieve set",
  "minutes",
  "washed",
  "start",
  "unit",
  "retained",
  "note",
] as const;

export const scaleKeys = ["reads to", "within", "note"] as const;
export const sieveSetKeys = ["frame", "checked", "note"] as const;

export const heapKeys = [
  "mass",
  "buckets",
  "bucket",
  "empty",
  "scale",
  "clay kind",
  "shape",
  "cover",
  "exposed",
  "depth",
  "note",
] as const;

export const batchKeys = [
  "date",
  "order",
  "same heap",
  "sand",
  "made of",
  "mulled",
  "stood",
  "block",
  "left out",
  "note",
] as const;

export const recipeKeys = [
  "sand",
  "bentonite",
  "clay",
  "water",
  "additive",
  "sand moisture",
  "bentonite moisture",
  "clay moisture",
  "scale",
] as const;

/** Of an experiment; most may be a list of lines. */
export const experimentKeys = [
  "question",
  "expected",
  "changed",
  "held",
  "measured",
  "departures",
  "left out",
  "open",
  "review",
  "by",
  "where",
  "from",
  "to",
  "version",
] as const;

/** What a reading may say besides its figures. */
export const readingKeys = ["method", "rig", "scale", "note"] as const;
