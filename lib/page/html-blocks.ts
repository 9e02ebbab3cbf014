// Blocks as HTML.

import { chartTableParts } from "./chart-table.ts";
import type { Drawings } from "./drawing.ts";
import { htmlCaution, htmlFigures, htmlFinding, htmlIssues } from "./html-notes.ts";
import { htmlTable, htmlTables, withoutIdleEnds } from "./html-table.ts";
import { escapeHtml, flowHtml, htmlLines, htmlList, htmlText } from "./html-text.ts";
import type { LaidBlock, LaidChart, LaidTable } from "./lay-out.ts";
import { inlineSvg } from "./svg-text.ts";
import { withoutSpare } from "./table-parts.ts";
import { english, type PageWords } from "./words.ts";
import { foldedRows, workedOut, workedOutName } from "./worked-out.ts";

/** Blocks one after the other; drawings holds every chart among them. live: cells say where their readings stand in the log. */
export function htmlBlocks(
  blocks: readonly LaidBlock[],
  drawings: ReadonlyMap<LaidChart, Drawings>,
  live = false,
  words: PageWords = english,
): string {
  return blocks.map((block) => htmlBlock(block, { drawings, live, words })).join("\n");
}

interface Setting {
  readonly drawings: ReadonlyMap<LaidChart, Drawings>;
  readonly live: boolean;
  readonly words: PageWords;
}

function htmlBlock(block: LaidBlock, setting: Setting): string {
  const { drawings, live, words } = setting;
  switch (block.kind) {
    case "prose":
      return `<p>${htmlText(block.text)}</p>`;
    case "list":
      return htmlList(block.items.map(htmlText), "", block.ordered ? "ol" : "ul");
    case "lines":
      return htmlLines(block.text);
    case "figures":
      return htmlFigures(block.figures, words);
    case "finding":
      return htmlFinding(block.finding, words);
    case "caution":
      return htmlCaution(block.caution, block.deferralSaid, words);
    case "issues":
      return htmlIssues(block.issues, words);
    case "table":
      return htmlTableBlock(block, setting);
    case "chart":
      return htmlChart(block, drawings.get(block)!, words);
    case "fold":
      if (block.ownSheet) return ownSheet(block.summary, htmlBlocks(block.blocks, drawings, live, words));
      return fold(block.summary, htmlBlocks(block.blocks, drawings, live, words), block.screenOnly);
  }
}

/** The table, its rows beyond the first screens and its formulas on demand. */
function htmlTableBlock(whole: LaidTable, { live, words }: Setting): string {
  const block = withoutSpare(whole);
  const { head, rest } = foldedRows(block, words);
  const label = words.table(block.label);
  const more =
    rest &&
    withoutIdleEnds(
      htmlTables({ columns: block.columns, rows: rest.rows, label: `${label}, ${rest.says}`, live, words }),
    );
  const formulas = workedOut(block).map((one) => {
    const source = one.source === undefined ? "" : ` <small>(${flowHtml(one.source)})</small>`;
    return `${flowHtml(workedOutName(one))} = <code>${escapeHtml(one.formula)}</code>${source}`;
  });
  return [
    withoutIdleEnds(htmlTables({ ...head, label, live, words })),
    rest ? fold(rest.title, more!) : "",
    formulas.length > 0 ? fold(words.workedOut(), htmlList(formulas), true) : "",
  ]
    .filter((part) => part !== "")
    .join("\n");
}

const fold = (summary: string, inside: string, screenOnly = false): string =>
  `<details class="fold${screenOnly ? " screen" : ""}"><summary>${escapeHtml(summary)}</summary>\n${inside}\n</details>`;

const ownSheet = (title: string, inside: string): string =>
  `<div class="own-sheet"><h3>${escapeHtml(title)}</h3>\n${inside}\n</div>`;

/** Both drawings in one image with one text; the style sheet shows the one that fits. */
function htmlChart(
  { chart, number, label: name, screenOnly }: LaidChart,
  { wide, narrow, specs, readings }: Drawings,
  words: PageWords,
): string {
  const label = escapeHtml(words.figure(name));
  const says = words.figureData(name);
  const data = { label: says, ...chartTableParts(chart.table, words) };
  const table = withoutIdleEnds(htmlTable(data));
  const told = readings ? ` data-readings="${escapeHtml(readings)}"` : "";
  return `<figure id="figure-${number}"${screenOnly ? ' class="screen"' : ""}${told}>
<div role="img" aria-label="${escapeHtml(chart.alt)}">
<div class="wide"${drawn(specs?.wide)}>${drawingAt(wide, "wide", number)}</div>
<div class="narrow"${drawn(specs?.narrow)}>${drawingAt(narrow, "narrow", number)}</div>
</div>
<figcaption><b>${label}.</b> ${flowHtml(chart.caption)}</figcaption>
</figure>
<details class="chart-data"><summary>${escapeHtml(says)}</summary>
${table}
</details>`;
}

/** A drawing as it stands in the figure of that number. */
export function drawingAt(svg: string, width: "wide" | "narrow", number: number): string {
  return inlineSvg(svg, `${width[0]}${number}-`);
}

const drawn = (key: string | undefined): string => (key === undefined ? "" : ` data-drawn="${key}"`);
