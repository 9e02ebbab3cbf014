// Where the doubt of a figure comes from: the share of each source, largest first.

import { invariant } from "../issue.ts";
import type { Chart, VegaLiteSpec } from "./chart.ts";
import { checkName, nothing } from "./data.ts";
import { axesLayer, boxFor, frame, linearScale } from "./frame.ts";
import { boxes, words } from "./layers.ts";
import { layRows } from "./rows.ts";
import { figure, listed, wrap } from "./text.ts";
import { colours, letterPx } from "./theme.ts";
import { fromZero } from "./ticks.ts";

export interface DoubtShare {
  /** The source in plain words: "weighing of No. 70". */
  readonly label: string;
  /** % of the variance of the figure, 0..100. */
  readonly sharePercent: number;
}
export interface DoubtBarsInput {
  readonly name: string;
  readonly shares: readonly DoubtShare[];
  /** What the doubt is about, for the words: "the grain fineness number". */
  readonly of?: string;
  /** Sources past this many are put together in one bar; 8 by default, at least 2. */
  readonly most?: number;
  readonly caption?: string;
}

const right = 56;

/**
 * Draws which sources carry the doubt of a figure: bars from the largest to the smallest share, % of the variance
 * (shares of variances add up where the sources are independent: GUM 5.1.2), and last "the rest", where the shares
 * given do not come to 100 %. Sources without a figure are left out; a negative share throws Misuse.
 *
 * @example doubtBars({ name: "gfn-doubt", shares: [{ label: "weighing of the pan", sharePercent: 62 },
 *   { label: "opening of No. 100", sharePercent: 38 }] })
 */
export function doubtBars(input: DoubtBarsInput): Chart {
  checkName(input.name);
  const most = input.most ?? 8;
  invariant(most >= 2, `at least two bars, not ${most}`);
  for (const share of input.shares)
    invariant(!(share.sharePercent < 0), `a share cannot be ${share.sharePercent} %`);
  const sorted = input.shares
    .filter((share) => Number.isFinite(share.sharePercent))
    .toSorted((a, b) => b.sharePercent - a.sharePercent);
  const left = 100 - sorted.reduce((sum, share) => sum + share.sharePercent, 0);
  const named = sorted.length <= most ? sorted : [...sorted.slice(0, most - 1), rest(sorted.slice(most - 1))];
  // Small sources may have been left out before: the bars still have to tell the whole.
  const remaining = sorted.length > 0 && left >= 0.5 ? [{ label: "the rest", sharePercent: left }] : [];
  const shown = [...named, ...remaining];
  const of = input.of ?? "the figure";
  const told = shown.map((share) => `${share.label} ${percent(share)}`);
  const chart = {
    name: input.name,
    caption: input.caption ?? `What the doubt of ${of} comes from: the share of each source in its variance.`,
    alt:
      told.length === 0
        ? `Bars: sources of the doubt of ${of}. No figures.`
        : `Bars, largest first: what the doubt of ${of} comes from, percent of its variance: ${listed(told)}.`,
  };
  return {
    ...chart,
    spec: (width) => spec(chart, shown, width),
    table: {
      columns: [{ name: "source of doubt" }, { name: "share", unit: "% of the variance" }],
      rows: [...sorted, ...remaining].map((share) => [share.label, share.sharePercent]),
    },
  };
}

function rest(shares: readonly DoubtShare[]): DoubtShare {
  const sharePercent = shares.reduce((sum, share) => sum + share.sharePercent, 0);
  return { label: `the other ${shares.length} together`, sharePercent };
}

/** Whole percents, but a small share is not called none. */
function percent({ sharePercent }: DoubtShare): string {
  return sharePercent > 0 && sharePercent < 0.5 ? "under 1 %" : `${figure(sharePercent, 0)} %`;
}

function spec(
  chart: Pick<Chart, "name" | "alt" | "caption">,
  shares: readonly DoubtShare[],
  width: number,
): VegaLiteSpec {
  const laid = layRows(shares, width, right);
  const innerWidth = Math.floor(width) - laid.left - right;
  const { domain, ticks } = fromZero(Math.max(0, ...shares.map((share) => share.sharePercent)), 4);
  const x = linearScale(domain, innerWidth);
  const title = wrap("share of the doubt, % of the variance", innerWidth, letterPx.axis, 2);
  const bottom = 26 + title.length * 15;
  const box = boxFor(width, { height: laid.height, left: laid.left, right, top: 6, bottom });
  const axes = axesLayer(
    {
      scale: { domain, nice: false },
      axis: { title, values: ticks, format: "~f", grid: laid.wide, labelFlush: false, titlePadding: 6 },
    },
    { scale: { domain: [0, 1] }, axis: null },
  );
  const bars = shares.map((share, i) => {
    const { middle } = laid.rows[i]!;
    return { px: 0, py: middle - 7, px2: x(share.sharePercent), py2: middle + 7 };
  });
  const figures = shares.map((share, i) => ({
    px: x(share.sharePercent) + 5,
    py: laid.rows[i]!.middle,
    text: percent(share),
  }));
  return frame(chart, box, [
    axes,
    boxes("bars", bars, { color: colours.measured, opacity: 0.85 }),
    words("figures", figures),
    ...laid.layers(),
    shares.length === 0 ? nothing(box) : undefined,
  ]);
}
