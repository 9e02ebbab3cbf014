// Collects what is wrong in a sheet, and makes faults that travel.

import type { Issue, Place } from "../issue.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellFault, SheetContext, SheetWhere } from "./sheet-types.ts";

/** So many cells of one column are told one by one. */
const mostTold = 20;

export interface Faults {
  readonly issues: Issue[];
  report(issue: Issue, where: SheetWhere): void;
  /** Reported, unless the column has many already, and kept as a value. raisedIn is where. */
  raise(issue: Issue, where: SheetWhere): CellFault;
  /** Tells how many were not told. */
  finish(): void;
}

export function faultsOf(about: string, place: SheetContext["place"]): Faults {
  const issues: Issue[] = [];
  const told = new Map<string, number>();
  const placed = (where: SheetWhere): { readonly place?: Place } => {
    const found = place?.(where);
    return found ? { place: found } : {};
  };
  const report = (issue: Issue, where: SheetWhere): void => {
    const { code, severity, message, remedy } = issue;
    issues.push({
      code,
      severity,
      message,
      ...(remedy === undefined ? {} : { remedy }),
      ...placed(where),
      about,
    });
  };
  return {
    issues,
    report,
    raise(issue, where) {
      const column = where.column ?? where.foot ?? where.value ?? "";
      const count = (told.get(column) ?? 0) + 1;
      told.set(column, count);
      if (count <= mostTold) report(issue, where);
      return {
        code: issue.code,
        message: issue.message,
        ...(issue.remedy === undefined ? {} : { remedy: issue.remedy }),
        raisedIn: { column, ...(where.row === undefined ? {} : { row: where.row }) },
        ...placed(where),
      };
    },
    finish() {
      for (const [column, count] of told) {
        if (count > mostTold) report(sheetIssue.andMore(count - mostTold, column), { column });
      }
    },
  };
}
