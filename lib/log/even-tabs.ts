// Tabs that indent lines, which YAML does not allow: read as levels where nothing else indents, told once.

import type { Place } from "../issue.ts";
import { tabAmongSpaces, tabs } from "./complaints-yaml.ts";
import { lineList } from "./line-list.ts";
import type { PlacedComplaint } from "./node.ts";
import { indentOf, lineText, placeIn, type Source, sourceOf } from "./source.ts";
import { parseYaml } from "./yaml-document.ts";

export interface EvenTabs {
  /** To be read in the place of the typed one: two spaces for a tab; lost lines are blank. */
  readonly source: Source;
  readonly complaints: readonly PlacedComplaint[];
  /** From a place in that source to the same place in the typed one. */
  readonly asTyped: (place: Place) => Place;
}

/**
 * Within one section of the log (from a name at the left margin to the next) tabs alone are levels. Where other lines of
 * the section are indented with spaces, what a tabbed line belongs to cannot be told: it is lost, and so is what may
 * belong to it. A log that YAML takes as it stands (tabs within brackets) is left alone.
 */
export function evenTabs(typed: Source): EvenTabs {
  const lines = typed.lineStarts.map((_, index) => lineText(typed, index));
  const tabbed = lines.map((line) => /^[ \u00A0]*\t/.test(line));
  if (!tabbed.includes(true) || parseYaml(typed).faults.length === 0) {
    return { source: typed, complaints: [], asTyped: (place) => place };
  }
  const mixed = mixedSections(lines);
  const told = (index: number) => tabbed[index] === true && isRow(lines[index]!);
  const numbers = (inMixed: boolean) =>
    lines.flatMap((_, index) => (told(index) && mixed[index] === inMixed ? [index + 1] : []));
  const lost = withWhatHangsBelow(
    lines,
    lines.map((_, index) => told(index) && mixed[index] === true),
  );
  const complaint = (of: readonly number[], words: typeof tabs): PlacedComplaint[] => {
    const [first] = of;
    if (first === undefined) return [];
    const start = typed.lineStarts[first - 1]!;
    return [{ complaint: words(lineList(of)), place: placeIn(typed, start, indentOf(lines[first - 1]!)) }];
  };
  const source = expanded(typed, lines, lost);
  return {
    source,
    complaints: [...complaint(numbers(true), tabAmongSpaces), ...complaint(numbers(false), tabs)],
    asTyped: (place) => placeAsTyped(place, source, typed),
  };
}

const isRow = (line: string): boolean => !/^\s*(#|$)/.test(line);
const isTop = (line: string): boolean => /^[^\s#]/.test(line.replace(/^\uFEFF/, ""));

/** For each line: is it in a section where some lines begin with a tab and others with a space? */
function mixedSections(lines: readonly string[]): boolean[] {
  const mixed: boolean[] = [];
  for (let start = 0; start < lines.length; ) {
    let end = start + 1;
    while (end < lines.length && !isTop(lines[end]!)) end += 1;
    const indented = lines.slice(start, end).filter((line) => isRow(line) && /^\s/.test(line));
    const both =
      indented.some((line) => line.startsWith("\t")) && indented.some((line) => !line.startsWith("\t"));
    const within = indented.some((line) => /^[ \u00A0]+\t/.test(line));
    for (; start < end; start++) mixed.push(both || within);
  }
  return mixed;
}

/** A name or a dash that is lost takes what follows with it, up to the next line that stands as far out as any. */
function withWhatHangsBelow(lines: readonly string[], lost: readonly boolean[]): boolean[] {
  const outermost = Math.min(
    ...lines.filter((line) => isRow(line) && /^ /.test(line)).map((line) => indentOf(line)),
  );
  let hanging = false;
  return lines.map((line, index) => {
    if (!isRow(line)) return false;
    if (lost[index]) {
      hanging ||= /:\s*(#.*)?$|^\s*-/.test(line);
      return true;
    }
    if (indentOf(line) <= outermost) hanging = false;
    return hanging;
  });
}

function expanded(typed: Source, lines: readonly string[], lost: readonly boolean[]): Source {
  const texts = lines.map((line, index) => {
    const even = line.replace(/^[ \t\u00A0]*\t/, (indent) => indent.replaceAll("\t", "  "));
    const end = typed.text.slice(typed.lineStarts[index]! + line.length, typed.lineStarts[index + 1]);
    return (lost[index] ? " ".repeat(even.length) : even) + end;
  });
  const source = sourceOf(typed.file, texts.join(""));
  return { ...source, lost: source.lineStarts.filter((_, index) => lost[index]) };
}

function placeAsTyped(place: Place, even: Source, typed: Source): Place {
  if (place.file !== typed.file || place.line === undefined || place.offset === undefined) return place;
  const start = offsetAsTyped(place.offset, even, typed);
  return placeIn(typed, start, offsetAsTyped(place.offset + (place.length ?? 0), even, typed) - start);
}

/** Lines are the same in both; within a line only the indent differs. */
function offsetAsTyped(offset: number, even: Source, typed: Source): number {
  const line = placeIn(even, offset).line! - 1;
  const fromEnd = lineText(even, line).length - (offset - even.lineStarts[line]!);
  const length = lineText(typed, line).length;
  return typed.lineStarts[line]! + Math.max(0, length - fromEnd);
}
