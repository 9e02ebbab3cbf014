// What to blend, and what it comes to, as sections of a page.

import { blendChart } from "../chart/blend-chart.ts";
import type { Chart } from "../chart/chart.ts";
import type { GrainPoint } from "../chart/grain-input.ts";
import { numberStrip } from "../chart/number-strip.ts";
import { blendNumberText, shareText } from "../finding/blend-findings.ts";
import type { BlendedSand, BlendReport } from "../finding/blend-report.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { printNumber } from "../quantity/print.ts";
import type { Block, KeyFigure, Section, TableCell, TableRow, Text } from "./blocks.ts";
import { figureCell } from "./figure-cell.ts";
import { inShownUnit, shownUnit, type UnitSystem } from "./shown-units.ts";

/** That the table is made out for: a mixing tub, in kg. */
const tubKg = 10;

/**
 * Key figures, the shares to weigh, the strip of numbers and the curve.
 * @example
 * const report = blendReport(log);
 * typeof report === "string" ? undefined : blendResult(report).title
 */
export function blendResult(report: BlendReport, system: UnitSystem = "metric"): Section {
  const { sands } = report;
  const inIt = sands.filter(({ share, high }) => share > 0.0005 || high > 0.01);
  const figures: KeyFigure[] = [
    ...inIt.map((sand) => ({
      label: `${sand.report.sand.name}, share of the dry blend`,
      figure: shareText(sand, report.atLeast),
      under: sand.mayBeNought
        ? "It may be none: the sievings do not tell."
        : "95 % interval, from the sievings.",
      weak: sand.mayBeNought || report.outside !== undefined,
    })),
    {
      label: "The blend, grain fineness number",
      figure: blendNumberText(report),
      under: "At the shares of the table, with the doubt of the sievings.",
    },
  ];
  const charts = [strip(report), ...(report.curve ? [curve(report)] : [])];
  return {
    role: "result",
    title: "What to blend",
    blocks: [
      { kind: "figures", figures },
      sharesTable(report, system),
      ...charts.map((chart): Block => ({ kind: "chart", chart })),
      ...(report.curve ? [sievesTable(report)] : []),
    ],
  };
}

function sharesTable({ sands, atLeast, currency, cost, number }: BlendReport, system: UnitSystem): Block {
  const tub = inShownUnit(tubKg, "kg", system);
  const unit = shownUnit("kg", system);
  const rounded = system === "US" ? 25 : tub.value;
  const priced = sands.every(({ costPerKg }) => costPerKg !== undefined);
  const money = currency === "" ? "a kg" : `${currency} a kg`;
  const mass = (share: number): TableCell => ({
    text: printNumber(share * rounded, 2),
    number: (share * tubKg * rounded) / tub.value,
  });
  const row = ({ report, share, costPerKg, ...drawn }: BlendedSand): TableRow => [
    report.sand.name,
    { text: figureText(report), number: report.fineness.figure.value },
    { text: shareText({ report, share, ...drawn }, atLeast).replace(" %", ""), number: 100 * share },
    mass(share),
    ...(priced ? [{ text: printNumber(costPerKg!, 2), number: costPerKg! }] : []),
  ];
  return {
    kind: "table",
    name: "blend",
    caption: `Shares of dry sand, and what to weigh for ${printNumber(rounded, 0)} ${unit} of dry blend`,
    columns: [
      { head: "Sand", align: "text" },
      { head: "Grain fineness number", align: "number" },
      { head: "Share", unit: "% of dry blend", align: "number" },
      { head: "Weigh", unit, align: "number", ...(unit === "kg" ? {} : { dataUnit: "kg" }) },
      ...(priced ? [{ head: "Price", unit: money, align: "number" as const }] : []),
    ],
    rows: sands.map(row),
    foot: [
      [
        "The blend",
        { text: blendNumberText({ number, atLeast }), number: number.value },
        { text: "100", number: 100 },
        mass(1),
        ...(priced ? [{ text: printNumber(cost!.value, 2), number: cost!.value }] : []),
      ],
    ],
  };
}

