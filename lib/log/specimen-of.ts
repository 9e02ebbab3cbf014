// A specimen in words.

import { phraseMessage } from "../message.ts";

/** What a density was worked out from. */
export const specimenOf = phraseMessage(
  "log/specimen-of",
  (mass: string, bore: string, height: string) => `${mass} in a tube of ${bore} bore, ${height} high`,
);
