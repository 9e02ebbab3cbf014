// What was asked, changed, held and expected: the founder's words, and what the figures say beside them.

import { heldLines } from "../finding/write-up-held.ts";
import type { WriteUp } from "../finding/write-up-record.ts";
import type { LoggedLine } from "../log/experiment-record.ts";
import { workedUnits } from "../log/worked-units.ts";
import type { Block, Section } from "./blocks.ts";
import { type ShownUnits, shownUnit } from "./shown-units.ts";
import { testNumber } from "./trial-print.ts";

/** The founder's lists first; then what the log's own figures have alike and apart. */
export function writeUpQuestion({ record, report, log }: WriteUp, units: ShownUnits): Section {
  const lists = [
    told("Changed on purpose", record?.changed),
    told("Held", record?.held),
    told("Expected beforehand", record?.expected),
    told("Not as planned", record?.departures),
  ].flat();
  const wanted = report.properties.flatMap(({ test, wanted: range }) => {
    if (!range) return [];
    const { unit } = workedUnits[test];
    const shown = shownUnit(unit, units.of(test));
    const [low, high] = [range.low, range.high].map((value) => testNumber(value, test, units));
    return [
      `${test}: ${low} to ${high}${shown === "" ? "" : ` ${shown}`}, ${range.own ? "the founder's own aim" : range.says.replace(/^.*?, (?=from )/, "")}`,
    ];
  });
  const held = heldLines(log.batches).map(({ text }) => text);
  return {
    role: "data",
    title: "What was asked, changed and held",
    blocks: [
      ...lists,
      ...(wanted.length === 0 ? [] : [lead("Wanted of a batch"), { kind: "list", items: wanted } as const]),
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
