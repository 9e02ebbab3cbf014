// Readers of one field: a map's entries, a text, a choice, yes or no, a day.

import type { Issue } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import { readDate } from "../quantity/read-date.ts";
import { readSieveLabel } from "../sand/sieve-label.ts";
import {
  dashBeforeName,
  dashBeforeRow,
  emptyValue,
  fileInstead,
  notAMap,
  notAValue,
  notYesNo,
  repeatedKey,
  rowsOutside,
  unknownChoice,
  unknownKey,
} from "./complaints-field.ts";
import { noSpaceAfterColon } from "./complaints-yaml.ts";
import { sectionLines } from "./log-keys.ts";
import { lostColon } from "./no-colon.ts";
import {
  type Entry,
  isHoled,
  type LogNode,
  type MapNode,
  plainName,
  type Report,
  type TextNode,
} from "./node.ts";

/** A map's entries by plain name, the first of each; unknown and repeated ones are reported. */
export interface Fields {
  get(name: string): LogNode | undefined;
  entry(name: string): Entry | undefined;
  /** As get; for a name that may stand on lines that could not be read, an empty node that says so. */
  section(name: string): LogNode | undefined;
  /** True where lines among the entries could not be read: what is missing may only be unread. */
  readonly holed: boolean;
}

export function fieldsOf(node: MapNode, known: readonly string[], where: string, report: Report): Fields {
  const entries = new Map<string, Entry>();
  const rows: Entry[] = [];
  for (const entry of uniqueEntries(node, report)) {
    const name = plainName(entry.key);
    if (known.includes(name)) entries.set(name, entry);
    else if (isRow(entry)) rows.push(entry);
    else report(unknown(entry, known, where), entry.keyPlace);
  }
  const [row] = rows;
  if (row) {
    const typed = row.value.kind === "text" ? `${row.key}: ${row.value.text}` : `${row.key}:`;
    const more = rows.length > 1 ? String(rows.length - 1) : "";
    report(rowsOutside(typed, more, entries.has("retained")), row.keyPlace);
  }
  const holed = isHoled(node);
  const unread: LogNode | undefined = holed ? { kind: "empty", place: node.place, holed } : undefined;
  return {
    get: (name) => entries.get(name)?.value,
    entry: (name) => entries.get(name),
    section: (name) => entries.get(name)?.value ?? unread,
    holed,
  };
}

/** A sieve and what it held, in a map that is none of sieves. */
export function isRow({ key, value }: Entry): boolean {
  const figure = value.kind === "empty" || (value.kind === "text" && /^[-+]?[\d.,]*\d/.test(value.text));
  return figure && readSieveLabel(key).value !== undefined;
}

/** The key that was most likely meant: one letter off, or the plural of it. */
export function nearKey(key: string, known: readonly string[]): string | undefined {
  const name = plainName(key);
  return (
    known.find((one) => one === `${name}s` || one === `${name}es`) ??
    nearest(name, known) ??
    // "start weight"
    known.find((one) => name.startsWith(`${one} `))
  );
}

function unknown({ key, value }: Entry, known: readonly string[], where: string): Issue {
  const colon = value.kind === "empty" ? lostColon(key, known) : undefined;
  const near = nearKey(key, known) ?? "";
  return colon ?? unknownKey(key, where, near, known.join(", "), sectionLines[near]);
}

/** The first entry of each name; the others are reported. */
export function uniqueEntries(node: MapNode, report: Report): Entry[] {
  const first = new Map<string, Entry>();
  for (const entry of node.entries) {
    const name = plainName(entry.key);
    const before = first.get(name);
    if (before) report(repeatedKey(entry.key, String(before.keyPlace.line)), entry.keyPlace);
    else first.set(name, entry);
  }
  return [...first.values()];
}

/** The map itself; anything else is reported, nothing at all only as empty. */
export function mapOf(node: LogNode | undefined, what: string, report: Report): MapNode | undefined {
  if (!node || node.kind === "map") return node;
  if (!isHoled(node)) report(notMapped(node, what), node.place);
  return undefined;
}

