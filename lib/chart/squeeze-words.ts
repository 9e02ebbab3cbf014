// What a squeeze chart is drawn from, and its words.

import { rangeText } from "./axis-words.ts";
import { ends } from "./data.ts";
import { figure } from "./text.ts";

export const compactabilityUnit = "% of height";

export interface SqueezePoint {
  /** Which of the steps, by its number. */
  readonly step: number;
  /** % of height, 0..100. */
  readonly compactability: number;
  /** Ends of the 95 % interval. */
  readonly low?: number;
  readonly high?: number;
  /** Name of the batch, for the table. */
  readonly label?: string;
}
export interface SqueezeChartInput {
  readonly name: string;
  /** In their order, from dry to wet. */
  readonly steps: readonly { readonly step: number; readonly words: string }[];
  readonly points: readonly SqueezePoint[];
  /** The founder's own aim for compactability, % of height. */
  readonly aim?: { readonly low: number; readonly high: number };
  readonly caption?: string;
}

export interface SqueezeRow {
  readonly label: string;
  readonly under: string;
  readonly points: readonly SqueezePoint[];
  /** NaN without points. */
  readonly mean: number;
}

export function squeezeRow(
  { step, words }: { step: number; words: string },
  all: readonly SqueezePoint[],
): SqueezeRow {
  const points = all.filter((point) => point.step === step);
  const values = points.map(({ compactability }) => compactability);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = rangeText(Math.min(...values), Math.max(...values), 1);
  const under =
    values.length === 0
      ? "not felt yet"
      : values.length === 1
        ? `${figure(mean, 1)} %, once`
        : `mean ${figure(mean, 1)} %, ${values.length} times: ${spread} %`;
  return { label: `${step}. ${words}`, under, points, mean };
}

export function squeezeCaption({ points, aim }: SqueezeChartInput): string {
  return [
    "What the hand felt in the squeeze, against the compactability that was measured; a dash is the mean of a step",
    points.some((point) => ends(point)) ? "; bars are 95 % intervals" : "",
    aim ? "; dashed lines: your aim" : "",
    ".",
  ].join("");
}

/** Neighbouring steps whose dots mix, or whose means stand the wrong way round. */
export function squeezeAlt(rows: readonly SqueezeRow[], { aim }: SqueezeChartInput): string {
  const felt = rows.filter(({ points }) => points.length > 0);
  const mixed = felt.slice(1).flatMap((row, i) => {
    const before = felt[i]!;
    const highest = Math.max(...before.points.map((point) => point.compactability));
    const lowest = Math.min(...row.points.map((point) => point.compactability));
    return lowest <= highest ? [`"${before.label}" and "${row.label}" overlap`] : [];
  });
  return [
    `Steps of the squeeze against compactability, ${compactabilityUnit}.`,
    ...rows.map(({ label, under }) => `${label}: ${under}.`),
    ...(felt.length > 1 ? [mixed.length > 0 ? `${mixed.join("; ")}.` : "The steps do not overlap."] : []),
    ...(aim ? [`Your aim: ${rangeText(aim.low, aim.high, 1)} %.`] : []),
  ].join(" ");
}
