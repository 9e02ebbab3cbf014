// What was typed: columns and named values, each figure with its own ± and what it shares with others.

import { dayOf } from "../numbers/days.ts";
import { readDate } from "../quantity/read-date.ts";
import type { Source } from "../quantity/source.ts";
import { isSpread, type Spread } from "../quantity/spread.ts";
import { linear, spreadOfQuantity } from "../quantity/spread-of.ts";
import { convert, convertDifference, sameDimension, type Unit } from "../quantity/unit.ts";
import type { Faults } from "./faults.ts";
import { textCode } from "./formula-text.ts";
import type { OneNode, RowNode } from "./node.ts";
import { readFigure } from "./read-cell.ts";
import type { Column, PlusMinus } from "./read-columns.ts";
import { cellOf, type RowKey } from "./row-keys.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { CellFault, CellSpec, SheetSpec } from "./sheet-types.ts";

export interface InputNode extends RowNode {
  /** For texts and dates; "" where there is none. */
  readonly texts: readonly string[];
}

export interface Typed {
  readonly sheet: string;
  readonly rows: SheetSpec["rows"];
  readonly keys: readonly RowKey[];
  readonly faults: Faults;
  /** One source for each scale, by its name. */
  biasOf(scale: string): Source;
}

export function inputColumn(column: Column, typed: Typed): InputNode {
  const { rows, faults: told } = typed;
  const { name, kind, unit } = column;
  const values = new Float64Array(rows.length).fill(Number.NaN);
  const faults = new Map<number, CellFault>();
  const texts: string[] = [];
  const own = new Map<number, PlusMinus>();
  const spreads = new Map<number, Spread>();
  const isText = kind === "text" || kind === "date";
  rows.forEach((cells, row) => {
    const cell = cellOf(cells, name);
    const where = { row, column: name };
    if (isText) texts.push("");
    if (cell === undefined || (typeof cell === "number" && Number.isNaN(cell))) return;
    if (isText) {
      const text = textOf(cell, kind);
      if (typeof text !== "string") faults.set(row, told.raise(text, where));
      else {
        texts[row] = text;
        values[row] = kind === "date" ? dayOf(text) : textCode(text);
      }
    } else if (isSpread(cell)) {
      const given = inUnit(cell, unit);
      if (given) {
        values[row] = given.value;
        if (given.sources.length > 0) spreads.set(row, given);
      } else
        faults.set(
          row,
          told.raise(
            sheetIssue.wrongUnit(`${cell.value}`, unitTextOf(cell), unit?.text ?? "plain numbers"),
            where,
          ),
        );
    } else {
      const figure = readFigure(cell, kind ?? "number", unit);
      if ("code" in figure) faults.set(row, told.raise(figure, where));
      else {
        values[row] = figure.value;
        if (figure.plusMinus) own.set(row, figure.plusMinus);
        for (const warning of figure.warnings) told.report(warning, where);
      }
    }
  });
  const shared = column.plusMinus ?? column.scale;
  const doubtful = !isText && (own.size > 0 || spreads.size > 0 || shared !== undefined);
  const spreadAt = doubtful ? spreadsOf(column, typed, values, own, spreads) : undefined;
  const nodeKind = isText ? kind : "number";
  const unchecked = !isText && !column.plusMinus && column.scale && column.scale.withinG === undefined;
  // What its bias may be nobody knows: a ± that was typed, or one from a script, is the founder's own word.
  const lacks = unchecked
    ? Uint8Array.from(values, (value, row) =>
        Number.isNaN(value) || own.has(row) || spreads.has(row) ? 0 : 1,
      )
    : undefined;
  return {
    per: "row",
    name,
    kind: nodeKind,
    unit,
    values,
    faults,
    texts,
    spreadAt,
    doubtful,
    far: false,
    smooth: true,
    lacks,
  };
}

