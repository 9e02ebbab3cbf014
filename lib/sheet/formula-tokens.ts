// A formula cut into tokens, each with its place. Whatever is not on the list of signs is refused here.

import type { Issue } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Unit } from "../quantity/unit.ts";
import { formulaIssue } from "./formula-issues.ts";
import { literalAt } from "./formula-literal.ts";
import { type KnownNames, longestName, wordsAt } from "./formula-names.ts";
import type { FormulaFault, Span } from "./formula-type.ts";

export type Token = { readonly at: Span } & (
  | { readonly kind: "number"; readonly value: number; readonly unit?: Unit }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "function"; readonly name: string }
  | { readonly kind: "text"; readonly text: string }
  /** As mathjs spells it. */
  | { readonly kind: "sign"; readonly sign: string }
);

export interface Tokens {
  readonly tokens: readonly Token[];
  readonly issues: readonly FormulaFault[];
}

/** Characters. */
const LONGEST = 2000;
const MOST_TOKENS = 1000;
const MOST_FAULTS = 10;

const blank = /[\s\u00a0\u2007-\u200a\u202f\ufeff]+/uy;
/** As typed, and as mathjs spells it; longer ones first. */
const signs: readonly (readonly [typed: string, sign: string])[] = [
  ["**", "^"],
  ["==", "=="],
  ["!=", "!="],
  ["<=", "<="],
  [">=", ">="],
  ["≤", "<="],
  ["≥", ">="],
  ["≠", "!="],
  ["+", "+"],
  ["-", "-"],
  ["−", "-"],
  ["–", "-"],
  ["*", "*"],
  ["×", "*"],
  ["·", "*"],
  ["⋅", "*"],
  ["∙", "*"],
  ["/", "/"],
  ["÷", "/"],
  ["^", "^"],
  ["(", "("],
  [")", ")"],
  [",", ","],
  ["?", "?"],
  [":", ":"],
  ["<", "<"],
  [">", ">"],
];
const otherSigns: readonly (readonly [typed: string, write: string])[] = [
  ["<>", "!="],
  ["&&", "and"],
  ["||", "or"],
  ["&", "and"],
  ["|", "or"],
  ["!", "not"],
  ["[", "round brackets"],
  ["]", "round brackets"],
  ["{", "round brackets"],
  ["}", "round brackets"],
];
const quotes: { readonly [open: string]: string } = { '"': '"', "'": "'", "“": "”" };
const raised = /⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/uy;

/** Every token up to the ends of the text, and what is wrong on the way; an = at the head is dropped. */
export function tokensOf(text: string, known: KnownNames): Tokens {
  const tokens: Token[] = [];
  const issues: FormulaFault[] = [];
  if (text.length > LONGEST)
    return { tokens, issues: [{ ...formulaIssue.tooLong(LONGEST), at: { from: LONGEST, to: text.length } }] };
  let place = /^\s*=(?!=)/u.exec(text)?.[0].length ?? 0;
  const take = (to: number, token: DistributiveOmit<Token, "at">): void => {
    tokens.push({ ...token, at: { from: place, to } } as Token);
    place = to;
  };
  const refuse = (to: number, issue: Issue): void => {
    issues.push({ ...issue, at: { from: place, to } });
    place = to;
  };
  while (place < text.length && issues.length < MOST_FAULTS) {
    blank.lastIndex = place;
    if (blank.test(text)) {
      place = blank.lastIndex;
      continue;
    }
    if (tokens.length >= MOST_TOKENS) {
      refuse(text.length, formulaIssue.tooLong(LONGEST));
      break;
    }
    const rest = text.slice(place, place + 3);
    if (/^(?:\d|\.\d)/.test(rest)) {
      const before = tokens.at(-1);
      const afterPower = before?.kind === "sign" && before.sign === "^";
      const { value, unit, to, fault } = literalAt(text, place, known, !afterPower);
      if (fault) refuse(to, fault);
      else take(to, { kind: "number", value, ...(unit ? { unit } : {}) });
      continue;
    }
    if (takeWords(text, place, known, take, refuse)) continue;
    const closing = quotes[rest[0]!];
    if (closing !== undefined) {
      const end = text.indexOf(closing, place + 1);
      if (end < 0) refuse(text.length, formulaIssue.openText(text.slice(place)));
      else take(end + 1, { kind: "text", text: text.slice(place + 1, end) });
      continue;
    }
    raised.lastIndex = place;
    const power = raised.exec(text)?.[0];
    if (power !== undefined) {
      const digits = [...power].map((c) => (c === "⁻" ? "-" : "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c))).join("");
      take(place, { kind: "sign", sign: "^" });
      take(place + power.length, { kind: "number", value: Number(digits) });
      continue;
    }
    const sign = signs.find(([typed]) => rest.startsWith(typed));
    const other = otherSigns.find(([typed]) => rest.startsWith(typed));
    if (sign && other?.[0].length !== 2) take(place + sign[0].length, { kind: "sign", sign: sign[1] });
    else if (other) refuse(place + other[0].length, formulaIssue.signToWrite(other[0], other[1]));
    else if (rest.startsWith("=")) refuse(place + 1, formulaIssue.oneEquals());
    else if (rest.startsWith("%"))
      refuse(place + 1, formulaIssue.percentSign(numberBefore(text, tokens.at(-1))));
    else {
      const character = String.fromCodePoint(text.codePointAt(place)!);
      refuse(place + character.length, formulaIssue.strange(character));
    }
  }
  return { tokens, issues };
}

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

const isWordOperator = (word: string): boolean => word === "and" || word === "or" || word === "not";

function takeWords(
  text: string,
  from: number,
  known: KnownNames,
  take: (to: number, token: DistributiveOmit<Token, "at">) => void,
  refuse: (to: number, issue: Issue) => void,
): boolean {
  const words = wordsAt(text, from);
  const first = words[0];
  if (!first) return false;
  const opens = (to: number): boolean => /^[\s\u00a0]*\(/u.test(text.slice(to, to + 80));
  const named = longestName(words, known);
  if (isWordOperator(first.text) && (named?.count ?? 0) < 2) {
    take(first.to, { kind: "sign", sign: first.text });
    return true;
  }
  if ((named?.count ?? 1) === 1 && opens(first.to)) {
    take(first.to, { kind: "function", name: first.text });
    return true;
  }
  const after = named && words[named.count];
  if (named && (!after || isWordOperator(after.text))) {
    take(words[named.count - 1]!.to, { kind: "name", name: named.name });
    return true;
  }
  const end = words.findIndex((word, k) => k > 0 && isWordOperator(word.text));
  const run = words.slice(0, end < 0 ? words.length : end);
  const to = run.at(-1)!.to;
  const unknown = text.slice(from, to);
  if (unknown === "pi") {
    take(to, { kind: "number", value: Math.PI });
    return true;
  }
  const names = [...known.byPlain.values()];
  // Any letter is as near as any other.
  const near = unknown.length < 2 ? undefined : nearest(unknown, names);
  if (near === undefined && named && after) {
    refuse(to, formulaIssue.sideBySide(named.name, text.slice(after.from, to)));
    return true;
  }
  const list =
    names.length === 0 ? "No name is known here." : `Known here: ${names.slice(0, 12).join(", ")}.`;
  refuse(to, formulaIssue.noSuchName(unknown, near, list));
  return true;
}

function numberBefore(text: string, token: Token | undefined): string | undefined {
  return token?.kind === "number" ? text.slice(token.at.from, token.at.to) : undefined;
}
