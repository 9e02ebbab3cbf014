// Reads the formulas of a sheet by need, and works columns and foot figures out in that order.

import type { Issue } from "../issue.ts";
import { ledBy } from "../message.ts";
import type { Unit } from "../quantity/unit.ts";
import { type BindContext, bindColumn, bindOne } from "./bind.ts";
import type { Faults } from "./faults.ts";
import { namesIn, readFormula } from "./formula.ts";
import type { FormulaScope, NameKind, Span } from "./formula-type.ts";
import { textSnippet } from "./formula-why-text.ts";
import type { SheetNode } from "./node.ts";
import { orderByNeed } from "./order.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellFault, Sheet, SheetWhere } from "./sheet-types.ts";

export interface FormulaToRead {
  /** Its name where other formulas may use it; else nothing that a formula can write. */
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly in: "column" | "foot";
  readonly wants?: Unit | undefined;
}

export interface WorkedOut {
  readonly nodes: ReadonlyMap<string, SheetNode>;
  /** What has no formula that could be read: every cell shows the fault. */
  readonly unread: ReadonlyMap<string, CellFault>;
}

/** typed: columns and values that need no working out, by key. All results are by key. */
export function workOut(
  formulas: readonly FormulaToRead[],
  typed: ReadonlyMap<string, SheetNode>,
  context: Omit<BindContext, "nodes"> & { readonly faults: Faults },
): WorkedOut {
  const nodes = new Map<string, SheetNode>(typed);
  const unread = new Map<string, CellFault>();
  const byKey = new Map(formulas.map((one) => [one.key, one]));
  const known = [...typed.keys(), ...byKey.keys()].filter((key) => !key.startsWith("\u0000"));
  const { faults } = context;
  const otherSheets = kindsOfOthers(context.others);
  const needs = new Map<string, readonly string[]>();
  for (const one of formulas) {
    const { value, issues } = namesIn(one.text, known);
    if (!value) unread.set(one.key, faults.raise(inPart(issues[0]!, one.text), placeOf(one, issues[0])));
    needs.set(one.key, value ?? []);
  }
  const { order, circles } = orderByNeed(needs);
  for (const { walk, members } of circles) {
    const fault = faults.raise(sheetIssue.circle(walk), placeOf(byKey.get(walk[0]!)!));
    for (const key of members) unread.set(key, fault);
  }

  for (const key of order) {
    if (unread.has(key)) continue;
    const broken = needs
      .get(key)!
      .map((need) => unread.get(need))
      .find((fault) => fault !== undefined);
    if (broken) unread.set(key, broken);
    else readOne(byKey.get(key)!);
  }

  function readOne(one: FormulaToRead): void {
    const { key, name, text, wants } = one;
    const scope: FormulaScope = { names: kindsOf(nodes, known), otherSheets, in: one.in, wants };
    const { value: formula, issues } = readFormula(text, scope);
    if (!formula) {
      const [first, ...more] = issues.filter(({ severity }) => severity === "error");
      if (!first) return;
      unread.set(key, faults.raise(inPart(first, text), placeOf(one, first)));
      for (const issue of more) faults.report(inPart(issue, text), placeOf(one, issue));
      return;
    }
    for (const issue of issues) faults.report(inPart(issue, text), placeOf(one, issue));
    const where = placeOf(one);
    const bound = { ...context, nodes };
    if (one.in === "foot") nodes.set(key, bindOne(key, formula, bound, where));
    else {
      const node = bindColumn(key, formula, bound, where);
      nodes.set(key, node);
      if (wants && formula.percentPutOn && withinOne(node.values)) {
        faults.report(sheetIssue.looksLikeFraction(name, wants.text), where);
      }
    }
  }
  return { nodes, unread };
}

function placeOf({ name, in: part }: FormulaToRead, issue?: object): SheetWhere {
  const at = issue && "at" in issue ? (issue.at as { readonly from: number }) : undefined;
  return { [part]: name, ...(at ? { offset: at.from } : {}) };
}

/** Its message begins with the faulty part of the formula, unless it quotes that itself. */
function inPart(issue: Issue, formula: string): Issue {
  const at = "at" in issue ? (issue.at as Span) : undefined;
  const part = at ? formula.slice(at.from, at.to).trim() : "";
  if (part.length < 2 || issue.message.includes(part.slice(0, 30))) return issue;
  return ledBy(issue, `In ${textSnippet(part)}`);
}

function withinOne(values: Float64Array): boolean {
  const known = values.filter((value) => !Number.isNaN(value));
  return known.some((value) => value !== 0) && known.every((value) => Math.abs(value) <= 1);
}

function kindsOf(nodes: ReadonlyMap<string, SheetNode>, known: readonly string[]): Map<string, NameKind> {
  const kinds = new Map<string, NameKind>();
  for (const name of known) {
    const node = nodes.get(name);
    if (!node) continue;
    if (node.kind === "text") kinds.set(name, { kind: "text", per: node.per });
    else if (node.kind === "date") kinds.set(name, { kind: "date", per: "row" });
    else kinds.set(name, { kind: "number", unit: node.unit, per: node.per });
  }
  return kinds;
}

function kindsOfOthers(
  others: readonly Sheet[],
): ReadonlyMap<string, ReadonlyMap<string, NameKind>> | undefined {
  if (others.length === 0) return undefined;
  return new Map(
    others.map((other) => [
      other.name,
      new Map(
        other.columns.map(({ name, kind, unit }): [string, NameKind] => [
          name,
          kind === "text" || kind === "date" ? { kind, per: "row" } : { kind: "number", unit, per: "row" },
        ]),
      ),
    ]),
  );
}
