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
