// A page in which figures can be changed, in one file: as written, with the log and the library packed behind it.

import { logOutline } from "../log/outline.ts";
import { outlinedBatches } from "../log/outline-batches.ts";
import type { Page } from "./blocks.ts";
import { type Draw, drawKeyedCharts } from "./drawing.ts";
import { htmlDocument, sha256 } from "./html.ts";
import { htmlParts } from "./html-parts.ts";
import { layOut } from "./lay-out.ts";
import { CHART_STYLE } from "./live-chart-style.ts";
import { linksToOthers, OTHERS_STYLE } from "./live-others.ts";
import { REDRAW_STYLE } from "./live-redraw-style.ts";
import type { LiveSetup, LiveStart } from "./live-setup.ts";
import { liveStyle } from "./live-style.ts";
import { HATCH, pageStyle } from "./style.ts";
import { hiddenAsCodes, plainText } from "./visible.ts";

/** A script as it travels in a page. */
export interface PackedScript {
  /** Its UTF-8 bytes, compressed by gzip, as text without "<" (lib/live/base91.ts). */
  readonly packed: string;
  /** Of its text, as a content security policy names it. */
  readonly hash: string;
}

export interface LiveScripts {
  /** The few lines that unpack the others when somebody begins to change a figure. */
  readonly boot: string;
  /** Library, drawing and editing. */
  readonly runtime: PackedScript;
  /** The notebook. */
  readonly notebook: PackedScript;
}

export interface LiveHtmlOptions {
  readonly setup: LiveSetup;
  readonly scripts: LiveScripts;
  /** Language of the page, a BCP 47 tag; "en" unless said otherwise. */
  readonly lang?: string;
  readonly draw?: Draw;
}

/**
 * The page as one HTML file that is read as the written one and can be changed. Its policy knows each script by its
 * hash and allows no code made of text; a page from a file reaches nothing at all, one from the server the server.
 */
export async function writeLiveHtml(
  page: Page,
  { setup, scripts, lang = "en", draw }: LiveHtmlOptions,
): Promise<string> {
  const laid = layOut(page);
  const { header, sections, footer } = htmlParts(laid, await drawKeyedCharts(laid, draw), true);
  const { boot, runtime, notebook } = scripts;
  const hashes = [await sha256(boot), runtime.hash, notebook.hash].map((hash) => `'sha256-${hash}'`);
  return htmlDocument({
    lang,
    title: laid.title,
    description: plainText(laid.question),
    style: `${pageStyle()}\n${REDRAW_STYLE}\n${OTHERS_STYLE}\n${CHART_STYLE}\n${liveStyle()}`,
    allowed: [
      `script-src ${hashes.join(" ")}`,
      "worker-src blob:",
      `connect-src ${setup.keep.kind === "server" ? "'self'" : "'none'"}`,
    ],
    body: [
      header,
      INVITATION,
      "<main>",
      ...sections.map(({ html }) => html),
      "</main>",
      linksToOthers(setup.keep),
      footer,
      HATCH,
      `<script type="application/json" id="live-setup">${jsonInHtml(startOf(setup))}</script>`,
      `<script type="text/plain" id="live-runtime">${runtime.packed}</script>`,
      `<script type="text/plain" id="live-notebook">${notebook.packed}</script>`,
      `<script>${boot}</script>`,
    ]
      .filter((line) => line !== "")
      .join("\n"),
  });
}

/** Stands between answer and sections until the live part takes its place. data-live: no part of the page as written. */
const INVITATION = `<aside id="live" class="live" data-live aria-label="Change the log">
<p>Change a figure, and the page is worked out again: choose one that is underlined with dots, or <button type="button" data-start>open the log</button>.</p>
</aside>`;

function startOf(setup: LiveSetup): LiveStart {
  const batches = outlinedBatches(logOutline(setup.texts));
  return {
    ...setup,
    batches: batches.map(({ name, keptOut }) => ({ name, isOut: keptOut !== undefined })),
  };
}

/** JSON that ends no element and hides nothing, whatever stands in the log. */
function jsonInHtml(value: unknown): string {
  return hiddenAsCodes(JSON.stringify(value)).replace(/</g, "\\u003c");
}
