// A sieve's label, read into the sieve that it names.

import { type Checked, type Issue, invariant } from "../issue.ts";
import { digitsForLetters } from "../numbers/digits-for-letters.ts";
import type { Sieve } from "./sieve.ts";
import { readClothLabel } from "./sieve-label-cloth.ts";
import {
  bareNumber,
  curlyQuotes,
  decimalComma,
  emptySieveLabel,
  letterForDigit,
  openingWithoutUnit,
  unknownNumber,
  unknownSieve,
} from "./sieve-label-issues.ts";
import { readOpeningLabel } from "./sieve-label-opening.ts";
import { astmSieve, britishSieve, plainDigits } from "./sieve-table.ts";
import { astmSieves } from "./sieve-table-astm.ts";
import { britishSieves } from "./sieve-table-british.ts";

type Reading = Checked<Sieve | "pan"> | undefined;

const refused = (issue: Issue): Checked<never> => ({ issues: [issue] });

/**
 * Reads the label of a sieve.
 *
 * Takes "No. 40", "#40", "US 40", "ASTM 40"; "0.425 mm", "425 µm", with its own ± if wanted
 * ("0.385 ± 0.01 mm"); "BS 60"; cloth as "40 mesh, 0.25 mm wire" or "40 x 42 mesh, 0.25/0.22 mm wire";
 * "pan", "bottom" or "tray". Capitals and spaces do not matter.
 *
 * An opening that a US sieve has is that sieve, and so is one that older tables print for it (0.297 mm: No. 50);
 * any other is an ISO 565 sieve or measured cloth. What cannot be one sieve for sure is refused with its
 * readings: a bare "40", a bare "0.425", "40 mesh" without its wire.
 *
 *     readSieveLabel("425 µm").value   // { label: "No. 40", series: "astm", openingMm: 0.425, toleranceMm: 0.0155, number: 40 }
 */
export function readSieveLabel(label: string): Checked<Sieve | "pan"> {
  invariant(typeof label === "string", `A sieve's label must be text, not ${typeof label}.`);
  const typed = label.trim().replace(/\s+/g, " ");
  const text = typed
    .toLowerCase()
    .replace(/μ/g, "µ")
    .replace(/ (test )?sieve$/, "")
    // Cloth by count, however the word stands.
    .replace(
      /^(\d+(?:\.\d+)?)(?: ?m|-mesh)$|^mesh[ -]?(\d+(?:\.\d+)?)$/,
      (_, before, behind) => `${before ?? behind} mesh`,
    );
  if (text === "") return refused(emptySieveLabel());
  if (/[“”„‘’«»]/.test(typed)) return refused(curlyQuotes(typed, typed.replace(/[“”„‘’«»]/g, "").trim()));
  if (/\d,\d/.test(text)) return refused(decimalComma(typed));
  return (
    readPan(text) ??
    readNumbered(text, typed) ??
    readOpeningLabel(text, typed) ??
    readClothLabel(text, /^\d[\d.]* mesh$/.test(text) ? text : typed) ??
    readBare(text, typed) ??
    readMistyped(typed) ??
    refused(unknownSieve(typed, suggestion(text)))
  );
}

function readPan(text: string): Reading {
  return /^(bottom )?(pan|tray)$|^bottom$/.test(text) ? { value: "pan", issues: [] } : undefined;
}

