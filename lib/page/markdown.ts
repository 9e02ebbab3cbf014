// A page as Markdown, its drawings as SVG files beside it.

import { type AttachedFile, attachedFiles } from "./attachments.ts";
import type { Page } from "./blocks.ts";
import { type Draw, drawCharts } from "./drawing.ts";
import { layOut } from "./lay-out.ts";
import { markdownBlocks, markdownIssues, markdownList } from "./markdown-blocks.ts";
import { escapeMarkdown, markdownText } from "./markdown-text.ts";
import { standaloneSvg } from "./svg-text.ts";
import { plainText } from "./visible.ts";
import {
  CAUTION,
  errorNotice,
  FILES,
  hazardLine,
  INVENTED,
  othersTitle,
  SOURCES,
  WENT_WRONG,
} from "./words.ts";

export interface MarkdownOptions {
  /** Draws a chart's spec as SVG; the library's own drawing unless said otherwise. */
  readonly draw?: Draw;
}

/**
 * The page as CommonMark with GFM tables, readable as it stands, and the files to put beside it: an SVG for each
 * chart, by name, and in the folder "data" those that travel with the page, as they are. Text of the page never becomes
 * markup or a link.
 */
export async function writeMarkdown(
  page: Page,
  options: MarkdownOptions = {},
): Promise<{ markdown: string; files: { [name: string]: string } }> {
  const laid = layOut(page);
  const { sources, others, colophon, errors, invented } = laid;
  const attached = attachedFiles(laid.attachments);
  const parts = [
    `# ${escapeMarkdown(laid.title)}`,
    invented ? INVENTED : "",
    laid.titleBlock
      .map(({ label, text }) => `${escapeMarkdown(label)}: ${escapeMarkdown(text)}`)
      .join("  \n"),
    `*${escapeMarkdown(plainText(laid.question))}*`,
    errors.length === 0 ? "" : `**${errorNotice(errors.length).says}** They stand below the answer.`,
    laid.hazards.length === 0 ? "" : `**${CAUTION}** ${escapeMarkdown(hazardLine(laid.hazards))}`,
    ...laid.answer.map(markdownText),
    errors.length === 0 ? "" : `## ${WENT_WRONG}\n\n${markdownIssues(errors)}`,
    ...laid.sections.map(({ title, blocks }) => `## ${escapeMarkdown(title)}\n\n${markdownBlocks(blocks)}`),
    sources.length === 0
      ? ""
      : `## ${SOURCES}\n\n${markdownList(sources, laid.numberedSources ? (n) => `${n}.` : undefined)}`,
    others.length === 0 ? "" : `## ${othersTitle(others)}\n\n${markdownIssues(others)}`,
    attached.length === 0 ? "" : `## ${FILES}\n\n${attached.map(fileLine).join("\n")}`,
    colophon.length === 0 ? "" : `---\n\n${colophon.map(escapeMarkdown).join("  \n")}`,
  ];
  const drawings = await drawCharts(laid, options.draw, "wide");
  const files = [
    ...[...drawings].map(([{ stem }, { wide }]) => [`${stem}.svg`, standaloneSvg(wide)]),
    ...attached.map(({ path, text }) => [path, text]),
  ];
  return {
    markdown: `${parts.filter((part) => part !== "").join("\n\n")}\n`,
    files: Object.fromEntries(files),
  };
}

function fileLine({ name, path, says }: AttachedFile): string {
  const address = path
    .split("/")
    .map((part) =>
      encodeURIComponent(part).replace(/[()'!*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`),
    )
    .join("/");
  return `- [${escapeMarkdown(name)}](${address}): ${escapeMarkdown(says)}`;
}
