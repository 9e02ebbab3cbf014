// A page in another language: every finding, issue and caution said anew by words that are given for its code.

import { furniture } from "../catalogue/furniture.ts";
import { inWords, type Words } from "../catalogue/in-words.ts";
import type { Block, Page } from "./blocks.ts";
import { repeatedIn, repeatedText } from "./repeated-text.ts";
import { type Anew, cautionAnew, findingAnew, issueAnew } from "./said-anew.ts";

export interface PageInLanguage {
  readonly page: Page;
  /** Codes of what stands on the page, and of a page's own words, that the words do not know: these stay English. */
  readonly missing: readonly string[];
}

/**
 * The page in another language, as far as its words go; a writer is given the same words for what a page adds itself:
 * `writeHtml(page, { words, lang: "de" })`. Figures are printed before a message is said, so they stay as they are. A
 * sentence of a message that the page repeats elsewhere, in its answer, in prose or at a cell, is said anew there too.
 * What the notebook says itself, its titles, captions and column heads, stays. Throws Misuse where the words give no
 * text for a field.
 * @example
 * const words = { "page/sources": () => "Quellen", "log/no-pan": () => ({ message: "Die Pfanne fehlt." }) };
 * inLanguage(page, words).missing
 */
export function inLanguage(page: Page, words: Words): PageInLanguage {
  const anew: Anew = { words, met: new Set(), sentences: new Map() };
  for (const { code } of Object.values(furniture)) anew.met.add(code);
  anew.sentences.set(furniture.invented().text, inWords(furniture.invented(), words));
  const issues = page.issues.map((issue) => issueAnew(issue, anew));
  const sections = page.sections.map((section) => ({ ...section, blocks: blocksAnew(section.blocks, anew) }));
  const { sentences } = anew;
  return {
    page: {
      ...page,
      answer: page.answer.map((text) => repeatedText(text, sentences)),
      issues,
      sections: sections.map((one) => ({ ...one, blocks: repeatedIn(one.blocks, sentences) })),
      colophon: page.colophon.map((line) => sentences.get(line) ?? line),
    },
    missing: [...anew.met].filter((code) => !Object.hasOwn(words, code)).sort(),
  };
}

function blocksAnew(blocks: readonly Block[], anew: Anew): readonly Block[] {
  return blocks.map((block): Block => {
    switch (block.kind) {
      case "finding":
        return { ...block, finding: findingAnew(block.finding, anew) };
      case "caution":
        return { ...block, caution: cautionAnew(block.caution, anew) };
      case "issues":
        return { ...block, issues: block.issues.map((issue) => issueAnew(issue, anew)) };
      case "fold":
        return { ...block, blocks: blocksAnew(block.blocks, anew) };
      default:
        return block;
    }
  });
}
