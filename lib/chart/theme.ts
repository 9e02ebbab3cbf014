// One look for every chart: colours, marks and dashes of series, sizes of letters.

/** The colours of the look. The page's style sheet may swap them for a dark page, one for one. */
export const colours = {
  ink: "#1f2a30",
  paper: "#fdfbf7",
  /** Words of second rank: ink thinned until it still stands 4.5 : 1 on paper and on a band. */
  quiet: "#4f5a60",
  band: "#eadfc8",
  bandEdge: "#a89468",
  measured: "#9c4a1a",
  fitted: "#1d5a78",
  secondSand: "#5b4a8a",
  thirdSand: "#1a7a6c",
  rule: "#cfc6b4",
} as const;

/** Letters are never smaller than this, in px at the width that a chart is drawn for. */
export const smallestLetterPx = 11;
export const letterPx = { axis: 12, label: 12, tick: 11 } as const;
export const font = "system-ui, -apple-system, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif";

/** How one series is told from the next: by colour, by mark and by dash, so that one of them may be lost. */
export interface SeriesStyle {
  readonly colour: string;
  readonly shape: string;
  /** Empty: an unbroken line. */
  readonly dash: readonly number[];
  /** How strongly a bar is filled: tells bars apart in grey. */
  readonly fillOpacity: number;
}

// The four differ for red-blind and green-blind readers too (tested). The colour of fitted curves is not among
// them: a red-blind reader cannot tell it from the second sand's, so the two never stand in one chart.
const seriesColours = [colours.measured, colours.secondSand, colours.thirdSand, colours.ink];
const shapes = ["circle", "square", "triangle-up", "diamond", "cross"];
const dashes = [[], [7, 3], [2, 2.5], [9, 3, 2, 3], [4, 2], [12, 4]];
const fillOpacities = [0.85, 0.25, 0.55, 0.05];

/**
 * The style of the series at this place (0, 1, 2, …). Neighbours differ in all of colour, mark and dash; no two of
 * the first sixty have all three in common.
 */
export function seriesStyle(place: number): SeriesStyle {
  return {
    colour: seriesColours[place % seriesColours.length]!,
    shape: shapes[place % shapes.length]!,
    dash: dashes[place % dashes.length]!,
    fillOpacity: fillOpacities[place % fillOpacities.length]!,
  };
}

/** Vega-Lite's config for every chart. */
export function themeConfig(): { readonly [key: string]: unknown } {
  return {
    aria: false,
    font,
    view: { stroke: null },
    axis: {
      labelColor: colours.ink,
      labelFontSize: letterPx.axis,
      labelFontWeight: "normal",
      titleColor: colours.ink,
      titleFontSize: letterPx.axis,
      titleFontWeight: "normal",
      domainColor: colours.quiet,
      tickColor: colours.quiet,
      gridColor: colours.rule,
      gridOpacity: 0.5,
      tickSize: 4,
      labelPadding: 3,
    },
    text: { color: colours.ink, fontSize: letterPx.label, fontWeight: "normal" },
  };
}
