// One row of the table that the benchmark prints.

import type { Target } from "./targets.ts";

export interface Row {
  readonly work: string;
  /** What was measured: "0.41 ms". */
  readonly measured: string;
  /** What it is held against: "numpy 15.2 ms"; empty where the target is a plain figure. */
  readonly against: string;
  /** Measured over against, or the plain figure itself; undefined where there is no target to meet. */
  readonly figure?: number;
  readonly target?: { readonly least?: number; readonly most?: number; readonly unit: string };
  /** Which of the library's targets it tells of. */
  readonly of?: Target;
}

/** Undefined where there is nothing to meet. */
export function isMet({ figure, target }: Row): boolean | undefined {
  if (figure === undefined || target === undefined) return undefined;
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = target;
  return figure >= least && figure <= most;
}

export function markdownTable(rows: readonly Row[]): string {
  const cells = rows.map((row) => {
    const { work, measured, against, figure, target } = row;
    if (figure === undefined || target === undefined) return [work, measured, against, "", "", ""];
    const { least, most, unit } = target;
    const range =
      least === undefined
        ? `≤ ${most} ${unit}`
        : most === undefined
          ? `≥ ${least} ${unit}`
          : `${least}–${most} ${unit}`;
    const met = isMet(row) ? "yes" : "NO";
    return [work, measured, against, `${Number(figure.toPrecision(3))} ${unit}`, range, met];
  });
  const head = ["work", "here", "against", "figure", "target", "met"];
  const line = (row: readonly string[]): string => `| ${row.join(" | ")} |`;
  return [line(head), line(head.map((_, k) => (k > 2 ? "--:" : "---"))), ...cells.map(line)].join("\n");
}

/** A row that was not measured, and why. */
export function skipped(work: string, why: string, of?: Target): Row {
  return { work, measured: `skipped: ${why}`, against: "", ...(of === undefined ? {} : { of }) };
}
