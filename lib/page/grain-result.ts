// How fine, and how spread, as a section of a page.

import { figureText } from "../finding/sand-findings.ts";
import type { SandReport } from "../finding/sand-report.ts";
import { printNumber } from "../quantity/print.ts";
import type { Band } from "../sand/band.ts";
import { roughSizeUm } from "../sand/fineness-size.ts";
import { kurtosisClass, skewnessClass, sortingClass } from "../sand/folk-ward.ts";
import type { Block, KeyFigure, Section } from "./blocks.ts";
import { grainCharts } from "./grain-charts.ts";

/** Key figures, charts, and the grain measures as sentences; further ones on demand. */
export function grainResult(reports: readonly SandReport[], ranges: readonly Band[]): Section {
  const blocks: Block[] = [{ kind: "figures", figures: reports.map(keyFigure) }];
  blocks.push(...grainCharts(reports, ranges).map((chart): Block => ({ kind: "chart", chart })));
  for (const report of reports)
    blocks.push({ kind: "prose", text: grainSentence(report) }, furtherMeasures(report));
  return { role: "result", title: "How fine, and how spread", blocks };
}

function keyFigure(report: SandReport): KeyFigure {
  const { sand, printed, trusted, possible, fineness } = report;
  const open = possible.high - possible.low > 0.5;
  const within = open
    ? `By the masses alone ${possible.low.toFixed(0)} to ${possible.high.toFixed(0)}. `
    : "";
  const middle = printed?.form === "range" ? `Middle ${printed.value}. ` : "";
  const parts: { readonly [part: string]: string } = {
    weighing: "the weighings",
    repeats: "the scatter between sievings",
    grabs: "the scatter between grabs",
  };
  const without = fineness.missing.map((part) => parts[part]!);
  const missing = without.length > 0 ? `Without ${without.join(" and ")}.` : "";
  return {
    label: `${sand.name}, grain fineness number`,
    figure: printed ? printed.text : figureText(report),
    under: `${middle}${within}${missing}`.trim() || "95 % interval; nothing is known to be missing from it.",
    weak: !trusted || !printed,
  };
}

/** Grain measures as a sentence beside the curve. */
function grainSentence({ sand, statistics, uniformity, three, four, fineness, printed }: SandReport): string {
  const said = [
    statistics.d50Mm === undefined ? undefined : `half of it passes ${printNumber(statistics.d50Mm, 3)} mm`,
    statistics.uniformity === undefined
      ? undefined
      : `D60/D10 is ${printNumber(statistics.uniformity, 2)} (a moulding sand is narrow on purpose)`,
    uniformity.ggPercent === undefined
      ? undefined
      : `${printNumber(uniformity.ggPercent, 0)} % lies within a third of the middle size`,
    three ? `the best three neighbouring sieves hold ${printNumber(three.sharePercent, 0)} %` : undefined,
    four ? `the best four ${printNumber(four.sharePercent, 0)} %` : undefined,
  ].filter((part) => part !== undefined);
  const rough = printed ? roughSizeUm(fineness.figure.value).value : undefined;
  const size = rough
    ? ` By the handbooks' rough table its mean grain is about ${printNumber(rough.value, 0)} µm (${printNumber(rough.low, 0)} to ${printNumber(rough.high, 0)}).`
    : "";
  return said.length > 0
    ? `${sand.name}: ${said.join("; ")}.${size}`
    : `${sand.name}: too few sieves for grain measures.`;
}

function furtherMeasures({ sand, statistics, surface }: SandReport): Block {
  const { graphic, moment, d10Mm, d30Mm, d60Mm, d90Mm, curvature } = statistics;
  const mm = (value: number | undefined): string =>
    value === undefined ? "not reached" : `${printNumber(value, 3)} mm`;
  const items: string[] = [
    `D10 ${mm(d10Mm)}, D30 ${mm(d30Mm)}, D60 ${mm(d60Mm)}, D90 ${mm(d90Mm)}; curvature D30²/(D60·D10) ${curvature === undefined ? "not reached" : printNumber(curvature, 2)}.`,
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
