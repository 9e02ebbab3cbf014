// A log's recipe worked out: the ± of its water against a hand balance, what is missing, what is said. Invented figures.

import { expect, test } from "vitest";
import { recipeFindings } from "../../lib/finding/recipe-findings.ts";
import { type RecipePlan, recipePlan } from "../../lib/finding/recipe-plan.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { massWords, recipeUnits } from "../../lib/page/recipe-parts.ts";
import { shoppingLines } from "../../lib/page/recipe-shopping.ts";

const logOf = (recipe: string, more = "") =>
  readLog(`format: 1\nrecipe: { ${recipe} }\n${more}`, { name: "recipe.yaml" }).value!;
function planOf(recipe: string): RecipePlan {
  const plan = recipePlan(logOf(recipe));
  if (typeof plan === "string") throw new Error(plan);
  return plan;
}
const codes = (plan: RecipePlan) => recipeFindings(plan, massWords("metric")).map(({ code }) => code);

const sound = "basis: of dry mix, clay: 8, moisture: 3.5 %, make: 100 kg";

test("the water's ± is that of the sand's own water, as by hand", () => {
  const { waterKg, masses, taken } = planOf(`${sound}, sand moisture: 1 % ± 0.4 %, clay moisture: 0 %`);
  // 88.78 kg dry sand, 89.677 as weighed; a point of its water is 0.897 kg more brought and as much less dry to wet:
  // 0.897 (1 + 3.5/96.5) = 0.929 kg; rectangular ± 0.4 points, 95 % within 0.95 of it: ± 0.353 kg.
  expect(masses.sandKg).toBeCloseTo(88.78 / 0.99, 8);
  expect(waterKg.value).toBeCloseTo(3.5 - (0.88).valueOf() - (masses.sandKg - 88.78 - 0.88), 8);
  expect((waterKg.high - waterKg.low) / 2).toBeCloseTo(
    0.95 * 0.4 * 0.01 * masses.sandKg * (1 + 3.5 / 96.5),
    3,
  );
  expect(taken).toEqual([]);
});

test("what is not written is taken, and said", () => {
  const plan = planOf(sound);
  expect(plan.taken).toEqual(["the sand is dry", "the bagged clay holds no water"]);
  expect(codes(plan)).toContain("recipe/taken");
  expect(planOf("basis: of dry mix, clay: 8, moisture: 3.5 %")).toMatchObject({ forHundred: true });
});

test("what is lacking is named", () => {
  expect(recipePlan({})).toBe("recipe");
  expect(recipePlan(logOf("clay: 8, moisture: 3 %, make: 20 kg"))).toBe("basis");
  expect(recipePlan(logOf("basis: of dry mix, moisture: 3 %, make: 20 kg"))).toBe("clay");
  expect(recipePlan(logOf("basis: of dry mix, clay: 8, make: 20 kg"))).toBe("moisture");
  expect(
    recipePlan(logOf("basis: of dry mix, clay: 50, additives: { flour: 50 }, moisture: 3 %, make: 20 kg")),
  ).toBe("sand left over");
});

test("sand that is too damp wants no water, and may hold so much", () => {
  const plan = planOf(
    "basis: of dry mix, clay: 8, moisture: 3.2 %, sand: 50 kg, sand moisture: 5 %, clay moisture: 10 %, muller pan: 20 kg",
  );
  expect(plan.waterKg.value).toBeLessThan(0);
  const [first] = recipeFindings(plan, massWords("metric"));
  expect(first).toMatchObject({ code: "recipe/too-wet-already", tone: "error" });
  // 47.5 dry sand, 4.13 dry clay, 1.707 of water wanted, 0.459 in the clay: 1.248/(1.248 + 47.5) = 2.56 %.
  expect(first?.because[1]).toContain("2.6 % or less");
  // The pan takes what is really there.
  expect(plan.loads * plan.loadKg).toBeCloseTo(50 + plan.masses.clayKg, 8);
  expect(plan.loadKg).toBeLessThanOrEqual(20);
});

test("buckets warn that damp sand bulks; loads are told; temper is held against the ways in print", () => {
  const plan = planOf(`${sound}, muller pan: 30 kg, bucket of: { sand: 13 kg ± 0.3 kg }`);
  expect(codes(plan)).toEqual([
    "recipe/water",
    "recipe/shares",
    "recipe/temper",
    "recipe/water-per-clay",
    "recipe/buckets",
    "recipe/taken",
  ]);
  const tone = (moisture: string) =>
    recipeFindings(planOf(sound.replace("3.5 %", moisture)), massWords("metric")).find(
      ({ code }) => code === "recipe/temper",
    )?.tone;
  expect([tone("1 %"), tone("3.5 %"), tone("9 %")]).toEqual(["doubt", "good", "doubt"]);
});

test("units follow the log, else the recipe's own amounts", () => {
  expect(recipeUnits(logOf(sound))).toBe("metric");
  expect(recipeUnits(logOf(sound.replace("100 kg", "220 lb")))).toBe("US");
  expect(recipeUnits(logOf(sound, "units: US\n"))).toBe("US");
});

test("the shopping list: whole bags, and no price where none is written", () => {
  const log = logOf(
    "basis: of dry mix, clay: 8, additives: { flour: 1 }, moisture: 3.5 %, make: 100 kg",
    "prices: { currency: marks, sand: { cost: 10, for: 25 kg }, bentonite: { cost: 14, for: 25 kg } }\n",
  );
  const lines = shoppingLines(recipePlan(log) as RecipePlan, log.prices);
  expect(lines.map(({ name, purchase }) => [name, purchase?.bags])).toEqual([
    ["sand", 4],
    ["clay", 1],
    ["flour", undefined],
  ]);
});
