// What can be wrong with the writing of a log, before any of it is understood.

import { issueMessage } from "../message.ts";

export const hashRow = issueMessage("log/hash-row", "error", (row: string, number: string, rest: string) => ({
  message: `"${row}" is a comment, as is everything after #, so this sieve is not counted.`,
  remedy: `Write No. ${number}: ${rest}`,
}));

export const rowCommentedOut = issueMessage("log/row-commented-out", "warning", (row: string) => ({
  message: `"${row}" looks like a row of the sieving but is a comment, so it is not counted.`,
  remedy: "Take the # away if the row counts; delete the line if it doesn't.",
}));

export const hashCut = issueMessage("log/hash-cut", "warning", (kept: string, lost: string) => ({
  message: `Only "${kept}" is read; "${lost}" is taken as a comment because of the #.`,
  remedy: `Put the whole in quotes: "${kept} ${lost}"`,
}));

export const hashInName = issueMessage("log/hash-in-name", "error", (kept: string, better: string) => ({
  message: `Only "${kept}" is left of this name: from # on it is a comment, and so is its colon.`,
  remedy: `Put the name in quotes: ${better}`,
}));

export const nameWithColon = issueMessage("log/name-with-colon", "error", (name: string) => ({
  message: `The name "${name}" has a colon in it.`,
  remedy: `Put the name in quotes, and the colon after it: "${name}":`,
}));

export const tabs = issueMessage("log/tabs", "warning", (lines: string) => ({
  message: `There are tabs at the start of ${lines}, which YAML does not allow; each tab was read as one level.`,
  remedy:
    "Replace each tab at the start of a line by two spaces; most text editors can do it for the whole file.",
}));

export const tabAmongSpaces = issueMessage("log/tab-among-spaces", "error", (lines: string) => ({
  message: `There are tabs at the start of ${lines} and spaces at the start of others, so what belongs to what cannot be told; the lines with tabs, and what hangs on them, are left out.`,
  remedy:
    "Replace each tab by as many spaces as the lines around it have; most text editors can do it for the whole file.",
}));

export const curlyQuotes = issueMessage("log/curly-quotes", "warning", (lines: string) => ({
  message: `There are curly quotes on ${lines}, which are no quotes in YAML; they were read as straight ones.`,
  remedy: "Curly quotes: use straight ones, and switch off smart quotes in the editor.",
}));

export const colonInText = issueMessage(
  "log/colon-in-text",
  "error",
  (key: string, text: string, figure: boolean) => ({
    message: `After "${key}:" a second colon with a space stands ${figure ? "on the same line" : "in the text"}.`,
    remedy: figure
      ? `Two entries? Give each a line of its own, in line with each other. One text? Put it in quotes: ${key}: "${text}"`
      : `Put the text in quotes: ${key}: "${text}"`,
  }),
);

export const noSpaceAfterColon = issueMessage(
  "log/no-space-after-colon",
  "error",
  (line: string, better: string) => ({
    message: `In "${line}" there is no space after the colon.`,
    remedy: `Write ${better}`,
  }),
);

export const noSpaceAfterDash = issueMessage(
  "log/no-space-after-dash",
  "error",
  (line: string, better: string) => ({
    message: `In "${line}" there is no space after the dash.`,
    remedy: `Write ${better}`,
  }),
);

export const noColon = issueMessage("log/no-colon", "error", (line: string) => ({
  message: `"${line}" has no colon, so name and value cannot be told apart.`,
  remedy:
    "Write the name, a colon, a space and the value, e.g. No. 40: 0.15; a text that goes on from the line above gets two spaces in front.",
}));

export const noColonAfter = issueMessage("log/no-colon-after", "error", (name: string, better: string) => ({
  message: `There is no colon after "${name}".`,
  remedy: `Write ${better}`,
}));

export const badIndent = issueMessage("log/indent", "error", (line: string) => ({
  message: `"${line}" is not in line with its neighbours.`,
  remedy:
    "Give all entries of one list the same number of spaces in front; what belongs to an entry gets two more.",
}));

