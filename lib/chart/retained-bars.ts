// Bars of what each sieve and the pan retained: shares of the sand, not a density.

import { invariant } from "../issue.ts";
import { mergeCategories } from "./categories.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { cell, checkName, ends, nothing } from "./data.ts";
import { firstSands } from "./first-sands.ts";
import { axesLayer, boxFor, frame, type Layer } from "./frame.ts";
import { key } from "./key.ts";
import { whiskers, words } from "./layers.ts";
import { sieveLabels, sieveLabelWords } from "./sieve-labels.ts";
import { figure, listed, wrap } from "./text.ts";
import { colours, letterPx, seriesStyle } from "./theme.ts";
import { fromZero } from "./ticks.ts";

export interface RetainedBar {
  /** The sieve as the founder knows it, or "pan". */
  readonly label: string;
  /** % of the sand by mass; NaN: no figure. */
  readonly percent: number;
  /** Ends of the 95 % interval, % of the sand by mass. */
  readonly low?: number;
  readonly high?: number;
  /** mm; puts the sieves of different stacks in one order. */
  readonly openingMm?: number;
}
export interface RetainedBarsInput {
  readonly name: string;
  /** Bars coarse to fine, the pan last. */
  readonly sands: readonly { readonly name: string; readonly bars: readonly RetainedBar[] }[];
  readonly caption?: string;
}

/**
 * Draws the percent of the sand that each sieve and the pan retained: one category of equal width for each, coarse to
 * fine, sands side by side. Heights are shares, not densities: a sieve that follows its neighbour closely holds less.
 *
 * Bars without a figure are left out; a negative percent, or a low end above its high end, throws Misuse. Of more than
 * four sands the first four are drawn, and the caption says how many are left to the table.
 *
 * Source: common practice for sieve reports; that such bars are no density follows ISO 9276-1, whose histograms
 * divide by class width (from memory).
 *
 * @example retainedBars({ name: "harbour-retained", sands: [{ name: "Harbour sand", bars: [
 *   { label: "No. 50", percent: 1.3 }, { label: "No. 70", percent: 33.1 }, { label: "pan", percent: 0.5 }] }] })
 */
export function retainedBars(input: RetainedBarsInput): Chart {
  checkName(input.name);
  for (const { bars } of input.sands)
    for (const bar of bars) {
      invariant(!(bar.percent < 0), `a sieve cannot retain ${bar.percent} %`);
      ends(bar);
    }
  const { drawn, says } = firstSands(input.sands);
  const caption =
    input.caption ??
    "Share of the sand that each sieve and the pan retained, by mass; the bars are equally wide, so their heights are shares and not a density.";
  const chart = { name: input.name, caption: `${caption}${says}`, alt: `${alt({ sands: drawn })}${says}` };
  return {
    ...chart,
    spec: (width) => spec(chart, { sands: drawn }, width),
    table: {
      columns: [
        { name: "sand" },
        { name: "sieve" },
        { name: "retained", unit: "% of the sand by mass" },
        { name: "low end of 95 %", unit: "% of the sand by mass" },
        { name: "high end of 95 %", unit: "% of the sand by mass" },
      ],
      rows: input.sands.flatMap(({ name, bars }) =>
        bars.map((bar) => [name, bar.label, cell(bar.percent), cell(bar.low), cell(bar.high)]),
      ),
    },
  };
}

type Sands = Pick<RetainedBarsInput, "sands">;

function alt({ sands }: Sands): string {
  const each = sands.map(({ name, bars }) => {
    const known = bars.filter((bar) => Number.isFinite(bar.percent));
    if (known.length === 0) return `${name}: no figures.`;
    return `${name} left ${listed(known.map((bar) => `${figure(bar.percent)} % on ${bar.label === "pan" ? "the pan" : bar.label}`))}.`;
  });
  const start =
    "Bars: percent of the sand retained, by mass, on each sieve from coarse to fine and in the pan.";
  return [start, ...(each.length > 0 ? each : ["No sand has figures."])].join(" ");
}

