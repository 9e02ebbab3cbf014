// What stands around a write-up: title block, question, summary, colophon, and the files that travel with it.

import type { Finding } from "../finding/finding.ts";
import { writeUpAnswer } from "../finding/write-up-answer.ts";
import { daysText, type WriteUp } from "../finding/write-up-record.ts";
import type { BlockComparison } from "./block-comparisons.ts";
import type { Attachment, PageSpec, Text, TitleLine } from "./blocks.ts";
import { inShownUnit, type ShownUnits } from "./shown-units.ts";

/**
 * Title, title block, question, summary and foot of a write-up. found, open: what the summary takes its sentences from.
 * @example
 * const concluded = writeUpFindings(writeUpOf(log), [], shownUnits(log));
 * writeUpHead(writeUpOf(log), [], concluded, shownUnits(log)).question
 */
export function writeUpHead(
  writeUp: WriteUp,
  compared: readonly BlockComparison[],
  { found, open }: { readonly found: readonly Finding[]; readonly open: readonly string[] },
  units: ShownUnits,
): Pick<PageSpec, "title" | "titleBlock" | "question" | "answer" | "colophon" | "attachments"> {
  const { log, record } = writeUp;
  const shown = compared.map((one) => ({ ...one, ...inUnits(one, units) }));
  const answer = writeUpAnswer(writeUp, found, shown, open);
  return {
    title: log.title ?? "Write-up",
    titleBlock: titleBlock(writeUp),
    question: questionOf(record?.question?.text),
    answer: answer.map((text, k): Text => (k === 1 ? [{ strong: text }] : text)),
    colophon: colophon(writeUp),
    attachments: files(log),
  };
}

function inUnits({ test, figures, unit }: BlockComparison, units: ShownUnits) {
  const turned = (value: number) => inShownUnit(value, unit, units.of(test));
  const symbol = turned(0).unit;
  return {
    difference: turned(figures.difference).value,
    low: turned(figures.low).value,
    high: turned(figures.high).value,
    // A difference of percentages is one in points.
    unit: symbol.startsWith("%") ? "points" : symbol,
  };
}

/** As it was typed, with the mark that it may lack. */
function questionOf(typed: string | undefined): string {
  if (typed === undefined) return "What do these batches show?";
  return typed.endsWith("?") ? typed : `${typed.replace(/[.\s]+$/, "")}?`;
}

function titleBlock(writeUp: WriteUp): readonly TitleLine[] {
  const { log, record } = writeUp;
  const line = (label: string, text: string | undefined): TitleLine[] =>
    text === undefined ? [] : [{ label, text }];
  return [
    ...line("Founder", record?.by?.text ?? log.founder),
    ...line("Where", record?.where?.text),
    ...line("Made and tested", daysText(writeUp)),
    ...line("Version", record?.version?.text),
    ...line("Data", log.file),
    ...line("Fingerprint", log.fingerprint),
  ];
}

/** How a reader checks that page and files belong together. */
function colophon({ log, record, days }: WriteUp): readonly string[] {
  const version = record?.version ? `Version ${record.version.text}` : "A version is not said";
  return [
    `${version}${days ? `, ${days.to}` : ""}. Log ${log.file}, fingerprint ${log.fingerprint}.`,
    `The command mullbook check ${log.file} prints the fingerprint of a log with its CSV files: where it is ${log.fingerprint}, this page was made from those files. It matches files and page, and does not say who wrote either.`,
  ];
}

/** The log first, then the CSV files that it names. */
function files({ texts }: WriteUp["log"]): readonly Attachment[] {
  return texts.map(({ name, text }, k) => ({
    name,
    text,
    says: k === 0 ? "the log that this page was made from" : "rows that the log names",
  }));
}