function readNumbered(text: string, typed: string): Reading {
  const us = /^(?:(?:us|u\.s\.|astm(?: e11)?) ?(?:no\.?|#|mesh)? ?|no\.? ?|# ?)(\d+)$/.exec(text);
  const usMesh = us ?? /^(?:us|u\.s\.|astm) ?(\d+) ?mesh$/.exec(text);
  if (usMesh) {
    const n = Number(usMesh[1]);
    const value = astmSieve(n);
    if (value) return { value, issues: [] };
    const near = neighbours(astmSieves, n).map((row) => `the US "No. ${row.number}" (${row.openingMm} mm)`);
    return refused(unknownNumber(typed, "US", [...near, ...british([n]), ...cloth(n)]));
  }
  const bs = /^(?:bs|b\.s\.)(?: 410)? ?(?:no\.?|#|mesh)? ?(\d+)(?: ?mesh)?$/.exec(text);
  if (!bs) return undefined;
  const n = Number(bs[1]);
  const value = britishSieve(n);
  if (value) return { value, issues: [] };
  const near = british(neighbours(britishSieves, n).map(({ number }) => number));
  const same = astmSieve(n) ? [`the US "No. ${n}"`] : [];
  return refused(unknownNumber(typed, "British", [...near, ...same, ...cloth(n)]));
}

function british(numbers: readonly number[]): string[] {
  return numbers.flatMap((n) => {
    const sieve = britishSieve(n);
    return sieve ? [`the old British "BS ${n}" (${plainDigits(sieve.openingMm)} mm)`] : [];
  });
}

const cloth = (n: number) => (n > 0 && n < 1000 ? [`cloth of ${n} wires per inch, "${n} mesh"`] : []);

/** "No. 5O" with the letter O. */
function readMistyped(typed: string): Reading {
  const better = digitsForLetters(typed);
  if (better === undefined) return undefined;
  const read = readSieveLabel(better);
  return read.value === undefined ? read : refused(letterForDigit(typed, better));
}

function readBare(text: string, typed: string): Reading {
  if (!/^(\d+(\.\d+)?|\.\d+|\d+ ?#)$/.test(text)) return undefined;
  if (text.includes(".")) return refused(openingWithoutUnit(typed));
  const n = Number.parseInt(text, 10);
  const readings = [
    ...(astmSieve(n) ? [`the US sieve "No. ${n}"`] : []),
    ...(britishSieve(n) ? [`the old British sieve "BS ${n}"`] : []),
    ...cloth(n).map((reading) => `${reading} with its wire`),
    `an opening of "${n} µm"`,
  ];
  return refused(bareNumber(typed, readings));
}

/** The rows on both sides of a number; one at an end of the table. */
function neighbours<Row extends { readonly number: number }>(table: readonly Row[], n: number): Row[] {
  const above = table.findIndex(({ number }) => number > n);
  const rows = above < 0 ? [table.at(-1)] : [table[above - 1], table[above]];
  return rows.filter((row) => row !== undefined);
}

/** What stands around a US number that was meant as one. */
const aroundNumber =
  /^(?:n|no|nr|num|number|us|usa|astm|size|screen|sieve|mesh|retained|on|over|[#№º°+>.:•*\s-])*$/;
/** What went through, or what it lies in. */
const through =
  /^(-|<|≤|under|below|finer|smaller|pass|through|minus)|^(base|dust|fines?|receiver|rest|remainder|collector|undersize)\b/;

/** The sieve that was probably meant, where there is one number in the label or a word for the pan. */
function suggestion(text: string): string | undefined {
  if (/^-\d+ ?\+ ?\d+$/.test(text)) return undefined;
  if (through.test(text) || /^(pa|bot|tra)|pan|tray|bottom/.test(text)) return "pan";
  const bare = text.replace(/ ?[([=/,].*$/, "");
  const named = bare === text ? undefined : readSieveLabel(bare).value;
  if (named !== undefined) return named === "pan" ? "pan" : named.label;
  const numbers = text.match(/\d+(?:\.\d+)?/g) ?? [];
  const [number] = numbers;
  if (number === undefined || numbers.length > 1) return undefined;
  if (/^\d+ ?(mic|mu|my|u)\b|^\d+ ?micr/.test(text)) return `${number} µm`;
  if (number.includes(".")) return `${number} mm`;
  if (!aroundNumber.test(text.replace(number, " "))) return undefined;
  const n = Number(number);
  const away = ({ number }: { readonly number: number }) => Math.abs(Math.log(number / Math.max(n, 1)));
  return `No. ${astmSieves.reduce((best, row) => (away(row) < away(best) ? row : best)).number}`;
}
