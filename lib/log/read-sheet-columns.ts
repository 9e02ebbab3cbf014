// The columns of a founder's own sheet: what each holds, from a word or from a map.

import { columnUnsaid } from "./complaints-sheet.ts";
import { choiceOf, fieldsOf, mapOf, textNodeOf, textOf, uniqueEntries } from "./fields.ts";
import type { LoggedColumn, Typed } from "./logged-sheet.ts";
import type { Entry, LogNode, Report, TextNode } from "./node.ts";
import { plainName } from "./node.ts";
import { declared } from "./read-rig.ts";
import { type SheetContext, typedOf } from "./read-sheets-context.ts";

const kinds = ["quantity", "number", "text", "date"] as const;
type Kind = (typeof kinds)[number];

const sheetColumnKeys = ["kind", "unit", "formula", "scale", "±", "title"] as const;

export function readSheetColumns(
  node: LogNode | undefined,
  context: SheetContext,
  report: Report,
): LoggedColumn[] {
  const map = mapOf(node, "columns", report);
  if (!map) return [];
  return uniqueEntries(map, report).flatMap((entry) => columnOf(entry, context, report) ?? []);
}

function columnOf(entry: Entry, context: SheetContext, report: Report): LoggedColumn | undefined {
  const { value, keyPlace: place } = entry;
  const name = entry.key.trim();
  if (value.kind === "text") return { name, place, ...inShort(value, context) };
  if (value.kind !== "map") {
    report(columnUnsaid(name), place);
    return undefined;
  }
  const entries = value.entries.map((one) =>
    /^(\+\/?-|plus.?minus)$/i.test(one.key.trim()) ? { ...one, key: "±" } : one,
  );
  const fields = fieldsOf({ ...value, entries }, sheetColumnKeys, `of the column "${name}"`, report);
  const typed = (key: (typeof sheetColumnKeys)[number]): Typed | undefined => {
    const text = textNodeOf(fields.get(key), key, report);
    return text && typedOf(text, context);
  };
  const kind = choiceOf(fields.get("kind"), "kind", kinds, report);
  const [unit, formula, plusMinus, scale] = [typed("unit"), typed("formula"), typed("±"), typed("scale")];
  const known = scale && declared(fields.get("scale"), "scale", context.scales, context.scaleSection, report);
  const title = textOf(fields.get("title"), "title", report);
  // `unit: text` is meant as a kind.
  const meant = unit && kinds.find((one) => one === plainName(unit.text));
  return {
    name,
    place,
    ...(kind || meant ? { kind: kind ?? meant! } : {}),
    ...(unit && !meant ? { unit } : {}),
    ...(formula ? { formula: withoutSign(formula) } : {}),
    ...(plusMinus ? { plusMinus } : {}),
    ...(scale && known ? { scale: { ...scale, text: known.name } } : {}),
    ...(title === undefined ? {} : { title }),
  };
}

/** "text", "date", "number", a unit, or "= formula". */
function inShort(node: TextNode, context: SheetContext): Partial<LoggedColumn> {
  const typed = typedOf(node, context);
  if (typed.text.startsWith("=")) return { formula: withoutSign(typed) };
  const kind = kinds.find((one): one is Kind => one === plainName(typed.text));
  return kind ? { kind } : { unit: typed };
}

/** A formula may begin with = as in other programs; the place moves with it. */
export function withoutSign({ text, place }: Typed): Typed {
  const lead = /^=\s*/.exec(text)?.[0].length ?? 0;
  if (lead === 0) return { text, place };
  const { column, offset, length } = place;
  return {
    text: text.slice(lead),
    place: {
      ...place,
      ...(column === undefined ? {} : { column: column + lead }),
      ...(offset === undefined ? {} : { offset: offset + lead }),
      ...(length === undefined ? {} : { length: length - lead }),
    },
  };
}
