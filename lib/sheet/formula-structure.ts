// What can be seen of a formula before its grammar: brackets, commas, and what stands side by side.

import type { Issue } from "../issue.ts";
import { formulaIssue } from "./formula-issues.ts";
import { DEEPEST } from "./formula-parser.ts";
import type { Token } from "./formula-tokens.ts";
import type { FormulaFault } from "./formula-type.ts";

/** Errors stop the reading; warnings go with the formula. */
export function structureIssues(text: string, tokens: readonly Token[]): FormulaFault[] {
  const issues: FormulaFault[] = [];
  const note = (issue: Issue, { at }: Token): void => {
    issues.push({ ...issue, at });
  };
  const written = ({ at }: Token): string => text.slice(at.from, at.to);
  /** The open brackets, and whether a function's. */
  const open: { readonly token: Token; readonly of: string | undefined }[] = [];
  tokens.forEach((token, k) => {
    const before = tokens[k - 1];
    const sign = token.kind === "sign" ? token.sign : undefined;
    const call = before?.kind === "function" && sign === "(";
    if (before && endsPart(before) && startsPart(token) && !call) {
      const joined = { from: before.at.from, to: token.at.to };
      issues.push({ ...formulaIssue.sideBySide(written(before), written(token)), at: joined });
    }
    if (sign === "(") {
      open.push({ token, of: call ? before.name : undefined });
      if (open.length === DEEPEST + 1) note(formulaIssue.tooDeep(DEEPEST), token);
    }
    if (sign === ")" && !open.pop()) note(formulaIssue.brackets(")"), token);
    if (sign === ",") issues.push(...commaIssues(text, tokens, k, open.at(-1)));
  });
  const left = open[0];
  if (left) note(formulaIssue.brackets("("), left.token);
  return issues;
}

function commaIssues(
  text: string,
  tokens: readonly Token[],
  k: number,
  inside: { readonly of: string | undefined } | undefined,
): FormulaFault[] {
  const [left, comma, right] = [tokens[k - 1], tokens[k]!, tokens[k + 1]];
  const figures =
    left?.kind === "number" &&
    right?.kind === "number" &&
    left.at.to === comma.at.from &&
    comma.at.to === right.at.from;
  const at = figures ? { from: left.at.from, to: right.at.to } : comma.at;
  const typed = text.slice(at.from, at.to);
  if (inside?.of === undefined)
    return [
      { ...(figures ? formulaIssue.decimalComma(typed, typed.replace(",", ".")) : formulaIssue.comma()), at },
    ];
  // Functions of any number of arguments would take the halves of a figure without a word.
  return figures && (inside.of === "min" || inside.of === "max")
    ? [{ ...formulaIssue.commaInArguments(typed), at }]
    : [];
}

const endsPart = (token: Token): boolean => (token.kind === "sign" ? token.sign === ")" : true);

const startsPart = (token: Token): boolean =>
  token.kind === "sign" ? token.sign === "(" || token.sign === "not" : true;
