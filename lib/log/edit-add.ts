// A row, a named entry or keys added: where they go, and what stands beside them.

import type { Issue } from "../issue.ts";
import {
  nameTaken,
  noNameWanted,
  noSuchPath,
  nothingWritten,
  notRows,
  oddWriting,
  standsTwice,
  throughRepeat,
} from "./complaints-edit.ts";
import { type Draft, type DraftPair, draftOf, draftPlain } from "./edit-draft.ts";
import { indexesOf, pathText, type Walked, type Way, walked } from "./edit-find.ts";
import type { Manner } from "./edit-forms.ts";
import { type Plain, plainOf } from "./edit-plain.ts";
import { type Added, putInto, putIntoEmpty } from "./edit-put.ts";
import type { Reading } from "./edit-reading.ts";
import { endOfLine } from "./edit-splice.ts";
import type { Tries, Try } from "./edit-tries.ts";
import type { LogEdit, LogPath } from "./edit-types.ts";
import { type LogNode, plainName } from "./node.ts";

/** Sections and fields that hold a list of rows: what begins one when there is none. */
const lists = ["events", "measured", "castings", "questions", "sievings", "rows", "charts", "readings"];

export function addTries(reading: Reading, edit: LogEdit & { kind: "add" }): Tries {
  const made = draftOf(edit.entries);
  if ("refused" in made) return made;
  const way = walked(reading.root, reading.text, edit.to);
  if ("missing" in way && way.missing.length === edit.to.length && edit.to.length > 0)
    return begun(reading, edit, made.draft);
  if (!("steps" in way)) return { refused: noWay(way) };
  const node = way.steps.at(-1)?.node ?? reading.root;
  const added = addedTo(node, edit, made.draft);
  if ("refused" in added) return added;
  return triesFor(reading, edit.to, node, way, added);
}

export function noWay(way: Exclude<Walked, Way>): Issue {
  if ("missing" in way) return noSuchPath(pathText(way.missing));
  return "twice" in way ? standsTwice(way.twice) : throughRepeat(way.repeat);
}

/** The list or map is not there yet: it begins with this row or entry, as a key of what holds it. */
function begun(reading: Reading, edit: LogEdit & { kind: "add" }, draft: Draft): Tries {
  const [holder, key] = [edit.to.slice(0, -1), edit.to.at(-1)!];
  const way = walked(reading.root, reading.text, holder);
  if (!("steps" in way)) return { refused: noWay(way) };
  const node = way.steps.at(-1)?.node ?? reading.root;
  if (typeof key === "number" || node.kind === "list" || node.kind === "text")
    return { refused: noSuchPath(pathText(edit.to)) };
  const inside: Draft =
    edit.name !== undefined
      ? { pairs: [[edit.name, draft]] }
      : lists.includes(plainName(key))
        ? { items: [itemOf(draft)] }
        : draft;
  return triesFor(reading, holder, node, way, { pairs: [[key, inside]], at: undefined });
}

/** What a list takes: a text of its own where it is given under no name. */
function itemOf(draft: Draft): Draft {
  if (typeof draft === "string" || !("pairs" in draft)) return draft;
  const [first] = draft.pairs;
  return draft.pairs.length === 1 && first?.[0] === "" ? first[1] : draft;
}

function addedTo(
  node: LogNode,
  edit: LogEdit & { kind: "add" },
  draft: Draft,
): Added | { readonly refused: Issue } {
  const { name, to, at } = edit;
  const key = to.at(-1);
  if (node.kind === "text") return { refused: notRows(pathText(to)) };
  const isList =
    node.kind === "list" ||
    (node.kind === "empty" && name === undefined && lists.includes(plainName(String(key))));
  if (isList)
    return name === undefined ? { item: itemOf(draft), at } : { refused: noNameWanted(pathText(to)) };
  if (name !== undefined && name.trim() === "") return { refused: nothingWritten(pathText(to)) };
  const nothing = typeof draft !== "string" && "pairs" in draft && draft.pairs.length === 0;
  const pairs: readonly DraftPair[] =
    name !== undefined
      ? [[name, nothing ? "" : draft]]
      : typeof draft !== "string" && "pairs" in draft
        ? draft.pairs
        : [];
  if (pairs.length === 0 || pairs.some(([one]) => one.trim() === ""))
    return { refused: nothingWritten(pathText(to)) };
  const taken = pairs.find(([one]) => node.kind === "map" && indexesOf(node, one).length > 0);
  return taken ? { refused: nameTaken(taken[0]) } : { pairs, at };
}

function triesFor({ text }: Reading, path: LogPath, node: LogNode, way: Way, added: Added): Tries {
  const parts = node.kind === "map" ? node.entries : node.kind === "list" ? node.items : [];
  const at = Math.min(Math.max(0, added.at ?? parts.length), parts.length);
  const step = way.steps.at(-1);
  const tries = [false, true].flatMap((careful): Try[] => {
    const manner: Manner = { text, eol: endOfLine(text), step: stepOf(text), careful };
    const put =
      parts.length === 0 && step && !way.flow
        ? putIntoEmpty(node, step, added, manner)
        : putInto(node, at, added, manner);
    if (!put) return [];
    const { splices, splice, from, length } = put;
    return [{ splices, change: { node, to: grown(node, added, at) }, shown: { splice, from, length } }];
  });
  if (tries.length === 0) return { refused: oddWriting(pathText(path)) };
  return { tries, notes: [], what: pathText(path) };
}

function grown(node: LogNode, added: Added, at: number): Plain {
  if ("item" in added) {
    const items = node.kind === "list" ? node.items.map((item) => plainOf(item)) : [];
    return items.toSpliced(at, 0, draftPlain(added.item));
  }
  const pairs =
    node.kind === "map" ? node.entries.map(({ key, value }) => [key, plainOf(value)] as const) : [];
  return {
    pairs: pairs.toSpliced(at, 0, ...added.pairs.map(([key, value]) => [key, draftPlain(value)] as const)),
  };
}

/** One level of indentation, as the file has it first. */
function stepOf(text: string): string {
  const indent = /(?:^|[\r\n])([ \t]+)[^\s#-]/.exec(text)?.[1] ?? "  ";
  return indent.startsWith("\t") ? "\t" : indent.length <= 4 ? indent : "  ";
}
