// The arithmetic of formulas, a stretch of rows at a time. NaN stands for what cannot be worked out.
//
// What has outgrown numbers is no figure: infinite − infinite makes it NaN at once, so that 1 / (1 / 0) cannot pass for 0.
// Written so, without a question, a loop over divisions takes a third of the time (measured).

import { textSnippet } from "./formula-why-text.ts";

type Numbers = Float64Array;

/** Writes n numbers into out from o; a, b and c are read from their own places on. */
export interface Loop {
  readonly run: (
    out: Numbers,
    o: number,
    n: number,
    a: Numbers,
    ao: number,
    b: Numbers,
    bo: number,
    c: Numbers,
    co: number,
  ) => void;
  /** Why the result is no number though a, b and c are; undefined where it has grown too large. texts: what they are. */
  readonly reason?: (values: readonly number[], texts: readonly string[]) => string | undefined;
}

const unary = (run: Loop["run"], reason?: Loop["reason"]): Loop => ({ run, ...(reason ? { reason } : {}) });

const byZero = (texts: readonly string[], k: number): string =>
  `division by zero: ${textSnippet(texts[k])} is 0`;

export const loops = {
  add: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const figure = a[ao + i]! + b[bo + i]!;
      out[o + i] = figure - figure + figure;
    }
  }),
  subtract: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const figure = a[ao + i]! - b[bo + i]!;
      out[o + i] = figure - figure + figure;
    }
  }),
  multiply: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const figure = a[ao + i]! * b[bo + i]!;
      out[o + i] = figure - figure + figure;
    }
  }),
  divide: unary(
    (out, o, n, a, ao, b, bo) => {
      for (let i = 0; i < n; i++) {
        const figure = a[ao + i]! / b[bo + i]!;
        out[o + i] = figure - figure + figure;
      }
    },
    ([, under], texts) => (under === 0 ? byZero(texts, 1) : undefined),
  ),
  power: unary(
    (out, o, n, a, ao, b, bo) => {
      for (let i = 0; i < n; i++) {
        const base = a[ao + i]!;
        const exponent = b[bo + i]!;
        const figure = base ** exponent;
        out[o + i] = figure - figure + figure;
      }
    },
    ([base, exponent], texts) =>
      base === 0 && exponent! < 0
        ? byZero(texts, 0)
        : base! < 0 && !Number.isInteger(exponent)
          ? `${textSnippet(texts[0])} is below 0, and only whole powers can be taken of it`
          : undefined,
  ),
  negate: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = -a[ao + i]!;
  }),
  copy: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = a[ao + i]!;
  }),
  sqrt: unary(
    (out, o, n, a, ao) => {
      for (let i = 0; i < n; i++) out[o + i] = Math.sqrt(a[ao + i]!);
    },
    ([x], texts) => (x! < 0 ? `root of a negative number: ${textSnippet(texts[0])} is below 0` : undefined),
  ),
  cbrt: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.cbrt(a[ao + i]!);
  }),
  abs: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.abs(a[ao + i]!);
  }),
  exp: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) {
      const figure = Math.exp(a[ao + i]!);
      out[o + i] = figure - figure + figure;
    }
  }),
  ln: logarithm(Math.log),
  log10: logarithm(Math.log10),
  log2: logarithm(Math.log2),
  /** To b decimals, halves away from zero. A hair is added, for 1.005 is stored as a little less. */
  round: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const x = a[ao + i]!;
      const steps = 10 ** Math.abs(b[bo + i]!);
      const up = b[bo + i]! >= 0;
      const scaled = Math.abs(up ? x * steps : x / steps);
      // From here on a double has no halves, or the scaling has overflowed: nothing is left to round.
      const whole = scaled < 2 ** 52 ? Math.floor(scaled * (1 + 4e-16) + 0.5) : scaled;
      const size = whole === Number.POSITIVE_INFINITY ? Math.abs(x) : up ? whole / steps : whole * steps;
      out[o + i] = x < 0 ? -size : size;
    }
  }),
  floor: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.floor(a[ao + i]!);
  }),
  ceil: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.ceil(a[ao + i]!);
  }),
  min: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.min(a[ao + i]!, b[bo + i]!);
  }),
  max: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) out[o + i] = Math.max(a[ao + i]!, b[bo + i]!);
  }),
  /** a held between b and c. */
  clamp: unary(
    (out, o, n, a, ao, b, bo, c, co) => {
      for (let i = 0; i < n; i++) {
        const low = b[bo + i]!;
        const high = c[co + i]!;
        out[o + i] = low > high ? Number.NaN : Math.min(high, Math.max(low, a[ao + i]!));
      }
    },
    ([, low, high], texts) =>
      low! > high! ? `${textSnippet(texts[1])} is above ${textSnippet(texts[2])}` : undefined,
  ),
  choose: unary((out, o, n, a, ao, b, bo, c, co) => {
    for (let i = 0; i < n; i++) {
      const condition = a[ao + i]!;
      out[o + i] = condition === 1 ? b[bo + i]! : condition === 0 ? c[co + i]! : Number.NaN;
    }
  }),
  equal: comparison((x, y) => x === y),
  unequal: comparison((x, y) => x !== y),
  below: comparison((x, y) => x < y),
  above: comparison((x, y) => x > y),
  atMost: comparison((x, y) => x <= y),
  atLeast: comparison((x, y) => x >= y),
  /** Settled by one side where that side settles it, whatever the other is. */
  and: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const x = a[ao + i]!;
      const y = b[bo + i]!;
      out[o + i] = x === 0 || y === 0 ? 0 : x * y;
    }
  }),
  or: unary((out, o, n, a, ao, b, bo) => {
    for (let i = 0; i < n; i++) {
      const x = a[ao + i]!;
      const y = b[bo + i]!;
      out[o + i] = x === 1 || y === 1 ? 1 : x + y;
    }
  }),
  not: unary((out, o, n, a, ao) => {
    for (let i = 0; i < n; i++) out[o + i] = 1 - a[ao + i]!;
  }),
} as const;

function logarithm(of: (x: number) => number): Loop {
  return {
    run: (out, o, n, a, ao) => {
      for (let i = 0; i < n; i++) {
        const x = a[ao + i]!;
        out[o + i] = x > 0 ? of(x) : Number.NaN;
      }
    },
    reason: ([x], texts) =>
      x! <= 0 ? `logarithm of 0 or less: ${textSnippet(texts[0])} is not above 0` : undefined,
  };
}

function comparison(holds: (x: number, y: number) => boolean): Loop {
  return {
    run: (out, o, n, a, ao, b, bo) => {
      for (let i = 0; i < n; i++) {
        const x = a[ao + i]!;
        const y = b[bo + i]!;
        out[o + i] = Number.isNaN(x) || Number.isNaN(y) ? Number.NaN : holds(x, y) ? 1 : 0;
      }
    },
  };
}
