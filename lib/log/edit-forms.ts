// What is added, written in the form of a neighbour: in brackets or line by line, with its spacing and its quotes.

import type { Draft, DraftPair } from "./edit-draft.ts";
import { isFlow } from "./edit-find.ts";
import { spellings, spellingsLike, styleAt } from "./edit-spelling.ts";
import { type LogNode, plainName } from "./node.ts";

export interface Manner {
  /** The file's, to look at neighbours in. */
  readonly text: string;
  readonly eol: string;
  /** One level of indentation. */
  readonly step: string;
  /** True to put all texts in quotes: the second try. */
  readonly careful: boolean;
}

/** On one line; in brackets if it has parts. */
export function flowForm(draft: Draft, like: LogNode | undefined, manner: Manner): string {
  if (typeof draft === "string") return scalarForm(draft, like, true, manner);
  const { pad, gap } = spacing(like, manner.text);
  if ("items" in draft) {
    const items = draft.items.map((item) => flowForm(item, undefined, manner));
    return items.length === 0 ? "[]" : `[${pad}${items.join(gap)}${pad}]`;
  }
  const pairs = draft.pairs.map((pair) => flowPair(pair, like, manner));
  return pairs.length === 0 ? "{}" : `{${pad}${pairs.join(gap)}${pad}}`;
}

/** "name: value" for a place in brackets; like: the map that it goes into, or one like it. */
export function flowPair([name, value]: DraftPair, like: LogNode | undefined, manner: Manner): string {
  const head = `${nameForm(name, true, manner)}:`;
  return value === "" ? head : `${head} ${flowForm(value, below(like, name), manner)}`;
}

/** "name: value", further lines indented; like: a map that stands line by line. */
export function blockPair(
  [name, value]: DraftPair,
  like: LogNode | undefined,
  indent: string,
  manner: Manner,
): string {
  const neighbour = below(like, name);
  return `${nameForm(name, false, manner)}:${blockValue(value, neighbour, indent, manner)}`;
}

/** What follows a name and its colon: a text on the line, or lines below that are one level further in. */
function blockValue(draft: Draft, like: LogNode | undefined, indent: string, manner: Manner): string {
  if (draft === "") return "";
  if (typeof draft === "string") return ` ${scalarForm(draft, like, false, manner)}`;
  const inner = indent + manner.step;
  if ("items" in draft) {
    return draft.items
      .map((item) => `${manner.eol}${inner}- ${blockItem(item, undefined, `${inner}  `, manner)}`)
      .join("");
  }
  const lineByLine = like?.kind === "map" && like.entries.length > 0 && !isFlow(like, manner.text);
  if (!lineByLine || draft.pairs.length === 0) return ` ${flowForm(draft, like, manner)}`;
  return draft.pairs.map((pair) => `${manner.eol}${inner}${blockPair(pair, like, inner, manner)}`).join("");
}

/** What follows a dash; indent: of the lines after the first. */
export function blockItem(draft: Draft, like: LogNode | undefined, indent: string, manner: Manner): string {
  if (typeof draft === "string") return draft === "" ? "" : scalarForm(draft, like, false, manner);
  const lineByLine = like?.kind === "map" && like.entries.length > 0 && !isFlow(like, manner.text);
  if (!lineByLine || "items" in draft || draft.pairs.length === 0) return flowForm(draft, like, manner);
  return draft.pairs.map((pair) => blockPair(pair, like, indent, manner)).join(manner.eol + indent);
}

function nameForm(name: string, flow: boolean, { careful }: Manner): string {
  return spellings(name, "plain", flow).at(careful ? -1 : 0)!;
}

function scalarForm(text: string, like: LogNode | undefined, flow: boolean, manner: Manner): string {
  if (text === "") return "";
  const style = like?.kind === "text" ? styleAt(manner.text, like.place.offset ?? 0) : "plain";
  const spelt =
    like?.kind !== "text" || style === "block"
      ? spellings(text, "plain", flow)
      : spellingsLike(text, like.text, style, flow);
  return spelt.at(manner.careful ? -1 : 0)!;
}

function below(like: LogNode | undefined, name: string): LogNode | undefined {
  if (like?.kind !== "map") return undefined;
  return like.entries.find(({ key }) => plainName(key) === plainName(name))?.value;
}

/** Within brackets: what stands inside them at both ends, and between entries. */
function spacing(like: LogNode | undefined, text: string): { readonly pad: string; readonly gap: string } {
  const from = like && isFlow(like, text) ? (like.place.offset ?? 0) : undefined;
  if (from === undefined) return { pad: " ", gap: ", " };
  const pad = /^[[{]( ?)\S/.exec(text.slice(from, from + 3))?.[1] ?? " ";
  const second = like?.kind === "map" ? like.entries[1]?.keyPlace.offset : undefined;
  const gap = second === undefined ? undefined : /,[ \t]*$/.exec(text.slice(from, second))?.[0];
  return { pad, gap: gap ?? ", " };
}