export const unclosedBracket = issueMessage("log/unclosed-bracket", "error", (opened: string) => ({
  message: `The bracket ${opened} that opens here is never closed.`,
  remedy: `Close it with ${opened === "[" ? "]" : "}"} on the same line, or write one entry a line without brackets.`,
}));

export const unclosedQuote = issueMessage("log/unclosed-quote", "error", (quote: string) => ({
  message: `The quote ${quote} that opens here is never closed.`,
  remedy: `Write ${quote} at the end of the text as well${quote === "'" ? "; where it is an apostrophe, put the whole text in double quotes" : ""}.`,
}));

export const backslash = issueMessage("log/backslash", "error", () => ({
  message: "A backslash in double quotes changes the letter after it.",
  remedy: "Use single quotes, or write two backslashes.",
}));

export const signAtStart = issueMessage("log/sign-at-start", "error", (sign: string, text: string) => ({
  message: `A value cannot begin with ${sign} unless it is in quotes.`,
  remedy: `Put it in quotes: "${text}"`,
}));

export const severalDocuments = issueMessage("log/several-documents", "error", () => ({
  message: "A line --- begins a second document; only what stands above it is read.",
  remedy: "Take the line --- out, or keep the second log in a file of its own.",
}));

export const notYaml = issueMessage("log/not-yaml", "error", (line: string) => ({
  message: `"${line}" cannot be read.`,
  remedy: "Write one `name: value` a line, and put text with unusual signs in quotes.",
}));

export const moreFaults = issueMessage("log/more-faults", "error", (count: string) => ({
  message: `There are ${count} more faults of this kind from here on.`,
  remedy: "Put the first ones right and read the log again.",
}));

export const tooManyRepeats = issueMessage("log/too-many-repeats", "error", (limit: string) => ({
  message: `More than ${limit} repeats by * stand in the log, or what they repeat is too long; the rest is left out.`,
  remedy:
    "Write the figures out instead of repeating them by & and *; many sievings fit better in a CSV file.",
}));

export const oddKey = issueMessage("log/odd-key", "error", () => ({
  message: "A name before a colon must be plain text.",
  remedy: "Write one name, a colon, and the value after it.",
}));

export const longDash = issueMessage(
  "log/long-dash",
  "error",
  (line: string, sign: string, better: string) => ({
    message: `"${line}" begins with ${sign}, which cannot stand there.`,
    remedy: `Write ${better}`,
  }),
);

export const valueBeforeBlock = issueMessage(
  "log/value-before-block",
  "error",
  (name: string, value: string) => ({
    message: `"${value}" stands after "${name}:", where only what is below it belongs; it is left out.`,
    remedy: `Write \`${name}:\` alone on its line; for a remark put a # before it.`,
  }),
);

export const textRunsOn = issueMessage("log/text-runs-on", "error", (name: string) => ({
  message: `The text after "${name}:" goes on over several lines, with a colon in one of them, so it cannot be told from names and values.`,
  remedy: `Put the whole text in quotes: a " before its first word and a " after its last.`,
}));

export const underDash = issueMessage("log/under-dash", "error", (line: string, name: string) => ({
  message: `What follows "${line}" does not stand below "${name}".`,
  remedy: `Put the lines below the dash in line with "${name}", the first word after the dash and a space.`,
}));

export const commaMissing = issueMessage("log/comma-missing", "error", (before: string, better: string) => ({
  message: `In brackets a comma belongs between two entries, and there is none after "${before}".`,
  remedy: `Write ${better}`,
}));

export const textAfterQuote = issueMessage(
  "log/text-after-quote",
  "error",
  (value: string, better: string) => ({
    message: `In ${value} text follows the closing quote.`,
    remedy: `Put the whole in other quotes: ${better}`,
  }),
);

export const rowsOnOneLine = issueMessage("log/rows-on-one-line", "error", (key: string, better: string) => ({
  message: `After "${key}:" several names and values stand on one line.`,
  remedy: `Give each a line of its own, further in than "${key}:", or put them in curly brackets: ${better}`,
}));
