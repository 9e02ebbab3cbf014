// What was asked, changed, held and expected: the founder's words, and what the figures say beside them.

import { heldLines } from "../finding/write-up-held.ts";
import type { Batch } from "../log/batch.ts";
import type { ExperimentRecord, LoggedLine } from "../log/experiment-record.ts";
import type { Block, Section } from "./blocks.ts";

/** The founder's lists first; then what the log's own figures have alike and apart. */
export function writeUpQuestion(record: ExperimentRecord | undefined, batches: readonly Batch[]): Section {
  const lists = [
    told("Changed on purpose", record?.changed),
    told("Held", record?.held),
    told("Expected beforehand", record?.expected),
    told("Not as planned", record?.departures),
  ].flat();
  const held = heldLines(batches).map(({ text }) => text);
  return {
    role: "data",
    title: "What was asked, changed and held",
    blocks: [
      ...lists,
      ...(held.length === 0
        ? []
        : [lead("By the figures that were written down"), { kind: "list", items: held } as const]),
    ],
  };
}

/** The lines under a few words of their own; nothing where there are none. */
export function told(words: string, lines: readonly LoggedLine[] = []): readonly Block[] {
  if (lines.length === 0) return [];
  return [lead(words), { kind: "list", items: lines.map(({ text }) => text) }];
}

export function lead(words: string): Block {
  return { kind: "prose", text: [{ strong: `${words}.` }] };
}
