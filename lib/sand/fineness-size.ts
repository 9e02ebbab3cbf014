// From the fineness number to an average grain size and back: a rough rule for narrow sands.

import type { Checked } from "../issue.ts";
import { issueMessage } from "../message.ts";

/** The table of the handbook holds between these fineness numbers … */
const finenessSizeRange = Object.freeze({ low: 35, high: 90 });
/** … which are these sizes, µm. */
const sizeFinenessRange = Object.freeze({ low: 150, high: 390 });

// Fineness × size of the ten rows of the table runs from 13 200 to 14 000 µm.
const product = Object.freeze({ typical: 13_600, low: 13_200, high: 14_000 });

export interface RoughFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const rough = (by: number): RoughFigure =>
  Object.freeze({ value: product.typical / by, low: product.low / by, high: product.high / by });

export const outsideTable = issueMessage(
  "sand/fineness-size-range",
  "error",
  (what: string, figure: string, low: string, high: string) => ({
    message: `${what} ${figure} is outside ${low} to ${high}, where the rule between fineness and size was tabulated.`,
    remedy: "Work the wanted figure out from the sieving itself.",
  }),
);

export const narrowOnly = issueMessage("sand/fineness-size-narrow", "note", () => ({
  message:
    "The rule holds for sands that lie on three or four neighbouring sieves; a wide sand breaks it: one clayey natural sand of fineness 88 averages 336 µm, where the rule says 154 µm.",
  remedy: "With the sieving at hand, work both figures out from it.",
}));

/**
 * Average grain size that goes with a fineness number, µm: 13 600 / GFN, with the table's own scatter (13 200 to
 * 14 000) as low and high.
 *
 * gfn: 35 to 90; outside it is refused. Always carries a note that a wide sand breaks it (Yola natural sand:
 * Ihom et al., Leonardo Electronic J. of Practices and Technologies 19, 2011, 85–96).
 * Source: table in Brown (ed.), Foseco Foundryman's Handbook, 1994 (from memory), which calls it approximate.
 *
 *     roughSizeUm(60).value   // { value: 226.7, low: 220, high: 233.3 }
 */
export function roughSizeUm(gfn: number): Checked<RoughFigure> {
  const { low, high } = finenessSizeRange;
  if (!(gfn >= low && gfn <= high))
    return { issues: [outsideTable("A fineness of", String(gfn), String(low), String(high))] };
  return { value: rough(gfn), issues: [narrowOnly()] };
}

/**
 * Fineness number that goes with an average grain size: 13 600 / µm, with low and high as in roughSizeUm.
 *
 * sizeUm: 150 to 390 µm, the ends of the table; outside it is refused. Source and note as in roughSizeUm.
 *
 *     roughFineness(220).value   // { value: 61.8, low: 60, high: 63.6 }
 */
export function roughFineness(sizeUm: number): Checked<RoughFigure> {
  const { low, high } = sizeFinenessRange;
  if (!(sizeUm >= low && sizeUm <= high))
    return { issues: [outsideTable("A size in µm of", String(sizeUm), String(low), String(high))] };
  return { value: rough(sizeUm), issues: [narrowOnly()] };
}
