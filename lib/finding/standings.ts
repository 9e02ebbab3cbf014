// Where every batch stands against the usual ranges and the typical curves: one finding for each property.

import type { TestName } from "../log/batch.ts";
import type { BatchFigures } from "../log/batch-figures.ts";
import type { Band, BandProperty } from "../sand/band.ts";
import { bands } from "../sand/bands.ts";
import { type Bond, bondNames, metalNamed } from "../sand/metals.ts";
import type { Finding } from "./finding.ts";
import { type StandingOptions, standingFinding } from "./standing-finding.ts";
import {
  againstBand,
  againstCurve,
  curvesOf,
  type Figured,
  rangesOf,
  type Standing,
} from "./standing-groups.ts";
import { typicalAtBatch } from "./typical-at-batch.ts";

export interface Standings {
  readonly findings: readonly Finding[];
  /** Every batch against every range and curve that was told, in the order of the findings. */
  readonly rows: readonly Standing[];
  /** Where the ranges and curves come from, each once. */
  readonly sources: readonly string[];
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
    const found = standingFinding(property, groups, byCurve, { ...options, names, known });
    if (!found) continue;
    findings.push(found);
    for (const { source, placed } of [...groups, ...byCurve]) if (placed.length > 0) sources.add(source);
  }
  return { findings, rows: all, sources: [...sources] };
}

function knownBands({ metal, bond }: StandingOptions): readonly Band[] {
  const named = metal === undefined ? undefined : metalNamed(metal);
  if (!named || !bondNames.includes(bond as Bond)) return [];
  return bands({ metal: named, bond: bond as Bond }).filter(({ claim }) => claim === "recommended");
}

function figureOf({ tests, recipe }: BatchFigures, property: BandProperty): Figured {
  if (property !== "clay") return tests[property as TestName];
  const spread = recipe?.clayOfDryMixPercent;
  return spread && spread.value > 0 ? { spread, value: spread.value, missing: recipe.missing } : undefined;
}
