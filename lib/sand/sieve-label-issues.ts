// What can be wrong with a sieve's label: one message function each.

import type { Issue } from "../issue.ts";

type Level = Issue["severity"];
const make = (code: string, severity: Level, about: string, message: string, remedy: string): Issue =>
  Object.freeze({ code: `sand/${code}`, severity, about, message, remedy });

export const emptySieveLabel = (): Issue =>
  make(
    "sieve-empty",
    "error",
    "",
    "A sieve has no name.",
    'Write "No. 40", "0.425 mm", "40 mesh, 0.25 mm wire" or "pan".',
  );

export const decimalComma = (label: string): Issue =>
  make(
    "sieve-decimal-comma",
    "error",
    label,
    `The sieve "${label}" has a decimal comma.`,
    `Write a decimal point: "${label.replace(/(\d),(\d)/g, "$1.$2")}".`,
  );

export const bareNumber = (label: string, readings: readonly string[]): Issue =>
  make(
    "sieve-bare-number",
    "error",
    label,
    `"${label}" alone does not say what it counts: it could be ${readings.join(", or ")}.`,
    "Write the one that is stamped on the frame; for cloth, measure the wire.",
  );

export const openingWithoutUnit = (label: string): Issue =>
  make(
    "sieve-no-unit",
    "error",
    label,
    `The opening "${label}" has no unit.`,
    `Write "${label} mm" if it is in millimetres, or the opening in µm.`,
  );

export const openingOutOfRange = (label: string, other: string | undefined): Issue =>
  make(
    "sieve-opening-range",
    "error",
    label,
    `An opening of ${label} is outside what test sieves have, 0.02 to 125 mm.`,
    other === undefined ? "Check the figure and its unit." : `Check the unit: did you mean "${other}"?`,
  );

export const openingPlusMinus = (label: string): Issue =>
  make(
    "sieve-plus-minus",
    "error",
    label,
    `The ± of "${label}" is as large as the figure itself.`,
    "Check the figure, the ± and their unit.",
  );

export const notStandard = (label: string, within: string, nearest: string): Issue =>
  make(
    "sieve-not-standard",
    "note",
    label,
    `"${label}" is no standard opening; it is taken as measured cloth, right within ${within} mm.`,
    `If it is a test sieve, check the figure: the nearest one is ${nearest}.`,
  );

export const olderPrint = (label: string, name: string, today: string): Issue =>
  make(
    "sieve-older-print",
    "note",
    label,
    `"${label}" is how older tables print ${name}; it is taken as that sieve, today ${today} mm.`,
    `If you measured your own cloth, write its count and its wire, or the opening with its ±.`,
  );

/** `opening`: the middle of the spread with its ±, as a label; undefined where no sieve has such an opening. */
export const meshWithoutWire = (
  label: string,
  spread: string,
  withWire: string,
  opening: string | undefined,
): Issue =>
  make(
    "sieve-mesh-alone",
    "error",
    label,
    `"${label}" does not give the opening until the wire is measured: ${spread}.`,
    `Measure the wire and write "${withWire}" with your figure.${opening === undefined ? "" : ` Without a micrometer write the opening with what it may be off by: "${opening}".`} For a US test sieve write "No." and its number.`,
  );

export const wiresOverlap = (label: string, pitch: string): Issue =>
  make(
    "sieve-wires-overlap",
    "error",
    label,
    `In "${label}" the wires would overlap: they stand ${pitch} mm apart from middle to middle.`,
    "Check the count, which is per inch, and the wire and its unit.",
  );

export const oddWire = (label: string, openPercent: string): Issue =>
  make(
    "sieve-odd-wire",
    "warning",
    label,
    `"${label}" would be ${openPercent} % open, which is unusual for woven cloth.`,
    "Measure the wire again, and check its unit; count the wires over a whole inch.",
  );

export const unknownNumber = (label: string, series: string, readings: readonly string[]): Issue =>
  make(
    "sieve-unknown",
    "error",
    label,
    `There is no ${series} sieve called "${label}".`,
    `Write what is stamped on the frame: ${readings.join(", or ")}. A sieve under the name of another gives a wrong fineness number.`,
  );

export const letterForDigit = (label: string, better: string): Issue =>
  make(
    "sieve-letter-digit",
    "error",
    label,
    `"${label}" has a letter where a digit belongs.`,
    `Did you mean "${better}", with the digit zero or one?`,
  );

export const curlyQuotes = (label: string, better: string): Issue =>
  make(
    "sieve-curly-quotes",
    "error",
    label,
    `"${label}" has curly quotes; use straight ones, or none.`,
    `Write "${better}".`,
  );

export const unknownSieve = (label: string, suggestion: string | undefined): Issue =>
  make(
    "sieve-unknown",
    "error",
    label,
    `"${label}" is not a sieve that can be read.`,
    suggestion === undefined
      ? 'Write "No. 40", "0.425 mm", "BS 60", "40 mesh, 0.25 mm wire" or "pan".'
      : `Did you mean "${suggestion}"?`,
  );
