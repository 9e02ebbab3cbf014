// YAML 1.2 text to plain nodes with places. The only file that knows the YAML library.

import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  visit,
} from "yaml";
import { withFlowCommas } from "./flow-commas.ts";
import type { Entry, LogNode } from "./node.ts";
import { placeIn, type Source } from "./source.ts";

/** Something that YAML cannot make sense of; the words for it are in yaml-faults.ts. */
export interface YamlFault {
  readonly code: string;
  readonly message: string;
  readonly offset: number;
  /** For a bracket or quote that is never closed: where it opens. */
  readonly opening?: number;
}

export interface YamlTree {
  readonly root: LogNode;
  readonly faults: readonly YamlFault[];
}

/** Repeats by * that one log may use, and parts that they may stand for in all. */
const repeatLimit = { count: 100, parts: 20_000 } as const;

export type Span = readonly [start: number, end: number];

/**
 * Offsets count in source.text; text may differ from it in characters, never in length.
 * blanks: what was taken out of it, so that a name whose lines are gone is not taken for empty.
 */
export function parseYaml(
  source: Source,
  text: string = source.text,
  blanks: readonly Span[] = [],
): YamlTree {
  const document = parseDocument(text, {
    version: "1.2",
    schema: "core",
    merge: false,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
    lineCounter: new LineCounter(),
  });
  const faults: YamlFault[] = [...document.errors, ...document.warnings].map((fault) => {
    const offset = fault.pos[0];
    const unclosed = /closing|must end|and end with/.test(fault.message);
    const opening = unclosed ? openingBefore(document, offset) : undefined;
    return {
      code: fault.code,
      message: fault.message,
      offset,
      ...(opening === undefined ? {} : { opening }),
    };
  });
  const root = plainNodes(document.contents, source, text, faults, blanks);
  return { root, faults: faults.sort((a, b) => (a.opening ?? a.offset) - (b.opening ?? b.offset)) };
}

/** Start of the last quoted text or bracketed list that begins before the offset and runs up to it. */
function openingBefore(document: Document, offset: number): number | undefined {
  let found: number | undefined;
  visit(document, {
    Node(_, node) {
      const quoted = isScalar(node) && (node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE");
      const bracketed = (isMap(node) || isSeq(node)) && node.flow === true;
      if (!(quoted || bracketed) || !node.range) return;
      if (node.range[0] < offset && node.range[2] >= offset - 1) found = Math.max(found ?? 0, node.range[0]);
    },
  });
  return found;
}

function plainNodes(
  contents: Node | null,
  source: Source,
  text: string,
  faults: YamlFault[],
  blanks: readonly Span[],
): LogNode {
  const anchors = new Map<string, LogNode>();
  const sizes = new Map<LogNode, number>();
  let repeats = 0;
  let parts = 0;

  function sized(node: LogNode, size: number): LogNode {
    sizes.set(node, size);
    return node;
  }

  function repeated(name: string, offset: number, length: number): LogNode {
    const place = placeIn(source, offset, length);
    const node = anchors.get(name);
    if (!node) {
      faults.push({ code: "BAD_ALIAS", message: `no anchor ${name}`, offset });
      return sized({ kind: "text", text: `*${name}`, place }, 1);
    }
    repeats += 1;
    parts += sizes.get(node) ?? 1;
    if (repeats <= repeatLimit.count && parts <= repeatLimit.parts) return node;
    faults.push({ code: "REPEATS", message: "too many repeats", offset });
    return sized({ kind: "empty", place }, 1);
  }

  /** True where something was blanked from one offset to the next that holds more than spaces and comments. */
  function holed(from: number, end: number): boolean {
    if (blanks.length === 0) return false;
    const next = /^:?(?:\s|#.*)*/.exec(text.slice(end))?.[0].length ?? 0;
    return blanks.some((blank) => blank[0] < end + next && blank[1] > from);
  }

  function convert(node: Node | null, at: number): LogNode {
    const [start, end] = node?.range ?? [at, at];
    if (node && isAlias(node)) return repeated(node.source, start, end - start);
    const place = placeIn(source, start, end - start);
    let result: LogNode = { kind: "empty", place, ...(holed(start, end) ? { holed: true } : {}) };
    let size = 1;
    if (node && isScalar(node)) {
      const quoted = node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE";
      const typed = withFlowCommas(node.source ?? "");
      const empty = !quoted && node.value === null;
      if (!empty) result = { kind: "text", text: typed, place };
    } else if (node && isMap(node)) {
      const entries: Entry[] = [];
      for (const pair of node.items) {
        const key = pair.key as Node | null;
        const [keyStart, keyEnd] = key?.range ?? [start, start];
        const keyPlace = placeIn(source, keyStart, keyEnd - keyStart);
        if (!key || !isScalar(key)) {
          faults.push({ code: "ODD_KEY", message: "not a scalar", offset: keyStart });
          continue;
        }
        if (key.anchor)
          anchors.set(key.anchor, sized({ kind: "text", text: key.source ?? "", place: keyPlace }, 1));
        const value = convert(pair.value as Node | null, keyEnd);
        size += sizes.get(value) ?? 1;
        if (!joinDecimalComma(entries, key.source ?? "", keyPlace.offset!, keyEnd, value)) {
          entries.push({ key: withFlowCommas(key.source ?? ""), keyPlace, value });
        }
      }
      const from = node === contents ? 0 : start;
      result = { kind: "map", entries, place, ...(holed(from, end) ? { holed: true } : {}) };
    } else if (node && isSeq(node)) {
      const items = node.items.map((item) => convert(item as Node | null, start));
      for (const item of items) size += sizes.get(item) ?? 1;
      result = { kind: "list", items, place };
    }
    sized(result, size);
    const anchor = node && "anchor" in node ? node.anchor : undefined;
    if (anchor) anchors.set(anchor, result);
    return result;
  }

  /** In `{ No. 40: 0,15 }` YAML parts at the comma; the figure is put together again, so that its reader can complain. */
  function joinDecimalComma(
    entries: Entry[],
    key: string,
    keyStart: number,
    keyEnd: number,
    value: LogNode,
  ): boolean {
    const last = entries.at(-1);
    if (last?.value.kind !== "text" || value.kind !== "empty" || !/^\d+(\s*[^\s\d]+)?$/.test(key))
      return false;
    const start = last.value.place.offset ?? 0;
    if (!/^[-+]?\d+$/.test(last.value.text) || text.slice(start + last.value.text.length, keyStart) !== ",")
      return false;
    const place = placeIn(source, start, keyEnd - start);
    entries[entries.length - 1] = {
      ...last,
      value: { kind: "text", text: text.slice(start, keyEnd), place },
    };
    return true;
  }

  return convert(contents, 0);
}
