// A way of testing is whole: what can be written down can be worked out, told, shown as a formula and read about.

import { expect, test } from "vitest";
import { howTested } from "../../lib/log/how-tested.ts";
import { testForms } from "../../lib/log/test-forms.ts";
import { formulaFor } from "../../lib/log/test-number.ts";
import { sheetOfFormula } from "../../lib/page/test-formulas.ts";
import { rigWordsFor } from "../../lib/sand/rig-words.ts";

const ways = testForms.flatMap(({ test, methods, fields }) =>
  (methods.length > 0 ? methods : [undefined]).map((method) => ({ test, method, fields })),
);

test.each(ways)("$test, $method: hazard, rig and doubt in one row of lib/sand/rig-words.ts", (way) => {
  expect(rigWordsFor(way.test, way.method)).toHaveLength(1);
});

test.each(ways.filter(({ method }) => method))(
  "$test, $method: words of its own in lib/log/how-tested.ts",
  ({ test, method }) => {
    const said = howTested({ test, method: method!, raw: {}, place: { file: "log.yaml" } });
    expect(said).toMatch(/^[A-Z].*, .*\.$/);
    expect(said.endsWith(`, ${method}.`)).toBe(false);
  },
);

test.each(ways.filter(({ fields }) => fields.length > 0))(
  "$test, $method: a formula in lib/log/test-number.ts over readings that can be written, and its sheet in lib/page/test-formulas.ts",
  ({ test, method, fields }) => {
    const formula = formulaFor(test, method, false)!;
    const raw = fields.map((field) => field.raw);
    expect(formula).toBeDefined();
    // A blank run is the rig's own.
    const read = Object.keys(formula.inputs).filter((input) => formula.inputs[input] !== "blank");
    expect(read.filter((input) => !raw.includes(input))).toEqual([]);
    const needed = fields.filter((field) => field.needed).map((field) => field.raw);
    expect(needed.filter((input) => !(input in formula.inputs))).toEqual([]);
    const sheet = sheetOfFormula(formula.formula)!;
    expect(sheet).toBeDefined();
    expect(sheet.columns.map(([, input]) => input).sort()).toEqual(Object.keys(formula.inputs).sort());
  },
);
