// A recipe that is weighed out with sand and clay whose own waters the founder knows only so well.

import { recipePlan } from "../../lib/finding/recipe-plan.ts";
import { recipeComesTo } from "../../lib/page/recipe-comes-to.ts";
import { mixShares } from "../../lib/sand/mix-shares.ts";
import type { Seeded } from "../seeded.ts";
import { tableRows } from "./blocks.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted, endsIn } from "./printed.ts";
import { head, logOf } from "./read.ts";

const notebook = "recipe";

export function recipeOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const sand = random.uniform(0.3, 1.2);
  const clay = random.uniform(6, 12);
  // What he writes lies as near as his ± says, anywhere in it.
  const [sandHalf, clayHalf] = [0.2, random.pick([1, 2])];
  const wroteSand = (sand + random.uniform(-1, 1) * sandHalf).toFixed(2);
  const wroteClay = (clay + random.uniform(-1, 1) * clayHalf).toFixed(1);
  const basis = random.pick(["per 100 of sand", "of dry mix", "of damp mass"]);
  const log = logOf(`${head("Recipe")}recipe:
  basis: ${basis}
  clay: ${random.uniform(6, 10).toFixed(1)}
  moisture: ${random.uniform(3, 4).toFixed(1)} % of damp mass
  sand moisture: ${Math.max(0, Number(wroteSand))} % ± ${sandHalf} %
  clay moisture: ${wroteClay} % ± ${clayHalf} %
  make: ${random.integer(40, 150)} kg
`);
  const plan = recipePlan(log);
  if (typeof plan === "string") throw new Error(`a simulated recipe lacks its ${plan}`);
  const { masses, recipe } = plan;
  const wanted = recipe.moisturePercent!.value;
  const drySandKg = masses.sandKg * (1 - sand / 100);
  const dryClayKg = masses.clayKg * (1 - clay / 100);
  const brought = masses.sandKg + masses.clayKg - drySandKg - dryClayKg;
  note({
    founder,
    notebook,
    figure: "water to pour",
    ends: asPrinted(plan.waterKg),
    truth: ((drySandKg + dryClayKg) * wanted) / (100 - wanted) - brought,
  });
  const is = mixShares({
    sandKg: masses.sandKg,
    clayKg: masses.clayKg,
    waterKg: masses.waterKg,
    sandMoisturePercent: sand,
    clayMoisturePercent: clay,
  });
  const truths = [
    is.clayOfSandPercent,
    is.clayOfDryMixPercent,
    is.clayOfDampPercent,
    is.moistureOfDampPercent,
  ];
  const rows = tableRows([recipeComesTo(plan)], "comes-to");
  [...truths, is.waterPerClay ?? Number.NaN].forEach((truth, k) => {
    const row = rows[k]!;
    note({
      founder,
      notebook,
      figure: `${row.Part} ${row["Of what"]}`,
      ends: endsIn(row.Share ?? ""),
      truth,
    });
  });
}
