// The names that a log knows, by what they belong to.

export const logKeys = [
  "format",
  "title",
  "founder",
  "note",
  "invented",
  "metal",
  "bond",
  "scales",
  "sieve sets",
  "sands",
  "rigs",
  "aims",
  "trial",
  "batches",
  "batches file",
] as const;

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

export const batchKeys = [
  "date",
  "order",
  "same heap",
  "sand",
  "made of",
  "mulled",
  "stood",
  "block",
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

/** What a reading may say besides its figures. */
export const readingKeys = ["method", "rig", "scale", "note"] as const;
