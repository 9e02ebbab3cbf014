// Whether a formula has neither kinks nor steps, so that a few points tell how it runs between them.

import type { Formula } from "./formula-type.ts";

/** Functions in closed form, without a case or a limit within their range. A sheet's other functions are drawn. */
const smoothFunctions = new Set([
  ...["sqrt", "cbrt", "exp", "ln", "log10", "log2", "percentOf", "lookUp"],
  ...["sum", "mean", "sd", "median", "count", "quantile"],
  ...["compactabilityByWeighingPercent", "compactabilityPercent", "pressedCompactabilityPercent"],
  ...["compressionKPa", "loadForKPa", "shearKPa", "splittingKPa", "specimenDensityGCm3"],
  ...[
    "porosityPercent",
    "airPorosityPercent",
    "moistureOfDampPercent",
    "dampToDryPercent",
    "dryToDampPercent",
  ],
  ...[
    "moistureStepPercent",
    "waterPerClay",
    "waterSensitivity",
    "permeabilityConstant",
    "permeabilityNumber",
  ],
  ...["permeabilityFromGd", "clayOfSandToDryMixPercent", "clayOfDryMixToSandPercent"],
]);

/** On the safe side: a name that looks like a function in doubt, or a sign of a comparison, makes it not smooth. */
export function isSmooth({ text, result }: Formula): boolean {
  if (result !== "number" || /[<>=?!]|\b(?:and|or|not)\b/.test(text)) return false;
  const called = [...text.matchAll(/([\p{L}_][\p{L}\p{M}\p{N}_]*)\s*\(/gu)].map((match) => match[1]!);
  return called.every((name) => smoothFunctions.has(name));
}
