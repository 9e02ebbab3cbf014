// Names stand clear of every mark, also on a phone and where batches crowd.

import { expect, test } from "vitest";
import type { Chart } from "../../lib/chart/chart.ts";
import { responsePanels } from "../../lib/chart/response-panels.ts";
import { surfaceChart } from "../../lib/chart/surface-chart.ts";
import { textWidth } from "../../lib/chart/text.ts";
import {
  permeabilityByFinenessChart,
  strengthByClayChart,
  temperChart,
} from "../../lib/chart/typical-charts.ts";
import { seeded } from "../seeded.ts";
import { samples } from "./samples.ts";
import { trialSamples } from "./trial-samples.ts";

interface Place {
  readonly px: number;
  readonly py: number;
  readonly text?: string;
}
interface Read {
  readonly name: string;
  readonly data: { readonly values: readonly Place[] };
  readonly mark: {
    readonly type: string;
    readonly align?: string;
    readonly fontSize?: number;
    readonly size?: number;
  };
}

/** Names that lie on a mark, by nothing but the spec. */
function onMarks(chart: Chart, width: number): string[] {
  const layers = (chart.spec(width).layer as readonly Read[]).filter(({ name }) => !name.startsWith("key"));
  const marks = layers
    .filter(({ mark }) => mark.type === "point")
    .flatMap(({ data, mark }) =>
      data.values
        .filter(({ px }) => px !== undefined)
        .map((at) => ({ ...at, r: Math.sqrt((mark.size ?? 44) / Math.PI) })),
    );
  const labels = layers.filter(({ name }) => /^(names|figures|labels?|[a-z]+-labels)(-|$)/.test(name));
  return labels.flatMap(({ data, mark }) =>
    data.values.flatMap(({ px, py, text }) => {
      const size = mark.fontSize ?? 12;
      const wide = textWidth(text ?? "", size);
      const left = mark.align === "right" ? px - wide : mark.align === "center" ? px - wide / 2 : px;
      const half = size * 0.5;
      const met = marks.some(
        (at) =>
          at.px + at.r > left &&
          at.px - at.r < left + wide &&
          at.py + at.r > py - half &&
          at.py - at.r < py + half,
      );
      return met ? [`${text} at ${px.toFixed(0)}, ${py.toFixed(0)}`] : [];
    }),
  );
}

const next = seeded(7).uniform;
const crowd = Array.from({ length: 24 }, (_, i) => ({
  label: `Batch ${i + 1}`,
  x: 6 + 2 * next(),
  y: 60 + 20 * next(),
  yLow: 55,
  yHigh: 85,
}));
const crowded: readonly Chart[] = [
  strengthByClayChart({
    name: "crowd",
    bond: "bentonite",
    moistureOfDampPercent: 3.5,
    compactabilityPercent: 45,
    takenAsLive: true,
    batches: crowd,
  }),
  permeabilityByFinenessChart({
    name: "fineness",
    bond: "natural",
    clayPercent: 0,
    batches: crowd.map(({ label }, i) => ({ label, x: 60 + i, y: 50 + i })),
  }),
  temperChart({
    name: "temper",
    clayKind: "sodium",
    batches: crowd.map((one) => ({ ...one, y: 3.4, yLow: 3, yHigh: 4 })),
  }),
  surfaceChart({
    name: "surface",
    axis: { title: "moisture", unit: "%", basis: "damp mass" },
    other: { title: "bentonite", unit: "%", basis: "dry mix" },
    property: { title: "strength", unit: "kPa" },
    at: (x, y) => ({ mean: 10 * x + y, low: 0, high: 200 }),
    batches: crowd.map(({ label, x, y }) => ({ label, x: x / 2, y: y / 8, value: 60 })),
  }),
  responsePanels({
    name: "panels",
    axis: { title: "clay", unit: "%", basis: "dry mix" },
    panels: [
      { property: "strength", unit: "kPa", points: crowd.map(({ label, x, y }) => ({ label, x, y })) },
    ],
  }),
];

test.each([...samples, ...trialSamples, ...crowded].map((chart) => [chart.name, chart] as const))(
  "%s: no name on a mark at 340, 360 and 720 px",
  (_, chart) => {
    for (const width of [340, 360, 720]) expect(onMarks(chart, width)).toEqual([]);
  },
);

test("the probe finds a name on a mark, and a crowd keeps some of its names", () => {
  const spec = { layer: [] as unknown[] };
  const bad = { name: "bad", caption: "", alt: "", table: { columns: [], rows: [] }, spec: () => spec };
  spec.layer.push(
    { name: "points-1", data: { values: [{ px: 50, py: 50 }] }, mark: { type: "point", size: 44 } },
    {
      name: "names-1",
      data: { values: [{ px: 45, py: 52, text: "on it" }] },
      mark: { type: "text", align: "left" },
    },
  );
  expect(onMarks(bad, 360)).toHaveLength(1);
  const names = (crowded[4]!.spec(360).layer as readonly Read[]).find(({ name }) => name === "names-1");
  expect(names!.data.values.length).toBeGreaterThan(2);
});

test("clay that is taken as live says so at the axis, in the caption and in the words", () => {
  const [chart] = crowded;
  for (const said of [chart!.caption, chart!.alt]) expect(said).toContain("the clay added taken as live");
  expect(JSON.stringify(chart!.spec(720))).toContain("bentonite, taken as live, % of dry sand and clay");
  const live = strengthByClayChart({
    name: "live",
    bond: "bentonite",
    moistureOfDampPercent: 3.5,
    compactabilityPercent: 45,
    batches: [],
  });
  expect(JSON.stringify(live.spec(720))).not.toContain("taken as live");
});

test("strengths in psi: the same places, another scale, the file in kPa", () => {
  const at = {
    bond: "bentonite",
    moistureOfDampPercent: 3.5,
    compactabilityPercent: 45,
    batches: crowd,
  } as const;
  const kPa = strengthByClayChart({ name: "kpa", ...at });
  const psi = strengthByClayChart({ name: "psi", ...at, strengthUnit: "psi" });
  expect(psi.data).toEqual(kPa.table);
  expect(psi.table.columns[2]!.unit).toBe("psi");
  // 1 psi = 6.894757 kPa, NIST SP 811 appendix B.
  expect(Number(kPa.table.rows[0]![2]) / Number(psi.table.rows[0]![2])).toBeCloseTo(6.894757, 6);
});
