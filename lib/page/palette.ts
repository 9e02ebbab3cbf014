// The colours of a page as custom properties: on paper, on a dark screen, in print.

import { colours } from "../chart/theme.ts";
import { cssName } from "./svg-text.ts";

type Palette = { readonly [name in keyof typeof colours]: string };

/** For a dark screen; every pair of words and ground stands 4.5 : 1 or more (tested). */
export const darkColours: Palette = {
  ink: "#f2ede3",
  paper: "#191d20",
  quiet: "#b3b0a8",
  band: "#3f3829",
  bandEdge: "#9c8a60",
  measured: "#ee9f6b",
  fitted: "#7fc1e3",
  secondSand: "#b9a8ec",
  thirdSand: "#6cc7b5",
  rule: "#434849",
};

/** Custom properties as declarations: "--ink:#1f2a30;--paper:…". */
function declarations(palette: Palette): string {
  return Object.entries(palette)
    .map(([name, value]) => `${cssName(name)}:${value}`)
    .join(";");
}

/** Dark only on a screen: paper is white whatever the reader's system likes. Bands are hatched in print. */
export function paletteStyle(): string {
  return `:root{color-scheme:light dark;${declarations(colours)}}
@media screen and (prefers-color-scheme:dark){:root{${declarations(darkColours)}}}
@media print{:root{color-scheme:light;--paper:#fff;--ink:#000;--quiet:#333;--rule:#bbb;--band:url(#hatch)}}`;
}
