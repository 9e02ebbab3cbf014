// What is kept of a sheet's drawn figures never changes one of them.

import { expect, test, vi } from "vitest";
import type { SheetSpec } from "../../lib/sheet/sheet-types.ts";

/** Two columns weighed on one scale, and figures over their rows that have to be drawn. */
const weighed = (first: number, unit = "g", span = "max(a) - min(b)"): SheetSpec => ({
  columns: {
    a: { unit, scale: "kitchen scale" },
    b: { unit, scale: "kitchen scale" },
    larger: `= max(a, b + 1 ${unit === "g" ? "g" : "kg"})`,
  },
  rows: [
    { a: first, b: 11 },
    { a: 14, b: 13.5 },
    { a: 12.4, b: 15 },
  ],
  foot: { span, scatter: "sd(larger)", middle: "median(larger) / mean(a)" },
});

/** With an empty store; the sheets one after the other. */
async function told(...specs: SheetSpec[]): Promise<readonly string[]> {
  vi.resetModules();
  const { sheet } = await import("../../lib/sheet/sheet.ts");
  const scales = [{ name: "kitchen scale", stepG: 0.1, withinG: 0.5 }];
  return specs.map((spec) => {
    const { foot } = sheet(spec, { scales });
    return JSON.stringify(
      foot.map(({ cell }) => {
        if (cell.kind !== "figure") return cell.kind === "fault" ? cell.fault.message : cell.kind;
        const { value, mean, sd, low, high, shares, quantile } = cell.figure;
        return [value, mean, sd, low, high, quantile.call(cell.figure, 0.2), shares];
      }),
    );
  });
}

test("after an edit, another unit, another formula and back again: the same digits, whatever came before", async () => {
  const specs = [
    weighed(12),
    weighed(12.1),
    weighed(12, "kg"),
    weighed(12, "g", "max(b) - min(a)"),
    weighed(12),
  ];
  // Were two taken for one, the later would be told as the earlier.
  const forth = await told(...specs);
  const back = await told(...specs.toReversed());
  expect(forth).toEqual(back.toReversed());
  expect(new Set(forth).size).toBe(4);
  for (const text of forth) expect(text).toContain("percent");
});
