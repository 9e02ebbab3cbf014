// Limits that nothing but the masses allow must still hold them when they are printed.

import { expect, test } from "vitest";
import { printOutward } from "../../lib/quantity/print-outward.ts";

test("limits are rounded away from each other, the finer the closer they lie", () => {
  expect(printOutward({ low: 48.02, high: 64.93 })).toBe("48 to 65");
  expect(printOutward({ low: 6.68, high: 8.21 })).toBe("6.6 to 8.3");
  expect(printOutward({ low: 84.2, high: 85.4 })).toBe("84.2 to 85.4");
  expect(printOutward({ low: 70.101, high: 70.309 })).toBe("70.10 to 70.31");
});

test("what a computer adds beyond the tenth digit moves no limit", () => {
  expect(printOutward({ low: 0.1 * 3 * 10, high: 9 })).toBe("3 to 9");
});

test("limits the wrong way round throw", () => {
  expect(() => printOutward({ low: 2, high: 1 })).toThrow(RangeError);
});
