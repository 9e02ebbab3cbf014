// A chart that is nothing but its layers, to try the probes on.

import type { Chart } from "../../lib/chart/chart.ts";

export function bareChart(layer: readonly object[]): Chart {
  return {
    name: "bare",
    caption: "",
    alt: "",
    table: { columns: [], rows: [] },
    spec: () => ({ layer }),
  };
}
