// Curves of any form against the certified values of NIST/ITL StRD (nonlinear), from both published starts.

import { expect, test } from "vitest";
import { fitCurve } from "../../lib/numbers/curve-fit.ts";
import { digits, nistSet } from "./nist-data.ts";

type Model = (x: number, b: readonly number[]) => number;

const models: { readonly [name: string]: Model } = {
  Misra1a: (x, b) => b[0]! * (1 - Math.exp(-b[1]! * x)),
  Rat42: (x, b) => b[0]! / (1 + Math.exp(b[1]! - b[2]! * x)),
  MGH09: (x, b) => (b[0]! * (x ** 2 + x * b[1]!)) / (x ** 2 + x * b[2]! + b[3]!),
  Thurber: (x, b) =>
    (b[0]! + b[1]! * x + b[2]! * x ** 2 + b[3]! * x ** 3) / (1 + b[4]! * x + b[5]! * x ** 2 + b[6]! * x ** 3),
};
const counts = { Misra1a: [14, 2], Rat42: [9, 3], MGH09: [11, 4], Thurber: [37, 7] } as const;

for (const [name, [points, parameters]] of Object.entries(counts)) {
  for (const start of [0, 1]) {
    test(`${name} from start ${start + 1}: parameters, their deviations and the sum of squares to 9 digits`, () => {
      const { rows, certified, value } = nistSet(name);
      expect(rows).toHaveLength(points);
      expect(certified).toHaveLength(parameters);
      const fit = fitCurve(
        models[name]!,
        certified.map((row) => row[start]!),
        rows.map((row) => row[1]!),
        rows.map((row) => row[0]!),
      );
      expect(fit.converged).toBe(true);
      certified.forEach(([, , estimate, deviation], k) => {
        expect(digits(fit.parameters[k]!, estimate!), `b${k + 1}`).toBeGreaterThan(9);
        expect(digits(fit.standardErrors[k]!, deviation!), `SD of b${k + 1}`).toBeGreaterThan(9);
      });
      expect(digits(fit.residualSumOfSquares, value("Residual Sum of Squares"))).toBeGreaterThan(9);
      expect(digits(fit.residualSd, value("Residual Standard Deviation"))).toBeGreaterThan(9);
      expect(fit.degreesOfFreedom).toBe(value("Degrees of Freedom"));
    });
  }
}
