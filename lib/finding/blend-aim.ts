// What a blend is to come to, worked out from the log: a range of fineness numbers, or the curve of a sand.

import type { LoggedBlend } from "../log/heap-record.ts";
import { type Band, decides } from "../sand/band.ts";
import { bands } from "../sand/bands.ts";
import { type Bond, bondNames, metalNamed } from "../sand/metals.ts";
import type { SandReport } from "./sand-report.ts";

export type BlendTarget =
  /** One number, or anything from low to high. */
  | {
      readonly kind: "number";
      readonly low: number;
      readonly high: number;
      readonly words: string;
      readonly source: string;
      /** True where the range is a source's recommendation that was read, or the founder's own. */
      readonly decides: boolean;
      readonly band?: Band;
    }
  | { readonly kind: "curve"; readonly report: SandReport };

/** Why there is none: the aim was not said, the bond was not said, no range is known, the sand cannot be compared. */
export type NoTarget = "no aim" | "no bond" | "no band" | "no curve";

/**
 * The target of a log's blend. reports: of the log's sands. A number written with a ± is a range of that width. Of several
 * usual ranges the first that decides is taken, else the first at all.
 */
export function blendTarget(
  { to }: LoggedBlend,
  bond: string | undefined,
  reports: readonly SandReport[],
): BlendTarget | NoTarget {
  if (!to) return "no aim";
  if (to.kind === "gfn") {
    const { value, plusMinus, text } = to.gfn;
    const half = plusMinus?.size ?? 0;
    const words = `a fineness number of ${text}`;
    return {
      kind: "number",
      low: value - half,
      high: value + half,
      words,
      source: "Your own aim",
      decides: true,
    };
  }
  if (to.kind === "like") {
    const report = reports.find(({ sand }) => sand.name === to.sand);
    return report?.trusted ? { kind: "curve", report } : "no curve";
  }
  const known = bondNames.find((name) => name === bond);
  const metal = metalNamed(to.metal);
  if (!known || !metal) return "no bond";
  const usual = bands({ metal, bond: known as Bond, property: "fineness" });
  const band = usual.find(decides) ?? usual[0];
  if (!band) return "no band";
  const { low, high, practice, source } = band;
  const words = `the usual ${low} to ${high} for ${metal}${practice ? `, ${practice}` : ""}, in ${known} sand`;
  return { kind: "number", low, high, words, source, decides: decides(band), band };
}