function notMapped(node: Exclude<LogNode, MapNode>, what: string): Issue {
  if (node.kind === "empty") return emptyValue(what);
  if (node.kind === "text") {
    // YAML has joined the lines: the first of them is the one that it stands at.
    const [line, key, figure] = /^([^:]+):([^:\s]+)(?=\s|$)/.exec(node.text) ?? [];
    if (line !== undefined) return noSpaceAfterColon(line, `${key}: ${figure}`);
    if (/^[^:/\\]+\.(csv|tsv|txt)$/i.test(node.text)) return fileInstead(what, node.text);
  }
  const first = node.kind === "list" ? node.items[0] : undefined;
  const entry = first?.kind === "map" ? first.entries[0] : undefined;
  if (!entry) return notAMap(what);
  // "- name: Yard", or "- Yard:" with the rest below it.
  const { key, value } = entry;
  if (isRow(entry)) {
    const row = value.kind === "text" ? `${key}: ${value.text}` : `${key}:`;
    return dashBeforeRow(what, `- ${row}`, row);
  }
  return value.kind === "text"
    ? dashBeforeName(what, `- ${key}: ${value.text}`, value.text)
    : dashBeforeName(what, `- ${key}:`, key);
}

export function textNodeOf(node: LogNode | undefined, what: string, report: Report): TextNode | undefined {
  if (!node) return undefined;
  if (node.kind === "text" && node.text.trim() !== "") return node;
  const several = node.kind === "map" || node.kind === "list";
  if (several || !isHoled(node)) report(several ? notAValue(what) : emptyValue(what), node.place);
  return undefined;
}

export function textOf(node: LogNode | undefined, what: string, report: Report): string | undefined {
  return textNodeOf(node, what, report)?.text.trim();
}

/** What else a choice may be called, and what a text that is none of them may be meant for. */
export interface OtherNames<T extends string> {
  readonly named?: (text: string) => T | undefined;
  readonly meant?: (text: string) => string | undefined;
}

/** One of the choices; also another name of one, where `named` knows it. */
export function choiceOf<T extends string>(
  node: LogNode | undefined,
  what: string,
  choices: readonly T[],
  report: Report,
  { named = () => undefined, meant = () => undefined }: OtherNames<T> = {},
): T | undefined {
  const text = textNodeOf(node, what, report);
  if (!text) return undefined;
  const name = plainName(text.text);
  const choice = choices.find((known) => known === name) ?? named(name);
  if (choice !== undefined) return choice;
  const near =
    meant(name) ?? nearest(name, choices) ?? sharingWord(name, choices) ?? begunWith(name, choices) ?? "";
  report(unknownChoice(what, text.text, near, choices.join(", ")), text.place);
  return undefined;
}

/** "iron" for "grey iron", "bentonite clay" for "bentonite": the first choice that has a word in common. */
function sharingWord(name: string, choices: readonly string[]): string | undefined {
  const words = name.split(" ");
  return choices.find((choice) => choice.split(" ").some((word) => word !== "and" && words.includes(word)));
}

/** "alu" for "aluminium". */
function begunWith(name: string, choices: readonly string[]): string | undefined {
  return name.length < 3 ? undefined : choices.find((choice) => choice.startsWith(name.replace(/\.$/, "")));
}

export function yesNoOf(node: LogNode | undefined, what: string, report: Report): boolean | undefined {
  const text = textNodeOf(node, what, report);
  if (!text) return undefined;
  const name = plainName(text.text);
  if (["yes", "y", "true", "on"].includes(name)) return true;
  if (["no", "n", "false", "off"].includes(name)) return false;
  report(notYesNo(what, text.text), text.place);
  return undefined;
}

export function dateOf(node: LogNode | undefined, report: Report): string | undefined {
  const text = textNodeOf(node, "date", report);
  if (!text) return undefined;
  const day = readDate(text.text);
  if (typeof day === "string") return day;
  report(day, text.place);
  return undefined;
}
