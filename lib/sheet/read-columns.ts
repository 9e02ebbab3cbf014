// The columns of a spec, units and scales read once.

import type { Issue } from "../issue.ts";
import { nearest } from "../numbers/nearest.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { readQuantity } from "../quantity/read-quantity.ts";
import { readUnit, unitNamed } from "../quantity/read-unit.ts";
import { convertDifference, sameDifference, sameDimension, type Unit } from "../quantity/unit.ts";
import { sheetIssue } from "./sheet-issues.ts";
import type { ColumnSpec, SheetScale } from "./sheet-types.ts";

export type PlusMinus = NonNullable<Quantity["plusMinus"]>;

export interface Column {
  readonly name: string;
  readonly title?: string | undefined;
  /** Undefined: a formula without a unit, which says itself what it gives. */
  readonly kind: "quantity" | "number" | "text" | "date" | undefined;
  readonly unit?: Unit | undefined;
  readonly formula?: string | undefined;
  /** In the column's unit. */
  readonly plusMinus?: PlusMinus | undefined;
  readonly scale?: SheetScale | undefined;
  /** Step and bound of the scale in the column's unit. */
  readonly scaleStep?: number;
  readonly scaleWithin?: number;
}

const gram = unitNamed("g")!;

export function readColumn(
  name: string,
  spec: ColumnSpec,
  scales: readonly SheetScale[],
  report: (issue: Issue) => void,
): Column {
  const full = typeof spec === "string" ? shortSpec(spec) : spec;
  const { title, formula } = full;
  const unit = full.unit === undefined ? undefined : unitOf(full.unit, name, report);
  const kind =
    full.kind ?? (full.unit !== undefined ? "quantity" : formula !== undefined ? undefined : "number");
  const isText = kind === "text" || kind === "date";
  if (isText && (full.unit ?? full.plusMinus ?? full.scale) !== undefined)
    report(sheetIssue.kindAndUnit(name, kind));
  const column = { name, title, kind, formula, ...(isText ? {} : { unit }) };
  if (isText || formula !== undefined) return column;
  const plusMinus =
    full.plusMinus === undefined ? undefined : plusMinusOf(name, full.plusMinus, unit, report);
  return { ...column, plusMinus, ...scaleOf(name, full.scale, unit, scales, report) };
}

function shortSpec(text: string): Exclude<ColumnSpec, string> {
  const typed = text.trim();
  if (typed === "text" || typed === "date" || typed === "number") return { kind: typed };
  return typed.startsWith("=") ? { formula: typed.slice(1).trim() } : { unit: typed };
}

function unitOf(text: string, column: string, report: (issue: Issue) => void): Unit | undefined {
  const { value, issues } = readUnit(text);
  if (!value && /[-+*/()×÷−]/.test(text)) report(sheetIssue.formulaAsUnit(column, text));
  else issues.forEach(report);
  return value;
}

function plusMinusOf(
  name: string,
  text: string,
  unit: Unit | undefined,
  report: (issue: Issue) => void,
): PlusMinus | undefined {
  const read = readQuantity(`0 ± ${text.trim().replace(/^±\s*/, "")}`);
  read.issues.forEach(report);
  const { plusMinus, unit: own } = read.value ?? {};
  if (!plusMinus || !own) return plusMinus;
  if (!unit || !sameDifference(own, unit)) {
    report(sheetIssue.plusMinusUnit(name, text, unit?.text ?? "a plain number"));
    return undefined;
  }
  return { size: convertDifference(plusMinus.size, own, unit), meaning: plusMinus.meaning };
}

function scaleOf(
  name: string,
  asked: string | undefined,
  unit: Unit | undefined,
  scales: readonly SheetScale[],
  report: (issue: Issue) => void,
): Pick<Column, "scale" | "scaleStep" | "scaleWithin"> {
  if (asked === undefined) return {};
  const scale = scales.find((one) => one.name === asked);
  const known = scales.map((one) => one.name);
  if (!scale) report(sheetIssue.noSuchScale(name, asked, nearest(asked, known), known.join(", ")));
  else if (!unit || !sameDimension(unit, gram))
    report(sheetIssue.scaleNotMass(name, unit?.text ?? "no unit"));
  else {
    return {
      scale,
      scaleStep: convertDifference(scale.stepG, gram, unit),
      scaleWithin: convertDifference(scale.withinG ?? 0, gram, unit),
    };
  }
  return {};
}
