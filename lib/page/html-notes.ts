// Findings, cautions, issues and key figures as HTML.

import type { Caution, Finding } from "../finding/finding.ts";
import { type Issue, placeText } from "../issue.ts";
import type { KeyFigure } from "./blocks.ts";
import { escapeHtml, flowHtml, htmlList, htmlWithCode } from "./html-text.ts";
import { english, MARKS, type PageWords } from "./words.ts";

export function htmlFinding(
  { tone, text, because, formula, source }: Finding,
  words: PageWords = english,
): string {
  const rests = [
    because.length === 0 ? "" : htmlList(because.map(htmlWithCode)),
    formula === undefined ? "" : `<p class="formula">${escapeHtml(formula)}</p>`,
    source === undefined ? "" : `<p class="source">${escapeHtml(words.source(source))}</p>`,
  ].filter((part) => part !== "");
  const fold =
    rests.length === 0
      ? ""
      : `\n<details><summary>${escapeHtml(words.restsOn())}</summary>\n${rests.join("\n")}\n</details>`;
  return `<div class="finding tone-${tone}">
<p class="tone"><span aria-hidden="true">${MARKS[tone]}</span> ${escapeHtml(words.tone(tone))}</p>
<div><p>${flowHtml(text)}</p>${fold}</div>
</div>`;
}

export function htmlCaution(
  { trigger, text, points, defers }: Caution,
  deferralSaid = false,
  words: PageWords = english,
): string {
  const parts = [
    points.length === 0 ? "" : htmlList(points.map(flowHtml)),
    deferralSaid ? "" : `<p class="defers">${escapeHtml(defers)}</p>`,
  ].filter((part) => part !== "");
  return `<div class="caution" role="note">
<p><strong class="word">${escapeHtml(words.caution())}</strong> <span class="trigger">${escapeHtml(trigger)}</span></p>
<p>${flowHtml(text)}</p>${parts.map((part) => `\n${part}`).join("")}
</div>`;
}

/** Errors shown at once; what comes after them is folded, so that the page is not buried. */
const FIRST_ERRORS = 8;

export function htmlErrors(errors: readonly Issue[], words: PageWords): string {
  const more = errors.slice(FIRST_ERRORS);
  if (more.length < 2) return htmlIssues(errors, words);
  const folded = `<details class="fold"><summary>${escapeHtml(words.moreErrors(String(more.length)))}</summary>\n${htmlIssues(more, words)}\n</details>`;
  return `${htmlIssues(errors.slice(0, FIRST_ERRORS), words)}\n${folded}`;
}

export function htmlIssues(issues: readonly Issue[], words: PageWords): string {
  return htmlList(
    issues.map((issue) => htmlIssue(issue, words)),
    ' class="issues"',
  );
}

function htmlIssue(issue: Issue, words: PageWords): string {
  const { severity, message, remedy, about } = issue;
  const place = placeText(issue.place);
  return [
    `<p><strong>${escapeHtml(words.severity(severity))}</strong> ${about === undefined ? "" : `<span class="about">${escapeHtml(about)}:</span> `}${htmlWithCode(message)}</p>`,
    remedy === undefined ? "" : `<p>${htmlWithCode(remedy)}</p>`,
    place === "" ? "" : `<p class="place">${escapeHtml(place)}</p>`,
  ]
    .filter((line) => line !== "")
    .join("\n");
}

export function htmlFigures(figures: readonly KeyFigure[], words: PageWords): string {
  return `<dl class="figures">\n${figures.map((one) => htmlFigure(one, words)).join("\n")}\n</dl>`;
}

function htmlFigure({ label, figure, unit, under, weak }: KeyFigure, words: PageWords): string {
  const unitAfter = unit === undefined ? "" : ` <span class="unit">${escapeHtml(unit)}</span>`;
  const line = [
    weak ? `<em>${escapeHtml(words.weak())}</em>` : "",
    under === undefined ? "" : flowHtml(under),
  ].filter(Boolean);
  return [
    `<div${weak ? ' class="weak"' : ""}><dt>${escapeHtml(label)}</dt>`,
    `<dd class="figure">${escapeHtml(figure)}${unitAfter}</dd>`,
    `${line.length === 0 ? "" : `<dd class="under">${line.join(": ")}</dd>`}</div>`,
  ].join("");
}
