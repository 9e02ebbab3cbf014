// A formula in a sheet: undrawn, and drawn with a ± too small to see, it gives the figure that it gives alone.

import { readFormula } from "../../lib/sheet/formula.ts";
import type { NameKind } from "../../lib/sheet/formula-type.ts";
import { sheet } from "../../lib/sheet/sheet.ts";
import { claim, type Step } from "./claim.ts";

const values = { a: 12.5, b: 2.75, c: 4 } as const;
const names = new Map<string, NameKind>(
  Object.keys(values).map((name) => [name, { kind: "number", per: "row" }]),
);
const columns = (formula: string) => ({ a: "number", b: "number", c: "number", out: { formula } }) as const;

export function sheetHolds(text: string, step: Step): void {
  step("sheet");
  const alone = readFormula(text, { names, in: "column" }).value;
  const undrawn = sheet({ columns: columns(text), rows: [values] }).cell(0, "out");
  if (!alone) {
    claim(undrawn.kind === "fault", `no formula, and its cell is a ${undrawn.kind}`);
    return;
  }
  const out = new Float64Array(1);
  alone.run(
    alone.rows.map((name) => values[name as keyof typeof values]),
    out,
  );
  claim(
    (undrawn.kind === "figure") === Number.isFinite(out[0]),
    `${out[0]} alone, and a cell that is a ${undrawn.kind}`,
  );
  if (undrawn.kind !== "figure") return;
  claim(undrawn.value === out[0], `${out[0]} alone, ${undrawn.value} in a sheet`);
  const { low: least, high: most } = undrawn.figure;
  const tenDigits = 1e-9 * Math.abs(undrawn.value);
  claim(most - least <= tenDigits && Math.abs(least - undrawn.value) <= tenDigits, "a ± of nothing");
  step("doubt");
  const doubtful = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, `${value} ± 0.000001`]),
  );
  const drawn = sheet({ columns: columns(text), rows: [doubtful] }).cell(0, "out");
  claim(drawn.kind === "figure", `with a ±, the cell is a ${drawn.kind}`);
  claim(drawn.value === undrawn.value, `${undrawn.value} without a ±, ${drawn.value} with one`);
  const { low, high, lost } = drawn.figure;
  claim(
    lost !== undefined || (Number.isFinite(low) && Number.isFinite(high)),
    `from ${low} to ${high}, and no draw was lost`,
  );
  if (Number.isFinite(low)) claim(low <= high, `from ${low} to ${high}`);
}
