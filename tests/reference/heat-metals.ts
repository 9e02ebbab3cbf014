// Metals of worked examples on freezing, as their books give them.

import type { MetalHeat } from "../../lib/sand/moulding-heat.ts";

/** Ghosh & Mallik, Manufacturing Science, example 2.5 (inputs read). */
export const iron: MetalHeat = {
  name: "iron",
  freezesC: 1540,
  latentKJKg: 272,
  densityKgM3: 7850,
  liquidJKgK: 0,
  solidJKgK: 0,
  pouredC: 1540,
  source: "the example",
  tag: "read",
};
