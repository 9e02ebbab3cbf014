// Labels and title of an axis of a plain drawing.

import type { Scale } from "./frame.ts";
import { translated } from "./plain-number.ts";
import { shownLabels } from "./plain-scale.ts";
import { isNumber, only, type PlainScale } from "./plain-spec.ts";
import { tickTexts } from "./plain-tick-text.ts";
import { colours, letterPx } from "./theme.ts";
import { escapedText } from "./tidy-svg.ts";

export interface AxisWords {
  readonly values: readonly number[];
  /** Markup of the labels, and of the title, one text or none. */
  readonly labels: readonly string[];
  readonly title: readonly string[];
  readonly grid: boolean;
  /** No ticks, no labels. */
  readonly bare: boolean;
}

type Ends = readonly [number, number];

const LETTERS = ` font-size="${letterPx.axis}px" fill="${colours.ink}"`;
/** From the end of a tick to its label, and from the axis to the end of a tick. */
const PADDING = 3;
const TICK = 4;
/** From the middle of letters, and from their top, to the line that they stand on. */
const MIDDLE = Math.round(0.3 * letterPx.axis);
const TOP = Math.round(0.79 * letterPx.axis);
/** The foot of a row of labels below its axis. */
const LABELS_FOOT = TICK + PADDING + TOP - Math.round(0.8 * letterPx.axis) + letterPx.axis;
const LINE_PX = letterPx.axis + 2;

/** Of an axis at the foot; undefined where it says something that is not known here. */
export function levelWords(scale: PlainScale, at: Scale, [from, to]: Ends): AxisWords | undefined {
  const given = scale.axis!;
  const { title, titlePadding, labels, ticks, labelOverlap = true, labelFlush, grid } = given;
  const known = "title values format grid labelFlush labelOverlap titlePadding labels ticks";
  const lines = [title].flat();
  if (!only(given, known) || !isNumber(titlePadding) || typeof grid !== "boolean") return undefined;
  if (lines.length === 0 || !lines.every((line) => typeof line === "string")) return undefined;
  const bare = labels === false && ticks === false && !grid;
  const titled = (foot: number) => [levelTitle(lines, (from + to) / 2, foot + titlePadding + TOP)];
  if (bare) return { values: [], labels: [], title: titled(0), grid, bare };
  const marked = markedAt(scale, at, [from, to]);
  if (!marked || labels !== undefined || ticks !== undefined || labelFlush !== false) return undefined;
  const { values, texts } = marked;
  // Widths are estimated as Vega does it without a canvas.
  const widths = texts.map((text) => Math.trunc(0.8 * text.length * letterPx.axis));
  if (labelOverlap === true && scale.type === "log") return undefined;
  const shown = labelOverlap === true ? shownLabels(values.map(at), widths) : undefined;
  const foot = TICK + PADDING + TOP;
  const words = values.map((value, i) => label("middle", translated(at(value), foot), texts[i]!, shown?.[i]));
  return { values, labels: words, title: titled(values.length === 0 ? 0 : LABELS_FOOT), grid, bare };
}

/** Of an axis at the left, with its title above it. */
export function uprightWords(scale: PlainScale, at: Scale, [from, to]: Ends): AxisWords | undefined {
  const given = scale.axis!;
  const { title, titleAngle, titleAlign, titleBaseline, titleX, titleY, grid } = given;
  if (
    typeof grid !== "boolean" ||
    !only(given, "title values format grid titleAngle titleAlign titleBaseline titleX titleY")
  )
    return undefined;
  if (titleAngle !== 0 || titleAlign !== "left" || titleBaseline !== "middle") return undefined;
  if (!isNumber(titleX) || !isNumber(titleY) || typeof title !== "string" || scale.type === "log")
    return undefined;
  const marked = markedAt(scale, at, [from, to]);
  if (!marked) return undefined;
  const { values, texts } = marked;
  const shown = shownLabels(
    values.map(at),
    values.map(() => letterPx.axis),
  );
  const labels = values.map((value, i) =>
    label("end", translated(-TICK - PADDING, at(value) + MIDDLE), texts[i]!, shown[i]),
  );
  return {
    values,
    labels,
    title: [text("", translated(titleX, titleY + MIDDLE), inLine(title))],
    grid,
    bare: false,
  };
}

const text = (anchor: string, transform: string, words: string): string =>
  `<text${anchor} transform="${transform}"${LETTERS}>${words}</text>`;

function label(anchor: "middle" | "end", transform: string, words: string, shown = true): string {
  const hidden = shown ? "" : ' opacity="0"';
  return `<text text-anchor="${anchor}" transform="${transform}"${LETTERS}${hidden}>${words}</text>`;
}

const inLine = (words: string): string => escapedText(words.trim());

function levelTitle(lines: readonly string[], middle: number, down: number): string {
  const [first, ...more] = lines.map(inLine);
  const words =
    more.length === 0
      ? first!
      : [
          `<tspan>${first}</tspan>`,
          ...more.map((line) => `<tspan x="0" dy="${LINE_PX}">${line}</tspan>`),
        ].join("");
  return text(' text-anchor="middle"', translated(middle, down), words);
}

/** The values within the range, in its order, with their words. */
function markedAt(
  scale: PlainScale,
  at: Scale,
  [from, to]: Ends,
): { readonly values: readonly number[]; readonly texts: readonly string[] } | undefined {
  const { values: all, format } = scale.axis!;
  if (!Array.isArray(all) || !all.every(isNumber)) return undefined;
  if (format !== undefined && format !== "~f") return undefined;
  const [first, last] = [Math.floor(Math.min(from, to)), Math.ceil(Math.max(from, to))];
  const values = all
    .filter((value) => first <= at(value) && at(value) <= last)
    .sort((a, b) => (from > to ? at(b) - at(a) : at(a) - at(b)));
  const texts = tickTexts(scale, values, { format, count: all.length });
  return texts && { values, texts };
}
