// What can be wrong with the writing of a log, before any of it is understood.

import type { Issue } from "../issue.ts";

const error = (code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity: "error",
  message,
  remedy,
});
const warning = (code: string, message: string, remedy: string): Issue => ({
  code: `log/${code}`,
  severity: "warning",
  message,
  remedy,
});

export const hashRow = (row: string, number: string, rest: string): Issue =>
  error(
    "hash-row",
    `"${row}" is a comment, as is everything after #, so this sieve is not counted.`,
    `Write No. ${number}: ${rest}`,
  );

export const rowCommentedOut = (row: string): Issue =>
  warning(
    "row-commented-out",
    `"${row}" looks like a row of the sieving but is a comment, so it is not counted.`,
    "Take the # away if the row counts; delete the line if it doesn't.",
  );

export const hashCut = (kept: string, lost: string): Issue =>
  warning(
    "hash-cut",
    `Only "${kept}" is read; "${lost}" is taken as a comment because of the #.`,
    `Put the whole in quotes: "${kept} ${lost}"`,
  );

export const tabs = (lines: string): Issue =>
  warning(
    "tabs",
    `There are tabs at the start of ${lines}, which YAML does not allow; each tab was read as one level.`,
    "Replace each tab at the start of a line by two spaces; most text editors can do it for the whole file.",
  );

export const tabAmongSpaces = (lines: string): Issue =>
  error(
    "tab-among-spaces",
    `There are tabs at the start of ${lines} and spaces at the start of others, so what belongs to what cannot be told; the lines with tabs, and what hangs on them, are left out.`,
    "Replace each tab by as many spaces as the lines around it have; most text editors can do it for the whole file.",
  );

export const curlyQuotes = (lines: string): Issue =>
  warning(
    "curly-quotes",
    `There are curly quotes on ${lines}, which are no quotes in YAML; they were read as straight ones.`,
    "Curly quotes: use straight ones, and switch off smart quotes in the editor.",
  );

export const colonInText = (key: string, text: string): Issue =>
  error(
    "colon-in-text",
    `After "${key}:" a second colon with a space stands in the text.`,
    `Put the text in quotes: ${key}: "${text}"`,
  );

export const noSpaceAfterColon = (line: string, better: string): Issue =>
  error("no-space-after-colon", `In "${line}" there is no space after the colon.`, `Write ${better}`);

export const noSpaceAfterDash = (line: string, better: string): Issue =>
  error("no-space-after-dash", `In "${line}" there is no space after the dash.`, `Write ${better}`);

export const noColon = (line: string): Issue =>
  error(
    "no-colon",
    `"${line}" has no colon, so name and value cannot be told apart.`,
    "Write the name, a colon, a space and the value, e.g. No. 40: 0.15",
  );

export const noColonAfter = (name: string, better: string): Issue =>
  error("no-colon-after", `There is no colon after "${name}".`, `Write ${better}`);

export const badIndent = (line: string): Issue =>
  error(
    "indent",
    `"${line}" is not in line with its neighbours.`,
    "Give all entries of one list the same number of spaces in front; what belongs to an entry gets two more.",
  );

export const unclosedBracket = (opened: string): Issue =>
  error(
    "unclosed-bracket",
    `The bracket ${opened} that opens here is never closed.`,
    `Close it with ${opened === "[" ? "]" : "}"} on the same line, or write one entry a line without brackets.`,
  );

export const unclosedQuote = (quote: string): Issue =>
  error(
    "unclosed-quote",
    `The quote ${quote} that opens here is never closed.`,
    `Write ${quote} at the end of the text as well.`,
  );

export const backslash = (): Issue =>
  error(
    "backslash",
    "A backslash in double quotes changes the letter after it.",
    "Use single quotes, or write two backslashes.",
  );

export const signAtStart = (sign: string, text: string): Issue =>
  error(
    "sign-at-start",
    `A value cannot begin with ${sign} unless it is in quotes.`,
    `Put it in quotes: "${text}"`,
  );

export const severalDocuments = (): Issue =>
  error(
    "several-documents",
    "A line --- begins a second document; only what stands above it is read.",
    "Take the line --- out, or keep the second log in a file of its own.",
  );

export const notYaml = (line: string): Issue =>
  error(
    "not-yaml",
    `"${line}" cannot be read.`,
    "Write one `name: value` a line, and put text with unusual signs in quotes.",
  );

export const moreFaults = (count: string): Issue =>
  error(
    "more-faults",
    `There are ${count} more faults of this kind from here on.`,
    "Put the first ones right and read the log again.",
  );

export const tooManyRepeats = (limit: string): Issue =>
  error(
    "too-many-repeats",
    `More than ${limit} repeats by * stand in the log, or what they repeat is too long; the rest is left out.`,
    "Write the figures out instead of repeating them by & and *; many sievings fit better in a CSV file.",
  );

export const oddKey = (): Issue =>
  error(
    "odd-key",
    "A name before a colon must be plain text.",
    "Write one name, a colon, and the value after it.",
  );
