// Ranges over an axis: drawn at every width, told in words, and what is no figure.

import { expect, test } from "vitest";
import { heatDepthChart } from "../../lib/chart/heat-depth-chart.ts";
import { markedPlaces } from "../../lib/chart/marked-places.ts";
import { rangeCourses } from "../../lib/chart/range-courses.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { smallestLetterPx } from "../../lib/chart/theme.ts";
import { weatherWaterChart } from "../../lib/chart/weather-water-chart.ts";
import { seeded } from "../seeded.ts";

interface Place {
  readonly px: number;
  readonly py: number;
  readonly text?: string;
}

const water = weatherWaterChart({
  name: "water-lost",
  unit: "kg",
  open: [
    { hours: 0, value: 0, low: 0, high: 0 },
    { hours: 16, value: 0.6, low: 0.3, high: 1.2 },
  ],
  sheet: [
    { hours: 0, value: 0, low: 0, high: 0 },
    { hours: 16, value: 0.012, low: 0.002, high: 0.066 },
  ],
});
const depth = heatDepthChart({
  name: "heated-depth",
  unit: "mm",
  upTo: 16.8,
  temperatures: [
    { label: "316 °C, calcium bentonite has lost its bond", low: 0.61, high: 0.68 },
    { label: "638 °C, sodium bentonite has lost its bond", low: 0.015, high: 0.029 },
  ],
  marked: [
    { x: 14, label: "14 mm" },
    { x: 16.5, label: "16.5 mm, planned" },
  ],
});

test.each([720, 340])("both are drawn at %i px, with words inside the frame", async (width) => {
  for (const chart of [water, depth]) {
    const svg = await chartSvg(chart.spec(width));
    expect(svg).toContain("<path");
    expect(svg).not.toContain("NaN");
    const layers = chart.spec(width).layer as readonly {
      readonly name: string;
      readonly data: { readonly values: readonly { readonly px: number; readonly text: string }[] };
    }[];
    const named = layers.find(({ name }) => name === "marked-names");
    for (const { px, text } of named?.data.values ?? []) expect(px + 5 * text.length).toBeLessThan(width);
  }
});

test("names of marked places lie on no other name, and begin at their stroke unless the edge is near", () => {
  const random = seeded(26);
  for (let round = 0; round < 200; round++) {
    const marked = Array.from({ length: 1 + random.integer(0, 5) }, () => {
      const mm = random.integer(1, 40);
      return { x: mm, label: `${mm} mm${random.uniform() < 0.3 ? ", planned" : ""}` };
    }).filter((one, i, all) => all.findIndex(({ x }) => x === one.x) === i);
    const { layers } = markedPlaces(marked, (value) => value * 8, 330, 200);
    const [, names] = layers.map((layer) => (layer!.data as { values: Place[] }).values);
    for (const name of names!) {
      const right = name.px + textWidth(name.text!, smallestLetterPx);
      expect(name.px >= 0 && right <= 330.01).toBe(true);
      const own = marked.find(({ label }) => label === name.text)!;
      expect(Math.abs(name.px - Math.min(own.x * 8 - 3, 330 - (right - name.px)))).toBeLessThan(0.01);
      for (const other of names!)
        if (other !== name && other.py === name.py)
          expect(other.px >= right || other.px + textWidth(other.text!, smallestLetterPx) <= name.px).toBe(
            true,
          );
    }
  }
});

test("text and table say the ends", () => {
  expect(water.alt).toContain("Uncovered: 0.3 to 1.2 at 16.");
  expect(depth.alt).toContain("Marked: 14 mm at 14");
  expect(water.table.rows).toContainEqual(["under a sheet", 16, 0.012, 0.002, 0.066]);
  expect(depth.table.rows.at(-1)).toEqual([
    "638 °C, sodium bentonite has lost its bond",
    16.8,
    null,
    0.015 * 16.8,
    0.029 * 16.8,
  ]);
});

test("nothing to draw is said; ends the wrong way round are misuse", () => {
  const given = {
    name: "a",
    axis: { title: "time", unit: "h" },
    property: { title: "water", unit: "kg" },
    caption: "",
  };
  const empty = rangeCourses({ ...given, courses: [] });
  expect(JSON.stringify(empty.spec(400))).toContain("No figures to draw.");
  const bad = [{ label: "a", points: [{ x: 0, low: 2, high: 1 }] }];
  expect(() => rangeCourses({ ...given, courses: bad })).toThrow(/above the high end/);
});
