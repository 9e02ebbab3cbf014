// The recipe's tables: each shown formula worked out again on the row's own numbers, the card whole, the units the founder's.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type RecipePlan, recipePlan } from "../../lib/finding/recipe-plan.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { Block, TableBlock, TableCell } from "../../lib/page/blocks.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { recipeCard } from "../../lib/page/recipe-card.ts";
import { recipeShopping } from "../../lib/page/recipe-shopping.ts";
import { recipeWeights } from "../../lib/page/recipe-weights.ts";
import { sheet } from "../../lib/sheet/sheet.ts";
import recipe from "../../notebooks/recipe.ts";

const demo = (file: string) => {
  const path = join(import.meta.dirname, "../../data-demo/recipe", file);
  return readLog(readFileSync(path, "utf8"), { name: file }).value!;
};
const spring = demo("spring-heap.yaml");
const plan = recipePlan(spring) as RecipePlan;
const tableIn = (blocks: readonly Block[], name: string) =>
  blocks.find((block): block is TableBlock => block.kind === "table" && block.name === name)!;
const numberOf = (cell: string | TableCell | undefined) =>
  typeof cell === "object" ? cell.number! : Number(cell);

test("each shown formula gives the printed cell from its row", () => {
  const weights = tableIn(recipeWeights(plan, "metric"), "weights");
  const shopping = tableIn(recipeShopping(plan, spring, "metric"), "shopping");
  const units = { Whole: "kg", Load: "kg", Needed: "kg", Bag: "kg" } as { [head: string]: string };
  let seen = 0;
  for (const { columns, rows } of [weights, shopping])
    for (const row of rows) {
      const numbers = columns.flatMap(({ head, align, formula }, at) =>
        align === "number" && formula === undefined ? [[head, numberOf(row[at])] as const] : [],
      );
      columns.forEach(({ head, formula }, at) => {
        if (formula === undefined) return;
        const plainColumns = Object.fromEntries(numbers.map(([name]) => [name, units[name] ?? "number"]));
        const made = sheet({
          columns: { ...plainColumns, [head]: { ...(units[head] ? { unit: units[head] } : {}), formula } },
          rows: [Object.fromEntries(numbers)],
        });
        expect(made.issues.filter(({ severity }) => severity === "error")).toEqual([]);
        expect(made.column(head).values[0]).toBeCloseTo(numberOf(row[at]), 8);
        seen += 1;
      });
    }
  // Five parts of a load, three things to buy with two costs each.
  expect(seen).toBe(11);
});

test("weights add up to the heap, loads to the pan", () => {
  const { rows, foot } = tableIn(recipeWeights(plan, "metric"), "weights");
  const sum = rows.reduce((all, row) => all + numberOf(row[1]), 0);
  expect(sum).toBeCloseTo(120, 8);
  expect(numberOf(foot![0]![1])).toBeCloseTo(120, 8);
  expect(numberOf(foot![0]![2])).toBeLessThanOrEqual(13);
});

test("the card begins with its hazard, names the first water before the clay, and has a line for each load", () => {
  const card = recipeCard(plan, "metric", "a heap");
  const text = JSON.stringify(card);
  expect(text.indexOf("unplugged")).toBeLessThan(text.indexOf("of sand"));
  expect(text.indexOf("227 g of water")).toBeLessThan(text.indexOf("of clay"));
  expect(tableIn(card.blocks, "loads").rows).toHaveLength(10);
  expect(recipeCard({ ...plan, loads: 40 }, "metric", "a heap").blocks.at(-1)).toMatchObject({
    rows: { length: 14 },
  });
});

test("the card has a sheet of its own and is never folded", async () => {
  const html = await writeHtml(recipe.run(spring));
  expect(html).toContain('<div class="own-sheet"><h3>Card: A heap for the spring, 10 loads of 12 kg</h3>');
  expect(html).toMatch(/\.own-sheet\{[^}]*break-before:page/);
});

test("too wet already: said first, with no card to mix by", async () => {
  const page = recipe.run(demo("damp-yard-sand.yaml"));
  expect(JSON.stringify(page.answer[0])).toContain("too much water");
  expect(await writeHtml(page)).not.toContain('<div class="own-sheet">');
});

test("a log without a recipe says how to write one", () => {
  const { value } = readLog("format: 1\nsands: { A sand: { state: new } }\n", { name: "a.yaml" });
  const page = recipe.run(value!);
  expect(page.answer).toEqual(["The log has no recipe: write one, and the weights follow."]);
  expect(JSON.stringify(page.sections)).toContain("basis: per 100 of sand");
});
