// The first page of an opened log: what each notebook says of it, in a line.

import type { Log } from "../log/types.ts";
import { htmlDocument } from "../page/html.ts";
import { escapeHtml, flowHtml } from "../page/html-text.ts";
import { pageStyle } from "../page/style.ts";
import { english } from "../page/words.ts";
import type { Surveyed } from "./open-survey.ts";

const TITLE = "What the log tells";
export const LIST_QUESTION = "Which pages does this log fill, and what does each say?";

/** @param hrefOf  Address of a notebook's page. */
export function indexHtml(
  log: Log,
  surveyed: readonly Surveyed[],
  hrefOf: (name: string) => string,
): Promise<string> {
  const link = ({ notebook }: Surveyed) =>
    `<a href="${escapeHtml(hrefOf(notebook.name))}">${escapeHtml(notebook.title)}</a>`;
  const full = surveyed.filter(({ says }) => says !== undefined);
  const empty = surveyed.filter(({ says }) => says === undefined);
  const body = [
    "<header>",
    `<h1>${escapeHtml(log.title ?? log.file)}</h1>`,
    log.invented ? `<p class="invented">${english.invented()}</p>` : "",
    `<p class="question">${LIST_QUESTION}</p>`,
    hazards(full),
    full.length === 0
      ? "<p>None yet. Begin with one of those below, and write into the log as you test.</p>"
      : "",
    "</header>",
    "<main>",
    ...full.map(
      (one) => `<section aria-labelledby="${one.notebook.name}">
<h2 id="${one.notebook.name}">${link(one)}</h2>
<p class="question">${flowHtml(one.question)}</p>
<div class="answer"><p>${flowHtml(one.says ?? "")}</p></div>
</section>`,
    ),
    empty.length === 0
      ? ""
      : `<section aria-labelledby="to-come">
<h2 id="to-come">Nothing in the log for these yet</h2>
<ul>
${empty.map((one) => `<li>${link(one)}: ${flowHtml(one.question)}</li>`).join("\n")}
</ul>
</section>`,
    "</main>",
    `<footer><p>Log ${escapeHtml(log.file)}, fingerprint ${escapeHtml(log.fingerprint)}.</p></footer>`,
  ];
  return htmlDocument({
    lang: "en",
    title: `${TITLE}: ${log.title ?? log.file}`,
    description: LIST_QUESTION,
    style: pageStyle(),
    body: body.filter((line) => line !== "").join("\n"),
  });
}

/** Figures stand on this page too: the hazards that they go with come before them. */
function hazards(full: readonly Surveyed[]): string {
  const all = [...new Set(full.flatMap(({ hazards }) => hazards))];
  if (all.length === 0) return "";
  const first = all.slice(0, 2).join(" ");
  return `<p class="hazards"><strong>${english.caution()}</strong> ${flowHtml(first)} Every page begins with its cautions.</p>`;
}
