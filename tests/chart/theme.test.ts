import { expect, test } from "vitest";
import { colours, letterPx, seriesStyle, smallestLetterPx } from "../../lib/chart/theme.ts";
import { apart, lab, readers, rgb } from "./colour-vision.ts";

/** Contrast of WCAG 2.1. */
function contrast(a: string, b: string): number {
  const light = [a, b].map(rgb).map(([r, g, bl]) => 0.2126 * r + 0.7152 * g + 0.0722 * bl);
  return (Math.max(...light) + 0.05) / (Math.min(...light) + 0.05);
}

test("the measures themselves are right: black on white is 21 : 1, L* of mid grey 53.6, grey stays grey", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(lab(rgb("#808080"))[0]).toBeCloseTo(53.585, 2);
  for (const seen of Object.values(readers)) expect(apart("#808080", "#808080", seen)).toBe(0);
  const grey = rgb("#808080");
  for (const seen of Object.values(readers))
    for (const [i, c] of seen(grey).entries()) expect(c).toBeCloseTo(grey[i]!, 2);
  expect(apart("#b00000", "#5a6b00", readers["green-blind"]!)).toBeLessThan(
    apart("#b00000", "#5a6b00", readers["all cones"]!) / 2,
  );
});

test("four series are told apart by every reader", () => {
  const series = [0, 1, 2, 3].map((i) => seriesStyle(i).colour);
  expect(new Set(series).size).toBe(4);
  for (const [who, seen] of Object.entries(readers))
    for (const [i, a] of series.entries())
      for (const b of series.slice(i + 1)) expect(apart(a, b, seen), `${who}: ${a} ${b}`).toBeGreaterThan(20);
});

test("what is measured is told from what is fitted", () => {
  for (const seen of Object.values(readers))
    expect(apart(colours.measured, colours.fitted, seen)).toBeGreaterThan(25);
});

test("neighbours differ in colour, mark and dash; no two of sixty have all of them in common", () => {
  const all = Array.from({ length: 60 }, (_, i) => seriesStyle(i));
  for (const [i, style] of all.slice(1).entries()) {
    expect(style.colour).not.toBe(all[i]!.colour);
    expect(style.shape).not.toBe(all[i]!.shape);
    expect(style.dash).not.toEqual(all[i]!.dash);
    expect(style.fillOpacity).not.toBe(all[i]!.fillOpacity);
  }
  expect(new Set(all.map((style) => JSON.stringify(style))).size).toBe(60);
});

test("words stand 4.5 : 1 on paper and on a band (WCAG 2.1, 1.4.3), lines 3 : 1 (1.4.11)", () => {
  for (const ground of [colours.paper, colours.band]) {
    for (const colour of [colours.ink, colours.quiet]) expect(contrast(colour, ground)).toBeGreaterThan(4.5);
    for (const i of [0, 1, 2, 3]) expect(contrast(seriesStyle(i).colour, ground)).toBeGreaterThan(3);
  }
  for (const i of [0, 1, 2, 3]) expect(contrast(seriesStyle(i).colour, colours.paper)).toBeGreaterThan(4.5);
});

test("letters are 11 px or more", () => {
  expect(smallestLetterPx).toBe(11);
  for (const size of Object.values(letterPx)) expect(size).toBeGreaterThanOrEqual(11);
});
