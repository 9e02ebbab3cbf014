// A bench card laid out on one page.

import { cardYaml, readingBoxes } from "./card-fields.ts";
import type { Card, CardBox } from "./card-kinds.ts";
import { escapeHtml, htmlLines, htmlList } from "./html-text.ts";

const localRules =
  "Local rules come first; where they ask for a trained or licensed person, that is who does it.";

export function cardBody(card: Card): string {
  return [
    `<header><h1>${escapeHtml(card.title)}</h1><p class="question">${capital(escapeHtml(card.does))}</p></header>`,
    hazard(card),
    "<main>",
    `<div class="rig">${card.drawing === undefined ? "" : `<figure>${card.drawing}</figure>`}
<div><p>${code(card.rig)}</p>
${htmlList(card.steps.map(code), "", "ol")}</div></div>`,
    once(card),
    boxes(card),
    card.formula === undefined ? "" : `<p class="works">Worked out: ${escapeHtml(card.formula)}.</p>`,
    `<p class="copy">Into the log, with your figures in the blanks; another unit is read as well where it is written, such as 31 lb or 2 in:</p>\n${htmlLines(cardYaml(card))}`,
    "</main>",
    "<footer><p>Mullbook. Figures that were read, not rounded; what was not read stays empty.</p></footer>",
  ]
    .filter((part) => part !== "")
    .join("\n");
}

function hazard({ hazard: { text, trigger, points } }: Card): string {
  return `<div class="caution" role="note">
<p><strong class="word">Caution</strong> <strong>${escapeHtml(text)}</strong> <span class="trigger">${capital(escapeHtml(trigger))}.</span></p>
${htmlList(points.map(escapeHtml))}
<p class="defers">${localRules}</p>
</div>`;
}

/** What is written once: batch and date on every card of a test. */
function once({ once: own, test }: Card): string {
  const common: readonly CardBox[] = test
    ? [
        { key: "batch", unit: "", says: "its name in the log" },
        { key: "date", unit: "", says: "year-month-day" },
      ]
    : [];
  const cells = [...common, ...own].map(
    ({ key, unit, says }) =>
      `<div><span class="key">${escapeHtml(key)}</span> <span class="unit">${escapeHtml(says)}</span><span class="blank">${escapeHtml(unit)}</span></div>`,
  );
  return `<div class="once">${cells.join("\n")}</div>`;
}

const repeats = 3;

function boxes(card: Card): string {
  const { table } = card;
  if (table) {
    const rows = typeof table.rows === "number" ? Array.from({ length: table.rows }, () => "") : table.rows;
    const named = typeof table.rows !== "number";
    const head = [...(named ? ["retained"] : []), ...table.columns];
    return grid(
      head.map(escapeHtml),
      rows.map((row) => [
        ...(named ? [`<span class="key">${escapeHtml(row)}</span>`] : []),
        ...table.columns.map(() => ""),
      ]),
    );
  }
  const head = [
    escapeHtml(card.test?.name ?? ""),
    "",
    ...Array.from({ length: repeats }, (_, i) => `${i + 1}`),
  ];
  const rows = readingBoxes(card).map(({ key, unit, says }) => [
    `<span class="key">${escapeHtml(key)}</span>`,
    `<span class="unit">${escapeHtml(unit === "" ? says : `${unit}: ${says}`)}</span>`,
    ...Array.from({ length: repeats }, () => ""),
  ]);
  const worked = ["<em>worked out</em>", "", ...Array.from({ length: repeats }, () => "")];
  return grid(head, card.formula === undefined ? rows : [...rows, worked]);
}

/** Cells hold markup of our own. */
function grid(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = (row: readonly string[], tag: "th" | "td") =>
    `<tr>${row.map((cell) => `<${tag}${tag === "th" ? ' scope="col"' : ""}${/^\d$/.test(cell) ? ' class="write"' : ""}>${cell}</${tag}>`).join("")}</tr>`;
  return `<table class="boxes${head.length > 6 ? " dense" : ""}"><thead>${cells(head, "th")}</thead><tbody>${rows.map((row) => cells(row, "td")).join("\n")}</tbody></table>`;
}

function capital(text: string): string {
  return text === "" ? "" : text[0]!.toUpperCase() + text.slice(1);
}

/** Escaped text in which `marks` stand for what is typed in a log. */
function code(text: string): string {
  return escapeHtml(text).replace(/`([^`]+)`/g, "<code>$1</code>");
}
