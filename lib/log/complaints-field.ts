// What can be wrong with one field of a log.

import { issueMessage } from "../message.ts";

export const unknownKey = issueMessage(
  "log/unknown-key",
  "warning",
  (key: string, where: string, near: string, known: string, line = "") => ({
    message: `"${key}" is not known ${where}, so it is left out.`,
    remedy:
      near === ""
        ? `Known here: ${known}.`
        : `Did you mean "${near}"?${line === "" ? "" : ` Write \`${line}\``}`,
  }),
);

export const repeatedKey = issueMessage("log/repeated-key", "error", (key: string, line: string) => ({
  message: `"${key}" stands here a second time (first on line ${line}); only the first is read.`,
  remedy: "Take one of the two out, or give this one another name.",
}));

export const notAMap = issueMessage("log/not-a-map", "error", (what: string) => ({
  message: `After ${what}, names with values are expected, each on a line of its own.`,
  remedy: "Write each as `name: value`, indented by two spaces more than the line above.",
}));

export const dashBeforeName = issueMessage(
  "log/dash-before-name",
  "error",
  (what: string, line: string, better: string) => ({
    message: `After ${what}, each begins with its own name and a colon; "${line}" begins with a dash.`,
    remedy: `Write \`${better}:\` in its place, and what belongs to it indented by two spaces more.`,
  }),
);

export const dashBeforeRow = issueMessage(
  "log/dash-before-row",
  "error",
  (what: string, line: string, better: string) => ({
    message: `The rows below "${what}:" begin with the sieve; "${line}" begins with a dash.`,
    remedy: `Take the dashes away: ${better}`,
  }),
);

export const rowsOutside = issueMessage(
  "log/rows-outside",
  "error",
  (row: string, more: string, beside: boolean) => ({
    message: `"${row}"${more === "" ? " stands" : ` and ${more === "1" ? "one more row" : `${more} more rows`} like it stand`} ${beside ? 'beside "retained:" instead of below it' : "in no sieving"}, so nothing is read from there.`,
    remedy: beside
      ? 'Put two spaces more in front of each of these rows than "retained:" has.'
      : "Rows of sieves stand below the `retained:` of a sieving of a sand; a starter log shows how (mullbook begin my-log.yaml).",
  }),
);

export const fileInstead = issueMessage("log/file-instead", "error", (what: string, file: string) => ({
  message: `After "${what}:" stands the name of a file.`,
  remedy: `Write \`${what} file: ${file}\``,
}));

export const notAValue = issueMessage("log/not-a-value", "error", (what: string) => ({
  message: `For ${what} a single value is expected, not a list.`,
  remedy: `Write it on the same line: \`${what}: value\`.`,
}));

export const emptyValue = issueMessage("log/empty-value", "warning", (what: string) => ({
  message: `Nothing stands after "${what}:".`,
  remedy: "Write the value after the colon, or take the line out.",
}));

export const notYesNo = issueMessage("log/not-yes-no", "warning", (what: string, text: string) => ({
  message: `"${text}" is neither yes nor no, so ${what} is taken as not said.`,
  remedy: `Write \`${what}: yes\` or \`${what}: no\`.`,
}));

export const unknownChoice = issueMessage(
  "log/unknown-choice",
  "warning",
  (what: string, text: string, near: string, known: string) => ({
    message: `"${text}" is not known as ${what}, so it is left out.`,
    remedy: near === "" ? `Write one of: ${known}.` : `Did you mean "${near}"? Known: ${known}.`,
  }),
);

export const decimalComma = issueMessage("log/decimal-comma", "error", (text: string, better: string) => ({
  message: `"${text}" has a comma where a decimal point is expected.`,
  remedy: `Write ${better}`,
}));

export const wrongUnit = issueMessage(
  "log/wrong-unit",
  "error",
  (what: string, text: string, wanted: string) => ({
    message: `"${text}" is given for ${what}, which is ${wanted.startsWith("a bare number") ? "" : "measured in "}${wanted}.`,
    remedy: wanted.startsWith("a bare number")
      ? "Write the number alone."
      : `Write it in ${wanted} or another unit of the same kind.`,
  }),
);

export const negative = issueMessage("log/negative", "error", (what: string, text: string) => ({
  message: `${what} cannot be below zero, and "${text}" is.`,
  remedy: "Check the sign and the tare: weigh the empty dish again, and write the difference.",
}));

export const notAboveZero = issueMessage("log/not-above-zero", "error", (what: string, text: string) => ({
  message: `${what} must be more than zero, and "${text}" is not.`,
  remedy: "Write the figure that was read, or take the line out.",
}));

export const tooMuch = issueMessage("log/too-much", "error", (what: string, text: string, limit: string) => ({
  message: `"${text}" for ${what} is more than ${limit}, which cannot be.`,
  remedy: "Check the decimal point and the unit.",
}));

export const undeclared = issueMessage(
  "log/undeclared",
  "warning",
  (kind: string, name: string, near: string, section: string, line: string) => ({
    message: `The ${kind} "${name}" is not declared under "${section}", so nothing is known of it.`,
    remedy: near === "" ? `Declare it at the top of the log: ${line}.` : `Did you mean "${near}"?`,
  }),
);

export const frameTooSmall = issueMessage("log/frame-too-small", "error", (text: string) => ({
  message: `"${text}" for frame is less than the frame of any sieve; a figure without a unit counts in mm.`,
  remedy: "Write the unit, such as 8 in or 200 mm.",
}));

export const stepAlone = issueMessage("log/step-alone", "error", (name: string, step: string) => ({
  message: `After "${name}:" stands a figure alone; what it is of is not said.`,
  remedy: `Write \`${name}: { reads to: ${step} }\` if it is the smallest step of the display.`,
}));

export const scaleWithoutStep = issueMessage("log/scale-without-step", "warning", (name: string) => ({
  message: `It is not said what "${name}" reads to, so the ± of its weighings is unknown.`,
  remedy: "Write the smallest step of its display, e.g. `reads to: 0.1 g`.",
}));
