// Where a batch stands against a typical curve and against the usual ranges, and how sure that is.

import { normalCumulative } from "../numbers/normal.ts";
import { type Band, type BandProperty, decides } from "../sand/band.ts";
import type { TypicalValue } from "../sand/typical-value.ts";
import type { Finding } from "./finding.ts";
import * as say from "./typical-messages.ts";

/** A batch's figure of one property. */
export interface BatchFigure {
  readonly batch: string;
  readonly property: BandProperty;
  readonly value: number;
  /** Ends of the 95 % interval; left out where the ± is not known in full. */
  readonly low?: number;
  readonly high?: number;
  /** As the page prints it: "62 ± 7 kPa". */
  readonly figure: string;
}

/**
 * Where a batch stands against a typical curve. at: what the curve was asked for, in words ("8 % bentonite"). It is
 * always a note: a typical curve decides nothing. How sure: the chance, from the batch's own ± taken as normal, that
 * the true figure lies on that side; the curve's range is taken as it is, with what it holds said beside it.
 *
 *     typicalStanding({ batch: "Batch 2", property: "green compression", value: 62, low: 55, high: 69,
 *       figure: "62 ± 7 kPa" }, typicalStrength({ … }), "8 % bentonite")
 */
export function typicalStanding(batch: BatchFigure, typical: TypicalValue, at: string): Finding {
  const { low, high, unit, basis, holds, source, tag } = typical;
  if (low === undefined || high === undefined)
    return say.noCurve(
      batch.batch,
      batch.property,
      typical.issues.map(({ message }) => message),
    );
  const of = basis === undefined ? unit : `${unit} of ${basis}`;
  const held: say.Held = {
    batch: batch.batch,
    property: batch.property,
    figure: batch.figure,
    range: `${round(low)} to ${round(high)}${unit === "permeability number" ? "" : ` ${of}`}, typical at ${at}`,
    source: `${source} (${tag})`,
  };
  const side = sideOf(batch, low, high);
  if (side.interval === undefined)
    return say.curveUnsure(held, side.where === "inside" ? "within" : side.where);
  const { below, inside, above } = side;
  if (side.interval === "across") return say.acrossCurve(held, round(side.edge), percent(inside), holds);
  if (side.interval === "inside") return say.onCurve(held, percent(inside), holds);
  return say.offCurve(held, side.interval, percent(side.interval === "above" ? above : below), holds);
}

/**
 * Where a batch stands against the usual ranges of its property: one finding for each range that may decide, those that
 * may not told together by side. Ranges of sands that merely served are left out.
 *
 * bands: of the batch's metal and bond, any properties. gfn: the sand's grain fineness number: a permeability range
 * goes with a fineness, and is passed over without it. clayIs: what the batch's clay figure counts; ranges that count
 * another clay are passed over.
 */
export function bandStandings(
  batch: BatchFigure,
  bands: readonly Band[],
  more: { readonly gfn?: number; readonly clayIs?: NonNullable<Band["clayIs"]> } = {},
): readonly Finding[] {
  const recommended = bands.filter(
    ({ property, claim, clayIs }) =>
      property === batch.property &&
      claim === "recommended" &&
      (property !== "clay" || clayIs === more.clayIs),
  );
  const fitting = recommended.filter((band) => fits(band, more.gfn));
  if (fitting.length === 0 && recommended.length > 0) {
    const ranges = recommended.map(({ goesWithFineness: go }) =>
      go ? `${go.low} to ${go.high}` : "not said",
    );
    return [say.rangeNeedsFineness(batch.batch, [...new Set(ranges)].join("; "))];
  }
  const groups = new Map<string, Band[]>();
  for (const band of fitting) {
    const { interval, where } = sideOf(batch, band.low, band.high);
    const key = decides(band) ? `${band.low} ${band.high} ${band.source}` : (interval ?? where);
    groups.set(key, [...(groups.get(key) ?? []), band]);
  }
  return [...groups.values()].map((together) => standing(batch, together));
}

function fits({ property, goesWithFineness: range }: Band, gfn: number | undefined): boolean {
  if (property !== "permeability") return true;
  return range !== undefined && gfn !== undefined && gfn >= range.low && gfn <= range.high;
}

function standing(batch: BatchFigure, together: readonly Band[]): Finding {
  const [first] = together as readonly [Band];
  const { low, high, metal, bond } = first;
  const side = sideOf(batch, low, high);
  const of = [first.unit === "permeability number" ? "" : first.unit, first.basis ? `of ${first.basis}` : ""];
  const ranges = together.map((band) => {
    const words = [band.practice, band.tag === "read" ? undefined : band.tag].filter(
      (word) => word !== undefined,
    );
    return `${band.low} to ${band.high}${words.length > 0 ? ` (${words.join(", ")})` : ""}`;
  });
  const unit = of.filter((word) => word !== "").join(" ");
  const held: say.Held = {
    batch: batch.batch,
    property: batch.property,
    figure: batch.figure,
    range: `${ranges.join(" and ")}${unit === "" ? "" : ` ${unit}`}, given for ${metal} in ${bond} sand`,
    source: together.map((band) => `${band.source} (${band.tag})`).join("; "),
  };
  const meaning = side.where === "inside" ? "" : say.outsideMeans(batch.property, side.where, bond);
  if (side.interval === undefined) return say.rangeUnsure(held, side.where, meaning);
  if (side.interval === "inside") return say.inRange(held, decides(first));
  if (side.interval === "across") return say.acrossRange(held, round(side.edge), decides(first));
  return say.outOfRange(held, side.interval, decides(first), meaning);
}

export type Side = {
  /** Where the value itself lies. */
  readonly where: "inside" | "above" | "below";
} & (
  | { /** Without an interval. */ readonly interval: undefined }
  | {
      /** Where the whole 95 % interval lies. */
      readonly interval: "inside" | "above" | "below" | "across";
      /** The edge that the interval runs across. */
      readonly edge: number;
      /** Chances, 0 to 1. */
      readonly below: number;
      readonly inside: number;
      readonly above: number;
    }
);

/** On which side of a range a figure lies, by its interval where it has one, with the chances of each side. */
export function sideOf(
  { value, low, high }: Pick<BatchFigure, "value" | "low" | "high">,
  from: number,
  to: number,
): Side {
  const where = value > to ? "above" : value < from ? "below" : "inside";
  if (low === undefined || high === undefined || !Number.isFinite(low) || !Number.isFinite(high))
    return { where, interval: undefined };
  const crossed = [from, to].filter((end) => low < end && end < high);
  const edge = crossed.sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? from;
  const interval =
    low > to ? "above" : high < from ? "below" : low >= from && high <= to ? "inside" : "across";
  const sd = (high - low) / 2 / 1.959964;
  const share = (at: number) => (sd > 0 ? normalCumulative((at - value) / sd) : at >= value ? 1 : 0);
  const below = share(from);
  const above = 1 - share(to);
  return { where, interval, edge, below, above, inside: Math.max(0, 1 - below - above) };
}

/** Never "100 %": a normal tail is no proof. */
function percent(chance: number): string {
  const whole = Math.round(100 * chance);
  return whole >= 99 ? "more than 98" : whole <= 1 ? "less than 2" : String(whole);
}

function round(value: number): string {
  return String(Number(value.toPrecision(3)));
}
