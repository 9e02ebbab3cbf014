// A page in the files of one format.

import type { Page } from "../page/blocks.ts";
import type { Format } from "./commands.ts";
import type { FileTexts } from "./write-files.ts";

/**
 * One file for HTML and JSON; a folder of its own for Markdown with its drawings, for tables and for charts, so that
 * their names never meet that of a founder's file. A writer is loaded when it is asked for.
 */
export async function pageFiles(page: Page, format: Format, stem: string): Promise<FileTexts> {
  if (format === "html") return { [`${stem}.html`]: await (await import("../page/html.ts")).writeHtml(page) };
  if (format === "json") return { [`${stem}.json`]: (await import("../page/json.ts")).writeJson(page) };
  if (format === "csv") return inFolder(stem, (await import("../page/csv.ts")).writeCsv(page));
  if (format === "vega-lite")
    return inFolder(stem, (await import("../page/vega-lite.ts")).writeVegaLite(page));
  const { markdown, files } = await (await import("../page/markdown.ts")).writeMarkdown(page);
  return inFolder(stem, { [`${stem}.md`]: markdown, ...files });
}

function inFolder(folder: string, files: FileTexts): FileTexts {
  return Object.fromEntries(Object.entries(files).map(([name, text]) => [`${folder}/${name}`, text]));
}
