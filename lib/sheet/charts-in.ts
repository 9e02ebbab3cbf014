// The charts that a sheet asks for, without those of columns that are not there.

import type { Issue } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import { plainName } from "./formula-names.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { SheetChart } from "./sheet-types.ts";

export function chartsIn(
  charts: readonly SheetChart[],
  columns: readonly { readonly name: string }[],
  report: (issue: Issue) => void,
): readonly SheetChart[] {
  const known = columns.map(({ name }) => name);
  const plain = new Set(known.map(plainName));
  return charts.filter(({ x, y }) => {
    const missing = [x, ...(typeof y === "string" ? [y] : y)].filter((name) => !plain.has(plainName(name)));
    for (const name of missing) report(sheetIssue.unknownChart(name, nearest(name, known), known.join(", ")));
    return missing.length === 0;
  });
}
