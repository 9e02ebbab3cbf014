// Lines that do not stand where they belong, told by the lines around the one that YAML stumbles at.

import type { Issue } from "../issue.ts";
import { readSieveLabel } from "../sand/sieve-label.ts";
import { badIndent, longDash, textRunsOn, underDash, valueBeforeBlock } from "./complaints-yaml.ts";
import { logKeys, sandKeys, sievingKeys } from "./log-keys.ts";
import { plainName } from "./node.ts";
import { indentOf, isIdle, lineText, nextLine, type Source, shortened } from "./source.ts";

/** A complaint, the offset of what to look at, and what to take out before the rest is read, if not that line. */
export interface StandsWrong {
  readonly complaint: Issue;
  readonly offset: number;
  readonly span?: readonly [start: number, end: number];
}

interface Line {
  readonly index: number;
  readonly start: number;
  readonly text: string;
  readonly indent: number;
}

/** Names whose value is a text of any length. */
const texts: readonly string[] = ["note", "title", "founder"];
/** Names of which all that they hold stands below. */
const blocks: readonly string[] = [
  ...logKeys.filter((key) => ["sands", "scales", "sieve sets", "rigs", "batches", "sheets"].includes(key)),
  ...sandKeys.filter((key) => key === "sievings"),
  ...sievingKeys.filter((key) => key === "retained"),
];

/** The line, or the one above it, begins with a long dash or a bullet, as word processors make of a hyphen. */
export function longDashAt(source: Source, index: number): StandsWrong | undefined {
  for (const at of [index, index - 1]) {
    const line = at < 0 ? undefined : lineAt(source, at);
    const [, sign, rest] = /^([–—−•·*▪◦‣])[ \u00a0]+(\S.*)$/.exec(line?.text.trim() ?? "") ?? [];
    if (!line || sign === undefined || rest === undefined) continue;
    const label = /^([^:]+):/.exec(rest)?.[1] ?? "";
    const better = readSieveLabel(label).value === undefined ? `- ${rest}` : rest;
    return {
      complaint: longDash(shortened(line.text.trim()), sign, shortened(better)),
      offset: line.start + line.indent,
    };
  }
  return undefined;
}

/** A value on the line, and names below it that stand further in: one of the two does not belong there. */
export function valueAbove(source: Source, index: number): StandsWrong | undefined {
  const line = lineAt(source, index);
  const below = following(source, index);
  const [, before = "", dash = "", key, value] =
    /^((\s*(?:- +)?)([^:]+):\s+)(\S.*?)\s*(?:\s#.*)?$/.exec(line.text) ?? [];
  if (!below || key === undefined || value === undefined || below.indent <= line.indent) return undefined;
  const offset = line.start + before.length;
  const name = plainName(key);
  if (blocks.includes(name)) {
    const span = [offset, line.start + line.text.length] as const;
    return { complaint: valueBeforeBlock(name, shortened(value)), offset, span };
  }
  if (texts.includes(name)) return { complaint: textRunsOn(name), offset };
  const agree = following(source, below.index)?.indent === below.indent;
  if (dash.includes("-") && agree)
    return { complaint: underDash(shortened(line.text.trim()), name), offset: line.start + line.indent };
  const alone = firstOfItsBlock(source, line) && agree;
  const stray = alone ? line : below;
  const complaint = badIndent(shortened(stray.text.trim()));
  const own = [stray.start, stray.start + stray.text.length] as const;
  return { complaint, offset: stray.start + stray.indent, ...(alone ? { span: own } : {}) };
}

/** The line is in line with those after it, and the one above it, the first of its block, with none: that one slipped. */
export function firstSlipped(source: Source, index: number): StandsWrong | undefined {
  const line = lineAt(source, index);
  const above = preceding(source, index);
  if (!above || following(source, index)?.indent !== line.indent) return undefined;
  const dashed = /^- +(?=\S)/.exec(above.text.trim())?.[0];
  if (dashed !== undefined && above.indent < line.indent && above.indent + dashed.length !== line.indent) {
    const name = /^- +([^:]+)/.exec(above.text.trim())?.[1] ?? "";
    return { complaint: underDash(shortened(above.text.trim()), name), offset: above.start + above.indent };
  }
  const parent = preceding(source, above.index);
  const slipped =
    dashed === undefined &&
    above.indent > line.indent &&
    firstOfItsBlock(source, above) &&
    parent &&
    parent.indent < line.indent;
  if (!slipped) return undefined;
  return {
    complaint: badIndent(shortened(above.text.trim())),
    offset: above.start + above.indent,
    span: [above.start, above.start + above.text.length],
  };
}

function firstOfItsBlock(source: Source, line: Line): boolean {
  const above = preceding(source, line.index);
  return above !== undefined && above.indent < line.indent && /:\s*(#.*)?$/.test(above.text);
}

function lineAt(source: Source, index: number): Line {
  const text = lineText(source, index).replace(/^\uFEFF/, "");
  return { index, start: source.lineStarts[index] ?? 0, text, indent: indentOf(text) };
}

function following(source: Source, index: number): Line | undefined {
  const at = nextLine(source, index);
  return at === undefined ? undefined : lineAt(source, at);
}

function preceding(source: Source, index: number): Line | undefined {
  for (let at = index - 1; at >= 0; at--) {
    const line = lineAt(source, at);
    if (!isIdle(line.text)) return line;
  }
  return undefined;
}
