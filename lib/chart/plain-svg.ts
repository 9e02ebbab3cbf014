// A chart drawn without Vega, to the letter as Vega draws it: most of a drawing's time goes into working out what a
// spec means, and ours mean little. The test beside it draws every chart both ways.

import type { VegaLiteSpec } from "./chart.ts";
import { plainAxes, type Ranges } from "./plain-axes.ts";
import { plainMarks } from "./plain-marks.ts";
import { translated } from "./plain-number.ts";
import { scaleOf } from "./plain-scale.ts";
import { readPlain } from "./plain-spec.ts";
import { svgHead } from "./tidy-svg.ts";

/**
 * The drawing of a spec that keeps to what our charts are made of; undefined where it says anything else.
 * @example plainSvg(chart.spec(720)) === (await vegaSvg(chart.spec(720)))
 */
export function plainSvg(spec: VegaLiteSpec): string | undefined {
  const plain = readPlain(spec);
  if (!plain) return undefined;
  const { width, height, padding, x, y, layers } = plain;
  const none = (value: number): number => value;
  const ranges: Ranges = {
    x: x?.reverse ? [width, 0] : [0, width],
    y: y?.reverse ? [0, height] : [height, 0],
  };
  const scales = { x: x ? scaleOf(x, ranges.x) : none, y: y ? scaleOf(y, ranges.y) : none };
  const parts = [plainAxes(plain, scales, ranges), ...layers.map((layer) => plainMarks(layer, scales))];
  if (!parts.every((part) => part !== undefined)) return undefined;
  const { left, right, top, bottom } = padding;
  const viewBox = `0 0 ${left + width + right} ${top + height + bottom}`;
  const root = `<g fill="none" stroke-miterlimit="4" transform="${translated(left, top)}">`;
  const body = `${root}<g><g transform="translate(0,0)"><g>${parts.join("")}</g></g></g></g>`;
  return `${svgHead(viewBox, plain)}${body}</svg>`;
}