function spec(chart: Pick<Chart, "name" | "alt" | "caption">, { sands }: Sands, width: number): VegaLiteSpec {
  const left = 36;
  const right = 10;
  const innerWidth = Math.floor(width) - left - right;
  const categories = mergeCategories(sands.map((sand) => sand.bars));
  const count = Math.max(1, categories.length);
  const slot = 0.8 / Math.max(1, sands.length);
  const placed = sands.map((sand, i) => {
    const seen = sand.bars.filter((bar) => Number.isFinite(bar.percent));
    return seen.map((bar) => {
      const from = categories.indexOf(bar.label) + 0.1 + slot * i;
      return { bar, x: from + slot * 0.04, x2: from + slot * 0.96 };
    });
  });
  const drawn = placed.flat();
  const highest = Math.max(0, ...drawn.map(({ bar }) => Math.max(bar.percent, ends(bar)?.high ?? 0)));
  const { domain, ticks } = fromZero(highest, 5);

  const names = sieveLabels(categories.map((label, i) => ({ px: ((i + 0.5) / count) * innerWidth, label })));
  const several = sands.length > 1;
  const entries = sands.map((sand, i) => ({
    text: sand.name,
    sample: "bar" as const,
    style: seriesStyle(i),
  }));
  const keyRows = key(several ? entries : [], innerWidth + left);
  const what = `${names.title}, coarse to fine${categories.includes("pan") ? ", and the pan" : ""}`;
  const title = wrap(`${what} (equal widths: shares, not a density)`, innerWidth, letterPx.axis, 2);
  const height = Math.round(Math.min(280, Math.max(190, width * 0.38)));
  const top = keyRows.heightPx + 30;
  const box = boxFor(width, { height, left, right, top, bottom: names.heightPx + 14 + title.length * 15 });

  const axes = axesLayer(
    {
      scale: { domain: [0, count], nice: false, zero: false },
      axis: { title, labels: false, ticks: false, grid: false, titlePadding: names.heightPx + 8 },
    },
    {
      scale: { domain, nice: false },
      axis: {
        title: "retained, % of the sand by mass",
        values: ticks,
        format: "~f",
        titleAngle: 0,
        titleAlign: "left",
        titleBaseline: "middle",
        titleX: -left + 2,
        titleY: -18,
      },
    },
  );
  const { words: at, look } = sieveLabelWords(names, names.upright ? height + 6 : height + 12, 1);
  return frame(chart, box, [
    axes,
    ...placed.map((bars, i) => barsLayer(bars, i)),
    ...placed.flatMap((bars, i) => {
      const known = bars.flatMap(({ bar, x, x2 }) => {
        const both = ends(bar);
        return both ? [{ x: (x + x2) / 2, y: Math.max(0, both.low), y2: both.high }] : [];
      });
      return whiskers(`doubt-${i + 1}`, known, colours.ink);
    }),
    words("sieve-names", at, look),
    ...keyRows.layers(-left + 2, -top + 12),
    drawn.length === 0 ? nothing(box) : undefined,
  ]);
}

function barsLayer(
  bars: readonly { bar: RetainedBar; x: number; x2: number }[],
  place: number,
): Layer | undefined {
  if (bars.length === 0) return undefined;
  const { colour, fillOpacity } = seriesStyle(place);
  return {
    name: `bars-${place + 1}`,
    data: { values: bars.map(({ bar, x, x2 }) => ({ x, x2, y: bar.percent, y2: 0 })) },
    mark: { type: "rect", color: colour, fillOpacity, stroke: colour, strokeWidth: 1 },
    encoding: {
      x: { field: "x", type: "quantitative", axis: null },
      x2: { field: "x2" },
      y: { field: "y", type: "quantitative", axis: null },
      y2: { field: "y2" },
    },
  };
}
