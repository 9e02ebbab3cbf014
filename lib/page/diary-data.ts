// What was tested on which day, as a section of a page.

import { nameOf } from "../finding/diary-findings.ts";
import { endsOf } from "../finding/ends.ts";
import { printFigure } from "../quantity/print.ts";
import type { ControlReport } from "../trial/control-report.ts";
import type { DiarySeries, DiaryValue } from "../trial/control-series.ts";
import type { Block, Section, TableCell, TableColumn, TableRow } from "./blocks.ts";
import { eventsTable } from "./diary-events.ts";
import { systemOf } from "./diary-print.ts";
import { figureInShownUnit, type ShownUnits, shownUnit } from "./shown-units.ts";
import { testFormula } from "./test-formulas.ts";

/**
 * Events first, then the values.
 * @example diaryData(controlReport(log), shownUnits(log)).title
 */
export function diaryData(report: ControlReport, units: ShownUnits): Section {
  const events = eventsTable(report, units);
  return {
    role: "data",
    title: "What happened, and what was tested",
    blocks: [...(events ? [events] : []), ...valuesTable(report, units), ...leftOutBlocks(report)],
  };
}

/** Newest first: what is looked for is the last test. Tests that most days lack stand in a table of their own. */
function valuesTable({ diary }: ControlReport, units: ShownUnits): Block[] {
  const { series, batches } = diary;
  const days = new Set(series.flatMap((one) => valuesOf(one).map(({ date }) => date)));
  const often = (one: DiarySeries): boolean => 2 * valuesOf(one).length >= days.size;
  const table = (name: string, caption: string, some: readonly DiarySeries[]): Block[] => {
    if (some.length === 0) return [];
    const columns = [
      { head: "Date", align: "text" as const },
      ...some.map((one) => columnOf(one, units, batches)),
    ];
    return [{ kind: "table", name, caption, columns, rows: rowsOf(some, units), foldAfter: 12 }];
  };
  const all = "each with its ± as far as it is known; the mean of repeats where there are any";
  if (!series.some(often) || series.every(often))
    return table("diary-values", `Values by day, the newest first, ${all}`, series);
  return [
    ...table("diary-values", `Values by day, the newest first, ${all}`, series.filter(often)),
    ...table(
      "diary-values-now-and-then",
      "Tests made now and then, the newest first",
      series.filter((one) => !often(one)),
    ),
  ];
}

const valuesOf = ({ values, keptOut }: DiarySeries): readonly DiaryValue[] => [...values, ...keptOut];

/** What the log leaves out, and why, each batch once. */
function leftOutBlocks({ diary }: ControlReport): Block[] {
  const all = diary.series.flatMap(({ keptOut }) => keptOut);
  const lines = [...new Set(all.map(({ name, date, keptOut }) => `${name}, ${date}: ${keptOut}`))];
  if (lines.length === 0) return [];
  return [
    {
      kind: "prose",
      text: 'Left out of every mean, limit and signal by the log, and shown all the same, marked "left out" in the tables and crossed in the charts:',
    },
    { kind: "list", items: lines },
  ];
}

/** A row for each day on which one of them was tested, and for each test of that day. */
function rowsOf(series: readonly DiarySeries[], units: ShownUnits): TableRow[] {
  const days = [...new Set(series.flatMap((one) => valuesOf(one).map(({ date }) => date)))].sort().reverse();
  return days.flatMap((date) => {
    const own = series.map((one) => valuesOf(one).filter((value) => value.date === date));
    const count = Math.max(...own.map(({ length }) => length));
    return Array.from({ length: count }, (_, k) => [
      date,
      ...series.map((one, i) => valueCell(own[i]![k], one, units)),
    ]);
  });
}

function columnOf(
  series: DiarySeries,
  units: ShownUnits,
  batches: ControlReport["diary"]["batches"],
): TableColumn {
  const unit = shownUnit(series.unit, systemOf(series, units));
  const formula =
    series.test && batches.some(({ tests }) => tests[series.test!])
      ? testFormula(series.test, batches)
      : undefined;
  return {
    head: nameOf(series),
    ...(unit === "" ? {} : { unit }),
    ...(unit === series.unit ? {} : { dataUnit: series.unit }),
    align: "number",
    ...(formula === undefined ? {} : { formula }),
  };
}

function valueCell(one: DiaryValue | undefined, series: DiarySeries, units: ShownUnits): TableCell | string {
  if (!one) return "";
  const out = one.keptOut === undefined ? "" : " (left out)";
  const { low, high } = endsOf(one.spread);
  const shown = figureInShownUnit({ value: one.value, low, high }, series.unit, systemOf(series, units));
  if (!(shown.low < shown.high))
    return { text: `${Number(shown.value.toPrecision(4))} (± not known)${out}`, number: one.value };
  const { text } = printFigure({
    value: shown.value,
    low: Math.min(shown.low, shown.value),
    high: Math.max(shown.high, shown.value),
    atLeast: one.missing.length > 0,
  });
  return { text: `${text}${out}`, number: one.value };
}
