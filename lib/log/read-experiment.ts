// The record of an experiment: what was asked, changed, held and measured, in the founder's own words.

import type { Batch } from "./batch.ts";
import {
  batchOutsideDays,
  endsBeforeItBegins,
  experimentAsksNothing,
  experimentChangesNothing,
  notALine,
} from "./complaints-experiment.ts";
import { emptyValue } from "./complaints-field.ts";
import type { ExperimentRecord, LoggedLine } from "./experiment-record.ts";
import { dateOf, type Fields, fieldsOf, mapOf, textNodeOf } from "./fields.ts";
import { given } from "./given.ts";
import { experimentKeys } from "./log-keys.ts";
import { type Entry, isHoled, type LogNode, type Report } from "./node.ts";

/** Lists may be one line, a list of lines, or names with a line each. batches: to hold their days against its own. */
export function readExperiment(
  entry: Entry | undefined,
  batches: readonly Batch[],
  report: Report,
  reportAbout: (name: string) => Report,
): ExperimentRecord | undefined {
  const map = mapOf(entry?.value, "experiment", report);
  if (!map || !entry) return undefined;
  const fields = fieldsOf(map, experimentKeys, "of an experiment", report);
  const line = (key: string): LoggedLine | undefined => lineOf(textNodeOf(fields.get(key), key, report));
  const lines = (key: string): LoggedLine[] => linesOf(fields.get(key), key, report);
  const question = line("question");
  const changed = lines("changed");
  if (!fields.holed && !fields.get("question")) report(experimentAsksNothing(), entry.keyPlace);
  if (!fields.holed && !fields.get("changed")) report(experimentChangesNothing(), entry.keyPlace);
  const days = daysOf(fields, report);
  sayOutside(batches, days, reportAbout);
  return {
    ...given({ question, by: line("by"), where: line("where"), version: line("version") }),
    expected: lines("expected"),
    changed,
    held: lines("held"),
    measured: lines("measured"),
    departures: lines("departures"),
    leftOut: lines("left out"),
    open: lines("open"),
    review: lines("review"),
    ...days,
    place: entry.keyPlace,
  };
}

function lineOf(node: LogNode | undefined): LoggedLine | undefined {
  return node?.kind === "text" ? { text: node.text.trim(), place: node.place } : undefined;
}

function linesOf(node: LogNode | undefined, what: string, report: Report): LoggedLine[] {
  if (!node) return [];
  switch (node.kind) {
    case "text":
      if (node.text.trim() === "") report(emptyValue(what), node.place);
      return node.text.trim() === "" ? [] : [lineOf(node)!];
    case "empty":
      if (!isHoled(node)) report(emptyValue(what), node.place);
      return [];
    case "list":
      return node.items.flatMap((item) => {
        if (item.kind !== "list") return linesOf(item, what, report);
        report(notALine(what), item.place);
        return [];
      });
    case "map":
      // A line with a colon in it, or a name with what is said of it.
      return node.entries.flatMap(({ key, keyPlace, value }) => {
        const said = lineOf(value);
        if (said) return [{ text: `${key.trim()}: ${said.text}`, place: said.place }];
        if (value.kind === "empty") return [{ text: key.trim(), place: keyPlace }];
        report(notALine(what), keyPlace);
        return [];
      });
  }
}

function daysOf(fields: Fields, report: Report): Pick<ExperimentRecord, "from" | "to"> {
  const from = dateOf(fields.get("from"), report);
  const to = dateOf(fields.get("to"), report);
  if (from === undefined || to === undefined || from <= to) return given({ from, to });
  report(endsBeforeItBegins(from, to), fields.entry("to")!.keyPlace);
  return { from: to, to: from };
}

function sayOutside(
  batches: readonly Batch[],
  { from, to }: Pick<ExperimentRecord, "from" | "to">,
  reportAbout: (name: string) => Report,
): void {
  if (from === undefined || to === undefined) return;
  for (const { name, date, place } of batches) {
    if (date !== undefined && (date < from || date > to)) {
      reportAbout(name)(batchOutsideDays(date, from, to), place);
    }
  }
}
