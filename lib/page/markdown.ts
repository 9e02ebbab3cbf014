// A page as Markdown, its drawings as SVG files beside it.

import type { Words } from "../catalogue/in-words.ts";
import { type AttachedFile, attachedFiles } from "./attachments.ts";
import type { Page } from "./blocks.ts";
import { type Draw, drawCharts } from "./drawing.ts";
import { layOut } from "./lay-out.ts";
import { markdownBlocks, markdownIssues, markdownList } from "./markdown-blocks.ts";
import { escapeMarkdown, markdownText } from "./markdown-text.ts";
import { standaloneSvg } from "./svg-text.ts";
import { plainText } from "./visible.ts";
import { hazardLine, othersTitle, pageWords } from "./words.ts";

export interface MarkdownOptions {
  /** Draws a chart's spec as SVG; the library's own drawing unless said otherwise. */
  readonly draw?: Draw;
  /** The page's own words, such as Sources and Caution, in another language; see inLanguage. */
  readonly words?: Words;
}

/**
 * The page as CommonMark with GFM tables, readable as it stands, and the files to put beside it: an SVG for each
 * chart, by name, and in the folder "data" those that travel with the page, as they are. Text of the page never becomes
 * markup or a link.
 * @example const { markdown, files } = await writeMarkdown(fineness.run(log));
 */
export async function writeMarkdown(
  page: Page,
  options: MarkdownOptions = {},
): Promise<{ markdown: string; files: { [name: string]: string } }> {
  const laid = layOut(page);
  const words = pageWords(options.words);
  const { sources, others, colophon, errors, invented } = laid;
  const attached = attachedFiles(laid.attachments);
  const parts = [
    `# ${escapeMarkdown(laid.title)}`,
    invented ? escapeMarkdown(words.invented()) : "",
    laid.titleBlock
      .map(({ label, text }) => `${escapeMarkdown(label)}: ${escapeMarkdown(text)}`)
      .join("  \n"),
    `*${escapeMarkdown(plainText(laid.question))}*`,
    errors.length === 0
      ? ""
      : `**${escapeMarkdown(words.errorNotice(String(errors.length)))}** ${escapeMarkdown(words.errorsBelow())}`,
    laid.hazards.length === 0
      ? ""
      : `**${escapeMarkdown(words.caution())}** ${escapeMarkdown(hazardLine(laid.hazards, words))}`,
    ...laid.answer.map(markdownText),
    errors.length === 0 ? "" : `## ${escapeMarkdown(words.wentWrong())}\n\n${markdownIssues(errors, words)}`,
    ...laid.sections.map(
      ({ title, blocks }) => `## ${escapeMarkdown(title)}\n\n${markdownBlocks(blocks, words)}`,
    ),
    sources.length === 0
      ? ""
      : `## ${escapeMarkdown(words.sources())}\n\n${markdownList(sources, laid.numberedSources ? (n) => `${n}.` : undefined)}`,
    others.length === 0
      ? ""
      : `## ${escapeMarkdown(othersTitle(others, words))}\n\n${markdownIssues(others, words)}`,
    attached.length === 0
      ? ""
      : `## ${escapeMarkdown(words.files())}\n\n${attached.map(fileLine).join("\n")}`,
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
