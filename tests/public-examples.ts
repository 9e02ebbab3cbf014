// The examples in the comments of the public functions.

import { commentParts } from "../lib/disk/reference-comment.ts";

/** Told in words, because what they need does not fit into a line. */
export const examplesInWords: readonly string[] = [
  "forecastSeason",
  "freezingByShape",
  "heatFigures",
  "moistureAfter",
  "mullingComparison",
  "ownBurnOut",
  "responseSurface",
  "stationaryPoint",
  "temperTonight",
  "uncheckedCompanions",
  "weatherWater",
];

export function examplesOf(comment: string): string[] {
  return commentParts(comment).flatMap(({ kind, text }) => (kind === "example" ? [text] : []));
}
