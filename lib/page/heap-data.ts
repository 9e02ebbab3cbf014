// What the log says of its heap: what it is now, and what happened to it.

import type { HeapReport } from "../finding/heap-report.ts";
import type { Measured } from "../log/figure-types.ts";
import type { HeapEvent } from "../log/heap-events.ts";
import type { Log, UnitSystem } from "../log/types.ts";
import type { Block, Section, TableBlock, TableCell } from "./blocks.ts";
import { bandText } from "./heap-text.ts";
import { inShownUnit, type ShownUnits, shownUnit, shownUnits } from "./shown-units.ts";

/**
 * The heap's record: what it was, what went in and what came out.
 * @example heapData(heapReport(log), log).title
 */
export function heapData(report: HeapReport, log: Log, units: ShownUnits = shownUnits(log)): Section {
  const system = units.recipe;
  const have = report.mending?.have ?? [];
  const blocks: Block[] = [];
  if (have.length > 0)
    blocks.push({
      kind: "table",
      name: "heap-now",
      caption: "The heap as it is",
      columns: [
        { head: "What", align: "text" },
        { head: "Figure", align: "number" },
        { head: "Unit", align: "text" },
        { head: "Known from", align: "text" },
      ],
      rows: have.map(({ what, figure, unit, from }) => {
        const to = (x: number): number => (unit === "kg" ? inShownUnit(x, "kg", system).value : x);
        const shown = { value: to(figure.value), low: to(figure.low), high: to(figure.high) };
        const cell: TableCell = {
          text: bare(figure) ? `${bandText(shown)} (± not known)` : bandText(shown),
          number: figure.value,
        };
        return [what, cell, unit === "kg" ? shownUnit("kg", system) : unit || "number", from];
      }),
    });
  if (log.events.length > 0) {
    const table = record(log.events, system);
    // A long record is the log again: on paper the season's chart tells it.
    blocks.push(
      table.rows.length > 8
        ? {
            kind: "fold",
            screenOnly: true,
            summary: `The record, ${table.rows.length} rows`,
            blocks: [table],
          }
        : table,
    );
  }
  return { role: "data", title: "The heap and its record", blocks };
}

/** Nothing of its ± is written. */
const bare = ({ low, high }: { readonly low: number; readonly high: number }): boolean => low === high;

/** A row for each pour, with what was done until the next. */
function record(events: readonly HeapEvent[], system: UnitSystem): TableBlock {
  const mass = { unit: shownUnit("kg", system), dataUnit: "kg", align: "number" } as const;
  /** Of one event the cell is its figure as typed; of several their sum, which stands nowhere. */
  const total = (own: readonly HeapEvent[], kind: HeapEvent["kind"]): TableCell | string => {
    const masses = own.flatMap((event) => (event.kind === kind ? (massOf(event) ?? []) : []));
    const kg = masses.reduce((all, { value }) => all + value, 0);
    if (kg === 0) return "";
    const text = String(Number(inShownUnit(kg, "kg", system).value.toPrecision(3)));
    return { text, number: kg, ...(masses.length === 1 ? { at: masses[0]!.place } : {}) };
  };
  return {
    kind: "table",
    name: "record",
    caption: "The record: each pour, and what was done to the heap until the next",
    columns: [
      { head: "From", align: "text" },
      { head: "Metal", ...mass },
      { head: "Lost", ...mass },
      { head: "Clay", ...mass },
      { head: "New sand", ...mass },
      { head: "Water", ...mass },
      { head: "Tested", align: "text" },
    ],
    rows: byPour(events).map((own) => [
      own[0]!.date,
      total(own, "pour"),
      total(own, "lost"),
      total(own, "rebond"),
      total(own, "new sand"),
      total(own, "water"),
      own.flatMap(tested).join("; "),
    ]),
  };
}

function byPour(events: readonly HeapEvent[]): readonly (readonly HeapEvent[])[] {
  const rows: HeapEvent[][] = [];
  for (const event of events) {
    if (event.kind === "pour" || rows.length === 0) rows.push([]);
    rows.at(-1)!.push(event);
  }
  return rows;
}

function massOf(event: HeapEvent): Measured | undefined {
  if (event.kind === "pour") return event.metalKg;
  if (event.kind === "rebond") return event.clayKg;
  return event.kind === "tested" ? undefined : event.massKg;
}

function tested(event: HeapEvent): string[] {
  if (event.kind !== "tested") return [];
  const { greenCompressionKPa, compactabilityPercent, moisturePercent } = event.state;
  const parts = [
    greenCompressionKPa?.text,
    compactabilityPercent && `compactability ${compactabilityPercent.text}`,
    moisturePercent && `moisture ${moisturePercent.text}`,
  ];
  return [parts.filter((part) => part !== undefined).join(", ")];
}
