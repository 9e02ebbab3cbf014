// What happened to the heap, with the letters that mark it in the charts.

import { endsOf } from "../finding/ends.ts";
import { printFigure } from "../quantity/print.ts";
import type { Spread } from "../quantity/spread.ts";
import type { DiaryEvent } from "../trial/control-events.ts";
import type { ControlReport } from "../trial/control-report.ts";
import type { Block, TableCell, TableRow } from "./blocks.ts";
import { inShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";

/** A letter for each day with an event: A to Z, then A2, B2. */
export function diaryLetters({ events }: Pick<ControlReport, "events">): { day: number; letter: string }[] {
  const days = [...new Set(events.map(({ day }) => day))];
  return days.map((day, i) => ({ day, letter: letterAt(i) }));
}

function letterAt(i: number): string {
  const round = Math.floor(i / 26);
  return `${String.fromCharCode(65 + (i % 26))}${round === 0 ? "" : round + 1}`;
}

const words: { readonly [kind in DiaryEvent["kind"]]: string } = {
  rebond: "rebond",
  "new sand": "new sand",
  lost: "sand lost",
  block: "from here another block",
  note: "remark",
};

export function eventsTable(report: ControlReport, { recipe: system }: ShownUnits): Block | undefined {
  const letters = new Map(diaryLetters(report).map(({ day, letter }) => [day, letter]));
  if (report.events.length === 0) return undefined;
  const unit = shownUnit("kg", system);
  return {
    kind: "table",
    name: "diary-events",
    caption: "What happened to the heap; the letters mark it in the charts. Masses as weighed",
    columns: [
      { head: "Mark", align: "text" },
      { head: "Date", align: "text" },
      { head: "What", align: "text" },
      { head: "Mass", unit, ...(unit === "kg" ? {} : { dataUnit: "kg" }), align: "number" },
      { head: "Share", unit: "% of the heap", align: "number" },
      { head: "In the founder's words", align: "text" },
    ],
    rows: report.events.map(
      ({ day, date, kind, massKg, sharePercent, note, changes }): TableRow => [
        letters.get(day) ?? "",
        date,
        changes ? `${words[kind]}; a change of the heap` : words[kind],
        amountCell(massKg, (kg) => inShownUnit(kg, "kg", system).value),
        amountCell(sharePercent, (percent) => percent, massKg?.sources.length === 0),
        note ?? "",
      ],
    ),
    foldAfter: 16,
  };
}

/** atLeast: a part of the doubt is not known. */
function amountCell(
  of: Spread | undefined,
  shown: (value: number) => number,
  atLeast = false,
): TableCell | string {
  if (!of) return "";
  const { low, high } = endsOf(of);
  const number = of.value;
  if (!(low < high)) return { text: `${Number(shown(number).toPrecision(3))} (± not known)`, number };
  const { text } = printFigure({ value: shown(number), low: shown(low), high: shown(high), min: 0, atLeast });
  return { text, number };
}
