// A formula: figures or faults with a place in it; the same figure in other units; what mathjs gives on plain numbers.

import { evaluate } from "mathjs/number";
import { unitNamed } from "../../lib/quantity/read-unit.ts";
import { convert, type Unit } from "../../lib/quantity/unit.ts";
import { namesIn, readFormula } from "../../lib/sheet/formula.ts";
import type { Formula, NameKind } from "../../lib/sheet/formula-type.ts";
import { names, otherSheets } from "../sheet/formula-scope.ts";
import { claim, type Step } from "./claim.ts";

export interface FormulaTally {
  read: number;
  worked: number;
  inOtherUnits: number;
}

/** Another unit of the same kind for each. */
const others: { readonly [unit: string]: string } = {
  g: "kg",
  kg: "lb",
  mm: "in",
  lb: "g",
  psi: "kPa",
  "°C": "K",
  "°F": "°C",
  K: "°F",
  "°C difference": "°F difference",
};
const otherNames = new Map(
  [...names].map(([name, kind]): [string, NameKind] => {
    const other = kind.kind === "number" && kind.unit ? others[kind.unit.text] : undefined;
    return [name, other === undefined ? kind : ({ ...kind, unit: unitNamed(other)! } as NameKind)];
  }),
);

export function formulaHolds(text: string, tally: FormulaTally, step: Step): void {
  for (const where of ["column", "foot"] as const) {
    step(`read in a ${where}`);
    const { value, issues } = readFormula(text, { names, otherSheets, in: where });
    const errors = issues.filter(({ severity }) => severity === "error");
    claim((value === undefined) === errors.length > 0, "neither a formula nor an error, or both");
    claim(issues.length <= 10, `${issues.length} faults`);
    for (const { at, code, message, remedy } of issues) {
      claim(0 <= at.from && at.from <= at.to && at.to <= text.length, `${code}: a place outside the formula`);
      claim(/[.?]$/.test(message), () => `${code} is no sentence: ${message}`);
      claim(remedy !== undefined && remedy !== "", `${code} says not what to do`);
      if (!/undefined|NaN|object/i.test(text))
        claim(
          !/undefined|\bNaN\b|\[object/.test(`${message}${remedy}`),
          () => `${code}: ${message} ${remedy}`,
        );
    }
    step("names");
    const named = namesIn(text, names.keys());
    if (!value) continue;
    tally.read++;
    for (const name of [...value.rows, ...value.sheet])
      claim(named.value?.includes(name), `${name} is read and is not among the names`);
    step("run");
    if (runHolds(value)) tally.worked++;
    step("parts");
    for (const { fn, of } of value.aggregates) {
      runHolds(of);
      // Days can be counted, and are no figure alone.
      if (fn === "count") continue;
      // A part is cut out of the whole as it was written, and reads alone as it does there.
      const alone = readFormula(of.text, { names, otherSheets, in: "column" });
      claim(
        alone.value !== undefined,
        () => `the part ${of.text} is no formula: ${alone.issues[0]?.message}`,
      );
      claim(alone.value.unit?.text === of.unit?.text, () => `the part ${of.text} has another unit alone`);
    }
    step("other units");
    otherUnitsHold(text, value, where, tally);
  }
}

function runHolds(formula: Formula): boolean {
  const count =
    formula.rows.length + formula.sheet.length + formula.aggregates.length + formula.lookUps.length;
  const out = new Float64Array(3);
  let worked = false;
  for (const start of [-1, 0.5, 1e9]) {
    const inputs = Array.from({ length: count }, (_, k) => start + k);
    formula.run(inputs, out);
    claim(Object.is(out[0], out[2]) || out[0] === out[2], "rows with the same figures give others");
    claim(Number.isNaN(out[0]) || Number.isFinite(out[0]), `a figure of ${out[0]}`);
    claim(
      (formula.why(inputs) === undefined) === Number.isFinite(out[0]),
      "no figure and no reason, or both",
    );
    worked ||= Number.isFinite(out[0]);
    formula.run(
      inputs.map(() => Number.NaN),
      out,
    );
    formula.run(
      inputs.map((x) => Float64Array.of(x, Number.NaN, x)),
      out,
    );
    claim(Object.is(out[0], out[2]) || out[0] === out[2], "a missing figure in one row changes another");
  }
  return worked;
}

/** Where a figure hangs on its unit by rounding, or on which side of a limit it lies, another unit may give another. */
const hangsOnUnit = /round|floor|ceil|<|>|=|!|if|\?|count|and|or|not|clamp|min|max|abs|[≤≥≠]/;

function otherUnitsHold(text: string, formula: Formula, where: "column" | "foot", tally: FormulaTally): void {
  if (formula.aggregates.length + formula.lookUps.length > 0 || hangsOnUnit.test(text)) return;
  if (formula.result !== "number") return;
  const other = readFormula(text, { names: otherNames, otherSheets, in: where }).value;
  claim(other, "read in some units, and not in others of the same kinds");
  const used = [...formula.rows, ...formula.sheet];
  claim(used.join() === [...other.rows, ...other.sheet].join(), "other names in other units");
  const inputs = used.map((_, k) => 3.7 + 1.3 * k);
  const turned = used.map((name, k) => inOther(name, inputs[k]!));
  const near = used.map((_, k) => inputs[k]! * (1 + (k % 2 === 0 ? 1e-12 : -1e-12)));
  const [mine, theirs, moved] = [figureOf(formula, inputs), figureOf(other, turned), figureOf(formula, near)];
  if (!Number.isFinite(mine) || !Number.isFinite(moved) || !Number.isFinite(theirs)) return;
  const inMine = formula.unit && other.unit ? sameKind(theirs, other.unit, formula.unit) : theirs;
  tally.inOtherUnits++;
  // As far as rounding of the inputs moves it; the exponent of a root of a unit is kept to nine digits.
  const within = 1e-8 * Math.abs(mine) + 1e3 * Math.abs(mine - moved) + 1e-9;
  claim(
    Math.abs(inMine - mine) <= within,
    () => `${mine} ${formula.unit?.text ?? ""}, and ${inMine} from other units`,
  );
}

function inOther(name: string, value: number): number {
  const [kind, other] = [names.get(name)!, otherNames.get(name)!];
  if (kind.kind !== "number" || other.kind !== "number" || !kind.unit || !other.unit) return value;
  return convert(value, kind.unit, other.unit);
}

const sameKind = (value: number, from: Unit, to: Unit): number => convert(value, from, to);

function figureOf(formula: Formula, inputs: readonly number[]): number {
  const out = new Float64Array(1);
  formula.run(inputs, out);
  return out[0]!;
}

const plainNames = new Map<string, NameKind>(
  ["a", "b", "c"].map((name) => [name, { kind: "number", per: "row" }]),
);
const row = { a: -1.5, b: 2.75, c: 4 };

/** On plain numbers, what mathjs works out; where it gives none, a reason. */
export function plainHolds(text: string, step: Step): void {
  step("plain numbers");
  const { value } = readFormula(text, { names: plainNames, in: "column" });
  if (!value) return;
  const mine = figureOf(
    value,
    value.rows.map((name) => row[name as keyof typeof row]),
  );
  const theirs = evaluate(text.replaceAll("ln(", "log("), { ...row, log2: Math.log2 }) as number;
  if (typeof theirs !== "number") return;
  claim(
    Number.isFinite(mine) || !Number.isFinite(theirs) || excused(text),
    `no figure, and mathjs gives ${theirs}`,
  );
  if (Number.isFinite(mine))
    claim(
      Math.abs(mine - theirs) <= 1e-9 * Math.max(Math.abs(theirs), 1),
      `${mine}, and mathjs gives ${theirs}`,
    );
}

/** A step that has no figure leaves none here; mathjs goes on with infinity, and x ^ 0 is 1 there whatever x is. */
const excused = (text: string): boolean => /\^|exp|\/|ln|log|sqrt/.test(text);
