// Names of columns, values and foot figures: what they may be, and that no two are alike.

import type { Issue } from "../issue.ts";
import { plainName } from "./formula-names.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { SheetSpec, SheetWhere } from "./sheet-types.ts";

const allowed = /^[\p{L}_][\p{L}\p{M}\p{N}\s_]*$/u;

export type Part = "column" | "value" | "foot";

export interface Names {
  /** The name itself where formulas may use it; else a key that no formula can write. */
  keyOf(part: Part, name: string): string;
  usable(part: Part, name: string): boolean;
}

/** Of two names alike the first, columns before values before the foot, is the one that formulas use. */
export function namesOf(
  spec: Pick<SheetSpec, "columns" | "values" | "foot">,
  report: (issue: Issue, where: SheetWhere) => void,
): Names {
  const first = new Map<string, string>();
  const usable = new Set<string>();
  const keyed = (part: Part, name: string): string => `\u0000${part} ${name}`;
  const parts: readonly [Part, object][] = [
    ["column", spec.columns],
    ["value", spec.values ?? {}],
    ["foot", spec.foot ?? {}],
  ];
  for (const [part, named] of parts) {
    for (const name of Object.keys(named)) {
      const plain = plainName(name).toLowerCase();
      const other = first.get(plain);
      const where = { [part]: name };
      if (plain === "" || !allowed.test(name.trim().normalize("NFC")))
        report(sheetIssue.badName(name), where);
      else if (other !== undefined) report(sheetIssue.nameClash(name, other), where);
      else {
        first.set(plain, name);
        usable.add(keyed(part, name));
      }
    }
  }
  const isUsable = (part: Part, name: string): boolean => usable.has(keyed(part, name));
  return { keyOf: (part, name) => (isUsable(part, name) ? name : keyed(part, name)), usable: isUsable };
}
