// What can be wrong with a sieve's label: one message function each.

import { issueMessage } from "../message.ts";

export const emptySieveLabel = issueMessage("sand/sieve-empty", "error", () => ({
  about: "",
  message: "A sieve has no name.",
  remedy: 'Write "No. 40", "0.425 mm", "40 mesh, 0.25 mm wire" or "pan".',
}));

export const decimalComma = issueMessage("sand/sieve-decimal-comma", "error", (label: string) => ({
  about: label,
  message: `The sieve "${label}" has a decimal comma.`,
  remedy: `Write a decimal point: "${label.replace(/(\d),(\d)/g, "$1.$2")}".`,
}));

export const bareNumber = issueMessage(
  "sand/sieve-bare-number",
  "error",
  (label: string, readings: readonly string[]) => ({
    about: label,
    message: `"${label}" alone does not say what it counts: it could be ${readings.join(", or ")}.`,
    remedy: "Write the one that is stamped on the frame; for cloth, measure the wire.",
  }),
);

export const openingWithoutUnit = issueMessage("sand/sieve-no-unit", "error", (label: string) => ({
  about: label,
  message: `The opening "${label}" has no unit.`,
  remedy: `Write "${label} mm" if it is in millimetres, or the opening in µm.`,
}));

export const openingOutOfRange = issueMessage(
  "sand/sieve-opening-range",
  "error",
  (label: string, other: string | undefined) => ({
    about: label,
    message: `An opening of ${label} is outside what test sieves have, 0.02 to 125 mm.`,
    remedy:
      other === undefined ? "Check the figure and its unit." : `Check the unit: did you mean "${other}"?`,
  }),
);

export const openingPlusMinus = issueMessage("sand/sieve-plus-minus", "error", (label: string) => ({
  about: label,
  message: `The ± of "${label}" is as large as the figure itself.`,
  remedy: "Check the figure, the ± and their unit.",
}));

export const notStandard = issueMessage(
  "sand/sieve-not-standard",
  "note",
  (label: string, within: string, nearest: string) => ({
    about: label,
    message: `"${label}" is no standard opening; it is taken as measured cloth, right within ${within} mm.`,
    remedy: `If it is a test sieve, check the figure: the nearest one is ${nearest}.`,
  }),
);

export const olderPrint = issueMessage(
  "sand/sieve-older-print",
  "note",
  (label: string, name: string, today: string) => ({
    about: label,
    message: `"${label}" is how older tables print ${name}; it is taken as that sieve, today ${today} mm.`,
    remedy: `If you measured your own cloth, write its count and its wire, or the opening with its ±.`,
  }),
);

/** `opening`: the middle of the spread with its ±, as a label; undefined where no sieve has such an opening. */
export const meshWithoutWire = issueMessage(
  "sand/sieve-mesh-alone",
  "error",
  (label: string, spread: string, withWire: string, opening: string | undefined) => ({
    about: label,
    message: `"${label}" does not give the opening until the wire is measured: ${spread}.`,
    remedy: `Measure the wire and write "${withWire}" with your figure.${opening === undefined ? "" : ` Without a micrometer write the opening with what it may be off by: "${opening}".`} For a US test sieve write "No." and its number.`,
  }),
);

export const wiresOverlap = issueMessage(
  "sand/sieve-wires-overlap",
  "error",
  (label: string, pitch: string) => ({
    about: label,
    message: `In "${label}" the wires would overlap: they stand ${pitch} mm apart from middle to middle.`,
    remedy: "Check the count, which is per inch, and the wire and its unit.",
  }),
);

export const oddWire = issueMessage(
  "sand/sieve-odd-wire",
  "warning",
  (label: string, openPercent: string) => ({
    about: label,
    message: `"${label}" would be ${openPercent} % open, which is unusual for woven cloth.`,
    remedy: "Measure the wire again, and check its unit; count the wires over a whole inch.",
  }),
);

export const unknownNumber = issueMessage(
  "sand/sieve-number-unknown",
  "error",
  (label: string, series: string, readings: readonly string[]) => ({
    about: label,
    message: `There is no ${series} sieve called "${label}".`,
    remedy: `Write what is stamped on the frame: ${readings.join(", or ")}. A sieve under the name of another gives a wrong fineness number.`,
  }),
);

export const letterForDigit = issueMessage(
  "sand/sieve-letter-digit",
  "error",
  (label: string, better: string) => ({
    about: label,
    message: `"${label}" has a letter where a digit belongs.`,
    remedy: `Did you mean "${better}", with the digit zero or one?`,
  }),
);

export const curlyQuotes = issueMessage(
  "sand/sieve-curly-quotes",
  "error",
  (label: string, better: string) => ({
    about: label,
    message: `"${label}" has curly quotes; use straight ones, or none.`,
    remedy: `Write "${better}".`,
  }),
);

export const unknownSieve = issueMessage(
  "sand/sieve-unknown",
  "error",
  (label: string, suggestion: string | undefined) => ({
    about: label,
    message: `"${label}" is not a sieve that can be read.`,
    remedy:
      suggestion === undefined
        ? 'Write "No. 40", "0.425 mm", "BS 60", "40 mesh, 0.25 mm wire" or "pan".'
        : `Did you mean "${suggestion}"?`,
  }),
);
