// What can be wrong with a CSV file of sievings or batches.

import { issueMessage } from "../message.ts";

export const noSuchFile = issueMessage("log/no-such-file", "error", (name: string, near: string) => ({
  message: `There is no file "${name}" beside the log.`,
  remedy:
    near === "" ? "Put it into the folder of the log, or put its name right." : `Did you mean "${near}"?`,
}));

export const fileElsewhere = issueMessage("log/file-elsewhere", "error", (name: string) => ({
  message: `"${name}" is not the name of a CSV file beside the log.`,
  remedy: "Put the file into the folder of the log and write its name alone, ending in .csv.",
}));

export const noRows = issueMessage("log/csv-no-rows", "error", () => ({
  message: "The CSV file has no row of figures under its head.",
  remedy: "Write one row a sieving, or one row a batch, under the row that names the columns.",
}));

export const noSieveColumns = issueMessage("log/csv-no-sieves", "error", () => ({
  message: "The first row names no sieve.",
  remedy:
    "Begin with a row of names: date, portion, start, then one column a sieve (No. 40, No. 50 ...) and pan.",
}));

export const csvNoHead = issueMessage("log/csv-no-head", "error", (cell: string) => ({
  message: `The first row names no column that is known; it begins with "${cell}".`,
  remedy:
    "Let the file begin with a row of names: date, portion, start, then one column a sieve (No. 40, No. 50 ...) and pan. Take away what stands above it.",
}));

export const csvTurned = issueMessage("log/csv-turned", "error", (label: string) => ({
  message: `The sieves stand one below the other ("${label}" begins a row); here each row is one sieving.`,
  remedy:
    "Turn the table round, in a spreadsheet by pasting it transposed: the names of the sieves in the first row, and a row for each sieving.",
}));

export const csvUnknownColumn = issueMessage(
  "log/csv-unknown-column",
  "warning",
  (name: string, near: string) => ({
    message: `The column "${name}" is not known, so it is left out.`,
    remedy: `Did you mean "${near}"? Write the name alone; a unit stands with each figure, or nowhere for grams.`,
  }),
);

export const csvTotalRow = issueMessage("log/csv-total-row", "warning", (name: string) => ({
  message: `The row "${name}" holds sums or means, no readings, so it is left out.`,
  remedy: "Take it away: sums and means are worked out on the page.",
}));

export const csvUnitRow = issueMessage("log/csv-unit-row", "error", (unit: string) => ({
  message: `A row of its own says that figures are in ${unit}, and is not read; so nothing of the file is.`,
  remedy: `Write the unit with each figure, such as 0.5 ${unit}, and take this row away.`,
}));

export const otherSeparator = issueMessage("log/csv-separator", "note", (separator: string) => ({
  message: `The cells are parted by ${separator} instead of commas; they were read so.`,
  remedy: "Nothing to do; other programs may want commas.",
}));

export const commaFigures = issueMessage(
  "log/csv-decimal-commas",
  "error",
  (text: string, better: string, count: string) => ({
    message: `Figures such as "${text}" have decimal commas (${count === "1" ? "one cell" : `${count} cells`}), so the file is not read.`,
    remedy: `Save it from the spreadsheet again with decimal points, as ${better}.`,
  }),
);

export const openQuote = issueMessage("log/csv-open-quote", "error", () => ({
  message: 'The quote " that opens here is never closed, so the rest of the file ran into this cell.',
  remedy: 'Write " at the end of the cell as well; a quote inside a cell is written twice.',
}));

export const afterQuote = issueMessage("log/csv-after-quote", "error", () => ({
  message: "Text follows the closing quote of this cell.",
  remedy: 'Put the whole cell in quotes; a quote inside it is written twice: "".',
}));

export const cellCount = issueMessage("log/csv-cell-count", "error", (has: string, wanted: string) => ({
  message: `This row has ${has === "1" ? "one cell" : `${has} cells`}, the first row has ${wanted}.`,
  remedy:
    "Look for a comma too many or too few: a decimal comma parts a figure in two; text with commas needs quotes.",
}));

export const noColumnName = issueMessage("log/csv-no-column-name", "error", () => ({
  message: "This column has figures but no name.",
  remedy: "Write into the first row what it holds: the sieve's label, or the test.",
}));
