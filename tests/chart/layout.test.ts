import { expect, test } from "vitest";
import { chartSvg } from "../../lib/chart/svg.ts";
import { textWidth } from "../../lib/chart/text.ts";
import { readSvg, type SvgWord } from "./read-svg.ts";
import { samples } from "./samples.ts";
import { trialSamples } from "./trial-samples.ts";

const all = [...samples, ...trialSamples];

interface Rect {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Room that a word takes: width as in text.test.ts, 0.75 em up from the line and 0.22 em down. */
function rect({ text, sizePx, anchor, angle, x, y }: SvgWord): Rect {
  const width = textWidth(text, sizePx);
  const before = anchor === "middle" ? width / 2 : anchor === "end" ? width : 0;
  if (angle === 0)
    return { left: x - before, right: x - before + width, top: y - 0.75 * sizePx, bottom: y + 0.22 * sizePx };
  // Upright: the text runs upwards from where it starts.
  return { left: x - 0.75 * sizePx, right: x + 0.22 * sizePx, top: y + before - width, bottom: y + before };
}

type Point = { x: number; y: number };
const within = ({ x, y }: Point, a: Rect) => x > a.left && x < a.right && y > a.top && y < a.bottom;

/** The curve as points a fiftieth of each piece apart. */
function walked(curve: readonly Point[]): Point[] {
  return curve.slice(1).flatMap((to, i) => {
    const from = curve[i]!;
    return Array.from({ length: 51 }, (_, j) => ({
      x: from.x + (j / 50) * (to.x - from.x),
      y: from.y + (j / 50) * (to.y - from.y),
    }));
  });
}

test.each(all.flatMap((chart) => [340, 500, 720].map((width) => ({ chart, width }))))(
  "$chart.name at $width px: no word is cut, none stands on another or on a curve",
  async ({ chart, width }) => {
    const svg = readSvg(await chartSvg(chart.spec(width)));
    expect(svg.width).toBe(width);
    const curves = svg.paths("line").map(walked);
    const rects = svg.words.map((word) => ({ word, ...rect(word) }));
    expect(rects.length).toBeGreaterThan(0);
    for (const [i, a] of rects.entries()) {
      expect(a.word.sizePx).toBeGreaterThanOrEqual(11);
      const inside = a.left >= -1 && a.right <= width + 1 && a.top >= -1 && a.bottom <= svg.height + 1;
      expect(inside, `"${a.word.text}" is cut`).toBe(true);
      for (const b of rects.slice(i + 1)) {
        const meet = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
        expect(meet, `"${a.word.text}" on "${b.word.text}"`).toBe(false);
      }
      const curve = curves.find((points) => points.some((at) => within(at, a)));
      expect(curve, `a curve runs through "${a.word.text}"`).toBeUndefined();
    }
  },
);

test("a chart narrower than 240 px, or without a width, is a mistake of the caller", () => {
  for (const chart of all) {
    expect(() => chart.spec(200)).toThrow("240");
    expect(() => chart.spec(Number.NaN)).toThrow("240");
    expect(() => chart.spec(240)).not.toThrow();
  }
});
