// How the pages head the columns of the tests.

import type { Tested } from "./tested.ts";

export const headsOf: { readonly [test in Tested]: string } = {
  moisture: "Moisture, % of damp mass",
  compactability: "Compactability, % of height",
  "green compression": "Green compression, kPa",
  permeability: "Permeability number",
  density: "Density, g/cm³",
};
