import { expect, test } from "vitest";
import { colours, letterPx, seriesStyle, smallestLetterPx } from "../../lib/chart/theme.ts";

type Triple = [number, number, number];
const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
const rgb = (hex: string) =>
  [1, 3, 5].map((i) => linear(Number.parseInt(hex.slice(i, i + 2), 16) / 255)) as Triple;
const times = (m: readonly Triple[], v: Triple) =>
  m.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as Triple;

// Viénot, Brettel & Mollon 1999, "Digital video colourmaps for checking the legibility of displays by dichromats",
// Color Research and Application 24: RGB to cone responses, and the plane that is left (figures from memory).
const toCones: Triple[] = [
  [17.8824, 43.5161, 4.11935],
  [3.45565, 27.1554, 3.86714],
  [0.0299566, 0.184309, 1.46709],
];
function inverse([[a, b, c], [d, e, f], [g, h, i]]: readonly Triple[] & [Triple, Triple, Triple]): Triple[] {
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const rows: Triple[] = [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ];
  return rows.map((row) => row.map((x) => x / det) as Triple);
}
const fromCones = inverse(toCones as [Triple, Triple, Triple]);
const readers: Record<string, (v: Triple) => Triple> = {
  "all cones": (v) => v,
  "red-blind": (v) => {
    const [, m, s] = times(toCones, v);
    return times(fromCones, [2.02344 * m - 2.52581 * s, m, s]);
  },
  "green-blind": (v) => {
    const [l, , s] = times(toCones, v);
    return times(fromCones, [l, 0.494207 * l + 1.24827 * s, s]);
  },
};

/** CIE 1976 L*a*b* of linear sRGB (IEC 61966-2-1 matrix, white D65). */
function lab(colour: Triple): Triple {
  const [r, g, b] = colour.map((c) => Math.min(1, Math.max(0, c))) as Triple;
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
const apart = (a: string, b: string, seen: (v: Triple) => Triple) => {
  const [p, q] = [lab(seen(rgb(a))), lab(seen(rgb(b)))];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
};
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
      for (const b of series.slice(i + 1)) expect(apart(a, b, seen), `${who}: ${a} ${b}`).toBeGreaterThan(25);
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
