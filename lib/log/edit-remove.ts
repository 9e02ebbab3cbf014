// A row, a named entry or a key taken out, with the comment on its own line; comments beside it stay.

import { commentBetween, lastOne, noSuchPath, oddWriting } from "./complaints-edit.ts";
import { noWay } from "./edit-add.ts";
import { onlyTaken, takenFromBlock } from "./edit-block.ts";
import { blockParts } from "./edit-block-parts.ts";
import { isFlow, pathText, type Step, walked } from "./edit-find.ts";
import { takenFromFlow } from "./edit-flow.ts";
import { flowParts } from "./edit-flow-parts.ts";
import { type Plain, plainOf } from "./edit-plain.ts";
import type { Reading } from "./edit-reading.ts";
import type { Splice } from "./edit-splice.ts";
import type { Tries } from "./edit-tries.ts";
import type { LogPath } from "./edit-types.ts";

export function removeTries({ root, text }: Reading, path: LogPath): Tries {
  const way = walked(root, text, path, true);
  if (!("steps" in way)) return { refused: noWay(way) };
  const step = way.steps.at(-1);
  if (!step) return { refused: noSuchPath(pathText(path)) };
  const { parent, index } = step;
  const done = (splices: readonly Splice[]): Tries => ({
    tries: [{ splices, change: { node: parent, to: without(step) } }],
    notes: [],
    what: pathText(path),
  });

  if (isFlow(parent, text)) {
    const parts = flowParts(parent, text);
    return parts ? done(takenFromFlow(text, parts, index)) : { refused: oddWriting(pathText(path)) };
  }
  const block = blockParts(parent, text);
  if (!block) return { refused: oddWriting(pathText(path)) };
  if (block.parts.length > 1) {
    const splice = takenFromBlock(text, block, index);
    return splice ? done([splice]) : { refused: commentBetween(pathText(path)) };
  }
  // The last one: what held it is there still, and holds nothing.
  const brackets = parent.kind === "list" ? "[]" : "{}";
  const taken = onlyTaken(text, block);
  if (block.behindDash) return done([{ ...taken, text: brackets }]);
  const above = way.steps.at(-2);
  if (!above) return { refused: lastOne() };
  const at = headEnd(text, above);
  return at === undefined
    ? { refused: oddWriting(pathText(path)) }
    : done([{ start: at, end: at, text: ` ${brackets}` }, taken]);
}

function without({ parent, index }: Step): Plain {
  if (parent.kind === "list") return parent.items.map((item) => plainOf(item)).toSpliced(index, 1);
  if (parent.kind !== "map") return null;
  return {
    pairs: parent.entries.map(({ key, value }) => [key, plainOf(value)] as const).toSpliced(index, 1),
  };
}

/** Behind a name and its colon, or a dash, and an anchor or tag there. */
function headEnd(text: string, { parent, index }: Step): number | undefined {
  const key = parent.kind === "map" ? parent.entries[index]!.keyPlace : undefined;
  const start = key ? (key.offset ?? 0) + (key.length ?? 0) : blockParts(parent, text)?.parts[index]?.start;
  if (start === undefined) return undefined;
  const head = /^\s*[:-](?: +[&!][^\s]+)*/.exec(text.slice(start, start + 400))?.[0];
  return head === undefined ? undefined : start + head.length;
}
