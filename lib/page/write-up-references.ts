// Numbers of tables and figures for the text that names them, and of sources for what rests on them.

import type { Finding } from "../finding/finding.ts";
import type { Section } from "./blocks.ts";
import { everyBlock, layOut } from "./lay-out.ts";

/** "Table 3", "Figure 1"; the empty string for what the page has not. */
type Reference = (name: string) => string;

/** By the title of a section: the table or figure that it belongs to, and the sentence that says so. */
const pointers: { readonly [title: string]: readonly [name: string, says: (see: string) => string] } = {
  "Data sheet, as typed": ["tests", (see) => `The figures of ${see} were worked out from these readings.`],
  "Curves, aim and window": ["tests", (see) => `Drawn from the figures of ${see}.`],
  "The curves as equations": ["response", (see) => `These are the curves of ${see}.`],
  "The next trial": [
    "repeat",
    (see) => `Hold a repeat against ${see}: in 95 of 100 a new batch falls within, if all is as it was here.`,
  ],
};

/**
 * The sections with the numbers of their tables and figures named in the text.
 * @example withPointers(writeUpData(writeUpOf(log), shownUnits(log))).length
 */
export function withPointers(sections: readonly Section[]): readonly Section[] {
  const see = referencesIn(sections);
  return sections.map((section) => {
    const [name, says] = pointers[section.title] ?? [];
    const number = name === undefined ? "" : see(name);
    if (!says || number === "" || section.blocks.length === 0) return section;
    return { ...section, blocks: [{ kind: "prose", text: says(number) }, ...section.blocks] };
  });
}

function referencesIn(sections: readonly Section[]): Reference {
  const nothing = { title: "", question: "", answer: [], sources: [], colophon: [], issues: [], figures: {} };
  const numbers = new Map<string, string>();
  for (const block of layOut({ ...nothing, sections }).sections.flatMap(({ blocks }) => everyBlock(blocks))) {
    if (block.kind === "table" && !numbers.has(block.name)) numbers.set(block.name, `Table ${block.label}`);
    if (block.kind === "chart" && !numbers.has(block.chart.name)) {
      numbers.set(block.chart.name, `Figure ${block.label}`);
    }
  }
  return (name) => numbers.get(name) ?? "";
}

export interface NumberedFindings {
  readonly findings: readonly Finding[];
  readonly sources: readonly string[];
}

/** Findings that name their source by its number in the list, "[2]". */
export function numberedFindings(findings: readonly Finding[]): NumberedFindings {
  const sources = [...new Set(findings.flatMap(({ source }) => source ?? []))];
  return {
    findings: findings.map((finding) =>
      finding.source === undefined
        ? finding
        : { ...finding, text: `${finding.text} [${sources.indexOf(finding.source) + 1}]` },
    ),
    sources,
  };
}
