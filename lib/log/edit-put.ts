// What is added put into a list or a map: in brackets, between lines, or where there is nothing yet.

import { putIntoBlock } from "./edit-block.ts";
import { blockParts } from "./edit-block-parts.ts";
import type { Draft, DraftPair } from "./edit-draft.ts";
import { isFlow, isRepeat, type Step } from "./edit-find.ts";
import { type Put, putIntoFlow } from "./edit-flow.ts";
import { flowParts } from "./edit-flow-parts.ts";
import { blockItem, blockPair, flowForm, flowPair, type Manner } from "./edit-forms.ts";
import { lineEnd, lineStart } from "./edit-splice.ts";
import type { LogNode } from "./node.ts";

export type Added =
  | { readonly item: Draft; readonly at: number | undefined }
  | { readonly pairs: readonly DraftPair[]; readonly at: number | undefined };

type Placed = Put & { readonly length: number };

/** Undefined where the parts that are there cannot be told apart. */
export function putInto(node: LogNode, at: number, added: Added, manner: Manner): Placed | undefined {
  const { text } = manner;
  if (isFlow(node, text) || node.kind === "empty" || node.kind === "text")
    return putInBrackets(node, at, added, manner);
  const block = blockParts(node, text);
  if (!block) return undefined;
  const indent = block.indent;
  const like = likeOf(node, at);
  let part: string;
  if ("item" in added) {
    const dash =
      /^- */.exec(text.slice(block.parts[0]!.start, lineEnd(text, block.parts[0]!.start)))?.[0] ?? "- ";
    const gap = dash.length > 1 && dash.length < 8 ? dash : "- ";
    part = gap + blockItem(added.item, like, indent + " ".repeat(gap.length), manner);
  } else {
    part = pairLines(node, added.pairs, like, indent, manner);
  }
  const put = putIntoBlock(text, block, at, part, manner.eol);
  return { ...put, length: part.length };
}

/** A pair beside others of its map takes the form of the one beside it; its parts take theirs. */
function pairLines(
  node: LogNode,
  pairs: readonly DraftPair[],
  like: LogNode | undefined,
  indent: string,
  manner: Manner,
): string {
  return pairs
    .map((pair) => blockPair(pair, beside(node, pair[0], like), indent, manner))
    .join(manner.eol + indent);
}

/** A map that holds, under the name, what the value of that name should look like. */
function beside(node: LogNode, name: string, like: LogNode | undefined): LogNode | undefined {
  if (node.kind !== "map" || like?.kind !== "map") return undefined;
  const { place } = node;
  return { kind: "map", place, entries: [{ key: name, keyPlace: place, value: like }] };
}

function putInBrackets(node: LogNode, at: number, added: Added, manner: Manner): Placed | undefined {
  const { text } = manner;
  const like = likeOf(node, at);
  const one =
    "item" in added
      ? added.item === ""
        ? '""'
        : flowForm(added.item, like, manner)
      : added.pairs.map((pair) => flowPair(pair, beside(node, pair[0], like), manner)).join(", ");
  if (node.kind === "empty") {
    const whole = "item" in added ? `[ ${one} ]` : `{ ${one} }`;
    return filled(node, whole, text);
  }
  const parts = flowParts(node, text);
  const put = parts && putIntoFlow(text, parts, at, one);
  return put && { ...put, length: one.length };
}

function filled(node: LogNode, whole: string, text: string): Placed {
  const at = node.place.offset ?? 0;
  const space = /[\s]/.test(text[at - 1] ?? "") ? "" : " ";
  const splice = { start: at, end: at, text: space + whole };
  return { splices: [splice], splice, from: space.length, length: whole.length };
}

/** A key with nothing after it, or with [] or {}: the first lines below it. */
export function putIntoEmpty(node: LogNode, step: Step, added: Added, manner: Manner): Placed | undefined {
  const { text, eol } = manner;
  const holder = blockParts(step.parent, text);
  const part = holder?.parts[step.index];
  if (!part) return undefined;
  const inner = holder.indent + (step.parent.kind === "list" ? "  " : manner.step);
  const like = likeAmong(step);
  const lines =
    "item" in added
      ? `- ${blockItem(added.item, undefined, `${inner}  `, manner)}`
      : added.pairs.map((pair) => blockPair(pair, like, inner, manner)).join(eol + inner);
  const at = lineEnd(text, part.start);
  const splice = { start: at, end: at, text: eol + inner + lines };
  const put = { splices: [splice], splice, from: eol.length + inner.length, length: lines.length };
  if (node.kind === "empty") return put;
  const { offset = 0, length = 0 } = node.place;
  if (
    text.slice(offset + 1, offset + length - 1).trim() !== "" ||
    lineStart(text, offset) !== lineStart(text, part.start)
  )
    return undefined;
  const space = text[offset - 1] === " " ? 1 : 0;
  return { ...put, splices: [{ start: offset - space, end: offset + length, text: "" }, splice] };
}

/** What stands beside it under another name, as for the first key of a new batch. */
function likeAmong({ parent, index }: Step): LogNode | undefined {
  const like = likeOf(parent, index);
  return like?.kind === "map" ? like : undefined;
}

/** The part whose form a new one takes: the one before it, else the one after; none that is only repeated. */
function likeOf(node: LogNode, at: number): LogNode | undefined {
  const values =
    node.kind === "list" ? node.items : node.kind === "map" ? node.entries.map(({ value }) => value) : [];
  const own = (k: number) => (values[k] && !isRepeat(node, k) ? values[k] : undefined);
  return own(at - 1) ?? own(at) ?? values.find((_, k) => !isRepeat(node, k));
}
