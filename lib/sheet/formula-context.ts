// What is at hand while a formula is checked.

import type { Issue } from "../issue.ts";
import type { Tree } from "./formula-parser.ts";
import type { Token } from "./formula-tokens.ts";
import type { Aggregate, FormulaFault, FormulaScope, LookUp, Span } from "./formula-type.ts";

export interface Slots {
  readonly rows: string[];
  readonly sheet: string[];
  readonly aggregates: Aggregate[];
  readonly lookUps: LookUp[];
}

export interface Context {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly scope: FormulaScope;
  readonly slots: Slots;
  /** The figure over the rows that this is a part of. */
  readonly within?: string;
  readonly faults: FormulaFault[];
}

export function emptySlots(): Slots {
  return { rows: [], sheet: [], aggregates: [], lookUps: [] };
}

/** Notes a fault; undefined, for nothing comes of the part that has it. */
export function fault(context: Context, at: Span, issue: Issue): undefined {
  context.faults.push({ ...issue, at });
}

export function spanOf({ tokens }: Context, { first, last }: Tree): Span {
  return { from: tokens[first]!.at.from, to: tokens[last]!.at.to };
}

export function snippet({ text }: Context, { from, to }: Span): string {
  return text.slice(from, to);
}
