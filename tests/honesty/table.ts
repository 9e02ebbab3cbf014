// The ledger as one table in Markdown.

import { type Entry, heldPercent, type Ledger, promisedPercent, standardError } from "./ledger.ts";

const heads = [
  "notebook",
  "figure",
  "intervals",
  "promised, %",
  "held, %",
  "standard error",
  "truth below",
  "truth above",
  "half-width, of the founder's own scatter",
  "as promised",
];

export const tableHead = (): string =>
  `| ${heads.join(" | ")} |\n|---|---|${"---:|".repeat(heads.length - 3)}---|`;

/** The rows; what is a lower bound stands last. */
export function ledgerTable({ entries }: Ledger): string {
  const bound = ({ figure }: Entry): number => Number(figure.endsWith("at least"));
  const sorted = [...entries()].sort((a, b) => bound(a) - bound(b) || a.notebook.localeCompare(b.notebook));
  return sorted.map((entry) => `| ${rowOf(entry).join(" | ")} |`).join("\n");
}

function rowOf(entry: Entry): string[] {
  const held = heldPercent(entry);
  const widths = [...entry.widths].sort((a, b) => a - b);
  const middle = widths[widths.length >> 1];
  return [
    entry.notebook,
    entry.figure,
    String(entry.asked),
    promisedPercent(entry).toFixed(entry.promised === 95 * entry.asked ? 0 : 1),
    held.toFixed(1),
    standardError(entry).toFixed(1),
    `${((100 * entry.below) / entry.asked).toFixed(1)} %`,
    `${((100 * entry.above) / entry.asked).toFixed(1)} %`,
    middle === undefined ? "" : middle.toFixed(2),
    verdict(entry, held),
  ];
}

/** Out only where it lies outside by more than two standard errors; near where it may be either. */
function verdict(entry: Entry, held: number): string {
  if (entry.figure.endsWith("at least")) return "a lower bound";
  const over = held - promisedPercent(entry);
  const off = Math.abs(over) - entry.within;
  if (off <= 0) return "in";
  return off > 2 * standardError(entry)
    ? over < 0
      ? "OUT: promises too much"
      : "out: wider than need be"
    : "near";
}