/** Made when first asked for: the source objects of a cell must stay the same. */
function spreadsOf(
  { name, plusMinus, scale, scaleStep, scaleWithin }: Column,
  { sheet, keys, biasOf }: Typed,
  values: Float64Array,
  own: ReadonlyMap<number, PlusMinus>,
  spreads: ReadonlyMap<number, Spread>,
): (row: number) => Spread | undefined {
  const made: (Spread | undefined)[] = [];
  const make = (row: number): Spread | undefined => {
    const value = values[row]!;
    const given = spreads.get(row);
    if (given || Number.isNaN(value)) return given;
    const id = `${sheet}, ${name}, ${keys[row]!.key}`;
    const says = `${name} of ${keys[row]!.name}`;
    const written = own.get(row) ?? plusMinus;
    if (written) {
      return spreadOfQuantity({ value, plusMinus: written }, { source: id, says });
    }
    if (!scale) return undefined;
    // Rounded twice, as in the log's own tests: nobody says whether a vessel was weighed before its load.
    const reading: Source = { id, kind: "reading", shape: { kind: "triangular" }, says };
    return linear(value, [
      { scale: scaleStep!, source: reading },
      { scale: scaleWithin!, source: biasOf(scale.name) },
    ]);
  };
  return (row) => {
    if (!(row in made)) made[row] = make(row);
    return made[row];
  };
}

function textOf(cell: Exclude<CellSpec, undefined>, kind: "text" | "date") {
  if (isSpread(cell)) return sheetIssue.noSpread(kind);
  const text = `${cell}`.trim();
  return kind === "text" ? text : readDate(text);
}

/** A text that does not begin like a figure is a text. */
export function namedValue(
  name: string,
  cell: CellSpec,
  typed: Pick<Typed, "sheet" | "faults">,
): OneNode & { text?: string } {
  const common = { per: "sheet" as const, name, smooth: true };
  const empty = { ...common, kind: "number" as const, value: Number.NaN, doubtful: false };
  if (cell === undefined || (typeof cell === "string" && cell.trim() === "")) return empty;
  if (isSpread(cell)) {
    const unit = unitOf(cell);
    return {
      ...common,
      kind: "number",
      unit,
      value: cell.value,
      spread: cell,
      doubtful: cell.sources.length > 0,
    };
  }
  if (typeof cell === "string" && !/^[\s+\-−.\d½¼¾⅛⅜⅝⅞⅓⅔±]/.test(cell)) {
    const text = cell.trim();
    return { ...common, kind: "text", value: textCode(text), doubtful: false, text };
  }
  const figure = readFigure(cell, "any", undefined);
  if ("code" in figure) return { ...empty, fault: typed.faults.raise(figure, { value: name }) };
  for (const warning of figure.warnings) typed.faults.report(warning, { value: name });
  const { value, unit, plusMinus } = figure;
  const spec = { source: `${typed.sheet}, ${name}`, says: name };
  const spread = plusMinus && spreadOfQuantity({ value, plusMinus }, spec);
  return { ...common, kind: "number", unit, value, spread, doubtful: (spread?.sources.length ?? 0) > 0 };
}

function unitOf(spread: Spread): Unit | undefined {
  return (spread as { readonly unit?: Unit }).unit;
}

function unitTextOf(spread: Spread): string {
  return unitOf(spread)?.text ?? "a plain number";
}

/** A script's spread in the unit of the column: one without a unit counts in it. */
function inUnit(spread: Spread, unit: Unit | undefined): Spread | undefined {
  const own = unitOf(spread);
  if (!own || own === unit) return spread;
  if (!unit || !sameDimension(own, unit)) return undefined;
  const factor = convertDifference(1, own, unit);
  return {
    value: convert(spread.value, own, unit),
    sources: spread.sources,
    fill(out, start, drawing) {
      spread.fill(out, start, drawing);
      const offset = convert(spread.value, own, unit) - factor * spread.value;
      for (let j = 0; j < out.length; j++) out[j] = factor * out[j]! + offset;
    },
  };
}
