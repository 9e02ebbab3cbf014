// A page as HTML in one file: no script, nothing from the network.

import type { Page } from "./blocks.ts";
import { type Draw, drawCharts } from "./drawing.ts";
import { htmlAttachments, htmlTitleBlock } from "./html-attachments.ts";
import { htmlBlocks } from "./html-blocks.ts";
import { htmlErrors, htmlIssues } from "./html-notes.ts";
import { escapeHtml, htmlList, htmlText } from "./html-text.ts";
import { type LaidPage, layOut } from "./lay-out.ts";
import { HATCH, pageStyle } from "./style.ts";
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

export interface HtmlOptions {
  /** Language of the page, a BCP 47 tag; "en" unless said otherwise. */
  readonly lang?: string;
  /** Draws a chart's spec as SVG; the library's own drawing unless said otherwise. */
  readonly draw?: Draw;
}

/**
 * The page as one HTML file, to read and to print. Text of the page never becomes markup. A content security
 * policy forbids scripts, the network, and every style but the page's own, known by its hash.
 * @example await writeFile("fineness.html", await writeHtml(page));
 */
export async function writeHtml(page: Page, options: HtmlOptions = {}): Promise<string> {
  const laid = layOut(page);
  return htmlDocument({
    lang: options.lang ?? "en",
    title: laid.title,
    description: plainText(laid.question),
    style: pageStyle(),
    body: `${htmlBody(laid, await htmlSections(laid, options.draw))}\n${HATCH}`,
  });
}

export interface HtmlDocument {
  readonly lang: string;
  readonly title: string;
  readonly description: string;
  readonly style: string;
  /** Markup. */
  readonly body: string;
}

/** A whole file: a policy that allows this one style and nothing else, the head, the body. */
export async function htmlDocument({ lang, title, description, style, body }: HtmlDocument): Promise<string> {
  const policy = `default-src 'none'; style-src 'sha256-${await sha256(style)}'; img-src data:; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="${escapeHtml(lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${escapeHtml(title)}</title>
<meta name="description" content="${escapeHtml(description)}">
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}

/** The sections with their blocks, in order. */
async function htmlSections(laid: LaidPage, draw?: Draw): Promise<string> {
  const drawings = await drawCharts(laid, draw, "both");
  return laid.sections
    .map(({ id, role, title, blocks }) => section(id, role, title, htmlBlocks(blocks, drawings)))
    .join("\n");
}

/** What stands in the body around the sections: header, errors, sources, other issues and colophon. */
function htmlBody(laid: LaidPage, sections: string): string {
  const { sources, others, colophon, errors, invented, attachments } = laid;
  const notice = errorNotice(errors.length);
  return [
    "<header>",
    `<h1>${escapeHtml(laid.title)}</h1>`,
    invented ? `<p class="invented">${INVENTED}</p>` : "",
    laid.titleBlock.length === 0 ? "" : htmlTitleBlock(laid.titleBlock),
    `<p class="question">${htmlText(laid.question)}</p>`,
    errors.length === 0
      ? ""
      : `<p class="notice"><strong>${notice.says}</strong> <a href="#what-went-wrong">${notice.link}</a>.</p>`,
    laid.hazards.length === 0
      ? ""
      : `<p class="hazards"><strong>${CAUTION}</strong> ${escapeHtml(hazardLine(laid.hazards))}</p>`,
    laid.answer.length === 0
      ? ""
      : `<div class="answer">\n${laid.answer.map((text) => `<p>${htmlText(text)}</p>`).join("\n")}\n</div>`,
    "</header>",
    "<main>",
    errors.length === 0 ? "" : section("what-went-wrong", "went-wrong", WENT_WRONG, htmlErrors(errors)),
    sections,
    sources.length === 0
      ? ""
      : section(
          "sources",
          "sources",
          SOURCES,
          htmlList(sources.map(escapeHtml), "", laid.numberedSources ? "ol" : "ul"),
        ),
    others.length === 0 ? "" : section("notes", "notes", othersTitle(others), htmlIssues(others)),
    attachments.length === 0 ? "" : section("files", "files", FILES, htmlAttachments(attachments)),
    "</main>",
    colophon.length === 0
      ? ""
      : `<footer>\n${colophon.map((line) => `<p>${escapeHtml(line)}</p>`).join("\n")}\n</footer>`,
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function section(id: string, name: string, title: string, content: string): string {
  return `<section class="${name}" id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escapeHtml(title)}</h2>
${content}
</section>`;
}

async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
}
