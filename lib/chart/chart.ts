// A chart: a Vega-Lite spec with the words and the table that go with it.

/** A Vega-Lite specification as plain JSON. */
export type VegaLiteSpec = { readonly [key: string]: unknown };

export interface ChartTable {
  readonly columns: readonly { readonly name: string; readonly unit?: string }[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

export interface Chart {
  /** Short name, used for file names: lower case, hyphens. */
  readonly name: string;
  /** The caption: a whole sentence that says what is drawn. */
  readonly caption: string;
  /** What a reader who cannot see it should know. */
  readonly alt: string;
  /**
   * Pure function of the width in pixels: 720 on a desk, 340 on a phone; at least 240.
   * Drawn for that width, not scaled to it: letters have the same size at every width.
   */
  spec(width: number): VegaLiteSpec;
  readonly table: ChartTable;
  /** The same table in metric units, for files, where the chart is drawn in others. */
  readonly data?: ChartTable;
}
