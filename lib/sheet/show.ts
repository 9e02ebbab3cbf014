// Cells and columns as the rest of the library reads them; made when they are asked for.

import { invariant } from "../issue.ts";
import { dateOfDay } from "../numbers/days.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Doubt } from "./doubt.ts";
import type { InputNode } from "./inputs.ts";
import type { SheetNode } from "./node.ts";
import type { Column } from "./read-columns.ts";
import type { Cell, CellFault, SheetColumn, SheetFigure } from "./sheet-types.ts";
import type { TextOf } from "./texts.ts";

export interface Shown {
  readonly nodes: ReadonlyMap<string, SheetNode>;
  readonly unread: ReadonlyMap<string, CellFault>;
  readonly doubt: Doubt;
  readonly textOf: TextOf;
}

/** The cell of a column, or of a value or foot figure with row 0. */
export function cellAt({ nodes, unread, doubt, textOf }: Shown, key: string, row: number): Cell {
  const broken = unread.get(key);
  if (broken) return { kind: "fault", fault: broken };
  const node = nodes.get(key);
  invariant(node, `${key} was not worked out`);
  const fault = node.per === "row" ? node.faults.get(row) : node.fault;
  if (fault) return { kind: "fault", fault };
  const value = node.per === "row" ? node.values[row]! : node.value;
  if (Number.isNaN(value)) return { kind: "empty" };
  if (node.kind === "condition") return { kind: "text", text: conditionText(node, row, value, doubt) };
  if (node.kind === "date") return { kind: "date", text: textAt(node, row, textOf) };
  if (node.kind === "text") return { kind: "text", text: textAt(node, row, textOf) };
  return new FigureCell(node, row, value, doubt);
}

/** Of a class for speed alone: a sheet may show thousands of these. */
class FigureCell implements Extract<Cell, { kind: "figure" }> {
  readonly kind = "figure";
  readonly value: number;
  declare readonly unit?: Unit;
  declare readonly atLeast?: true;
  readonly #node: SheetNode;
  readonly #row: number;
  readonly #doubt: Doubt;
  #figure: SheetFigure | undefined;

  constructor(node: SheetNode, row: number, value: number, doubt: Doubt) {
    this.value = value;
    const atLeast = node.per === "row" ? node.lacks?.[row] === 1 : node.lacks === true;
    if (node.unit) this.unit = node.unit;
    if (atLeast) this.atLeast = atLeast;
    this.#node = node;
    this.#row = row;
    this.#doubt = doubt;
  }

  get figure(): SheetFigure {
    const node = this.#node;
    this.#figure ??= node.per === "row" ? this.#doubt.cell(node, this.#row) : this.#doubt.one(node);
    return this.#figure;
  }

  /** With its figure, which a getter would hide from JSON.stringify and console.log. */
  toJSON(): object {
    return { ...this, figure: this.figure };
  }

  [Symbol.for("nodejs.util.inspect.custom")](): object {
    return this.toJSON();
  }
}

export function columnAt(
  { nodes, unread, textOf }: Shown,
  key: string,
  column: Column,
  rowCount: number,
): SheetColumn {
  const { name, title, formula } = column;
  const node = unread.has(key) ? undefined : nodes.get(key);
  const shownKind = node?.kind === "condition" ? "text" : node?.kind;
  const unit = node ? node.unit : column.unit;
  const kind =
    shownKind === "text" || shownKind === "date"
      ? shownKind
      : (unit && "quantity") || column.kind || "number";
  const isText = kind === "text" || kind === "date";
  let texts: readonly string[] | undefined;
  return {
    name,
    ...(title === undefined ? {} : { title }),
    kind,
    ...(unit && !isText ? { unit } : {}),
    ...(formula === undefined ? {} : { formula }),
    values: node?.per === "row" && !isText ? node.values : new Float64Array(rowCount).fill(Number.NaN),
    get texts() {
      texts ??= isText
        ? Array.from({ length: rowCount }, (_, row) => (node ? plainTextAt(node, row, textOf) : ""))
        : [];
      return texts;
    },
  };
}

/** Where the doubt reaches over the limit, how often it holds. */
function conditionText(node: SheetNode, row: number, value: number, doubt: Doubt): string {
  const word = value === 0 ? "no" : "yes";
  if (!node.doubtful) return word;
  const holds = doubt.holdsPercent(node, row);
  const sure = value === 0 ? 100 - holds : holds;
  return sure >= 99.5 ? word : `${word} (${Math.round(sure)} in 100)`;
}

function plainTextAt(node: SheetNode, row: number, textOf: TextOf): string {
  if (node.kind !== "condition") return textAt(node, row, textOf);
  const value = node.per === "row" ? node.values[row]! : node.value;
  return Number.isNaN(value) ? "" : value === 0 ? "no" : "yes";
}

function textAt(node: SheetNode, row: number, textOf: TextOf): string {
  if (node.per === "row" && "texts" in node) return (node as InputNode).texts[row] ?? "";
  const value = node.per === "row" ? node.values[row]! : node.value;
  if (node.kind === "date") return Number.isNaN(value) ? "" : dateOfDay(value);
  return Number.isNaN(value) ? "" : textOf(value);
}
