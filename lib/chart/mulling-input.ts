// What a mulling chart is drawn from.

export interface MullingSeries {
  readonly name: string;
  readonly points: readonly { readonly minutes: number; readonly strength: number }[];
  /** Along the minutes; empty: no curve. */
  readonly curve: readonly {
    readonly minutes: number;
    readonly value: number;
    readonly low?: number;
    readonly high?: number;
  }[];
  /** Minutes to the share that is drawn; ends that are not finite are open. */
  readonly time?: { readonly value: number; readonly low: number; readonly high: number };
}

export interface MullingChartInput {
  readonly name: string;
  /** Of the strengths: "kPa", "psi". */
  readonly unit: string;
  /** That the times are to, %. */
  readonly sharePercent: number;
  readonly series: readonly MullingSeries[];
}
