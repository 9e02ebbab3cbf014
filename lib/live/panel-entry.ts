// What the form for one more entry asks for: the fields of the last few, what they had, and what may be taken over.

import type { OutlineNode } from "../log/outline-node.ts";
import { entryName } from "./edit-words.ts";

export interface EntryField {
  readonly keys: readonly string[];
  /** As one name of the new entry. */
  readonly name: string;
  /** What the latest entry that has it says, and that entry's label; to be shown, not taken. */
  readonly last: string;
  readonly from: string;
  /** Stands in the field from the start: "" for what was read. */
  readonly preset: string;
  /** Whether the last two that have it say the same, so that one press may repeat it. */
  readonly repeated: boolean;
  /** Whether it is a reading: without one, the method and the rig of a test say nothing. */
  readonly reading: boolean;
}

/** One that is cut short must not cut the form short: the next one asks for all that its forerunners had. */
const LOOKED_BACK = 5;
/** What is said of one entry alone, in words. */
const OF_ONE = /^(left out|note|notes|remark|squeeze|found|cause)$/i;

/** @param entries  Groups, or tables of named rows; the latest last. */
export function entryFields(entries: readonly OutlineNode[]): readonly EntryField[] {
  const looked = entries
    .slice(-LOOKED_BACK)
    .reverse()
    .map((entry) => ({ label: entry.label, texts: textsOf(entry) }));
  const richest = looked.reduce((best, one) => (one.texts.size > best.texts.size ? one : best), looked[0]!);
  const all = new Map(
    [richest, ...looked].flatMap(({ texts }) => [...texts]).map(([name, { keys }]) => [name, keys]),
  );
  return [...all].map(([name, keys]) => {
    const holders = looked.filter(({ texts }) => texts.has(name));
    const [last, before] = holders.map(({ texts }) => texts.get(name)!.text);
    const word = namesSomething(last!);
    const ofOne = OF_ONE.test(keys.at(-1) ?? "");
    return {
      keys,
      name,
      last: last!,
      from: holders[0]!.label,
      preset: word && !ofOne && (before === undefined || before === last) ? last! : "",
      repeated: last !== "" && before === last && !ofOne,
      reading: !word || ofOne,
    };
  });
}

/** What names a thing rather than measures it; figures and days are asked for. */
const namesSomething = (text: string): boolean => text !== "" && !/^[-+\d.]/.test(text);

/** By name; the first of several repeats stands for them. */
function textsOf(
  entry: OutlineNode,
): Map<string, { readonly keys: readonly string[]; readonly text: string }> {
  const texts = new Map<string, { readonly keys: readonly string[]; readonly text: string }>();
  const walk = (node: OutlineNode): void => {
    if (node.kind !== "value") {
      const rows = node.kind === "rows" && !node.names ? node.rows.slice(0, 1) : undefined;
      const parts = node.kind === "group" ? node.parts : (rows ?? node.rows).flat();
      for (const part of parts) if (part) walk(part);
      return;
    }
    const keys = node.path.slice(entry.path.length).filter((key) => typeof key === "string");
    const name = entryName(keys);
    if (name !== "" && !texts.has(name)) texts.set(name, { keys, text: node.text });
  };
  walk(entry);
  return texts;
}
