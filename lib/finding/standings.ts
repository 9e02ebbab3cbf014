// Where every batch stands against the usual ranges and the typical curves: one finding for each property.

import type { TestName } from "../log/batch.ts";
import type { BatchFigure, BatchFigures } from "../log/batch-figures.ts";
import type { Phrase } from "../phrase.ts";
import { type Band, type BandProperty, decides } from "../sand/band.ts";
import { bands } from "../sand/bands.ts";
import { type Bond, bondNames, metalNamed } from "../sand/metals.ts";
import { namesTogether } from "./batch-names.ts";
import type { Finding } from "./finding.ts";
import { outsideMeans } from "./outside-means.ts";
import { type Placed, placeBatch, type Where } from "./placed.ts";
import { chancesWithin, sidesOf } from "./sides.ts";
import * as say from "./standing-messages.ts";
import { taggedSource } from "./tagged-source.ts";
import { type TypicalAtBatch, typicalAtBatch } from "./typical-at-batch.ts";

/** One batch's figure of one property against one range. */
export interface Standing extends Placed {
  readonly property: BandProperty;
  /** "usual range", "strength by clay". */
  readonly against: string;
  readonly low: number;
  readonly high: number;
  /** For a curve: which clay it was asked at, in words. */
  readonly clay?: string;
}

export interface Standings {
  readonly findings: readonly Finding[];
  /** Every batch against every range and curve that was told, in the order of the findings. */
  readonly rows: readonly Standing[];
  /** Where the ranges and curves come from, each once. */
  readonly sources: readonly string[];
}

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

const told: readonly BandProperty[] = [
  "moisture",
  "compactability",
  "green compression",
  "permeability",
  "clay",
];

/**
 * Holds each batch against the usual ranges of its metal and bond and against the typical curves, with how sure that is
 * by its own ±: below, within, above, or not to be told. One finding a property; one batch is enough. Only a range that
 * may decide (see decides) makes a finding that stands or asks to look again; a figure whose ± is a lower bound decides
 * nothing. Curves are for bentonite, and decide nothing.
 * @example batchStandings(batchFigures(log).figures, { metal: "aluminium", bond: "bentonite" }).findings[0]?.text
 */
export function batchStandings(rows: readonly BatchFigures[], options: StandingOptions): Standings {
  const known = knownBands(options);
  const names = rows.map(({ batch }) => batch.name);
  const curves = options.bond === "bentonite" ? rows.map((row) => typicalAtBatch(row, options)) : [];
  const all: Standing[] = [];
  const findings: Finding[] = [];
  const sources = new Set<string>();
  for (const property of told) {
    const figures = rows.map((row) => figureOf(row, property));
    if (figures.every((one) => one === undefined)) continue;
    const groups = rangesOf(property, known, options.gfn).map((band) => againstBand(band, figures, names));
    const byCurve = curvesOf(property, curves).map((curve) => againstCurve(property, curve, figures, names));
    all.push(
      ...groups.slice(0, 1).flatMap(({ placed }) => placed),
      ...byCurve.flatMap(({ placed }) => placed),
    );
    const found = findingOf(property, groups, byCurve, { ...options, names, known });
    if (!found) continue;
    findings.push(found);
    for (const { source, placed } of [...groups, ...byCurve]) if (placed.length > 0) sources.add(source);
  }
  return { findings, rows: all, sources: [...sources] };
}

interface Group {
  readonly placed: readonly Standing[];
  readonly band?: Band;
  readonly curve?: string;
  readonly source: string;
  /** Batches that the curve gives nothing for, and why. */
  readonly without: ReadonlyMap<string, readonly string[]>;
}

function knownBands({ metal, bond }: StandingOptions): readonly Band[] {
  const named = metal === undefined ? undefined : metalNamed(metal);
  if (!named || !bondNames.includes(bond as Bond)) return [];
  return bands({ metal: named, bond: bond as Bond }).filter(({ claim }) => claim === "recommended");
}

type Figured = Pick<BatchFigure, "value" | "spread" | "missing"> | undefined;

function figureOf({ tests, recipe }: BatchFigures, property: BandProperty): Figured {
  if (property !== "clay") return tests[property as TestName];
  const spread = recipe?.clayOfDryMixPercent;
  return spread && spread.value > 0 ? { spread, value: spread.value, missing: recipe.missing } : undefined;
}

/** What may decide first, hand-rammed practice next; ranges of another fineness or another clay are passed over. */
function rangesOf(property: BandProperty, known: readonly Band[], gfn: number | undefined): readonly Band[] {
  const rank = (band: Band): number =>
    (decides(band) ? 0 : 10) + (band.practice === "hand-rammed" ? 0 : band.practice === undefined ? 1 : 2);
  return known
    .filter((band) => band.property === property)
    .filter(({ clayIs }) => property !== "clay" || clayIs === "bentonite added")
    .filter(
      ({ goesWithFineness: go }) =>
        property !== "permeability" || (go && gfn !== undefined && gfn >= go.low && gfn <= go.high),
    )
    .sort((a, b) => rank(a) - rank(b));
}

function againstBand(band: Band, figures: readonly Figured[], names: readonly string[]): Group {
  const { low, high, property } = band;
  const placed = figures.flatMap((one, i): Standing[] =>
    one
      ? [
          {
            ...placeBatch(names[i]!, one, low, high),
            property,
            against: "usual range",
            low,
            high,
          },
        ]
      : [],
  );
  return { placed, band, source: taggedSource(band.source, band.tag), without: new Map() };
}

function curvesOf(
  property: BandProperty,
  curves: readonly (readonly TypicalAtBatch[])[],
): readonly (readonly (TypicalAtBatch | undefined)[])[] {
  const named = new Set(
    curves.flatMap((own) => own.filter(({ test }) => test === property).map(({ curve }) => curve)),
  );
  return [...named].map((name) => curves.map((own) => own.find(({ curve }) => curve === name)));
}

function againstCurve(
  property: BandProperty,
  curve: readonly (TypicalAtBatch | undefined)[],
  figures: readonly Figured[],
  names: readonly string[],
): Group {
  const without = new Map<string, readonly string[]>();
  const placed = curve.flatMap((one, i): Standing[] => {
    const tested = figures[i];
    if (!one || !tested) return [];
    const { low, high, issues } = one.typical;
    if (low === undefined || high === undefined) {
      const why = issues.map(({ message }) => message).join(" ");
      without.set(why, [...(without.get(why) ?? []), names[i]!]);
      return [];
    }
    return [
      {
        ...placeBatch(names[i]!, tested, low, high),
        property,
        against: one.curve,
        low,
        high,
        clay: one.clay.says,
      },
    ];
  });
  const first = curve.find((one) => one !== undefined)!;
  const { source, tag, holds } = first.typical;
  return {
    placed,
    curve: first.curve,
    source: `${taggedSource(source, tag)}; the range holds: ${holds}`,
    without,
  };
}

interface Context extends StandingOptions {
  readonly names: readonly string[];
  readonly known: readonly Band[];
}

function findingOf(
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
