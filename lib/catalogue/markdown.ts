// The catalogue as a table to read, one row a message.

import type { CatalogueEntry } from "./catalogue.ts";

/** GFM, by kind: issues, findings, cautions, phrases. */
export function catalogueMarkdown(entries: readonly CatalogueEntry[]): string {
  const kinds = [
    ["issue", "Issues"],
    ["finding", "Findings"],
    ["caution", "Cautions"],
    ["phrase", "Phrases"],
  ] as const;
  const tables = kinds.map(([kind, title]) => {
    const own = entries.filter((entry) => entry.kind === kind);
    return [`## ${title} (${own.length})`, "", ...head, ...own.map(row)].join("\n");
  });
  return `# Messages\n\n${intro}\n\n${tables.join("\n\n")}\n`;
}

const intro =
  "Another language says a message by a function of its arguments that gives the fields of the right-hand column: see inLanguage. Arguments are words and figures as they are printed; what stands there in English, such as the name of a test, is looked up by that function. All examples are invented.";

const head = ["| code | may be | said with | in English, for example |", "| --- | --- | --- | --- |"];

function row({ code, ranks, parameters, english }: CatalogueEntry): string {
  const fields = Object.entries(english).map(
    ([name, value]) => `*${name}*: ${plain(typeof value === "string" ? value : value.join(" "))}`,
  );
  return `| ${[`\`${code}\``, ranks.join(", "), parameters.join(", "), fields.join("<br>")].map(cell).join(" | ")} |`;
}

const cell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\n/g, " ");
/** Nothing in it is markup but what stands between back-ticks. */
const plain = (text: string): string => text.replace(/[*_<[\\]/g, "\\$&");
