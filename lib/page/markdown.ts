// A page as Markdown, its drawings as SVG files beside it.

import type { Page } from "./blocks.ts";
import { type Draw, drawCharts } from "./drawing.ts";
import { layOut } from "./lay-out.ts";
import { markdownBlocks, markdownIssues, markdownList } from "./markdown-blocks.ts";
import { escapeMarkdown, markdownText } from "./markdown-text.ts";
import { standaloneSvg } from "./svg-text.ts";
import { plainText } from "./visible.ts";
import { errorNotice, issuesTitle, SOURCES } from "./words.ts";

export interface MarkdownOptions {
  /** Draws a chart's spec as SVG; the library's own drawing unless said otherwise. */
  readonly draw?: Draw;
}

/**
 * The page as CommonMark with GFM tables, readable as it stands, and the files to put beside it: an SVG for each
 * chart, by name. Text of the page never becomes markup or a link.
 */
export async function writeMarkdown(
  page: Page,
  options: MarkdownOptions = {},
): Promise<{ markdown: string; files: { [name: string]: string } }> {
  const laid = layOut(page);
  const { sources, issues, colophon, errors } = laid;
  const notice = errorNotice(errors);
  const parts = [
    `# ${escapeMarkdown(laid.title)}`,
    `*${escapeMarkdown(plainText(laid.question))}*`,
    errors === 0 ? "" : `**${notice.says}** ${notice.link}, near the end.`,
    ...laid.answer.map(markdownText),
    ...laid.sections.map(({ title, blocks }) => `## ${escapeMarkdown(title)}\n\n${markdownBlocks(blocks)}`),
    sources.length === 0 ? "" : `## ${SOURCES}\n\n${markdownList(sources)}`,
    issues.length === 0 ? "" : `## ${issuesTitle(issues)}\n\n${markdownIssues(issues)}`,
    colophon.length === 0 ? "" : `---\n\n${colophon.map(escapeMarkdown).join("  \n")}`,
  ];
  const drawings = await drawCharts(laid, options.draw, "wide");
  const files = [...drawings].map(([{ stem }, { wide }]) => [`${stem}.svg`, standaloneSvg(wide)]);
  return {
    markdown: `${parts.filter((part) => part !== "").join("\n\n")}\n`,
    files: Object.fromEntries(files),
  };
}
