// Writes bands.md: every band, typical curve and published point, from the library's own lists.

import { everyBand } from "../../lib/sand/all-bands.ts";
import { type Band, decides } from "../../lib/sand/band.ts";
import { peakWaterRatio, publishedPoints } from "../../lib/sand/typical-points.ts";
import { typicalCatalogue } from "./typical-catalogue.ts";

const row = (cells: readonly string[]): string =>
  `| ${cells.map((cell) => cell.replaceAll("|", "/")).join(" | ")} |`;
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] => [
  row(head),
  row(head.map(() => "---")),
  ...rows.map(row),
];
const shown = (value: number | undefined): string => (value === undefined ? "" : String(value));

function bandRow(band: Band): string[] {
  const { property, low, high, unit, basis, clayIs, goesWithFineness: fine, practice, anyMetal } = band;
  return [
    clayIs === undefined ? property : `${property} (${clayIs})`,
    `${low} to ${high}`,
    basis === undefined ? unit : `${unit} of ${basis}`,
    anyMetal ? "any; the source names none" : band.metal,
    [practice, fine && `fineness ${fine.low} to ${fine.high}`].filter((word) => word).join("; "),
    band.claim,
    band.tag,
    decides(band) ? "yes" : "no",
    band.source,
  ];
}

export function bandsDocument(): string {
  const all = everyBand();
  const bondTable = (bond: Band["bond"]) =>
    table(
      [
        "property",
        "figure",
        "unit and basis",
        "metal",
        "practice, fineness",
        "claim",
        "tag",
        "may decide",
        "source",
      ],
      all.filter((band) => band.bond === bond).map(bandRow),
    );
  return [
    "# Usual ranges, typical curves and published points",
    "",
    "Written by tests/reference/bands-document.ts from the library's own lists; a test holds it to them. Tags: **read** in the source or an excerpt of it; **from memory**; **derived** from figures that were read; **common practice**; **our own**. A range may decide a finding only where a source that was read recommends it; the others may be drawn, with their tag.",
    "",
    "## Bentonite-bonded sands",
    "",
    ...bondTable("bentonite"),
    "",
    "## Natural-bonded sands",
    "",
    "Never to be set beside the ranges for bentonite: this much water in bentonite sand is a steam hazard.",
    "",
    ...bondTable("natural"),
    "",
    "## Typical curves",
    "",
    `Water of permeability's peak over water of strength's peak: ${peakWaterRatio} (derived; Edoziuno et al. 2017, 6 over 4 %; Subbarao & Rammohan, 0.6 over 0.4 of the clay).`,
    "",
    ...table(
      ["curve", "figure", "unit and basis", "holds for", "its range holds", "tag", "source"],
      typicalCatalogue.map(({ curve, figure, unit, basis, within, holds, tag, source }) => [
        curve,
        figure,
        basis === undefined ? unit : `${unit} of ${basis}`,
        within,
        holds,
        tag,
        source,
      ]),
    ),
    "",
    "## Published points",
    "",
    ...table(
      [
        "point",
        "bond",
        "clay, %",
        "clay is",
        "water, %",
        "green compression, kPa",
        "permeability number",
        "fineness",
        "tag",
        "source",
      ],
      publishedPoints.map((point) => [
        point.label,
        point.bond,
        shown(point.clayPercent),
        point.clayIs ?? "not printed",
        shown(point.moisturePercent),
        point.strengthRangeKPa
          ? `${point.strengthRangeKPa.low} to ${point.strengthRangeKPa.high}`
          : shown(point.strengthKPa),
        shown(point.permeability),
        shown(point.gfn),
        point.tag,
        point.note === undefined ? point.source : `${point.source}; ${point.note}`,
      ]),
    ),
    "",
  ].join("\n");
}
