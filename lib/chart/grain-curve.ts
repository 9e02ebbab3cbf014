// The grain curve: percent of the sand that passes each sieve, against the sieve's opening.

import { invariant } from "../issue.ts";
import type { Chart } from "./chart.ts";
import { checkName, ends } from "./data.ts";
import { firstSands } from "./first-sands.ts";
import { grainCurveSpec } from "./grain-curve-spec.ts";
import type { GrainCurveInput, GrainPoint } from "./grain-input.ts";
import { grainTable } from "./grain-table.ts";
import { figure, listed } from "./text.ts";

/**
 * Draws cumulative percent passing (arithmetic axis, 0..100 % of the sand by mass) against sieve opening (log axis,
 * mm), with straight pieces between the sieves that were weighed: a home stack is not smoothed.
 *
 * Points without a figure and the pan are left out and counted in the text; a negative opening, or a low end above
 * its high end, throws Misuse. Without any point the chart says so in its middle. Of more than four sands the first
 * four are drawn, and the caption says how many are left to the table.
 *
 * Source: practice of soil and foundry texts (ASTM D6913 draws coarse to fine, ISO 9276-1 fine to coarse).
 *
 * @example grainCurve({ name: "harbour", sands: [{ name: "Harbour sand", points: [
 *   { openingMm: 0.3, label: "No. 50", passingPercent: 98 }, { openingMm: 0.15, label: "No. 100", passingPercent: 14 }] }] })
 */
export function grainCurve(input: GrainCurveInput): Chart {
  checkName(input.name);
  if (input.band) {
    const { lowMm, highMm } = input.band;
    invariant(
      lowMm > 0 && highMm > lowMm,
      "a band of openings runs from a smaller to a larger opening in mm",
    );
  }
  let missing = 0;
  const { drawn, says } = firstSands(input.sands, input.most);
  const sands = drawn.map((sand) => {
    const points = sand.points.filter((point) => {
      invariant(!(point.openingMm < 0), `an opening cannot be ${point.openingMm} mm`);
      ends(point);
      if (point.openingMm === 0) return false;
      const drawn = Number.isFinite(point.openingMm) && Number.isFinite(point.passingPercent);
      if (!drawn) missing += 1;
      return drawn;
    });
    const interval = (sand.interval ?? []).filter(
      (each) => each.openingMm > 0 && Number.isFinite(each.openingMm) && ends(each),
    );
    const coarseFirst = (a: { openingMm: number }, b: { openingMm: number }) => b.openingMm - a.openingMm;
    return { ...sand, points: points.sort(coarseFirst), interval: interval.sort(coarseFirst) };
  });
  const checked = { ...input, sands };
  const words = {
    caption: `${input.caption ?? caption(checked)}${says}`,
    alt: `${alt(checked, missing)}${says}`,
  };
  const { name } = input;
  return {
    name,
    ...words,
    spec: (width) => grainCurveSpec({ name, ...words }, checked, width),
    table: grainTable(input.sands),
  };
}

function caption({ sands, band }: GrainCurveInput): string {
  const bars = sands.some((sand) => sand.points.some((point) => ends(point)));
  const intervals = sands.some((sand) => (sand.interval ?? []).length > 1);
  return [
    "Share of the sand that passes each sieve, by mass, against the opening; straight lines join the sieves",
    bars ? ", bars are 95 % intervals" : "",
    intervals ? ", the light fill is where the curve may run between the sieves" : "",
    band ? `, the band is ${band.label}` : "",
    ".",
  ].join("");
}

function alt({ sands, band }: GrainCurveInput, missing: number): string {
  const each = sands.map(({ name, points }) => {
    if (points.length === 0) return `${name}: no figures.`;
    const below = points.findIndex((point) => point.passingPercent < 50);
    const told = new Set([0, below - 1, below, points.length - 1].filter((i) => i >= 0));
    const parts = points
      .filter((_, i) => told.has(i))
      .map((point) => `${figure(point.passingPercent)} % at ${sieveText(point)}`);
    return `${name} passes ${listed(parts)}.`;
  });
  return [
    "Grain curve: percent of the sand passing, by mass, against sieve opening in mm on a log axis.",
    ...(sands.length === 0 ? ["No sand has figures."] : each),
    ...(band ? [`Band from ${figure(band.lowMm, 3)} to ${figure(band.highMm, 3)} mm: ${band.label}.`] : []),
    ...(missing > 0
      ? [
          `${missing} ${missing === 1 ? "point has no figure and is" : "points have no figure and are"} not drawn.`,
        ]
      : []),
  ].join(" ");
}

/** "No. 40 (0.425 mm)", or "0.425 mm" where that is the label. */
function sieveText({ label, openingMm }: GrainPoint): string {
  const opening = `${figure(openingMm, 3)} mm`;
  return label === opening ? opening : `${label} (${opening})`;
}
