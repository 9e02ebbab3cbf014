import { expect, test } from "vitest";
import { digitsForLetters } from "../../lib/numbers/digits-for-letters.ts";

test("letters within a number are read as the digits that they look like", () => {
  expect(digitsForLetters("O.5")).toBe("0.5");
  expect(digitsForLetters("8l.2 g")).toBe("81.2 g");
  expect(digitsForLetters("1O0g")).toBe("100g");
  expect(digitsForLetters("No. 5O")).toBe("No. 50");
});

test("words and units stay", () => {
  for (const text of ["No. 40", "5 oz", "12 lb", "oil", "1.5 ml", "", "BS 60", "lOl"]) {
    expect(digitsForLetters(text)).toBeUndefined();
  }
});
