// A figure of another sheet, found by the text in its first text column.

import { invariant } from "../issue.ts";
import { dayOf } from "../numbers/days.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Spread } from "../quantity/spread.ts";
import type { Faults } from "./faults.ts";
import { plainName } from "./formula-names.ts";
import { textCode } from "./formula-text.ts";
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
    const cell = find(sheet, column, rows, key.text, context, context.where, true);
    const spread = spreadOf(cell);
    return {
      ...common,
      per: "sheet",
      value: numberOf(cell),
      fault: faultOf(cell),
      spread,
      doubtful: spread !== undefined,
      smooth: true,
      lacks: cell.kind === "figure" && cell.atLeast,
    } satisfies OneNode;
  }
  const given = context.key(key.name);
  const cells: (Cell | undefined)[] = [];
  const values = new Float64Array(context.rowCount).fill(Number.NaN);
  const faults = new Map<number, CellFault>();
  const lacks = new Uint8Array(context.rowCount);
  for (let row = 0; row < values.length; row++) {
    const before = given.node.per === "row" ? given.node.faults.get(row) : given.node.fault;
    const text = given.textAt(row);
    if (before) faults.set(row, before);
    if (before || text === "") continue;
    const where = { ...context.where, row };
    const cell = find(sheet, column, rows, text, context, where, faults.size < mostNear);
    const fault = faultOf(cell);
    cells[row] = cell;
    values[row] = numberOf(cell);
    if (fault) faults.set(row, fault);
    if (cell.kind === "figure" && cell.atLeast) lacks[row] = 1;
  }
  return {
    ...common,
    per: "row",
    values,
    faults,
    // Worked out when it is asked for: the first that has a ± tells that the column is in doubt.
    spreadAt: (row) => spreadOf(cells[row]),
    doubtful: cells.some((cell) => spreadOf(cell) !== undefined),
    far: false,
    smooth: true,
    lacks: lacks.includes(1) ? lacks : undefined,
  } satisfies RowNode;
}

/** So many keys that are not there are told with the nearest that is: to look for it takes a walk through all of them. */
const mostNear = 5;

function find(
  sheet: Sheet,
  column: SheetColumn,
  rows: ReadonlyMap<number, readonly number[]>,
  key: string,
  { faults }: LookUpContext,
  where: SheetWhere,
  withNear: boolean,
): Cell {
  const [row, another] = rows.get(textCode(key)) ?? [];
  if (row === undefined) {
    const near = withNear ? nearest(key, firstTexts(sheet)) : undefined;
    return { kind: "fault", fault: faults.raise(sheetIssue.noSuchRow(key, sheet.name, near), where) };
  }
  if (another !== undefined) {
    return { kind: "fault", fault: faults.raise(sheetIssue.twoRows(key, sheet.name), where) };
  }
  return sheet.cell(row, column.name);
}

function numberOf(cell: Cell): number {
  switch (cell.kind) {
    case "figure":
      return cell.value;
    case "text":
      return textCode(cell.text);
    case "date":
      return dayOf(cell.text);
    default:
      return Number.NaN;
  }
}

const faultOf = (cell: Cell): CellFault | undefined => (cell.kind === "fault" ? cell.fault : undefined);

function spreadOf(cell: Cell | undefined): Spread | undefined {
  return cell?.kind === "figure" && cell.figure.sources.length > 0 ? cell.figure : undefined;
}

function firstTexts(sheet: Sheet): readonly string[] {
  return sheet.columns.find(({ kind }) => kind === "text")?.texts ?? [];
}

const knownRows = new WeakMap<Sheet, ReadonlyMap<number, readonly number[]>>();

/** Made once for a sheet, however many look up in it. */
function rowsByText(sheet: Sheet): ReadonlyMap<number, readonly number[]> {
  const known = knownRows.get(sheet);
  if (known) return known;
  const rows = new Map<number, number[]>();
  knownRows.set(sheet, rows);
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
