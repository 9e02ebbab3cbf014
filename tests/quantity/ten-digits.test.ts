// Ten digits by arithmetic are those of the language's own printing (ECMAScript, Number.prototype.toPrecision).

import { expect, test } from "vitest";
import { tenDigits } from "../../lib/quantity/print-number.ts";
import { seeded } from "../seeded.ts";

const printed = (value: number) => Number(value.toPrecision(10));

test("120,000 numbers of every size and sign, and those beside ties and powers of ten", () => {
  const random = seeded(20260711);
  const wrong: number[] = [];
  const hold = (value: number) => {
    if (!Object.is(tenDigits(value), printed(value))) wrong.push(value);
  };
  for (let k = 0; k < 30_000; k++) {
    const size = 10 ** random.uniform(-40, 40);
    hold(size);
    hold(random.normal() * 10 ** random.integer(-6, 6));
    // Ten digits and a five: what follows decides, far down.
    const digits = random.integer(1_000_000_000, 2_000_000_000);
    hold(Number(`${digits}5e${random.integer(-30, 30)}`));
    hold(
      -Number(`${digits}${random.pick(["4999999", "5000001", "49999", "50001"])}e${random.integer(-30, 20)}`),
    );
  }
  for (let exponent = -320; exponent <= 308; exponent++) {
    for (const near of [1, 1 - 2 ** -53, 1 + 2 ** -52, 0.99999999995, 0.99999999994999])
      hold(near * 10 ** exponent);
  }
  expect(wrong).toEqual([]);
});

test("nothing, no number and without end stay as they are; −0 is 0", () => {
  expect(tenDigits(0)).toBe(0);
  expect(tenDigits(-0)).toBe(printed(-0));
  expect(tenDigits(Number.NaN)).toBeNaN();
  expect([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].map(tenDigits)).toEqual([
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ]);
  expect([Number.MIN_VALUE, Number.MAX_VALUE].map(tenDigits)).toEqual(
    [Number.MIN_VALUE, Number.MAX_VALUE].map(printed),
  );
});
