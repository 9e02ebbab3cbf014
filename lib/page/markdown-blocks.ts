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
import { SEVERITIES, TONES, WEAK, WORKED_OUT } from "./words.ts";
import { foldedRows, workedOut, workedOutName } from "./worked-out.ts";

/** Blocks one after the other with a blank line between. */
export function markdownBlocks(blocks: readonly LaidBlock[]): string {
  return blocks.map(markdownBlock).join("\n\n");
}

function markdownBlock(block: LaidBlock): string {
  switch (block.kind) {
    case "prose":
      return markdownText(block.text);
    case "list":
      return markdownList(block.items, block.ordered ? (n) => `${n}.` : () => "-");
    case "lines":
      return markdownLines(block.text);
    case "figures":
      return block.figures.map(keyFigure).join("\n");
    case "finding":
      return finding(block.finding);
    case "caution":
      return caution(block.caution, block.deferralSaid);
    case "issues":
      return markdownIssues(block.issues);
    case "table":
      return tableBlock(block);
    case "chart":
      return chartBlock(block);
    case "fold":
      return `**${escapeMarkdown(block.summary)}**\n\n${markdownBlocks(block.blocks)}`;
  }
}

/** The table; its rows beyond the first screens as a second one; its formulas in one line. */
function tableBlock(block: LaidTable): string {
  const { head, rest } = foldedRows(block);
  const label = `Table ${block.number}`;
  const formulas = workedOut(block).map((one) => {
    const source = one.source === undefined ? "" : ` (${escapeMarkdown(one.source)})`;
    return `${escapeMarkdown(workedOutName(one))} = ${markdownCode(one.formula)}${source}`;
  });
  return [
    markdownTable({ ...head, label }),
    ...(rest
      ? [markdownTable({ columns: block.columns, rows: rest.rows, label: `${label}, ${rest.says}` })]
      : []),
    ...(formulas.length > 0 ? [`${WORKED_OUT}: ${formulas.join("; ")}.`] : []),
  ].join("\n\n");
}

export function markdownList(items: readonly Text[], bullet: (n: number) => string = () => "-"): string {
  return items.map((item, i) => `${bullet(i + 1)} ${markdownText(item)}`).join("\n");
}

export function markdownIssues(issues: readonly Issue[]): string {
  return issues
    .map((issue) => {
      const { severity, message, remedy, about } = issue;
      const place = placeText(issue.place);
      return [
        `- **${SEVERITIES[severity]}**`,
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

function keyFigure({ label, figure, unit, under, weak }: KeyFigure): string {
  const words = escapeMarkdown(unit === undefined ? figure : `${figure} ${unit}`);
  const line = [weak ? WEAK : "", under === undefined ? "" : escapeMarkdown(under)]
    .filter(Boolean)
    .join(": ");
  return `- ${escapeMarkdown(label)}: ${weak ? words : `**${words}**`}${line === "" ? "" : ` (${line})`}`;
}

/** The finding's sentence as a list item, what it rests on as items under it. */
function finding({ tone, text, because, formula, source }: Finding): string {
  const { mark, word } = TONES[tone];
  return [
    `- ${mark} *${word}.* ${escapeMarkdown(text)}`,
    ...because.map((reason) => `  - ${escapeMarkdown(reason)}`),
    ...(formula === undefined ? [] : [`  - ${markdownCode(formula)}`]),
    ...(source === undefined ? [] : [`  - Source: ${escapeMarkdown(source)}`]),
  ].join("\n");
}

function caution({ trigger, text, points, defers }: Caution, deferralSaid = false): string {
  const list = points.map((point) => `> - ${escapeMarkdown(point)}`);
  return [
    `> **Caution** *${escapeMarkdown(trigger)}*`,
    ">",
    `> ${escapeMarkdown(text)}`,
    ...(list.length === 0 ? [] : [">", ...list]),
    ...(deferralSaid ? [] : [">", `> ${escapeMarkdown(defers)}`]),
  ].join("\n");
}

function chartBlock({ chart, number, stem }: LaidChart): string {
  const table = markdownTable({
    label: `Data of figure ${number}`,
    ...chartTableParts(chart.table),
  });
  return `![${escapeMarkdown(chart.alt)}](${stem}.svg)\n\n**Figure ${number}.** ${escapeMarkdown(chart.caption)}\n\n${table}`;
}
