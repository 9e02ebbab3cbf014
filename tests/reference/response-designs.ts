// Two published designs for a quadratic surface over two factors.

import { fitQuadraticSurface } from "../../lib/numbers/quadratic-surface.ts";

// Myers, Montgomery & Anderson-Cook, Response Surface Methodology (2009), table 7.6, with the output of R. V. Lenth,
// J. Stat. Softw. 32(7) (2009). Time and temperature of a chemical reaction, yield in %, in two blocks.
const time = [80, 80, 90, 90, 85, 85, 85, 85, 85, 85, 92.07, 77.93, 85, 85];
const heat = [170, 180, 170, 180, 175, 175, 175, 175, 175, 175, 175, 175, 182.07, 167.93];
const yieldPercent = [80.5, 81.5, 82, 83.5, 83.9, 84.3, 84, 79.7, 79.8, 79.5, 78.4, 75.6, 78.5, 77];
export const chemical = fitQuadraticSurface(
  time.map((t) => (t - 85) / 5),
  heat.map((t) => (t - 175) / 5),
  yieldPercent,
  { blocks: yieldPercent.map((_, i) => (i < 7 ? "first" : "second")) },
);

// Box, Hunter & Hunter, Statistics for Experimenters (2005), table 10.17: carbon monoxide of an engine, 3 × 3, each twice.
const carbon = [61.9, 65.6, 80.9, 78, 89.7, 93.8, 72.1, 67.3, 80.1, 81.4, 77.8, 74.8, 66.4, 68.2, 68.9, 66, 60.2, 57.9]; // biome-ignore format: as the table runs
export const sloping = fitQuadraticSurface(
  carbon.map((_, i) => Math.floor((i % 6) / 2) - 1),
  carbon.map((_, i) => Math.floor(i / 6) - 1),
  carbon,
);