/** Numbers of the sands and of the blend, against what is wanted. */
function strip(report: BlendReport): Chart {
  const { sands, target, number, atLeast } = report;
  const marks = [
    ...sands.map(({ report: sand }) => {
      const { value, low, high } = sand.fineness.figure;
      return { label: sand.sand.name, value, low, high, figure: figureText(sand) };
    }),
    {
      label: "the blend",
      value: number.value,
      low: number.low,
      high: number.high,
      figure: blendNumberText(report),
      atLeast,
    },
  ];
  const wanted =
    target.kind === "number" && target.high > target.low
      ? [
          {
            label: target.band ? target.words.replace(/^the usual /, "usual ") : "your aim",
            low: target.low,
            high: target.high,
            source: target.source,
            tag: target.band?.tag ?? "own aim",
          },
        ]
      : [];
  return numberStrip({
    name: "blend-numbers",
    title: "grain fineness number",
    unit: "",
    marks,
    bands: wanted,
  });
}

function curve({ curve: blend, sands, target }: BlendReport): Chart {
  return blendChart({
    name: "blend-curve",
    blend: blend!.points.map(({ openingMm, label, passing }) => ({
      openingMm,
      label,
      passingPercent: passing.value,
      low: passing.low,
      high: passing.high,
    })),
    ...(target.kind === "curve"
      ? { wanted: { name: target.report.sand.name, points: pointsOf(target.report) } }
      : {}),
    of: sands
      .filter(({ share }) => share > 0.0005)
      .map(({ report }) => ({ name: report.sand.name, points: pointsOf(report) })),
  });
}

function pointsOf({ sieves }: SandReport): GrainPoint[] {
  return sieves
    .filter(({ openingMm }) => openingMm > 0)
    .map(({ openingMm, label, passing }) => ({
      openingMm,
      label,
      passingPercent: passing.value,
      low: passing.low,
      high: passing.high,
    }));
}

/** What each common sieve and the pan hold: of the blend, and of what is wanted. */
function sievesTable({ curve: blend, target }: BlendReport): Block {
  const { points, fractions } = blend!;
  const wanted = target.kind === "curve";
  const held = (k: number, passing: (at: (typeof points)[number]) => Figure): TableCell =>
    figureCell(
      combine(
        (v) => v[0]! - v[1]!,
        [k === 0 ? 100 : passing(points[k - 1]!), points[k] ? passing(points[k]) : 0],
        { as: "held of the blend" },
      ),
    );
  return {
    kind: "table",
    name: "blend-sieves",
    caption: `What each sieve holds of the blend, on the sieves that ${wanted ? "all of these stacks" : "its sands"} have in common`,
    columns: [
      { head: "Sieve", align: "text" },
      { head: "Opening", unit: "mm", align: "number" },
      { head: "The blend", unit: "% of dry blend", align: "number" },
      ...(wanted ? [{ head: "Wanted", unit: "% of that sand", align: "number" as const }] : []),
    ],
    rows: fractions.map(({ label, sieve }, k) => [
      label,
      sieve ? { text: String(sieve.openingMm), number: sieve.openingMm } : "",
      held(k, ({ passing }) => passing),
      ...(wanted ? [held(k, (at) => at.wanted!)] : []),
    ]),
  };
}

/**
 * What to do next about a blend: buy, sieve again, or mix a trial.
 * @example
 * const report = blendReport(log);
 * typeof report === "string" ? [] : blendNext(report)
 */
export function blendNext({ outside, sands, target, atLeast, leftOut }: BlendReport): Text[] {
  return [
    ...leftOut.map((name) => `Sieve ${name}, washed, on enough sieves for a number.`),
    ...(outside
      ? [`Look for a ${outside} sand than these: no blend of them reaches the aim.`]
      : [
          "Blend a small tub at these shares by weight of dry sand, mix until no streak shows, and sieve the blend itself from two grabs: that checks sums and mixing at once.",
          "Try the blend on the bench before the heap: permeability and strength do not follow the number alone.",
        ]),
    ...(sands.some(({ mayBeNought, share }) => mayBeNought && share > 0.0005)
      ? ["Sieve again the sand whose share may be none, from a fresh grab, on the same set of sieves."]
      : []),
    ...(atLeast ? ["Sieve each sand from a second grab: the ± of the shares is then whole."] : []),
    ...(target.kind === "number" && target.band && !outside
      ? [
          "A usual range is what others work within: your own moulds say more, so note how the skin comes out.",
        ]
      : []),
  ];
}
