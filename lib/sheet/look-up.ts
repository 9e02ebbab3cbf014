// A figure of another sheet, found by the text in its first text column.

import { invariant } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Spread } from "../quantity/spread.ts";
import type { Faults } from "./faults.ts";
import { plainName } from "./formula-names.ts";
import { dayOf, textCode } from "./formula-text.ts";
import type { LookUp } from "./formula-type.ts";
import type { NodeKind, OneNode, RowNode, SheetNode } from "./node.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { Cell, CellFault, Sheet, SheetColumn, SheetWhere } from "./sheet-types.ts";

export interface LookUpContext {
  readonly others: readonly Sheet[];
  readonly rowCount: number;
  readonly faults: Faults;
  readonly where: SheetWhere;
  /** Names the node: no two of a sheet are alike. */
  readonly name: string;
  /** The column or named value that the key is in, and its text in a row. */
  key(name: string): { readonly node: SheetNode; textAt(row: number): string };
}

/** Only what the formula's reader has let through: sheet and column are there. */
export function lookedUp(lookUp: LookUp, context: LookUpContext): SheetNode {
  const sheet = sameName(context.others, lookUp.sheet);
  const column = sheet && sameName(sheet.columns, lookUp.column);
  invariant(sheet && column, `there is no ${lookUp.column} in ${lookUp.sheet}`);
  const rows = rowsByText(sheet);
  const { name } = context;
  const kind: NodeKind = column.kind === "text" || column.kind === "date" ? column.kind : "number";
  const common = { name, kind, unit: column.unit };
  const { key } = lookUp;
  if ("text" in key) {
    const found = find(sheet, column, rows, key.text, context, context.where);
    const { value, fault, spread, lacks } = found;
    return {
      ...common,
      per: "sheet",
      value,
      fault,
      spread,
      doubtful: spread !== undefined,
      smooth: true,
      lacks,
    } satisfies OneNode;
  }
  const given = context.key(key.name);
  const values = new Float64Array(context.rowCount).fill(Number.NaN);
  const faults = new Map<number, CellFault>();
  const spreads = new Map<number, Spread>();
  const lacks = new Uint8Array(context.rowCount);
  for (let row = 0; row < values.length; row++) {
    const before = given.node.per === "row" ? given.node.faults.get(row) : given.node.fault;
    const text = given.textAt(row);
    if (before) faults.set(row, before);
    if (before || text === "") continue;
    const found = find(sheet, column, rows, text, context, { ...context.where, row });
    const { value, fault, spread } = found;
    values[row] = value;
    if (found.lacks) lacks[row] = 1;
    if (fault) faults.set(row, fault);
    if (spread) spreads.set(row, spread);
  }
  const spreadAt = (row: number): Spread | undefined => spreads.get(row);
  const doubtful = spreads.size > 0;
  return {
    ...common,
    per: "row",
    values,
    faults,
    spreadAt,
    doubtful,
    far: false,
    smooth: true,
    lacks: lacks.includes(1) ? lacks : undefined,
  } satisfies RowNode;
}

interface Found {
  readonly value: number;
  readonly fault?: CellFault | undefined;
  readonly spread?: Spread | undefined;
  readonly lacks?: boolean | undefined;
}

function find(
  sheet: Sheet,
  column: SheetColumn,
  rows: ReadonlyMap<number, readonly number[]>,
  key: string,
  { faults }: LookUpContext,
  where: SheetWhere,
): Found {
  const [row, another] = rows.get(textCode(key)) ?? [];
  if (row === undefined) {
    const near = nearest(key, firstTexts(sheet));
    return { value: Number.NaN, fault: faults.raise(sheetIssue.noSuchRow(key, sheet.name, near), where) };
  }
  if (another !== undefined) {
    return { value: Number.NaN, fault: faults.raise(sheetIssue.twoRows(key, sheet.name), where) };
  }
  return foundIn(sheet.cell(row, column.name));
}

function foundIn(cell: Cell): Found {
  switch (cell.kind) {
    case "figure":
      return {
        value: cell.value,
        spread: cell.figure.sources.length > 0 ? cell.figure : undefined,
        lacks: cell.atLeast,
      };
    case "text":
      return { value: textCode(cell.text) };
    case "date":
      return { value: dayOf(cell.text) };
    case "empty":
      return { value: Number.NaN };
    case "fault":
      return { value: Number.NaN, fault: cell.fault };
  }
}

function firstTexts(sheet: Sheet): readonly string[] {
  return sheet.columns.find(({ kind }) => kind === "text")?.texts ?? [];
}

function rowsByText(sheet: Sheet): ReadonlyMap<number, readonly number[]> {
  const rows = new Map<number, number[]>();
  firstTexts(sheet).forEach((text, row) => {
    if (text === "") return;
    const known = rows.get(textCode(text));
    if (known) known.push(row);
    else rows.set(textCode(text), [row]);
  });
  return rows;
}

function sameName<T extends { readonly name: string }>(list: readonly T[], name: string): T | undefined {
  return list.find((one) => one.name === name) ?? list.find((one) => plainName(one.name) === plainName(name));
}
