// The specs as they are: a change in how a chart is drawn shows here, to be looked at. Figures are checked elsewhere.

import { expect, test } from "vitest";
import type { VegaLiteSpec } from "../../lib/chart/chart.ts";
import { controlSamples } from "./control-samples.ts";
import { samples } from "./samples.ts";
import { trialSamples } from "./trial-samples.ts";

const all = [...samples, ...trialSamples, ...controlSamples];

/** Every number to six figures, so that a last digit of log or pow changes nothing. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(6));
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value === "object" && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)]));
  return value;
}

const kept = all.filter(({ name }) =>
  [
    ...["curve-one", "curve-three", "bars-two", "strip", "doubt"],
    ...["trial-whole", "trial-clay", "chance-whole", "squeeze-whole", "difference-whole", "next-whole"],
    ...["control-whole", "control-few"],
  ].includes(name),
);

test.each(kept.flatMap((chart) => [340, 720].map((width) => ({ name: chart.name, chart, width }))))(
  "$name at $width px",
  async ({ name, chart, width }) => {
    const text = `${JSON.stringify(rounded(chart.spec(width)), null, 1)}\n`;
    await expect(text).toMatchFileSnapshot(`../golden/chart-${name}-${width}.json`);
  },
);

interface Axis {
  readonly title?: string | readonly string[];
  readonly labels?: boolean;
}
const axesOf = (spec: VegaLiteSpec) =>
  (spec.layer as { name: string; encoding: { x: { axis: Axis | null }; y: { axis: Axis | null } } }[])
    .flatMap(({ encoding }) => [encoding.x.axis, encoding.y.axis])
    .filter((axis) => axis !== null && axis !== undefined);

// A control chart has no axes of Vega's: its titles are words beside the plots, held in control-chart.test.ts.
test.each([...samples, ...trialSamples])("$name: every axis says what it counts, in which unit", (chart) => {
  const titles = axesOf(chart.spec(720)).map(({ title }) => [title ?? ""].flat().join(" "));
  expect(titles.length).toBeGreaterThan(0);
  for (const title of titles)
    expect(title).toMatch(/% of |, mm |, kPa$|number|^permeability$|sieve.*coarse to fine/u);
});

test.each(all)("$name: caption, words and table are there", (chart) => {
  expect(chart.caption).toMatch(/^[A-Z].*\.$/u);
  expect(chart.alt).toMatch(/\.$/u);
  for (const row of chart.table.rows) expect(row).toHaveLength(chart.table.columns.length);
});
