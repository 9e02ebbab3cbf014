// The words of a number strip: figures, ranges, sources.

import { printOutward } from "../quantity/print-outward.ts";
import { ends } from "./data.ts";
import type { NumberStripInput, StripBand, StripMark } from "./strip-input.ts";
import { figure } from "./text.ts";

/** Drawn lighter and dashed: from memory, or our own proposal. */
export const weak = (band: Pick<StripBand, "tag">) => band.tag === "from memory" || band.tag === "our own";

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Two figures of the half-width decide how many decimals are worth printing. */
function decimals(mark: StripMark): number {
  const both = ends(mark);
  if (!both || !(both.high > both.low)) return 1;
  return Math.min(4, Math.max(0, 1 - Math.floor(Math.log10((both.high - both.low) / 2))));
}
export function markText(mark: StripMark): string {
  const places = decimals(mark);
  const both = ends(mark);
  const range = both ? ` (95 %: ${figure(both.low, places)} to ${figure(both.high, places)})` : "";
  const possible = mark.possible ? `; possible ${printOutward(mark.possible)}` : "";
  return `${mark.figure ?? `${figure(mark.value, places)}${range}`}${possible}`;
}
export function isLowerBound({ atLeast, figure: printed = "" }: StripMark): boolean {
  return atLeast ?? /at least|or wider|not known/.test(printed);
}
/** Where a band comes from; a tag that says no more than the source, or that it was read there, is left out. */
export function sourceText({ source, tag }: StripBand): string {
  return tag === "read" || tag === source ? source : `${source} (${tag})`;
}
export function bandText({ low, high }: StripBand): string {
  if (low === Number.NEGATIVE_INFINITY) return `up to ${figure(high, 3)}`;
  if (high === Number.POSITIVE_INFINITY) return `from ${figure(low, 3)} up`;
  return `${figure(low, 3)} to ${figure(high, 3)}`;
}

/** What stands at a band in the drawing: its range, and its tag where it is not one that was read. */
export function bandNote(band: StripBand): string {
  return band.tag === "read" ? bandText(band) : `${bandText(band)}, ${band.tag}`;
}

export function stripAlt({ title, unit, marks, bands }: NumberStripInput): string {
  const parts = [
    ...marks.map((mark) => `${mark.label}: ${markText(mark)}.`),
    ...bands.map((band) => `Band ${band.label}: ${bandText(band)}; ${sourceText(band)}.`),
  ];
  const against = bands.length === 0 ? "" : ", against bands";
  return [`${capital(title)}${unit === "" ? "" : `, ${unit}`}${against}.`, ...parts].join(" ");
}

export function stripCaption({ title, marks, bands }: NumberStripInput): string {
  return [
    capital(title),
    bands.length > 0 ? " against the usual bands" : "",
    marks.some((mark) => ends(mark)) ? "; the thick bar is the 95 % interval" : "",
    marks.some((mark) => mark.possible) ? "; the thin bar is what the masses alone allow" : "",
    bands.some(weak) ? "; dashed bands are from memory or our own" : "",
    ".",
  ].join("");
}
