// The cautions of a write-up: those of the tests, and of the sieve where the sand was sieved.

import { silicaDust } from "./cautions.ts";
import type { Caution } from "./finding.ts";
import { trialCautions } from "./trial-cautions.ts";
import type { WriteUp } from "./write-up-record.ts";

export function writeUpCautions({ rows, sands }: WriteUp): readonly Caution[] {
  const own = trialCautions(rows);
  // Mixing brings up the dust of dry sand as well, in words of its own.
  return sands.length > 0 || own.length === 0 ? [...own, silicaDust] : own;
}
