// The catalogue: an example for every message, with the names that its function gives its arguments; remedies; plain words.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { catalogue } from "../../lib/catalogue/catalogue.ts";
import { examples } from "../../lib/catalogue/examples.ts";
import { catalogueMarkdown } from "../../lib/catalogue/markdown.ts";
import { allMessages } from "../../lib/catalogue/messages.ts";
import { promisesIn } from "../forbidden-words.ts";

const lib = join(import.meta.dirname, "../../lib");
const sources = readdirSync(lib, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
  .map((entry) => readFileSync(join(entry.parentPath, entry.name), "utf8").replace(/\/\*[\s\S]*?\*\//g, ""));
const entries = catalogue();

/** The names between the brackets after a code, as the source has them. */
function parametersOf(code: string): readonly string[] | undefined {
  for (const text of sources) {
    const at = new RegExp(`(?:issue|finding|phrase)Message\\(\\s*"${code}",`).exec(text);
    if (!at) continue;
    const open = text.indexOf("(", at.index + at[0].length);
    let depth = 0;
    let end = open;
    do {
      if ("([{<".includes(text[end]!)) depth++;
      else if (")]}".includes(text[end]!) || (text[end] === ">" && text[end - 1] !== "=")) depth--;
      end++;
    } while (depth > 0);
    const between = text.slice(open + 1, end - 1);
    let level = 0;
    const parts = [""];
    for (const sign of between) {
      if ("([{<".includes(sign)) level++;
      if (")]}>".includes(sign)) level--;
      if (sign === "," && level === 0) parts.push("");
      else parts[parts.length - 1] += sign;
    }
    return parts.flatMap((part) => /^\s*(\w+)/.exec(part)?.[1] ?? []);
  }
  return undefined;
}

test("every message that is said with something has an example with its arguments' own names (lib/catalogue/examples)", () => {
  const wrong = allMessages.flatMap(({ code }) => {
    const names = parametersOf(code);
    const has = Object.keys(examples[code] ?? {});
    return names?.join() === has.join() ? [] : [`${code}: (${names}) has (${has})`];
  });
  expect(wrong).toEqual([]);
  const known = new Set(allMessages.map(({ code }) => code));
  expect(Object.keys(examples).filter((code) => !known.has(code))).toEqual([]);
});

test("the examples are whole sentences without a hole", () => {
  for (const { code, kind, english } of entries) {
    const texts = Object.values(english).flat();
    for (const text of texts) {
      expect(text, code).not.toMatch(/undefined|NaN|\[object| {2}|\$\{/);
      expect(text.trim(), code).toBe(text);
      expect(promisesIn(text), code).toEqual([]);
    }
    if (kind === "issue") expect(english.message, code).toMatch(/[.?]$/);
    if (kind === "finding") expect(english.text, code).toMatch(/[.?]$/);
    if (kind === "finding") for (const line of english.because!) expect(line, code).toMatch(/[.?]$/);
  }
});

test("every issue that may be an error or a warning says what to do", () => {
  const silent = entries.filter(
    ({ kind, ranks, english }) =>
      kind === "issue" && ranks.some((rank) => rank !== "note") && !english.remedy,
  );
  expect(silent.map(({ code }) => code)).toEqual([]);
});

/** Words of statistics and of offices that a founder need not know; what stands for them. */
const jargon: readonly (readonly [RegExp, string])[] = [
  [/hetero|homoscedast/i, "the scatter differs"],
  [/\bresiduals?\b(?!\/)/i, "distance from the curve"],
  [/\bcovariates?\b|\bregressors?\b/i, "what went along"],
  [/\bparameters?\b/i, "figure"],
  [/\bsignificant(?:ly)?\b/i, "surely"],
  [/\bnull hypothesis\b/i, "no difference"],
  [/\butili[sz]e|\bleverage\b|\bplease\b|\binvalid\b/i, "plain words"],
];

test("messages use plain words: formulas and sources keep the terms of their books", () => {
  const found = entries.flatMap(({ code, english: { formula: _, source: __, ...rest } }) =>
    Object.values(rest)
      .flat()
      .flatMap((text) =>
        jargon.filter(([word]) => word.test(text)).map(([word]) => `${code}: ${word.exec(text)![0]}`),
      ),
  );
  expect(found).toEqual([]);
});

test("no sentence runs on: fifty words at most", () => {
  const long = entries.flatMap(({ code, english: { formula: _, source: __, ...rest } }) =>
    Object.values(rest)
      .flat()
      .flatMap((text) => text.split(/(?<=[.?]) (?=[A-Z])/))
      .filter((sentence) => sentence.split(/\s+/).length > 50)
      .map((sentence) => `${code}: ${sentence}`),
  );
  expect(long).toEqual([]);
});

test("the table has a row for each", () => {
  const table = catalogueMarkdown(entries);
  for (const { code } of entries) expect(table).toContain(`| \`${code}\` |`);
  for (const line of table.split("\n").filter((one) => one.startsWith("|")))
    expect(line.replace(/\\\|/g, "").split("|").length, line.slice(0, 60)).toBe(6);
});
