// Where the page's figures stand in the log: written at their elements, and moved when the log changes.

import type { Place } from "../issue.ts";
import { carried, type Splice } from "./splice.ts";

/** "my-sands.yaml:612:4", the file as in an address; undefined where it is none. */
function placeOfMark(mark: string): Place | undefined {
  const [, file, offset, length] = /^(.*):(\d+):(\d+)$/.exec(mark) ?? [];
  return file === undefined
    ? undefined
    : { file: decodeURIComponent(file), offset: Number(offset), length: Number(length) };
}

function markOf({ file, offset = 0, length = 0 }: Place): string {
  return `${encodeURIComponent(file)}:${offset}:${length}`;
}

/** Marks in markup turned from the places that were worked out to those of the log. */
export function marksTurned(markup: string, turn: (place: Place) => Place): string {
  return markup.replace(/(?<= data-at=")[^"]*(?=")/g, (mark) => {
    const place = placeOfMark(mark);
    return place ? markOf(turn(place)) : mark;
  });
}

/**
 * Marks of the page carried over a change of the log; one whose place is gone is no more to be edited. Returns the
 * elements whose mark is another one now.
 */
export function carryMarks(page: ParentNode, splices: readonly Splice[]): readonly Element[] {
  if (splices.length === 0) return [];
  return [...page.querySelectorAll<HTMLElement>("[data-at]")].filter((element) => {
    const before = element.dataset.at;
    const place = placeOfMark(before ?? "");
    const now = place && carried(place, splices);
    const mark = now && markOf(now);
    if (mark === before) return false;
    if (mark === undefined) element.removeAttribute("data-at");
    else element.dataset.at = mark;
    return true;
  });
}
