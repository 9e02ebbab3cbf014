// What it usually means that a batch lies outside a usual range: plain strings in.

import { phraseMessage } from "../message.ts";
import type { Phrase } from "../phrase.ts";

/** What it usually means to lie outside; undefined where there is nothing to say. */
export function outsideMeans(property: string, side: "above" | "below", bond: string): Phrase | undefined {
  if (property === "moisture" && side === "above") return bond === "bentonite" ? tooWetErupts() : undefined;
  return meanings[`${property}, ${side}`] === undefined ? undefined : lyingOutside(property, side);
}

export const tooWetErupts = phraseMessage(
  "standing/too-wet-erupts",
  () =>
    "Over-wet bentonite sand can erupt as steam under the metal: spread it, let it dry, and test again before it goes near a pour.",
);

export const lyingOutside = phraseMessage(
  "standing/lying-outside",
  (property: string, side: "above" | "below") => meanings[`${property}, ${side}`] ?? "",
);

const meanings: Readonly<Record<string, string>> = Object.freeze({
  "moisture, below": "Dry sand is weak at its edges and is washed away by metal (common practice).",
  "compactability, above": "Wet sand swells and gives off more gas (M. Ring, trade article).",
  "compactability, below":
    "Dry sand crumbles at edges and deep pockets, and metal can enter it (M. Ring, trade article).",
  "green compression, below": "Weak sand drops and crushes (common practice).",
  "green compression, above":
    "Strong green sand can be stiff to ram and hard to shake out (common practice).",
  "permeability, below":
    "Gas escapes slowly: more blows and pinholes (encyclopaedia entry citing Modern Casting, 1999).",
  "permeability, above":
    "Open sand lets metal in and roughens the skin (encyclopaedia entry citing Modern Casting, 1999).",
});
