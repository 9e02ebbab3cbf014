// The sheets of a log, worked out: with the log's scales, by need where one looks up in another, faults at their places.

import type { Issue, Place } from "../issue.ts";
import { type LoggedSheet, placeWithin } from "../log/logged-sheet.ts";
import type { Log } from "../log/types.ts";
import { circleOfSheets } from "./log-sheet-issues.ts";
import { sheet } from "./sheet.ts";
import { chartsOf } from "./sheet-bands.ts";
import type { Cell, ColumnSpec, Sheet, SheetSpec, SheetWhere } from "./sheet-types.ts";

/**
 * The founder's own sheets in the log's order, each worked out by sheet(). A sheet that looks up in others is worked out
 * after them; sheets that look up in each other in a circle are named, and those look-ups find nothing. Issues carry
 * file, line and column, within a formula those of the faulty part, and the sheet's name as what they are about.
 * Nothing throws for what stands in a log.
 *
 *     logSheets(log).flatMap(({ foot }) => foot.map(({ name }) => name))   // what the feet hold
 */
export function logSheets(log: Pick<Log, "sheets" | "scales">): readonly Sheet[] {
  const byName = new Map(log.sheets.map((one) => [plain(one.name), one]));
  const needs = new Map(log.sheets.map((one) => [one, needed(one, byName)]));
  const done = new Map<LoggedSheet, Sheet>();

  function workOut(one: LoggedSheet): Sheet {
    const known = done.get(one);
    if (known) return known;
    const circle = circleOf(one, needs);
    const others = needs.get(one)!.filter((other) => !circle.includes(other));
    const made = computed(one, log, others.map(workOut), circle);
    done.set(one, made);
    return made;
  }
  return log.sheets.map(workOut);
}

function computed(
  one: LoggedSheet,
  { scales }: Pick<Log, "scales">,
  others: readonly Sheet[],
  circle: readonly LoggedSheet[],
): Sheet {
  const made = sheet(specOf(one), { scales, others, place: (where) => placeOf(one, where) });
  const { charts, issues } = chartsOf(one, made);
  const about = (issue: Issue): Issue => ({ place: one.place, ...issue, about: one.name });
  if (circle.length === 0) return { ...made, charts, issues: [...made.issues, ...issues].map(about) };
  // A look-up that the circle forbids is told as the circle, not as a sheet that is not there.
  const told = circleOfSheets(circle.map(({ name }) => name));
  const forbidden = ({ code }: { readonly code: string }) => noSuchSheet.includes(code);
  const worded = (cell: Cell): Cell => {
    if (cell.kind !== "fault" || !forbidden(cell.fault)) return cell;
    const { code, message, remedy } = told;
    return { kind: "fault", fault: { ...cell.fault, code, message, ...(remedy ? { remedy } : {}) } };
  };
  return {
    ...made,
    cell: (row, name) => worded(made.cell(row, name)),
    foot: made.foot.map((figure) => ({
      name: figure.name,
      formula: figure.formula,
      get cell() {
        return worded(figure.cell);
      },
    })),
    charts,
    issues: [...made.issues.filter((issue) => !forbidden(issue)), told, ...issues].map(about),
  };
}

const noSuchSheet = ["sheet/formula-no-such-sheet", "sheet/formula-no-other-sheets"];

const plain = (name: string): string =>
  name
    .trim()
    .replace(/[\s_]+/g, " ")
    .toLowerCase();

/** By the names within lookUp("…", …) in its formulas: those of the log's sheets. */
function needed(one: LoggedSheet, byName: ReadonlyMap<string, LoggedSheet>): LoggedSheet[] {
  const formulas = [...one.columns, ...one.foot].flatMap(({ formula }) => formula?.text ?? []);
  const names = formulas.flatMap((text) =>
    [...text.matchAll(/\blookUp\s*\(\s*(?:"([^"]*)"|'([^']*)')/gi)].map((match) => match[1] ?? match[2]!),
  );
  return [...new Set(names.flatMap((name) => byName.get(plain(name)) ?? []))];
}

/** The sheets that it needs and that need it in turn, itself among them; none where there is no such circle. */
function circleOf(
  one: LoggedSheet,
  needs: ReadonlyMap<LoggedSheet, readonly LoggedSheet[]>,
): readonly LoggedSheet[] {
  const reached = (from: LoggedSheet): Set<LoggedSheet> => {
    const found = new Set<LoggedSheet>();
    const walk = (at: LoggedSheet): void => {
      for (const next of needs.get(at) ?? []) {
        if (found.has(next)) continue;
        found.add(next);
        walk(next);
      }
    };
    walk(from);
    return found;
  };
  return [...reached(one)].filter((other) => reached(other).has(one));
}

function specOf({ name, title, note, columns, rows, values, foot }: LoggedSheet): SheetSpec {
  return {
    name,
    ...(title === undefined ? {} : { title }),
    ...(note === undefined ? {} : { note }),
    columns: Object.fromEntries(columns.map((column) => [column.name, columnSpec(column)])),
    rows: rows.map(({ cells }) =>
      Object.fromEntries(Object.entries(cells).map(([column, { text }]) => [column, text])),
    ),
    values: Object.fromEntries(values.map((value) => [value.name, value.text])),
    foot: Object.fromEntries(
      foot.map((one) => [
        one.name,
        one.unit ? { formula: one.formula.text, unit: one.unit.text } : one.formula.text,
      ]),
    ),
  };
}

function columnSpec({
  kind,
  title,
  unit,
  formula,
  plusMinus,
  scale,
}: LoggedSheet["columns"][number]): ColumnSpec {
  return {
    ...(kind ? { kind } : {}),
    ...(title === undefined ? {} : { title }),
    ...(unit ? { unit: unit.text } : {}),
    ...(formula ? { formula: formula.text } : {}),
    ...(plusMinus ? { plusMinus: plusMinus.text } : {}),
    ...(scale ? { scale: scale.text } : {}),
  };
}

function placeOf(one: LoggedSheet, { row, column, foot, value, offset }: SheetWhere): Place | undefined {
  if (foot !== undefined) {
    const found = one.foot.find(({ name }) => name === foot);
    if (!found) return one.place;
    return offset === undefined ? found.place : placeWithin(found.formula, offset);
  }
  if (value !== undefined) {
    const found = one.values.find(({ name }) => name === value);
    return found && offset !== undefined ? placeWithin(found, offset) : (found?.place ?? one.place);
  }
  const own = column === undefined ? undefined : one.columns.find(({ name }) => name === column);
  if (row !== undefined) {
    const cell = column === undefined ? undefined : one.rows[row]?.cells[column];
    if (cell) return offset === undefined ? cell.place : placeWithin(cell, offset);
    // A cell that is worked out stands nowhere: its formula does.
    return own?.formula?.place ?? one.rows[row]?.place ?? one.place;
  }
  if (own?.formula && offset !== undefined) return placeWithin(own.formula, offset);
  return own?.place ?? one.place;
}
