// A typical curve of strengths for readers who think in psi.

import { unitNamed } from "../quantity/read-unit.ts";
import { convert } from "../quantity/unit.ts";
import type { TypicalCurveInput } from "./typical-input.ts";

/** The same drawing with its strengths in psi. */
export function inPsi(input: TypicalCurveInput): TypicalCurveInput {
  const [kPa, psi] = [unitNamed("kPa")!, unitNamed("psi")!];
  const turned = <T extends object>(of: T, names: readonly (keyof T)[]): T => {
    const known = names.filter((name) => of[name] !== undefined);
    return { ...of, ...Object.fromEntries(known.map((name) => [name, convert(Number(of[name]), kPa, psi)])) };
  };
  return {
    ...input,
    property: { ...input.property, unit: psi.text },
    curves: input.curves.map((curve) => ({
      ...curve,
      points: curve.points.map((at) => turned(at, ["value", "low", "high"])),
    })),
    published: input.published.map((point) => turned(point, ["y", "low", "high"])),
    batches: input.batches.map((batch) => turned(batch, ["y", "yLow", "yHigh"])),
  };
}
