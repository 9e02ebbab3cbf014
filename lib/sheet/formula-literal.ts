// A number in a formula, with the unit that stands after it.

import type { Issue } from "../issue.ts";
import { readUnit, unitNamed } from "../quantity/read-unit.ts";
import type { Unit } from "../quantity/unit.ts";
import { formulaIssue } from "./formula-issues.ts";
import { type KnownNames, longestName, wordsAt } from "./formula-names.ts";

export interface Literal {
  readonly value: number;
  readonly unit?: Unit;
  readonly to: number;
  readonly fault?: Issue;
}

const decimal = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const fraction = /(\d+)\s*\/\s*(\d+)(?=[\s\u00a0]+[\p{L}°])/uy;
const unitStart = /[\s\u00a0]*([\p{L}°Δ])/uy;
const piece = "[\\p{L}°Δ][\\p{L}\\p{M}°₂²³⁴]*(?:2O)?(?:\\^?[1-4])?(?![\\p{L}\\p{N}])";
const unitRun = new RegExp(
  `${piece}(?:[/·⋅*]${piece}|[ \\u00a0]${piece}|/\\(${piece}(?:[·⋅*]${piece})*\\))*`,
  "uy",
);
const cut = /[/·⋅*\s\u00a0^(]/gu;

/**
 * The literal at a place where a digit or a point stands. A unit after it belongs to the number: 0.3 mm, 1.6 g/cm³
 * (no spaces within), 5 °C difference. A fraction of whole numbers before a unit is one number, as it is in a log:
 * 1/2 in. A named column goes before a unit of the same name, and then a number before it is a fault.
 */
export function literalAt(text: string, from: number, known: KnownNames, mayBeFraction: boolean): Literal {
  const { value, to: end } = numberAt(text, from, mayBeFraction);
  const typed = text.slice(from, end);
  if (!Number.isFinite(value)) return { value, to: end, fault: formulaIssue.hugeNumber(typed) };
  unitStart.lastIndex = end;
  const start = unitStart.exec(text);
  if (!start) return { value, to: end };
  const at = unitStart.lastIndex - start[1]!.length;
  const words = wordsAt(text, at);
  if (/^(?:and|or)$/.test(words[0]?.text ?? "")) return { value, to: end };
  const named = longestName(words, known);
  if (named) {
    const to = words[named.count - 1]!.to;
    const fault = unitNamed(named.name)
      ? formulaIssue.nameIsUnit(text.slice(from, to), named.name, typed)
      : formulaIssue.sideBySide(typed, named.name);
    return { value, to, fault };
  }
  const unit = unitAt(text, at, known);
  if (unit) return { value, ...unit };
  const to = words.at(-1)?.to ?? at + 1;
  return { value, to, fault: unknownUnit(text.slice(at, to), typed, text.slice(to).trimStart()[0] === "(") };
}

function numberAt(text: string, from: number, mayBeFraction: boolean): { value: number; to: number } {
  fraction.lastIndex = from;
  const parts = mayBeFraction ? fraction.exec(text) : null;
  if (parts && Number(parts[2]) !== 0) {
    // Only before a unit: 1/2 x is for the grammar to judge.
    if (unitAt(text, fraction.lastIndex + /^\s*/.exec(text.slice(fraction.lastIndex))![0].length))
      return { value: Number(parts[1]) / Number(parts[2]), to: fraction.lastIndex };
  }
  decimal.lastIndex = from;
  return { value: Number(decimal.exec(text)![0]), to: decimal.lastIndex };
}

/** The longest unit that stands here, cut back piece by piece; no piece after the first may be a known name. */
function unitAt(
  text: string,
  at: number,
  known?: KnownNames,
): { readonly unit: Unit; readonly to: number } | undefined {
  unitRun.lastIndex = at;
  const run = unitRun.exec(text)?.[0].slice(0, 60);
  if (run === undefined) return undefined;
  const ends = [...run.matchAll(cut)].map(({ index }) => index).filter((index) => index > 0);
  for (const end of [run.length, ...ends.reverse()]) {
    const candidate = run.slice(0, end);
    const unit = unitNamed(candidate);
    if (!unit || unit.kind === "percent") continue;
    const pieces = candidate.split(/[/·⋅*\s\u00a0()^]/u).slice(1);
    if (known && pieces.some((part) => known.byPlain.has(part))) continue;
    return { unit, to: at + end };
  }
  return undefined;
}

function unknownUnit(text: string, number: string, beforeBracket: boolean): Issue {
  if (beforeBracket || text === "pi") return formulaIssue.sideBySide(number, text);
  // What is a unit by itself runs on into a sign that belongs to none: "3 m°".
  const advice = readUnit(text).issues[0]?.remedy ?? `Write a space or a sign of arithmetic after ${text}.`;
  return formulaIssue.noSuchUnit(text, advice);
}
