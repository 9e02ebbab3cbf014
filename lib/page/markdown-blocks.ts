// Blocks as Markdown.

import type { Caution, Finding } from "../finding/finding.ts";
import { type Issue, placeText } from "../issue.ts";
import type { KeyFigure, Text } from "./blocks.ts";
import { chartTableParts } from "./chart-table.ts";
import type { LaidBlock, LaidChart, LaidTable } from "./lay-out.ts";
import { markdownTable } from "./markdown-table.ts";
import {
  escapeMarkdown,
  markdownCode,
  markdownLines,
  markdownText,
  markdownWithCode,
} from "./markdown-text.ts";
import { withoutSpare } from "./table-parts.ts";
import { english, MARKS, type PageWords } from "./words.ts";
import { foldedRows, workedOut, workedOutName } from "./worked-out.ts";

/** Blocks one after the other with a blank line between. */
export function markdownBlocks(blocks: readonly LaidBlock[], words: PageWords = english): string {
  return blocks.map((block) => markdownBlock(block, words)).join("\n\n");
}

function markdownBlock(block: LaidBlock, words: PageWords): string {
  switch (block.kind) {
    case "prose":
      return markdownText(block.text);
    case "list":
      return markdownList(block.items, block.ordered ? (n) => `${n}.` : () => "-");
    case "lines":
      return markdownLines(block.text);
    case "figures":
      return block.figures.map((one) => keyFigure(one, words)).join("\n");
    case "finding":
      return finding(block.finding, words);
    case "caution":
      return caution(block.caution, words, block.deferralSaid);
    case "issues":
      return markdownIssues(block.issues, words);
    case "table":
      return tableBlock(block, words);
    case "chart":
      return chartBlock(block, words);
    case "fold":
      return `**${escapeMarkdown(block.summary)}**\n\n${markdownBlocks(block.blocks, words)}`;
  }
}

/** The table; its rows beyond the first screens as a second one; its formulas in one line. */
function tableBlock(whole: LaidTable, words: PageWords): string {
  const block = withoutSpare(whole);
  const { head, rest } = foldedRows(block, words);
  const label = escapeMarkdown(words.table(block.label));
  const formulas = workedOut(block).map((one) => {
    const source = one.source === undefined ? "" : ` (${escapeMarkdown(one.source)})`;
    return `${escapeMarkdown(workedOutName(one))} = ${markdownCode(one.formula)}${source}`;
  });
  return [
    markdownTable({ ...head, label }),
    ...(rest
      ? [
          markdownTable({
            columns: block.columns,
            rows: rest.rows,
            label: `${label}, ${escapeMarkdown(rest.says)}`,
          }),
        ]
      : []),
    ...(formulas.length > 0 ? [`${escapeMarkdown(words.workedOut())}: ${formulas.join("; ")}.`] : []),
  ].join("\n\n");
}

export function markdownList(items: readonly Text[], bullet: (n: number) => string = () => "-"): string {
  return items.map((item, i) => `${bullet(i + 1)} ${markdownText(item)}`).join("\n");
}

export function markdownIssues(issues: readonly Issue[], words: PageWords): string {
  return issues
    .map((issue) => {
      const { severity, message, remedy, about } = issue;
      const place = placeText(issue.place);
      return [
        `- **${escapeMarkdown(words.severity(severity))}**`,
        place === "" ? "" : markdownCode(place),
        about === undefined ? "" : `${escapeMarkdown(about)}:`,
        markdownWithCode(message),
        remedy === undefined ? "" : markdownWithCode(remedy),
      ]
        .filter((part) => part !== "")
        .join(" ");
    })
    .join("\n");
}

function keyFigure({ label, figure, unit, under, weak }: KeyFigure, words: PageWords): string {
  const shown = escapeMarkdown(unit === undefined ? figure : `${figure} ${unit}`);
  const line = [weak ? escapeMarkdown(words.weak()) : "", under === undefined ? "" : escapeMarkdown(under)]
    .filter(Boolean)
    .join(": ");
  return `- ${escapeMarkdown(label)}: ${weak ? shown : `**${shown}**`}${line === "" ? "" : ` (${line})`}`;
}

/** The finding's sentence as a list item, what it rests on as items under it. */
function finding({ tone, text, because, formula, source }: Finding, words: PageWords): string {
  return [
    `- ${MARKS[tone]} *${escapeMarkdown(words.tone(tone))}.* ${escapeMarkdown(text)}`,
    ...because.map((reason) => `  - ${markdownWithCode(reason)}`),
    ...(formula === undefined ? [] : [`  - ${markdownCode(formula)}`]),
    ...(source === undefined ? [] : [`  - ${escapeMarkdown(words.source(source))}`]),
  ].join("\n");
}

function caution({ trigger, text, points, defers }: Caution, words: PageWords, deferralSaid = false): string {
  const list = points.map((point) => `> - ${escapeMarkdown(point)}`);
  return [
    `> **${escapeMarkdown(words.caution())}** *${escapeMarkdown(trigger)}*`,
    ">",
    `> ${escapeMarkdown(text)}`,
    ...(list.length === 0 ? [] : [">", ...list]),
    ...(deferralSaid ? [] : [">", `> ${escapeMarkdown(defers)}`]),
  ].join("\n");
}

function chartBlock({ chart, label: name, stem }: LaidChart, words: PageWords): string {
  const table = markdownTable({
    label: escapeMarkdown(words.figureData(name)),
    ...chartTableParts(chart.table, words),
  });
  return `![${escapeMarkdown(chart.alt)}](${stem}.svg)\n\n**${escapeMarkdown(words.figure(name))}.** ${escapeMarkdown(chart.caption)}\n\n${table}`;
}
