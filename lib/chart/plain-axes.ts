// Axes of a plain drawing: grid, ticks, labels, title, where Vega puts them.

import type { Scale } from "./frame.ts";
import { type AxisWords, levelWords, uprightWords } from "./plain-axis-words.ts";
import { coordinate, translated } from "./plain-number.ts";
import type { PlainSpec } from "./plain-spec.ts";
import { colours } from "./theme.ts";

/** As the theme has it. */
const TICK = 4;
const GRID = ` stroke="${colours.rule}" stroke-opacity="0.5" stroke-width="1"`;
const LINE = ` stroke="${colours.quiet}" stroke-width="1"`;

type Along = "x" | "y";
type Ends = readonly [number, number];

interface Edge {
  readonly along: Along;
  readonly scale: Scale;
  readonly range: Ends;
  /** Of the other edge, as seen from this one. */
  readonly across: Ends;
  readonly words: AxisWords;
  /** Where the axis stands. */
  readonly down: number;
}

export interface Ranges {
  readonly x: Ends;
  readonly y: Ends;
}

/** Grids, then axes; undefined where an axis says something that is not known here. */
export function plainAxes(
  { height, x, y }: PlainSpec,
  scales: { readonly x: Scale; readonly y: Scale },
  ranges: Ranges,
): string | undefined {
  const edges: Edge[] = [];
  if (x?.axis) {
    const words = levelWords(x, scales.x, ranges.x);
    if (!words) return undefined;
    const across = [ranges.y[1] - height, ranges.y[0] - height] as const;
    edges.push({ along: "x", scale: scales.x, range: ranges.x, across, words, down: height });
  }
  if (y?.axis) {
    const words = uprightWords(y, scales.y, ranges.y);
    if (!words) return undefined;
    edges.push({ along: "y", scale: scales.y, range: ranges.y, across: ranges.x, words, down: 0 });
  }
  const grids = edges.map((edge) => (edge.words.grid ? inGroup(edge, [grid(edge)]) : ""));
  const axes = edges.map((edge) => inGroup(edge, [...ticks(edge), domain(edge), ...edge.words.title]));
  return [...grids, ...axes].join("");
}

const inGroup = ({ down }: Edge, parts: readonly string[]): string =>
  `<g class="axis"><g transform="${translated(0.5, down + 0.5)}"><g>${parts.map(inPart).join("")}</g></g></g>`;

const inPart = (part: string): string => (part === "" ? "<g/>" : `<g>${part}</g>`);

const lineAlong = (along: Along, [from, to]: Ends, at: number, look: string): string =>
  along === "x"
    ? `<line transform="${translated(from, at)}" x2="${coordinate(to - from)}" y2="0"${look}/>`
    : `<line transform="${translated(at, from)}" x2="0" y2="${coordinate(to - from)}"${look}/>`;

function grid({ along, scale, across, words }: Edge): string {
  const other = along === "x" ? "y" : "x";
  return words.values.map((value) => lineAlong(other, across, Math.round(scale(value)), GRID)).join("");
}

function ticks({ along, scale, words }: Edge): string[] {
  if (words.bare) return [];
  const other = along === "x" ? "y" : "x";
  const ends: Ends = along === "x" ? [0, TICK] : [0, -TICK];
  const lines = words.values.map((value) => lineAlong(other, ends, Math.round(scale(value)), LINE));
  return [lines.join(""), words.labels.join("")];
}

const domain = ({ along, range }: Edge): string => lineAlong(along, range, 0, LINE);
