// Names of sieves along an axis: as short as they can be, and never one on another.

import { clip, textWidth } from "./text.ts";
import { smallestLetterPx } from "./theme.ts";

export interface SieveLabels {
  /** What the names count, for the axis: "sieve No.", "sieve, mm", "sieve". */
  readonly title: string;
  readonly labels: readonly { readonly px: number; readonly text: string; readonly row: number }[];
  /** True: written upwards, because side by side they do not fit. */
  readonly upright: boolean;
  /** Room that they take, px. */
  readonly heightPx: number;
}

const rowPx = 14;
const gapPx = 5;
const longestUprightPx = 84;

/** The part that all names share goes into the title; what stands behind a comma (the wire of a cloth) is left out. */
function shorten(names: readonly string[]): { title: string; texts: string[] } {
  const sieves = names.filter((name) => name !== "pan");
  const all = (pattern: RegExp) => sieves.length > 0 && sieves.every((name) => pattern.test(name));
  if (all(/^No\. \S+$/u)) return { title: "sieve No.", texts: names.map((name) => name.replace("No. ", "")) };
  if (all(/^BS \S+$/u)) return { title: "BS sieve", texts: names.map((name) => name.replace("BS ", "")) };
  if (all(/^[\d.]+ mm$/u)) return { title: "sieve, mm", texts: names.map((name) => name.replace(" mm", "")) };
  return { title: "sieve", texts: names.map((name) => name.split(",")[0]!.trim()) };
}

/** Rows (one or two) in which the names stand free of each other, or undefined. */
function inRows(at: readonly { px: number; text: string }[], rows: number): number[] | undefined {
  const ends = new Array<number>(rows).fill(Number.NEGATIVE_INFINITY);
  const taken: number[] = [];
  for (const [i, each] of at.entries()) {
    const half = textWidth(each.text, smallestLetterPx) / 2;
    const row = i % rows;
    if (each.px - half < ends[row]! + gapPx) return undefined;
    ends[row] = each.px + half;
    taken.push(row);
  }
  return taken;
}

/**
 * Sets names at places along an axis: in one row, else in two, else upright; upright names that would still touch
 * are left out (the table has them).
 */
export function sieveLabels(at: readonly { readonly px: number; readonly label: string }[]): SieveLabels {
  const sorted = [...at].sort((a, b) => a.px - b.px);
  const { title, texts } = shorten(sorted.map((each) => each.label));
  const short = sorted.map((each, i) => ({ px: each.px, text: texts[i]! }));
  for (const rows of [1, 2]) {
    const taken = inRows(short, rows);
    if (taken) {
      const labels = short.map((each, i) => ({ ...each, row: taken[i]! }));
      return { title, labels, upright: false, heightPx: rows * rowPx };
    }
  }
  const labels: { px: number; text: string; row: number }[] = [];
  for (const each of short) {
    const last = labels.at(-1);
    if (last && each.px - last.px < smallestLetterPx + 1) continue;
    labels.push({ px: each.px, text: clip(each.text, longestUprightPx, smallestLetterPx), row: 0 });
  }
  const longest = Math.max(0, ...labels.map((each) => textWidth(each.text, smallestLetterPx)));
  return { title, labels, upright: true, heightPx: Math.ceil(longest) + 2 };
}

/** Where the names stand when the row nearest the axis is at y, going away by step (−1 up, 1 down). */
export function sieveLabelWords(labels: SieveLabels, y: number, step: 1 | -1) {
  const words = labels.labels.map(({ px, text, row }) => ({ px, py: y + step * row * rowPx, text }));
  const look = labels.upright
    ? { angle: -90, align: step === -1 ? "left" : "right", fontSize: smallestLetterPx }
    : { align: "center", fontSize: smallestLetterPx };
  return { words, look };
}
