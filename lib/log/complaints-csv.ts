// What can be wrong with a CSV file of sievings or batches.

import type { Issue, Severity } from "../issue.ts";

const issue = (severity: Severity, code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity,
  message,
  remedy,
});

export const noSuchFile = (name: string, near: string): Issue =>
  issue(
    "error",
    "no-such-file",
    `There is no file "${name}" beside the log.`,
    near === "" ? "Put it into the folder of the log, or put its name right." : `Did you mean "${near}"?`,
  );

export const fileElsewhere = (name: string): Issue =>
  issue(
    "error",
    "file-elsewhere",
    `"${name}" is not the name of a CSV file beside the log.`,
    "Put the file into the folder of the log and write its name alone, ending in .csv.",
  );

export const noRows = (): Issue =>
  issue(
    "error",
    "csv-no-rows",
    "The CSV file has no row of figures under its head.",
    "Write one row a sieving, or one row a batch, under the row that names the columns.",
  );

export const noSieveColumns = (): Issue =>
  issue(
    "error",
    "csv-no-sieves",
    "The first row names no sieve.",
    "Begin with a row of names: date, portion, start, then one column a sieve (No. 40, No. 50 ...) and pan.",
  );

export const otherSeparator = (separator: string): Issue =>
  issue(
    "note",
    "csv-separator",
    `The cells are parted by ${separator} instead of commas; they were read so.`,
    "Nothing to do; other programs may want commas.",
  );

export const commaFigures = (text: string, better: string, count: string): Issue =>
  issue(
    "error",
    "csv-decimal-commas",
    `Figures such as "${text}" have decimal commas (${count} cells), so the file is not read.`,
    `Save it from the spreadsheet again with decimal points, as ${better}.`,
  );

export const openQuote = (): Issue =>
  issue(
    "error",
    "csv-open-quote",
    'The quote " that opens here is never closed, so the rest of the file ran into this cell.',
    'Write " at the end of the cell as well; a quote inside a cell is written twice.',
  );

export const afterQuote = (): Issue =>
  issue(
    "error",
    "csv-after-quote",
    "Text follows the closing quote of this cell.",
    'Put the whole cell in quotes; a quote inside it is written twice: "".',
  );

export const cellCount = (has: string, wanted: string): Issue =>
  issue(
    "error",
    "csv-cell-count",
    `This row has ${has} cells, the first row has ${wanted}.`,
    "Look for a comma too many or too few: a decimal comma parts a figure in two; text with commas needs quotes.",
  );

export const noColumnName = (): Issue =>
  issue(
    "error",
    "csv-no-column-name",
    "This column has figures but no name.",
    "Write into the first row what it holds: the sieve's label, or the test.",
  );
