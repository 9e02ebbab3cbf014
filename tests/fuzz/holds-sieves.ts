// Labels of sieves: each a sieve or a complaint; a label read twice is one sieve, its own spelling reads as itself.

import { readSieveLabel } from "../../lib/sand/sieve-label.ts";
import { sieveStack } from "../../lib/sand/sieve-stack.ts";
import { claim, type Step } from "./claim.ts";

export function sievesHold(text: string, step: Step): number {
  const labels = text.split("\n");
  step("stack");
  const stack = sieveStack(labels);
  for (const { code, message, remedy, severity } of stack.issues) {
    claim(/[.?]$/.test(message), () => `${code} is no sentence: ${message}`);
    claim(severity === "note" || (remedy !== undefined && remedy !== ""), `${code} says not what to do`);
  }
  for (const [k, sieve] of stack.sieves.entries()) {
    claim(sieve.openingMm > 0 && Number.isFinite(sieve.openingMm), `an opening of ${sieve.openingMm} mm`);
    claim(
      sieve.toleranceMm >= 0 && Number.isFinite(sieve.toleranceMm),
      `a tolerance of ${sieve.toleranceMm} mm`,
    );
    const finer = stack.sieves[k + 1];
    claim(!finer || finer.openingMm < sieve.openingMm, "a stack that is not in order");
  }
  claim(stack.sieves.length + (stack.hasPan ? 1 : 0) === stack.order.length, "an order of another length");
  step("labels");
  for (const label of labels) {
    const { value, issues } = readSieveLabel(label);
    claim(
      (value === undefined) === issues.some(({ severity }) => severity === "error"),
      "neither a sieve nor an error, or both",
    );
    if (value === undefined) continue;
    claim(sieveStack([label, label]).order.length === 1, "a label that stands twice is not one sieve");
    const spelt = value === "pan" ? "pan" : value.label;
    const again = readSieveLabel(spelt).value;
    claim(same(again, value), () => `${spelt} is another sieve: ${JSON.stringify([value, again])}`);
  }
  return stack.order.length;
}

/** A label's spelling names the sieve; a ± that was typed with an opening is no part of it. */
function same(one: ReturnType<typeof readSieveLabel>["value"], other: typeof one): boolean {
  if (one === undefined || other === undefined || one === "pan" || other === "pan") return one === other;
  const alike = Math.abs(one.openingMm - other.openingMm) <= 1e-5 * other.openingMm;
  return one.label === other.label && one.series === other.series && one.number === other.number && alike;
}
