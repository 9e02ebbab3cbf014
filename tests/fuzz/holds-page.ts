// A page of any notebook: it comes out, in every form, whole, without a number that is none, without markup of the log's.

import type { Log, Notebook, Page } from "../../lib/index.ts";
import { writeCsv, writeHtml, writeJson, writeMarkdown } from "../../lib/index.ts";
import { readCsv } from "../../lib/log/csv.ts";
import { sourceOf } from "../../lib/log/source.ts";
import { claim, type Step } from "./claim.ts";
import { htmlHolds } from "./html-holds.ts";

const empty = async (): Promise<string> => '<svg xmlns="http://www.w3.org/2000/svg"></svg>';

/** drawn: by the drawing library, which is slow, or each chart as an empty drawing. Gives the page as JSON. */
export async function pageHolds(notebook: Notebook, log: Log, drawn: boolean, step: Step): Promise<string> {
  const { name } = notebook;
  step(`${name}: page`);
  const page = notebook.run(log);
  const options = drawn ? {} : { draw: empty };
  step(`${name}: JSON`);
  const json = jsonHolds(page, log);
  step(`${name}: HTML`);
  htmlHolds(await writeHtml(page, options));
  step(`${name}: Markdown`);
  const { markdown } = await writeMarkdown(page, options);
  const outsideCode = markdown.replace(/(`+)(?:(?!\1)[\s\S])*\1/g, "");
  const raw = /(?<!\\)<\/?(?:xx-markup|script)/.exec(outsideCode);
  claim(
    !raw,
    () => `markup of the log's in Markdown: ${outsideCode.slice(raw!.index - 40, raw!.index + 40)}`,
  );
  step(`${name}: CSV`);
  for (const [file, text] of Object.entries(writeCsv(page))) csvHolds(file, text);
  return json;
}

/** Read again: as many cells in every row as in the first, nothing that a spreadsheet would run. */
function csvHolds(file: string, text: string): void {
  const faults: unknown[] = [];
  const rows = readCsv(sourceOf(file, text), ",", (issue) => void faults.push(issue));
  claim(faults.length === 0, () => `${file} cannot be read again: ${JSON.stringify(faults[0])}`);
  const width = rows[0]?.length ?? 0;
  for (const row of rows) {
    claim(row.length === width, () => `${file} has ${row.length} cells in a row, and ${width} heads`);
    for (const cell of row)
      claim(
        !/^[=@\t\r]|^[+-](?![\d.]+(?:e[+-]?\d+)?$)/i.test(cell.text),
        () => `${file} has a cell that runs: ${cell.text}`,
      );
  }
}

const none = /\bNaN\b|\bundefined\b|\[object |\bInfinity\b/;

function jsonHolds(page: Page, log: Log): string {
  const json = writeJson(page);
  const { attachments: _, ...read } = JSON.parse(json) as { attachments?: unknown };
  if (!/nan|undefined|object|inf/i.test(log.texts.map(({ text }) => text).join())) {
    const whole = JSON.stringify(read);
    const at = none.exec(whole)?.index;
    claim(at === undefined, () => `the page says: ${whole.slice(Math.max(0, at! - 80), at! + 40)}`);
  }
  return json;
}
