// The hazards of what founders keep their own sheets about.

import { localRules } from "./cautions.ts";
import type { Caution } from "./finding.ts";

/** A sheet does not tell what was handled for its figures, so this stands before every page of own sheets. */
export const ownSheets: Caution = {
  code: "caution/own-sheets",
  trigger: "because the figures of this page come from sand, clay or metal that was handled",
  text: "Dust of sand and clay scars the lungs for good, hot sand and dishes burn, and water under molten metal throws it out.",
  points: [
    "Weigh, tip and sieve dry sand and clay outdoors or under extraction, with a mask that seals; wipe up wet, no dry sweeping.",
    "Dry at about 105 °C (220 °F) in a thin layer, and let it cool before it is weighed; what has dried sand is not used for food again.",
    "Take samples only from a muller that stands still and is unplugged.",
    "What a founder's own formula gives is arithmetic: it does not say that sand, mould or metal is fit for anything.",
  ],
  defers: localRules,
};
