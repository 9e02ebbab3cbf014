// What can be wrong with one field of a log.

import type { Issue } from "../issue.ts";

export const unknownKey = (key: string, where: string, near: string, known: string, line = ""): Issue => ({
  code: "log/unknown-key",
  severity: "warning",
  message: `"${key}" is not known ${where}, so it is left out.`,
  remedy:
    near === ""
      ? `Known here: ${known}.`
      : `Did you mean "${near}"?${line === "" ? "" : ` Write \`${line}\``}`,
});

export const repeatedKey = (key: string, line: string): Issue => ({
  code: "log/repeated-key",
  severity: "error",
  message: `"${key}" stands here a second time (first on line ${line}); only the first is read.`,
  remedy: "Take one of the two out, or give this one another name.",
});

export const notAMap = (what: string): Issue => ({
  code: "log/not-a-map",
  severity: "error",
  message: `After ${what}, names with values are expected, each on a line of its own.`,
  remedy: "Write each as `name: value`, indented by two spaces more than the line above.",
});

export const dashBeforeName = (what: string, line: string, better: string): Issue => ({
  code: "log/dash-before-name",
  severity: "error",
  message: `After ${what}, each begins with its own name and a colon; "${line}" begins with a dash.`,
  remedy: `Write \`${better}:\` in its place, and what belongs to it indented by two spaces more.`,
});

export const notAValue = (what: string): Issue => ({
  code: "log/not-a-value",
  severity: "error",
  message: `For ${what} a single value is expected, not a list.`,
  remedy: `Write it on the same line: \`${what}: value\`.`,
});

export const emptyValue = (what: string): Issue => ({
  code: "log/empty-value",
  severity: "warning",
  message: `Nothing stands after "${what}:".`,
  remedy: "Write the value after the colon, or take the line out.",
});

export const notYesNo = (what: string, text: string): Issue => ({
  code: "log/not-yes-no",
  severity: "warning",
  message: `"${text}" is neither yes nor no, so ${what} is taken as not said.`,
  remedy: `Write \`${what}: yes\` or \`${what}: no\`.`,
});

export const unknownChoice = (what: string, text: string, near: string, known: string): Issue => ({
  code: "log/unknown-choice",
  severity: "warning",
  message: `"${text}" is not known as ${what}, so it is left out.`,
  remedy: near === "" ? `Write one of: ${known}.` : `Did you mean "${near}"? Known: ${known}.`,
});

export const decimalComma = (text: string, better: string): Issue => ({
  code: "log/decimal-comma",
  severity: "error",
  message: `"${text}" has a comma where a decimal point is expected.`,
  remedy: `Write ${better}`,
});

export const wrongUnit = (what: string, text: string, wanted: string): Issue => ({
  code: "log/wrong-unit",
  severity: "error",
  message: `"${text}" is given for ${what}, which is ${wanted.startsWith("a bare number") ? "" : "measured in "}${wanted}.`,
  remedy: wanted.startsWith("a bare number")
    ? "Write the number alone."
    : `Write it in ${wanted} or another unit of the same kind.`,
});

export const negative = (what: string, text: string): Issue => ({
  code: "log/negative",
  severity: "error",
  message: `${what} cannot be below zero, and "${text}" is.`,
  remedy: "Check the sign and the tare: weigh the empty dish again, and write the difference.",
});

export const notAboveZero = (what: string, text: string): Issue => ({
  code: "log/not-above-zero",
  severity: "error",
  message: `${what} must be more than zero, and "${text}" is not.`,
  remedy: "Write the figure that was read, or take the line out.",
});

export const tooMuch = (what: string, text: string, limit: string): Issue => ({
  code: "log/too-much",
  severity: "error",
  message: `"${text}" for ${what} is more than ${limit}, which cannot be.`,
  remedy: "Check the decimal point and the unit.",
});

export const undeclared = (
  kind: string,
  name: string,
  near: string,
  section: string,
  line: string,
): Issue => ({
  code: "log/undeclared",
  severity: "warning",
  message: `The ${kind} "${name}" is not declared under "${section}", so nothing is known of it.`,
  remedy: near === "" ? `Declare it at the top of the log: ${line}.` : `Did you mean "${near}"?`,
});

export const scaleWithoutStep = (name: string): Issue => ({
  code: "log/scale-without-step",
  severity: "warning",
  message: `It is not said what "${name}" reads to, so the ± of its weighings is unknown.`,
  remedy: "Write the smallest step of its display, e.g. `reads to: 0.1 g`.",
});
