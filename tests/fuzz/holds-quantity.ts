// A quantity: a finite figure or a complaint; printed and read again it is the same to the printed digits.

import { convertQuantity, printFigure, readQuantity } from "../../lib/index.ts";
import { claim, type Step } from "./claim.ts";

export function quantityHolds(text: string, step: Step): boolean {
  step("read");
  const { value: quantity, issues } = readQuantity(text);
  claim(
    quantity !== undefined || issues.some(({ severity }) => severity === "error"),
    "neither a figure nor an error",
  );
  for (const { code, message, remedy } of issues) {
    claim(/[.?]$/.test(message), () => `${code} is no sentence: ${message}`);
    claim(remedy !== undefined && remedy.trim() !== "", `${code} says not what to do`);
  }
  if (!quantity) return false;
  const { value, unit, plusMinus } = quantity;
  claim(Number.isFinite(value), `a figure of ${value}`);
  claim(!plusMinus || (Number.isFinite(plusMinus.size) && plusMinus.size >= 0), `a ± of ${plusMinus?.size}`);
  claim(quantity.text === text, "not the text that was typed");
  step("print");
  const size = plusMinus?.size ?? 0;
  const [low, high] = [value - size, value + size];
  if (!Number.isFinite(low) || !Number.isFinite(high)) return true;
  const printed = printFigure({ value, low, high, unit });
  if (printed.form === "range") return true;
  step("read again");
  const again = readQuantity(printed.text).value;
  claim(again, () => `${printed.text} cannot be read: ${readQuantity(printed.text).issues[0]?.message}`);
  // The last digit below counts no powers of ten.
  if (/×/.test(printed.text)) return true;
  const digit = Math.max(lastDigit(printed.value), lastDigit(printed.plusMinus ?? ""));
  claim(
    Math.abs(again.value - value) <= digit * 0.51 + 1e-9 * Math.abs(value),
    `${value} is printed as ${printed.text}`,
  );
  claim(again.unit?.text === unit?.text, () => `the unit ${unit?.text} is read again as ${again.unit?.text}`);
  if (unit) {
    const back = convertQuantity(quantity, unit).value;
    claim(
      back && Math.abs(back.value - value) <= 1e-12 * Math.abs(value),
      "turned into its own unit it is another",
    );
  }
  return true;
}

/** What the last digit counts, trailing zeros of whole numbers left out: half of it is what rounding takes. */
function lastDigit(printed: string): number {
  const digits = printed.replace(/[^\d.]/g, "");
  const decimals = digits.split(".")[1]?.length ?? 0;
  if (decimals > 0) return 10 ** -decimals;
  const zeros = /[1-9](0*)$/.exec(digits)?.[1]?.length ?? 0;
  return digits.length > 6 || zeros > 0 ? 10 ** Math.max(zeros, digits.length - 6) : 1;
}
