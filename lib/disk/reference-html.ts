// The reference of the public names as one HTML file in the look of every page.

import { htmlDocument } from "../page/html.ts";
import { escapeHtml, htmlList } from "../page/html-text.ts";
import { pageStyle } from "../page/style.ts";
import { commentParts } from "./reference-comment.ts";
import { type ReferenceEntry, stages } from "./reference-entries.ts";

const STYLE = `.names{columns:14rem;font:.85rem/1.6 var(--sans);list-style:none;padding:0;max-width:none}
.names li{margin:0;overflow-wrap:anywhere}
article{margin:0 0 1.8rem}
h3{font:600 1rem/1.4 var(--sans);margin:1.2rem 0 .3rem}
article h3{font:600 1rem/1.3 ui-monospace,"SF Mono",Consolas,monospace;margin:0 0 .3rem;overflow-wrap:anywhere}
.from{font:.85rem/1.5 var(--sans);color:var(--quiet)}`;

export function referenceHtml(entries: readonly ReferenceEntry[], version: string): Promise<string> {
  const sorted = entries.toSorted((a, b) => a.name.localeCompare(b.name, "en"));
  const groups = Object.entries(stages).map(([stage, title]) => {
    const own = sorted.filter((entry) => entry.stage === stage);
    return {
      title,
      run: own.filter(({ kind }) => kind !== "type"),
      types: own.filter(({ kind }) => kind === "type"),
    };
  });
  const runs = entries.filter(({ kind }) => kind !== "type").length;
  const names = groups.map(({ title, run, types }) =>
    [
      `<h3>${escapeHtml(title)}</h3>`,
      list(run),
      types.length === 0 ? "" : `<details><summary>Types</summary>\n${list(types)}\n</details>`,
    ].join("\n"),
  );
  const body = [
    `<header><h1>Public names</h1><p class="question">What can a script call, and what comes back?</p>`,
    `<p>${runs} functions and values and ${entries.length - runs} types of Mullbook ${escapeHtml(version)}, in the order in which data pass the stages. One of them on the terminal: <code>mullbook reference grainFineness</code>.</p></header>`,
    "<main>",
    `<section><h2>The names</h2>\n${names.join("\n")}</section>`,
    ...groups.map(
      ({ title, run, types }) =>
        `<section><h2>${escapeHtml(title)}</h2>\n${[...run, ...types].map(article).join("\n")}</section>`,
    ),
    "</main>",
  ].join("\n");
  return htmlDocument({
    lang: "en",
    title: "Mullbook: public names",
    description: "Every public function, value and type, with its comment.",
    style: `${pageStyle()}\n${STYLE}`,
    body,
  });
}

function list(entries: readonly ReferenceEntry[]): string {
  return htmlList(entries.map(link), ' class="names"');
}

function link({ name }: ReferenceEntry): string {
  return `<a href="#${escapeHtml(name)}">${escapeHtml(name)}</a>`;
}

function article({ name, signature, comment }: ReferenceEntry): string {
  const parts = commentParts(comment).map(({ kind, text }) => {
    if (kind === "example") return `<pre>${escapeHtml(text)}</pre>`;
    return `<p${kind === "source" ? ' class="from"' : ""}>${escapeHtml(text)}</p>`;
  });
  return `<article id="${escapeHtml(name)}"><h3>${escapeHtml(name)}</h3>
<pre>${escapeHtml(signature)}</pre>
${parts.join("\n")}</article>`;
}
