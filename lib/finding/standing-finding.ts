// What is said of where batches stand: the range, who lies where and how sure, what it means, whether it decides.

import type { TestName } from "../log/batch.ts";
import type { Phrase } from "../phrase.ts";
import { type Band, type BandProperty, decides } from "../sand/band.ts";
import { namesTogether } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { outsideMeans } from "./outside-means.ts";
import type { Placed, Where } from "./placed.ts";
import { chancesWithin, sidesOf } from "./sides.ts";
import type { Group } from "./standing-groups.ts";
import * as say from "./standing-messages.ts";

export interface StandingOptions {
  readonly metal?: string | undefined;
  readonly bond?: string | undefined;
  /** The sand's grain fineness number, which a permeability goes with. */
  readonly gfn?: number | undefined;
  /** A number of a property as the page prints it, without its unit, and that unit: "45" and "kPa". */
  readonly print?: (value: number, property: BandProperty) => string;
  readonly unit?: (property: BandProperty, unit: string) => string;
  /** What the trial varies on purpose: there a batch outside the usual range is no cause for doubt. */
  readonly varied?: TestName | "clay" | undefined;
}

interface Context extends StandingOptions {
  readonly names: readonly string[];
  readonly known: readonly Band[];
}

export function standingFinding(
  property: BandProperty,
  ranges: readonly Group[],
  curves: readonly Group[],
  context: Context,
): Finding | undefined {
  const { names, known, varied, bond } = context;
  const [first, ...others] = ranges;
  const curved = curves.filter(({ placed }) => placed.length > 0);
  const lead = first ?? curved[0];
  if (!lead || lead.placed.length === 0) return undefined;
  const { band } = lead;
  const sides = new Set(lead.placed.map(({ where }) => where));
  const means = [...sides].flatMap((side) =>
    side === "below" || side === "above" ? (outsideMeans(property, side, bond ?? "") ?? []) : [],
  );
  const because = [
    ...howSure(lead.placed, names),
    ...means,
    ...others.map(({ placed, band: other }) =>
      say.otherRange(rangeText(other!, context), sidesOf(placed, names)),
    ),
    ...curved
      .filter((one) => one !== lead)
      .map((one) => say.otherRange(curveText(one, context), sidesOf(one.placed, names))),
    ...curves.flatMap(({ without, curve }) =>
      [...without].map(([why, batches]) => say.noCurveFor(curve!, namesTogether(batches, names), why)),
    ),
    ...(band ? (decides(band) ? [] : [say.decidesNothing()]) : [say.curveDecidesNothing()]),
    ...(property === "permeability" && !first ? finenessLine(known) : []),
  ];
  return say.stands(
    property,
    band ? rangeText(band, context) : curveText(lead, context),
    sidesOf(lead.placed, names),
    because,
    [lead, ...others, ...curved.filter((one) => one !== lead)].map(({ source }) => source).join("; "),
    toneOf(lead.placed, band, varied === property),
  );
}

/** How sure, by the ± of each batch; nothing where no batch has one. */
function howSure(placed: readonly Placed[], names: readonly string[]): readonly Phrase[] {
  const batches = (of: (one: Placed) => boolean): string =>
    namesTogether(
      placed.filter(of).map(({ batch }) => batch),
      names,
    );
  const apart = chancesWithin(placed, names);
  const low = batches(({ chance, atLeast }) => chance !== undefined && atLeast);
  const bare = batches(({ chance }) => chance === undefined);
  return [
    ...(placed.some(({ chance, where }) => chance !== undefined && where !== "not told")
      ? [say.sidesAreSure()]
      : []),
    ...(apart.length > 0 ? [say.mayLieWithin(apart)] : []),
    ...(low !== "" ? [say.lessSure(low)] : []),
    ...(bare !== "" ? [say.byFigureAlone(bare)] : []),
  ];
}

function finenessLine(known: readonly Band[]): readonly Phrase[] {
  const ranges = known.flatMap(({ property, goesWithFineness: go }) =>
    property === "permeability" && go ? [`${go.low} to ${go.high}`] : [],
  );
  return ranges.length === 0 ? [] : [say.finenessWanted([...new Set(ranges)].join("; "))];
}

function toneOf(
  placed: readonly Placed[],
  band: Band | undefined,
  varied: boolean,
): Extract<Finding["tone"], "good" | "note" | "doubt"> {
  if (!band || !decides(band) || varied) return "note";
  const outside: readonly Where[] = ["below", "above", "not told"];
  if (placed.some(({ where }) => outside.includes(where))) return "doubt";
  return placed.every(({ where, atLeast }) => where === "within" && !atLeast) ? "good" : "note";
}

function rangeText(band: Band, { print = plain, unit = asIs }: StandingOptions): Phrase {
  const { low, high, property, practice, tag, metal, bond, basis, clayIs } = band;
  const [shown, of] = [unit(property, band.unit), basis === undefined ? "" : `of ${basis}`].map((word) =>
    word === "permeability number" ? "" : word,
  );
  const notes = [practice, clayIs, tag === "read" ? undefined : tag].filter((word) => word !== undefined);
  const ends = `${print(low, property)} to ${print(high, property)}`;
  return say.rangeGiven(ends, shown!, of!, metal, bond, notes);
}

function curveText({ placed, curve }: Group, { print = plain, unit = asIs }: StandingOptions): Phrase {
  const { property } = placed[0]!;
  const [low, high] = [Math.min(...placed.map((one) => one.low)), Math.max(...placed.map((one) => one.high))];
  const units: { readonly [of in BandProperty]?: string } = {
    "green compression": "kPa",
    moisture: "% of damp mass",
  };
  const ends = `${print(low, property)} to ${print(high, property)}`;
  return say.curveTypical(ends, unit(property, units[property] ?? ""), curve!);
}

const asIs = (_: BandProperty, unit: string): string => unit;
const plain = (value: number): string => String(Number(value.toPrecision(value >= 100 ? 3 : 2)));
