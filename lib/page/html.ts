// A page as HTML in one file: no script, nothing from the network.

import type { Words } from "../catalogue/in-words.ts";
import type { Page } from "./blocks.ts";
import { type Draw, drawCharts } from "./drawing.ts";
import { htmlBody, htmlParts } from "./html-parts.ts";
import { escapeHtml } from "./html-text.ts";
import { layOut } from "./lay-out.ts";
import { HATCH, pageStyle } from "./style.ts";
import { plainText } from "./visible.ts";
import { pageWords } from "./words.ts";

export interface HtmlOptions {
  /** Language of the page, a BCP 47 tag; "en" unless said otherwise. */
  readonly lang?: string;
  /** Draws a chart's spec as SVG; the library's own drawing unless said otherwise. */
  readonly draw?: Draw;
  /** The page's own words, such as Sources and Caution, in another language; see inLanguage. */
  readonly words?: Words;
}

/**
 * The page as one HTML file, to read and to print. Text of the page never becomes markup. A content security
 * policy forbids scripts, the network, and every style but the page's own, known by its hash.
 * @example await writeFile("fineness.html", await writeHtml(page));
 */
export async function writeHtml(page: Page, options: HtmlOptions = {}): Promise<string> {
  const laid = layOut(page);
  const words = pageWords(options.words);
  const parts = htmlParts(laid, await drawCharts(laid, options.draw, "both"), false, words);
  const body = `${htmlBody(parts)}\n${HATCH}`;
  return htmlDocument({
    lang: options.lang ?? "en",
    title: laid.title,
    description: plainText(laid.question),
    style: styleOf(body, pageStyle(words)),
    body,
  });
}

/** Rules for columns, widths of parts and cards to print that this page has none of are left out: nothing comes to it later. */
function styleOf(body: string, style: string): string {
  const used = new Set<string>();
  for (const [, names] of body.matchAll(/<(?:table|span) class="?([^">]*)/g))
    for (const name of names!.split(" ")) used.add(name);
  return style
    .replace(/^[^\n{]*\.own-sheet\b.*\n/gm, (rule) => (body.includes('class="own-sheet"') ? rule : ""))
    .replace(/\.(w\d+)\{min-width:\d+ch\}/g, (rule, name: string) => (used.has(name) ? rule : ""))
    .replace(/\.([nt]\d+) tr>:nth-child\(\d+\),?/g, (one, name: string) => (used.has(name) ? one : ""))
    .replaceAll(",{", "{")
    .replace(/^\{[^}]*\}\n/gm, "");
}

export interface HtmlDocument {
  readonly lang: string;
  readonly title: string;
  readonly description: string;
  readonly style: string;
  /** Markup. */
  readonly body: string;
  /** What the policy allows besides the style. */
  readonly allowed?: readonly string[];
}

/** A whole file: a policy that allows this one style and nothing else unless said otherwise, the head, the body. */
export async function htmlDocument(document: HtmlDocument): Promise<string> {
  const { lang, title, description, style, body, allowed = [] } = document;
  const policy = [
    "default-src 'none'",
    `style-src 'sha256-${await sha256(style)}'`,
    ...allowed,
    "img-src data:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
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

/** As a content security policy names it: base64 of the SHA-256 of the UTF-8 bytes. */
export async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
}
