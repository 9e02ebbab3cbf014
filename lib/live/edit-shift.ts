// The outline after one plain value was changed, from the one before: a long log is not read again for it.

import type { Place } from "../issue.ts";
import type { OutlineNode } from "../log/outline-node.ts";
import type { LogText } from "../log/types.ts";
import { type Splice, sameFiles, splicesBetween } from "./splice.ts";

/** Signs that mean nothing but themselves in YAML and CSV, wherever a value stands. */
const PLAIN = /^[\p{L}\p{N}.±+-](?:[\p{L}\p{N} .±+\-°%/()]*[\p{L}\p{N}.°%)])?$/u;
/** Words that stand for nothing. */
const NOTHING = /^null$/i;

/** Undefined where more than one value changed, or one that is not plain before and after: the texts are to be read. */
export function shiftedOutline(
  outline: readonly OutlineNode[],
  before: readonly LogText[],
  after: readonly LogText[],
): readonly OutlineNode[] | undefined {
  if (!sameFiles(before, after)) return undefined;
  const splices = splicesBetween(before, after);
  const [splice] = splices;
  if (!splice || splices.length > 1) return splices.length === 0 ? outline : undefined;
  const text = after.find(({ name }) => name === splice.file)!.text;
  let changed = 0;
  let sound = true;
  const turn = (node: OutlineNode): OutlineNode => {
    const place = shifted(node.place, splice);
    // What lies before the change stays the very same: a long log has much of that.
    if (node.kind === "group") {
      const parts = turnedAll(node.parts, turn);
      return parts === node.parts && place === node.place ? node : { ...node, place, parts };
    }
    if (node.kind === "rows") {
      const rows = turnedAll(node.rows, (row) => turnedAll(row, (cell) => cell && turn(cell)));
      return rows === node.rows && place === node.place ? node : { ...node, place, rows };
    }
    if (!touches(node.place, splice)) return place === node.place ? node : { ...node, place };
    const raw = text.slice(place.offset, place.offset! + (place.length ?? 0));
    changed += 1;
    sound &&= node.text !== "" && PLAIN.test(node.text) && PLAIN.test(raw) && !NOTHING.test(raw);
    sound &&= (node.place.length ?? 0) === node.text.length;
    return { ...node, place, text: raw };
  };
  const turned = outline.map(turn);
  return changed === 1 && sound ? turned : undefined;
}

/** The list itself where nothing of it is another. */
function turnedAll<T>(items: readonly T[], turn: (item: T) => T): readonly T[] {
  let turned: T[] | undefined;
  for (let i = 0; i < items.length; i++) {
    const item = turn(items[i]!);
    if (turned) turned.push(item);
    else if (item !== items[i]) turned = [...items.slice(0, i), item];
  }
  return turned ?? items;
}

function touches({ file, offset = 0, length = 0 }: Place, splice: Splice): boolean {
  return (
    file === splice.file && offset <= splice.offset && splice.offset + splice.before.length <= offset + length
  );
}

/** What begins behind the splice moves, what holds it grows. Columns are not kept in step: edits go by offsets. */
function shifted(place: Place, splice: Splice): Place {
  const { file, offset = 0, length = 0 } = place;
  if (file !== splice.file) return place;
  const grown = splice.after.length - splice.before.length;
  if (grown === 0) return place;
  if (touches(place, splice)) return { ...place, length: length + grown };
  if (offset < splice.offset + splice.before.length) return place;
  return { ...place, offset: offset + grown };
}
