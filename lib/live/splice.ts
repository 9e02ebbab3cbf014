// What one version of the log's texts has in another's place, and places carried from one to the other.

import { invariant, type Place } from "../issue.ts";
import type { LogText } from "../log/types.ts";

/** In one file, the old text at the offset and the new one that stands there instead. */
export interface Splice {
  readonly file: string;
  readonly offset: number;
  readonly before: string;
  readonly after: string;
}

/** Whether both hold files of the same names in the same order. */
export function sameFiles(a: readonly LogText[], b: readonly LogText[]): boolean {
  return a.length === b.length && a.every(({ name }, i) => name === b[i]!.name);
}

/**
 * The least stretch of every file that differs, widened to the whole of the changed place; files are the same in both,
 * by name. Widened, since "4" put behind "152.4" is a value that grew and not something after it.
 */
export function splicesBetween(
  before: readonly LogText[],
  after: readonly LogText[],
  changed?: Place,
): readonly Splice[] {
  return after.flatMap(({ name, text }) => {
    const old = before.find((other) => other.name === name)?.text ?? "";
    return old === text ? [] : [spliceOf(name, old, text, changed?.file === name ? changed : undefined)];
  });
}

function spliceOf(file: string, before: string, after: string, changed: Place | undefined): Splice {
  const most = Math.min(before.length, after.length);
  let start = alikeInBlocks(most, (from, to) => before.slice(from, to) === after.slice(from, to));
  while (start < most && before.charCodeAt(start) === after.charCodeAt(start)) start++;
  const [b, a] = [before.length, after.length];
  let end = alikeInBlocks(
    most - start,
    (from, to) => before.slice(b - to, b - from) === after.slice(a - to, a - from),
  );
  while (end < most - start && before.charCodeAt(b - 1 - end) === after.charCodeAt(a - 1 - end)) end++;
  if (changed?.offset !== undefined) {
    start = Math.min(start, changed.offset);
    end = Math.max(0, Math.min(end, after.length - changed.offset - (changed.length ?? 0)));
  }
  return {
    file,
    offset: start,
    before: before.slice(start, before.length - end),
    after: after.slice(start, after.length - end),
  };
}

const BLOCK = 4096;

/** How many characters are alike in whole blocks, which are compared many times faster than one by one. */
function alikeInBlocks(most: number, alike: (from: number, to: number) => boolean): number {
  let at = 0;
  while (at + BLOCK <= most && alike(at, at + BLOCK)) at += BLOCK;
  return at;
}

/** The texts with every splice done. Throws Misuse where a splice does not fit. */
export function spliced(texts: readonly LogText[], splices: readonly Splice[]): readonly LogText[] {
  return texts.map((one) => {
    const splice = splices.find(({ file }) => file === one.name);
    if (!splice) return one;
    const { offset, before, after } = splice;
    invariant(one.text.startsWith(before, offset), `the change does not fit ${one.name}`);
    return { ...one, text: one.text.slice(0, offset) + after + one.text.slice(offset + before.length) };
  });
}

/** The splices that lead back. */
export function undone(splices: readonly Splice[]): readonly Splice[] {
  return splices.map(({ before, after, ...rest }) => ({ ...rest, before: after, after: before }));
}

/**
 * Where a place of the old texts lies in the new ones. A place that the splice reaches into keeps its start and grows or
 * shrinks with it; undefined where the splice holds all of it and more, so that nobody can tell.
 */
export function carried(place: Place, splices: readonly Splice[]): Place | undefined {
  const splice = splices.find(({ file }) => file === place.file);
  if (!splice || place.offset === undefined) return place;
  const { offset, length = 0 } = place;
  const [start, end] = [splice.offset, splice.offset + splice.before.length];
  const grown = splice.after.length - splice.before.length;
  if (end <= offset && !(start === offset && length === 0)) return { ...place, offset: offset + grown };
  if (start >= offset + length && length > 0) return place;
  if (start >= offset && end <= offset + length) return { ...place, length: length + grown };
  return undefined;
}
