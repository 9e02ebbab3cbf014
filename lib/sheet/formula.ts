// A formula of a sheet, from its text to loops over columns.

import type { Checked, Issue } from "../issue.ts";
import { check } from "./formula-check.ts";
import { type Context, emptySlots } from "./formula-context.ts";
import { formulaIssue } from "./formula-issues.ts";
import { knownNames } from "./formula-names.ts";
import { DEEPEST, parseTokens, type Tree } from "./formula-parser.ts";
import { formulaOf } from "./formula-run.ts";
import { structureIssues } from "./formula-structure.ts";
import { type Token, tokensOf } from "./formula-tokens.ts";
import type { Formula, FormulaFault, FormulaScope } from "./formula-type.ts";
import { wanted } from "./formula-wants.ts";

export type { Aggregate, Formula, FormulaFault, FormulaScope, LookUp, NameKind } from "./formula-type.ts";

const MOST_FAULTS = 10;

/**
 * The known names that a formula needs, each once, in the order of their first place; before their kinds are known, so
 * that columns can be put in the order of need. Names are as written in `known`.
 * text: at most 2,000 characters, else there is no value. Words that are no known name make an issue each, and the
 * names beside them are given all the same.
 * Example: namesIn("100 * (wet - dry) / wet", ["wet", "dry", "bag"]).value is ["wet", "dry"].
 */
export function namesIn(text: string, known: Iterable<string>): Checked<readonly string[]> {
  const { tokens, issues } = tokensOf(text, knownNames(known));
  if (issues.some(({ code }) => code === "sheet/formula-too-long")) return { issues };
  const names = tokens.flatMap((token) => (token.kind === "name" ? [token.name] : []));
  return { value: [...new Set(names)], issues };
}

/**
 * A formula read and checked, its units with it. The grammar is that of mathjs expressions, of which arithmetic,
 * comparisons, and/or/not, a ? b : c and calls of the listed functions are let through (formulaFunctions); nothing is
 * handed to mathjs but signs, and nothing that comes of it is run.
 *
 * text: at most 2,000 characters, 1,000 words and signs, 100 steps inside one another; = at its head is dropped.
 * scope: what the names stand for, and the unit that is asked for. Units: sums and comparisons need one kind of unit,
 * percentages of one whole; products make their own; a temperature is not a difference of temperatures.
 * Any fault: no value, and issues with `at`, their place in the text. Never throws for what a founder may type.
 * Source: rules of dimensional homogeneity, JCGM 200:2012 1.20 and 1.21; temperatures as in NIST SP 811, 8.5 (from memory).
 * Example: readFormula("100 * (wet - dry) / wet", { in: "column", names: new Map([["wet", { kind: "number", unit: g,
 *   per: "row" }], ["dry", …]]) }).value?.run([Float64Array.of(152.4), Float64Array.of(147.8)], out): out[0] is 3.018
 */
export function readFormula(
  text: string,
  scope: FormulaScope,
): { readonly value?: Formula; readonly issues: readonly FormulaFault[] } {
  const { tokens, issues } = tokensOf(text, knownNames(scope.names.keys()));
  const whole = { from: 0, to: text.length };
  const stop = (faults: readonly FormulaFault[]) => ({ issues: faults.slice(0, MOST_FAULTS) });
  if (issues.length > 0) return stop(issues);
  if (tokens.length === 0) return stop([{ ...formulaIssue.empty(), at: whole }]);
  const structure = structureIssues(text, tokens);
  if (structure.some(({ severity }) => severity === "error")) return stop(structure);
  const parsed = treeOf(text, tokens);
  if ("code" in parsed) return stop([parsed]);
  const context: Context = { text, tokens, scope, slots: emptySlots(), faults: [] };
  const typed = check(context, parsed);
  if (!typed || context.faults.length > 0) return stop(context.faults);
  if (typed.type.kind === "date") {
    const remedy = "Write the difference of two dates, or compare them.";
    return stop([{ ...formulaIssue.needs("A formula", "a figure to give", "a date", remedy), at: typed.at }]);
  }
  const end = wanted(context, typed, scope.wants, typed.at);
  if (!end) return stop(context.faults);
  const formula = formulaOf(text, text, end.typed, context.slots);
  return { value: end.percentPutOn ? { ...formula, percentPutOn: true } : formula, issues: structure };
}

function treeOf(text: string, tokens: readonly Token[]): Tree | FormulaFault {
  const parsed = parseTokens(tokens.map((token) => (token.kind === "sign" ? token.sign : undefined)));
  if ("tree" in parsed) return parsed.tree;
  if ("tooDeep" in parsed) return { ...formulaIssue.tooDeep(DEEPEST), at: { from: 0, to: text.length } };
  const token = tokens[parsed.stuckAt];
  if (!token) return at(formulaIssue.missing("at the end"), text.length, text.length);
  const { from, to } = token.at;
  return at(formulaIssue.missing(`before "${text.slice(from, Math.min(to, from + 40))}"`), from, to);
}

const at = (issue: Issue, from: number, to: number): FormulaFault => ({ ...issue, at: { from, to } });
