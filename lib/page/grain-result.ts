// How fine, and how spread, as a section of a page.

import { manySands } from "../finding/compare-neighbours.ts";
import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import { printNumber } from "../quantity/print.ts";
import { printOutward } from "../quantity/print-outward.ts";
import type { Band } from "../sand/band.ts";
import { roughSizeUm } from "../sand/fineness-size.ts";
import { kurtosisClass, skewnessClass, sortingClass } from "../sand/folk-ward.ts";
import { middleSize } from "../sand/middle-size.ts";
import type { Block, KeyFigure, Section } from "./blocks.ts";
import { grainCharts } from "./grain-charts.ts";
import { mmText, sortedTable } from "./grain-sorted.ts";

/**
 * Key figures, charts, and the grain measures as sentences; further ones on demand.
 * @example grainResult(sandReports(log), []).title
 */
export function grainResult(reports: readonly SandReport[], ranges: readonly Band[]): Section {
  const blocks: Block[] = [{ kind: "figures", figures: reports.map(keyFigure) }];
  blocks.push(...grainCharts(reports, ranges).map((chart): Block => ({ kind: "chart", chart })));
  if (manySands(reports)) blocks.splice(0, 1, sortedTable(reports));
  for (const report of manySands(reports) ? [] : reports) {
    const sentence = grainSentence(report);
    if (sentence !== "") blocks.push({ kind: "prose", text: sentence });
    if (report.trusted && report.printed) blocks.push(furtherMeasures(report));
  }
  return { role: "result", title: "How fine, and how spread", blocks };
}

function keyFigure(report: SandReport): KeyFigure {
  const { sand, printed, trusted, possible, fineness } = report;
  const open = possible.high - possible.low > 1;
  const assumed = "With openings at their names and nothing else assumed";
  const limits = printed ? `, ${printOutward(possible)}` : "";
  const within = open ? `${assumed}${limits}. ` : "";
  const middle = printed?.form === "range" ? `Middle ${printed.value}. ` : "";
  const parts: { readonly [part: string]: string } = {
    weighing: "the weighings",
    scale: "the bias of the scale",
    repeats: "the scatter between sievings",
    grabs: "the scatter between grabs",
  };
  const without = fineness.missing.map((part) => parts[part]!);
  const missing = without.length > 0 ? `Without ${without.join(" and ")}.` : "";
  return {
    label: trusted
      ? `${sand.name}, grain fineness number`
      : `${sand.name}, what the sieves gave${sand.stateSaid ? " with its clay on" : ""}`,
    figure: printed ? printed.text : figureText(report),
    under: `${middle}${within}${missing}`.trim() || "95 % interval; nothing is known to be missing from it.",
    weak: !trusted || !printed,
  };
}

/** Grain measures as a sentence beside the curve. */
function grainSentence(report: SandReport): string {
  const { sand, statistics, three, four, fineness, printed, trusted, sieves } = report;
  if (!printed || !trusted) return "";
  const middle = statistics.d50Mm;
  const ends = middle === undefined ? undefined : middleSize(sieves);
  const wider = fineness.missing.length > 0 ? " or wider" : "";
  const said = [
    middle === undefined
      ? undefined
      : `half of it passes ${mmText(middle)} mm${ends ? ` (${mmText(ends.low)} to ${mmText(ends.high)}${wider})` : ""}`,
    three ? `the best three neighbouring sieves hold ${printNumber(three.sharePercent, 0)} %` : undefined,
    four ? `the best four ${printNumber(four.sharePercent, 0)} %` : undefined,
  ].filter((part) => part !== undefined);
  const rough = screensNarrow(report) ? roughSizeUm(fineness.figure.value).value : undefined;
  const size = rough
    ? ` By the handbooks' rough table (from memory, narrow sands only) its mean grain is about ${printNumber(rough.value, 0)} µm (${printNumber(rough.low, 0)} to ${printNumber(rough.high, 0)}).`
    : "";
  return said.length > 0 ? `${sand.name}: ${said.join("; ")}.${size}` : "";
}

/** The handbooks' table holds for narrow sands: four neighbouring sieves with nearly all of it. */
function screensNarrow({ four }: SandReport): boolean {
  return four !== undefined && four.sharePercent >= 90;
}

function furtherMeasures({ sand, statistics, surface, uniformity }: SandReport): Block {
  const { graphic, moment, d10Mm, d30Mm, d60Mm, d90Mm, curvature } = statistics;
  const mm = (value: number | undefined): string =>
    value === undefined ? "not reached" : `${mmText(value)} mm`;
  const items: string[] = [
    `D10 ${mm(d10Mm)}, D30 ${mm(d30Mm)}, D60 ${mm(d60Mm)}, D90 ${mm(d90Mm)}; uniformity D60/D10 ${statistics.uniformity === undefined ? "not reached" : printNumber(statistics.uniformity, 2)}, curvature D30²/(D60·D10) ${curvature === undefined ? "not reached" : printNumber(curvature, 2)}.`,
    ...(uniformity.mkMm === undefined || uniformity.ggPercent === undefined
      ? []
      : [
          `Middle size MK ${mmText(uniformity.mkMm)} mm; degree of uniformity GG ${printNumber(uniformity.ggPercent, 0)} % (from two thirds to four thirds of it).`,
        ]),
  ];
  if (graphic.sortingPhi !== undefined && graphic.skewness !== undefined && graphic.kurtosis !== undefined) {
    items.push(
      `Folk and Ward: mean ${printNumber(graphic.meanPhi!, 2)} φ, sorting ${printNumber(graphic.sortingPhi, 2)} φ (${sortingClass(graphic.sortingPhi)}), skewness ${printNumber(graphic.skewness, 2)} (${skewnessClass(graphic.skewness)}), kurtosis ${printNumber(graphic.kurtosis, 2)} (${kurtosisClass(graphic.kurtosis)}).`,
    );
  } else items.push("Folk and Ward: the 5 or the 95 % point lies beyond the stack.");
  if (moment.meanPhi !== undefined && moment.sortingPhi !== undefined) {
    items.push(
      `Moments: mean ${printNumber(moment.meanPhi, 2)} φ, sorting ${printNumber(moment.sortingPhi, 2)} φ, with the pan's middle assumed.`,
    );
  }
  if (surface.cm2G !== undefined) {
    items.push(
      `Surface of spheres of these sizes: ${printNumber(surface.cm2G, 0)} cm²/g, ${printNumber(surface.panSharePercent ?? 0, 0)} % of it in the pan. Real grains have more.`,
    );
  }
  return { kind: "fold", summary: `Further measures of ${sand.name}`, blocks: [{ kind: "list", items }] };
}
