// What a drawing tells where: read back by its axes and found in its table, against where the circles are drawn.

import { describe, expect, test } from "vitest";
import { doubtBars } from "../../lib/chart/doubt-bars.ts";
import { pointsChart } from "../../lib/chart/points-chart.ts";
import { chartReadings } from "../../lib/chart/readings.ts";
import { chartSvg } from "../../lib/chart/svg.ts";
import { labelPlace } from "../../lib/live/chart-label.ts";
import { chartPlaces, nearest, walked } from "../../lib/live/chart-places.ts";
import { readingLines } from "../../lib/page/chart-readings.ts";
import { readingWords } from "../../lib/page/reading-words.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

/** Two panels; two rows alike in x, and a row whose y is the x of another. */
const swelling = pointsChart({
  name: "swelling",
  labels: ["A|1", "B", "C", "D"],
  x: { title: "days", unit: "d", values: [1, 2, 2, 4] },
  y: [
    {
      title: "swelling",
      unit: "ml",
      values: [spread("18 ± 1 ml"), spread("22 ± 1 ml"), spread("24 ± 1 ml"), spread("4 ± 1 ml")],
    },
    { title: "weight", unit: "g", values: [5, 6, undefined, 9] },
  ],
});

describe("readings of a chart", () => {
  test("each row that is drawn is read once, where its circle stands, at both widths", async () => {
    const specs = [swelling.spec(720), swelling.spec(340)];
    const readings = chartReadings(specs, swelling.table);
    expect(readings.map(({ row }) => row).sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
    for (const [i, spec] of specs.entries()) {
      const svg = await chartSvg(spec);
      const shift = /translate\((-?[\d.]+),(-?[\d.]+)\)/.exec(svg)!;
      const circles = [...svg.matchAll(/<g class="points points-\d+">([\s\S]*?)<\/g>/g)].flatMap(
        ([, inside]) =>
          [...inside!.matchAll(/translate\((-?[\d.]+),(-?[\d.]+)\)/g)].map(([, x, y]) => [
            Number(x) + Number(shift[1]),
            Number(y) + Number(shift[2]),
          ]),
      );
      expect(circles.length).toBe(7);
      const sorted = (at: readonly (readonly number[])[]) =>
        at.toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
      const read = sorted(readings.map(({ at }) => at[i]!));
      for (const [k, circle] of sorted(circles).entries()) {
        expect(Math.abs(read[k]![0]! - circle[0]!)).toBeLessThan(1.01);
        expect(Math.abs(read[k]![1]! - circle[1]!)).toBeLessThan(1.01);
      }
    }
  });

  test("a mark whose number the table does not hold is not read; a bar is read at its end", () => {
    const bars = doubtBars({
      name: "doubt",
      shares: [
        { label: "scale", sharePercent: 62 },
        { label: "sieve", sharePercent: 38 },
      ],
    });
    const read = chartReadings([bars.spec(720)], bars.table);
    expect(read.map(({ row }) => row).sort()).toEqual([0, 1]);
    const by = (row: number) => read.find((one) => one.row === row)!.at[0]!;
    expect(by(0)[0]).toBeGreaterThan(by(1)[0]);
    const other = { ...bars.table, rows: bars.table.rows.map(([name]) => [name!, 7]) };
    expect(chartReadings([bars.spec(720)], other)).toEqual([]);
  });

  test("words: name, figures with unit and ±, an uneven range with its value", () => {
    const words = readingWords({
      columns: [
        { name: "batch" },
        { name: "moisture", unit: "% of damp mass" },
        { name: "low end of 95 %", unit: "% of damp mass" },
        { name: "high end of 95 %", unit: "% of damp mass" },
        { name: "blows" },
      ],
      rows: [
        ["W1", 3.2, 3.1, 3.3, 3],
        ["W2", 3.2, 3.14, 3.9, null],
        ["W\u202e3", null, 1, 2, null],
      ],
    });
    expect(words(0)).toBe("W1: moisture 3.20 ± 0.10 % of damp mass; blows 3");
    expect(words(1)).toBe("W2: moisture 3.2 (3.1 to 3.9) % of damp mass");
    expect(words(2)).toMatch(/^W⟨U\+202E⟩3: moisture 1\.0+ to 2\.0+ % of damp mass$/);
    expect(words(0, [4])).toBe("W1: blows 3");
  });

  test("what a page holds is read as it was written; keys walk along a layer and to the next", () => {
    const specs = { wide: swelling.spec(720), narrow: swelling.spec(340) };
    const places = chartPlaces(readingLines({ chart: swelling }, specs));
    expect(places.length).toBe(7);
    expect(places[0]!.words).toContain("A|1");
    expect(walked(places, 0, "ArrowRight", "wide")).toBe(1);
    expect(walked(places, 0, "ArrowLeft", "wide")).toBe(0);
    expect(walked(places, 0, "End", "wide")).toBe(6);
    const below = walked(places, 0, "ArrowDown", "wide")!;
    expect(places[below]!.layer).not.toBe(places[0]!.layer);
    expect(places[below]!.wide[0]).toBe(places[0]!.wide[0]);
    expect(walked(places, below, "ArrowUp", "wide")).toBe(0);
    expect(walked(places, 0, "a", "wide")).toBeUndefined();
    const [x, y] = places[2]!.narrow;
    expect(nearest(places, "narrow", [x + 2, y - 2], 10)).toBe(2);
    expect(nearest(places, "narrow", [x, -500], 10)).toBeUndefined();
  });

  test.each([
    [10, 10],
    [350, 10],
    [180, 150],
    [180, 3],
    [352, 290],
  ])("a label beside %s, %s does not cover the point and stays within 360 px", (x, y) => {
    const label = { width: 200, height: 60 };
    const at = labelPlace({ at: [x, y], label, from: 4, to: 356, above: 0 });
    expect(at.x >= 4 && at.x + label.width <= 356).toBe(true);
    const covers = x > at.x && x < at.x + label.width && y > at.y && y < at.y + label.height;
    expect(covers).toBe(false);
  });
});
