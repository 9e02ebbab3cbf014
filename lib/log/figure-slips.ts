// What a founder means who writes something else than a figure: a letter for a digit, a remark, "trace", "n/a", "grms".

import type { Issue } from "../issue.ts";
import { digitsForLetters } from "../numbers/digits-for-letters.ts";
import { entryOf } from "../numbers/entry-of.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import {
  basisUnclear,
  letterForDigit,
  noFigure,
  remarkInFigure,
  roughFigure,
  traceOnly,
  unitSpelt,
  wordForZero,
} from "./complaints-figure.ts";
import { markIn } from "./figure-marks.ts";
import { plainName } from "./node.ts";

/** Abbreviations that no reader of units knows; "gr" is not among them, since it may be grains. */
const units: Readonly<Record<string, string>> = {
  grm: "g",
  grms: "g",
  gramm: "g",
  gramms: "g",
  kgs: "kg",
  ozs: "oz",
  mls: "ml",
  ccs: "ml",
};

/** The fitting answer to a text that cannot be read as a figure; undefined where nothing is known of it. */
export function slipIn(text: string): Issue | undefined {
  const typed = text.trim();
  return (
    wordFor(typed) ??
    mistypedDigit(typed) ??
    misspeltUnit(typed) ??
    markIn(typed) ??
    bound(typed) ??
    roughly(typed) ??
    basisCut(typed) ??
    withRemark(typed)
  );
}

const reads = (text: string): boolean => readQuantity(text).value !== undefined;

function wordFor(typed: string): Issue | undefined {
  const word = plainName(typed).replace(/[.!]+$/, "");
  if (/^(a )?(traces?|tr|dust|little|bit|few grains)$|^hardly any(thing)?$/.test(word)) {
    return traceOnly(typed, "0.05 ± 0.05 g where the scale shows 0.1 g");
  }
  if (/^(nil|none|nothing|zero|empty)$/.test(word)) return wordForZero(typed);
  const absent =
    /^([-–—?.x]+|n[./]?a|n\/d|nd|tbd|unknown|lost|spilled|spilt|not (measured|weighed|known|done|used))$/;
  return absent.test(word) ? noFigure(typed) : undefined;
}

function mistypedDigit(typed: string): Issue | undefined {
  const better = digitsForLetters(typed);
  return better !== undefined && reads(better) ? letterForDigit(typed, better) : undefined;
}

function misspeltUnit(typed: string): Issue | undefined {
  const [, number, word = ""] = /^(.*?)\s*([a-z]+)\.?$/i.exec(typed) ?? [];
  const unit = entryOf(units, word.toLowerCase());
  if (unit === undefined || number === undefined) return undefined;
  const better = `${number} ${unit}`;
  return reads(better) ? unitSpelt(word, better) : undefined;
}

/** "<0.1 g": somewhere from zero to that. */
function bound(typed: string): Issue | undefined {
  const [, number = "", unit = ""] =
    /^(?:<|≤|under|below|less than|up to)\s*(\d*\.?\d+)\s*([a-z%]*)$/i.exec(typed) ?? [];
  if (number === "" || !(Number(number) > 0)) return undefined;
  const half = Number((Number(number) / 2).toPrecision(6));
  return traceOnly(typed, `${half} ± ${half}${unit === "" ? "" : ` ${unit}`}`);
}

function roughly(typed: string): Issue | undefined {
  const rest = /^(?:about|around|approx\.?|approximately|circa|ca\.?|c\.|~|≈|roughly)\s*(.+)$/i.exec(
    typed,
  )?.[1];
  return rest !== undefined && reads(rest) ? roughFigure(typed, rest) : undefined;
}

/** "2.7 % dry": two bases are meant by that, of dry sand and of damp. */
function basisCut(typed: string): Issue | undefined {
  const [, figure, word] = /^([\d.]+ ?%) ?\(?(dry|damp|wet)\b/i.exec(typed) ?? [];
  if (figure === undefined || word === undefined) return undefined;
  return basisUnclear(typed, `"${figure} of damp mass" or "${figure} of dry mix"`);
}

/** The longest beginning that is a figure, and words after it. */
function withRemark(typed: string): Issue | undefined {
  // A unit that may be two is no remark.
  if (readQuantity(typed).issues.some(({ code }) => code === "quantity/ambiguous-unit")) return undefined;
  const ends = [...typed.matchAll(/\s*[\s(,;[]\s*/g)].map(({ index }) => index).reverse();
  for (const end of ends) {
    const figure = typed.slice(0, end);
    const remark = typed.slice(end).replace(/^[\s(,;[–—-]+|[\s)\]]+$/g, "");
    // One word behind a bare number is meant as its unit; a number in the rest may be part of the figure.
    if (/^[\d.]+ \p{L}+$/u.test(typed) || !/^\p{L}/u.test(remark) || /\d/.test(remark)) continue;
    if (reads(figure)) return remarkInFigure(figure, remark);
  }
  return undefined;
}
