// The parts of a page as HTML: header, sections, footer. A live page changes them one by one.

import type { Drawings } from "./drawing.ts";
import { htmlAttachments, htmlTitleBlock } from "./html-attachments.ts";
import { htmlBlocks } from "./html-blocks.ts";
import { htmlErrors, htmlIssues } from "./html-notes.ts";
import { escapeHtml, htmlList, htmlText } from "./html-text.ts";
import type { LaidChart, LaidPage } from "./lay-out.ts";
import { english, hazardLine, othersTitle, type PageWords } from "./words.ts";

export interface HtmlParts {
  readonly header: string;
  readonly sections: readonly HtmlSection[];
  /** Empty where there is nothing to say. */
  readonly footer: string;
}
export interface HtmlSection {
  readonly id: string;
  readonly html: string;
}

/** Header; errors, the page's sections, sources, other issues, files; colophon. drawings holds every chart. */
export function htmlParts(
  laid: LaidPage,
  drawings: ReadonlyMap<LaidChart, Drawings>,
  live = false,
  words: PageWords = english,
): HtmlParts {
  const { sources, others, errors, colophon, attachments } = laid;
  const told = (there: boolean, make: () => HtmlSection): HtmlSection[] => (there ? [make()] : []);
  return {
    header: htmlHeader(laid, words),
    sections: [
      ...told(errors.length > 0, () =>
        section("what-went-wrong", "went-wrong", words.wentWrong(), htmlErrors(errors, words)),
      ),
      ...laid.sections.map(({ id, role, title, blocks }) =>
        section(id, role, title, htmlBlocks(blocks, drawings, live, words)),
      ),
      ...told(sources.length > 0, () => {
        const list = htmlList(sources.map(escapeHtml), "", laid.numberedSources ? "ol" : "ul");
        return section("sources", "sources", words.sources(), list);
      }),
      ...told(others.length > 0, () =>
        section("notes", "notes", othersTitle(others, words), htmlIssues(others, words)),
      ),
      ...told(attachments.length > 0, () =>
        section("files", "files", words.files(), htmlAttachments(attachments)),
      ),
    ],
    footer:
      colophon.length === 0
        ? ""
        : `<footer>\n${colophon.map((line) => `<p>${escapeHtml(line)}</p>`).join("\n")}\n</footer>`,
  };
}

/** The parts one after the other. */
export function htmlBody({ header, sections, footer }: HtmlParts): string {
  return [header, "<main>", ...sections.map(({ html }) => html), "</main>", footer]
    .filter((line) => line !== "")
    .join("\n");
}

function htmlHeader(laid: LaidPage, words: PageWords): string {
  const { title, invented, titleBlock, question, errors, hazards, answer } = laid;
  return [
    "<header>",
    `<h1>${escapeHtml(title)}</h1>`,
    invented ? `<p class="invented">${escapeHtml(words.invented())}</p>` : "",
    titleBlock.length === 0 ? "" : htmlTitleBlock(titleBlock),
    `<p class="question">${htmlText(question)}</p>`,
    errors.length === 0
      ? ""
      : `<p class="notice"><strong>${escapeHtml(words.errorNotice(String(errors.length)))}</strong> <a href="#what-went-wrong">${escapeHtml(words.errorLink())}</a>.</p>`,
    hazards.length === 0
      ? ""
      : `<p class="hazards"><strong>${escapeHtml(words.caution())}</strong> ${escapeHtml(hazardLine(hazards, words))}</p>`,
    answer.length === 0
      ? ""
      : `<div class="answer">\n${answer.map((text) => `<p>${htmlText(text)}</p>`).join("\n")}\n</div>`,
    "</header>",
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function section(id: string, name: string, title: string, content: string): HtmlSection {
  return {
    id,
    html: `<section class="${name}" id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escapeHtml(title)}</h2>
${content}
</section>`,
  };
}
