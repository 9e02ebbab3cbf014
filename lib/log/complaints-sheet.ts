// What can be wrong with how a founder's own sheet is written. What is wrong with its figures and formulas is told in lib/sheet.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

const meant = (near: string, known: string): string =>
  near === "" ? `The columns are: ${known}.` : `Did you mean "${near}"? The columns are: ${known}.`;

export const noSheetColumns = (): Issue =>
  issue(
    "error",
    "sheet-no-columns",
    "The sheet names no column, so there is nothing to read its rows by.",
    "Write under `columns:` each name with what it holds: `wet: g`, `bag: text`, `tested: date`.",
  );

export const noSheetRows = (): Issue =>
  issue(
    "warning",
    "sheet-no-rows",
    "The sheet has no row.",
    "Write under `rows:` one line a row, `- { wet: 152.4, dry: 147.8 }`, or the name of a CSV file beside the log.",
  );

export const columnUnsaid = (name: string): Issue =>
  issue(
    "error",
    "sheet-column-unsaid",
    `It is not said what the column "${name}" holds, so it is left out.`,
    `Write its unit (\`${name}: g\`), or number, text or date; or \`${name}: { unit: g, formula: ... }\`.`,
  );

export const notARow = (): Issue =>
  issue(
    "error",
    "sheet-not-a-row",
    "This row does not name its cells, so it is left out.",
    "Write each cell with its column: `- { wet: 152.4, dry: 147.8 }`.",
  );

export const rowsNotListed = (): Issue =>
  issue(
    "error",
    "sheet-rows-not-listed",
    "Under `rows:` stand names; a row begins with a dash.",
    "Write each row as `- { wet: 152.4, dry: 147.8 }`, or after `rows:` the name of a CSV file beside the log.",
  );

export const unknownColumn = (name: string, near: string, known: string): Issue =>
  issue(
    "error",
    "sheet-unknown-column",
    `The sheet has no column "${name}", so what stands in it is left out.`,
    meant(near, known),
  );

export const noCell = (what: string): Issue =>
  issue(
    "error",
    "sheet-not-a-cell",
    `In the column "${what}" stands a list or names with values; a cell is a single value.`,
    `Write one figure or text: \`${what}: 12.4\`.`,
  );

export const workedOutCell = (column: string, count: string): Issue =>
  issue(
    "note",
    "sheet-worked-out",
    `The column "${column}" is worked out by its formula; what is typed in it (${count}) is left out.`,
    "Nothing to do; take the typed figures out, or the formula, whichever is not meant.",
  );

export const headUnit = (column: string, head: string, declared: string): Issue =>
  issue(
    "error",
    "sheet-head-unit",
    `The head gives "${column}" in ${head}, the log in ${declared}.`,
    `Write the unit that the figures are in, in one of the two, and the same or a like unit in the other; the column is left empty.`,
  );

export const headTwice = (name: string): Issue =>
  issue(
    "error",
    "sheet-head-twice",
    `The column "${name}" stands in the head twice; the first is read.`,
    "Take one out, or give it another name.",
  );

export const plusMinusAlone = (name: string): Issue =>
  issue(
    "warning",
    "sheet-plus-minus-alone",
    `A ± stands in "${name}" and no figure beside it.`,
    "Write the figure, or take the ± out.",
  );

export const chartUnsaid = (what: string): Issue =>
  issue(
    "error",
    "sheet-chart-unsaid",
    `The chart does not say its ${what}.`,
    "Write `- { x: wet, y: moisture }`; y may be a list of columns.",
  );

export const chartColumn = (name: string, near: string, known: string): Issue =>
  issue(
    "error",
    "sheet-chart-column",
    `The chart asks for "${name}", which is no column of the sheet; it is not drawn.`,
    meant(near, known),
  );

export const chartNotFigures = (name: string): Issue =>
  issue(
    "error",
    "sheet-chart-text",
    `The chart asks for "${name}" upwards, which holds no figures; it is not drawn.`,
    "Put texts and dates on x, and a column of figures on y.",
  );

export const chartBand = (text: string): Issue =>
  issue(
    "warning",
    "sheet-chart-band",
    `"${text}" is not a range from a lower to a higher figure, so no band is drawn.`,
    "Write both ends, such as `band: 3 to 4`.",
  );

export const chartLine = (): Issue =>
  issue(
    "warning",
    "sheet-chart-line-on-text",
    "A line was asked for, and x is a column of texts: no line is fitted through names.",
    "Take `line` out, or put a column of figures on x.",
  );
