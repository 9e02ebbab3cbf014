// What to buy for a recipe, and what it costs.

import type { RecipePlan } from "../finding/recipe-plan.ts";
import type { LoggedPrices, Price } from "../log/heap-record.ts";
import type { Log, UnitSystem } from "../log/types.ts";
import { printNumber } from "../quantity/print.ts";
import { type Purchase, purchaseOf } from "../sand/recipe-cost.ts";
import type { Block, TableCell } from "./blocks.ts";
import { weightText } from "./recipe-parts.ts";
import { inShownUnit } from "./shown-units.ts";

export interface ShoppingLine {
  readonly name: string;
  readonly needKg: number;
  readonly price?: Price;
  readonly purchase?: Purchase;
}

/** A line for each thing to buy; without a price where the log has none for it. */
export function shoppingLines({ masses, additives }: RecipePlan, prices?: LoggedPrices): ShoppingLine[] {
  const needs = [
    { name: "sand", others: [] as string[], needKg: masses.sandKg },
    { name: "clay", others: ["bentonite"], needKg: masses.clayKg },
    ...additives.map((name, i) => ({ name, others: [], needKg: masses.additivesKg[i]! })),
  ];
  return needs.map(({ name, others, needKg }) => {
    const price = prices?.of.find((one) => [name, ...others].includes(one.name.toLowerCase()));
    if (!price) return { name, needKg };
    const purchase = purchaseOf({ needKg, bagKg: price.forKg.value, bagCost: price.cost.value });
    return { name, needKg, price, purchase };
  });
}

/**
 * What to buy for a recipe, in bags, and what it costs.
 * @example
 * const plan = recipePlan(log);
 * typeof plan === "string" ? [] : recipeShopping(plan, log, recipeUnits(log))
 */
export function recipeShopping(plan: RecipePlan, { prices }: Log, system: UnitSystem): readonly Block[] {
  const lines = shoppingLines(plan, prices);
  const priced = lines.filter((line) => line.purchase);
  const unpriced = lines.filter((line) => !line.purchase).map(({ name }) => name);
  const currency = prices?.currency ?? "";
  const money = (value: number): TableCell => ({ text: printNumber(value, 2), number: value });
  const total = (pick: (purchase: Purchase) => number) =>
    priced.reduce((sum, { purchase }) => sum + pick(purchase!), 0);
  const used = total((one) => one.costOfUse);
  const hundred = inShownUnit(1, "kg", system);
  const perHundred = (100 * used) / (plan.masses.dampKg * hundred.value);
  const unit = currency === "" ? {} : { unit: currency };
  const whole =
    unpriced.length === 0 ? "" : `, without ${unpriced.join(" and ")}, for which the log has no price`;
  return [
    {
      kind: "table",
      name: "shopping",
      caption: "What to buy for the whole heap, in whole bags, and what is used of them",
      columns: [
        { head: "Part", align: "text" },
        { head: "Needed", dataUnit: "kg", align: "number" },
        { head: "Bag", dataUnit: "kg", align: "number" },
        { head: "Price", ...unit, align: "number" },
        { head: "Bags", align: "number" },
        { head: "Cost", align: "number", ...unit, formula: "Bags * Price" },
        { head: "Used", align: "number", ...unit, formula: "Needed / Bag * Price" },
      ],
      rows: lines.map(({ name, needKg, price, purchase }) => [
        name,
        { text: weightText(needKg, system), number: needKg },
        ...(price && purchase
          ? [
              { text: price.forKg.text, number: price.forKg.value },
              money(price.cost.value),
              String(purchase.bags),
              money(purchase.costOfBags),
              money(purchase.costOfUse),
            ]
          : ["no price", "", "", "", ""]),
      ]),
      ...(priced.length > 1
        ? { foot: [["together", "", "", "", "", money(total((one) => one.costOfBags)), money(used)]] }
        : {}),
    },
    ...(priced.length === 0
      ? []
      : [
          {
            kind: "prose" as const,
            text: `100 ${hundred.unit} of damp heap costs ${printNumber(perHundred, 2)}${currency === "" ? "" : ` ${currency}`}${whole}. Prices are as written, without a ±.`,
          },
        ]),
  ];
}
