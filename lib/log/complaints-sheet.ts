// What can be wrong with how a founder's own sheet is written. What is wrong with its figures and formulas is told in lib/sheet.

import { issueMessage } from "../message.ts";

const meant = (near: string, known: string): string =>
  near === "" ? `The columns are: ${known}.` : `Did you mean "${near}"? The columns are: ${known}.`;

export const noSheetColumns = issueMessage("log/sheet-no-columns", "error", () => ({
  message: "The sheet names no column, so there is nothing to read its rows by.",
  remedy: "Write under `columns:` each name with what it holds: `wet: g`, `bag: text`, `tested: date`.",
}));

export const noSheetRows = issueMessage("log/sheet-no-rows", "warning", () => ({
  message: "The sheet has no row.",
  remedy:
    "Write under `rows:` one line a row, `- { wet: 152.4, dry: 147.8 }`, or the name of a CSV file beside the log.",
}));

export const columnUnsaid = issueMessage("log/sheet-column-unsaid", "error", (name: string) => ({
  message: `It is not said what the column "${name}" holds, so it is left out.`,
  remedy: `Write its unit (\`${name}: g\`), or number, text or date; or \`${name}: { unit: g, formula: ... }\`.`,
}));

export const notARow = issueMessage("log/sheet-not-a-row", "error", () => ({
  message: "This row does not name its cells, so it is left out.",
  remedy: "Write each cell with its column: `- { wet: 152.4, dry: 147.8 }`.",
}));

export const rowsNotListed = issueMessage("log/sheet-rows-not-listed", "error", () => ({
  message: "Under `rows:` stand names; a row begins with a dash.",
  remedy:
    "Write each row as `- { wet: 152.4, dry: 147.8 }`, or after `rows:` the name of a CSV file beside the log.",
}));

export const unknownColumn = issueMessage(
  "log/sheet-unknown-column",
  "error",
  (name: string, near: string, known: string) => ({
    message: `The sheet has no column "${name}", so what stands in it is left out.`,
    remedy: meant(near, known),
  }),
);

export const noCell = issueMessage("log/sheet-not-a-cell", "error", (what: string) => ({
  message: `In the column "${what}" stands a list or names with values; a cell is a single value.`,
  remedy: `Write one figure or text: \`${what}: 12.4\`.`,
}));

export const workedOutCell = issueMessage(
  "log/sheet-worked-out",
  "note",
  (column: string, count: string) => ({
    message: `The column "${column}" is worked out by its formula; what is typed in it (${count}) is left out.`,
    remedy: "Nothing to do; take the typed figures out, or the formula, whichever is not meant.",
  }),
);

export const headUnit = issueMessage(
  "log/sheet-head-unit",
  "error",
  (column: string, head: string, declared: string) => ({
    message: `The head gives "${column}" in ${head}, the log in ${declared}.`,
    remedy: `Write the unit that the figures are in, in one of the two, and the same or a like unit in the other; the column is left empty.`,
  }),
);

export const headTwice = issueMessage("log/sheet-head-twice", "error", (name: string) => ({
  message: `The column "${name}" stands in the head twice; the first is read.`,
  remedy: "Take one out, or give it another name.",
}));

export const plusMinusAlone = issueMessage("log/sheet-plus-minus-alone", "warning", (name: string) => ({
  message: `A ± stands in "${name}" and no figure beside it.`,
  remedy: "Write the figure, or take the ± out.",
}));

export const chartUnsaid = issueMessage("log/sheet-chart-unsaid", "error", (what: string) => ({
  message: `The chart does not say its ${what}.`,
  remedy: "Write `- { x: wet, y: moisture }`; y may be a list of columns.",
}));

export const chartColumn = issueMessage(
  "log/sheet-chart-column",
  "error",
  (name: string, near: string, known: string) => ({
    message: `The chart asks for "${name}", which is no column of the sheet; it is not drawn.`,
    remedy: meant(near, known),
  }),
);

export const chartNotFigures = issueMessage("log/sheet-chart-text", "error", (name: string) => ({
  message: `The chart asks for "${name}" upwards, which holds no figures; it is not drawn.`,
  remedy: "Put texts and dates on x, and a column of figures on y.",
}));

export const chartBand = issueMessage("log/sheet-chart-band", "warning", (text: string) => ({
  message: `"${text}" is not a range from a lower to a higher figure, so no band is drawn.`,
  remedy: "Write both ends, such as `band: 3 to 4`.",
}));

export const chartLine = issueMessage("log/sheet-chart-line-on-text", "warning", () => ({
  message: "A line was asked for, and x is a column of texts: no line is fitted through names.",
  remedy: "Take `line` out, or put a column of figures on x.",
}));
