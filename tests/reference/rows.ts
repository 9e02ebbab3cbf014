// All rows of published figures, in the order of the table.

import type { Section } from "./published.ts";
import { bondRows } from "./rows-bond.ts";
import { controlRows } from "./rows-control.ts";
import { distributionRows } from "./rows-distributions.ts";
import { exactRows } from "./rows-exact.ts";
import { finenessRows } from "./rows-fineness.ts";
import { fitRows } from "./rows-fits.ts";
import { grainRows } from "./rows-grain.ts";
import { gumRows } from "./rows-gum.ts";
import { heapRows } from "./rows-heap.ts";
import { heatRows } from "./rows-heat.ts";
import { moistureRows } from "./rows-moisture.ts";
import { permeabilityRows } from "./rows-permeability.ts";
import { practiceRows } from "./rows-practice.ts";
import { recipeRows } from "./rows-recipes.ts";
import { rigRows } from "./rows-rigs.ts";
import { sieveRows } from "./rows-sieves.ts";
import { statisticsRows } from "./rows-statistics.ts";
import { surfaceRows } from "./rows-surfaces.ts";
import { typicalRows } from "./rows-typical.ts";
import { uncertaintyRows } from "./rows-uncertainty.ts";
import { weatherRows } from "./rows-weather.ts";

export const sections: readonly Section[] = [
  { title: "Fineness", file: "rows-fineness.ts", rows: finenessRows },
  { title: "Sieves", file: "rows-sieves.ts", rows: sieveRows },
  { title: "Grain statistics, surface", file: "rows-grain.ts", rows: grainRows },
  { title: "Water, settling, practice of sieving", file: "rows-practice.ts", rows: practiceRows },
  { title: "Specimens, strength, compactability", file: "rows-rigs.ts", rows: rigRows },
  { title: "Moisture, drying, wash", file: "rows-moisture.ts", rows: moistureRows },
  { title: "Permeability", file: "rows-permeability.ts", rows: permeabilityRows },
  { title: "Recipes", file: "rows-recipes.ts", rows: recipeRows },
  { title: "Bond", file: "rows-bond.ts", rows: bondRows },
  { title: "Typical curves", file: "rows-typical.ts", rows: typicalRows },
  { title: "Weather", file: "rows-weather.ts", rows: weatherRows },
  { title: "Heat, burn-out", file: "rows-heat.ts", rows: heatRows },
  { title: "Heap, muller, faults, units", file: "rows-heap.ts", rows: heapRows },
  { title: "Least squares", file: "rows-fits.ts", rows: fitRows },
  { title: "Surfaces, no unknown below 0", file: "rows-surfaces.ts", rows: surfaceRows },
  { title: "Statistics", file: "rows-statistics.ts", rows: statisticsRows },
  { title: "Tables of distributions", file: "rows-distributions.ts", rows: distributionRows },
  { title: "Few cases counted exactly", file: "rows-exact.ts", rows: exactRows },
  { title: "Control charts", file: "rows-control.ts", rows: controlRows },
  { title: "Uncertainty: the GUM", file: "rows-gum.ts", rows: gumRows },
  { title: "Uncertainty: draws, and others", file: "rows-uncertainty.ts", rows: uncertaintyRows },
];
