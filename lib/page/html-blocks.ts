// Blocks as HTML.

import { chartTableParts } from "./chart-table.ts";
import type { Drawings } from "./drawing.ts";
import { htmlCaution, htmlFigures, htmlFinding, htmlIssues } from "./html-notes.ts";
import { htmlTable, htmlTables } from "./html-table.ts";
import { escapeHtml, flowHtml, htmlList, htmlText } from "./html-text.ts";
import type { LaidBlock, LaidChart } from "./lay-out.ts";
import { inlineSvg } from "./svg-text.ts";

/** Blocks one after the other; drawings holds every chart among them. */
export function htmlBlocks(blocks: readonly LaidBlock[], drawings: ReadonlyMap<LaidChart, Drawings>): string {
  return blocks.map((block) => htmlBlock(block, drawings)).join("\n");
}

function htmlBlock(block: LaidBlock, drawings: ReadonlyMap<LaidChart, Drawings>): string {
  switch (block.kind) {
    case "prose":
      return `<p>${htmlText(block.text)}</p>`;
    case "list":
      return htmlList(block.items.map(htmlText), "", block.ordered ? "ol" : "ul");
    case "figures":
      return htmlFigures(block.figures);
    case "finding":
      return htmlFinding(block.finding);
    case "caution":
      return htmlCaution(block.caution, block.deferralSaid);
    case "issues":
      return htmlIssues(block.issues);
    case "table":
      return htmlTables({ ...block, label: `Table ${block.number}` });
    case "chart":
      return htmlChart(block, drawings.get(block)!);
    case "fold":
      return `<details class="fold"><summary>${escapeHtml(block.summary)}</summary>\n${htmlBlocks(block.blocks, drawings)}\n</details>`;
  }
}

/** Both drawings in one image with one text; the style sheet shows the one that fits. */
function htmlChart({ chart, number }: LaidChart, { wide, narrow }: Drawings): string {
  const label = `Figure ${number}`;
  const table = htmlTable({
    label: `Data of figure ${number}`,
    ...chartTableParts(chart.table),
  });
  return `<figure id="figure-${number}">
<div role="img" aria-label="${escapeHtml(chart.alt)}">
<div class="wide">${inlineSvg(wide, `w${number}-`)}</div>
<div class="narrow">${inlineSvg(narrow, `n${number}-`)}</div>
</div>
<figcaption><b>${label}.</b> ${flowHtml(chart.caption)}</figcaption>
</figure>
<details class="chart-data"><summary>Data of figure ${number}</summary>
${table}
</details>`;
}
