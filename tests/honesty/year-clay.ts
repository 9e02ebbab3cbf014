// A clay trial of the year: the clay to aim at, and an old clay against a new one.

import { blockComparisons } from "../../lib/page/block-comparisons.ts";
import { shownUnits } from "../../lib/page/shown-units.ts";
import { trialReport } from "../../lib/trial/trial-report.ts";
import type { Seeded } from "../seeded.ts";
import { foundersScale } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { mixed, waterFor } from "./mixed.ts";
import { head, logOf } from "./read.ts";
import { asRead, benchHead, foundersBench, type Truths, testLines } from "./tested.ts";
import { noteTrial } from "./trial-truths.ts";

const notebook = "clay trial";

export function clayTrialOfTheYear(random: Seeded, founder: number, { note, noteChance }: Ledger): void {
  const bench = foundersBench(random);
  const pan = foundersScale(random, "shed scale", { stepG: 1, withinG: 2, capacityG: 6000, flat: true });
  const two = random.uniform() < 0.5;
  const count = two ? 8 : random.integer(6, 10);
  const bag = random.uniform(8, 10);
  const [top, rise, best] = [random.uniform(70, 100), random.uniform(0.8, 2), random.uniform(8, 11)];
  const [open, stops] = [random.uniform(75, 110), random.uniform(2, 5)];
  // Half of the new clays are no other than the old one.
  const stronger = two && random.uniform() < 0.5 ? random.uniform(-15, 15) : 0;
  // Ranges that this sand meets over most of the trial, or such as know nothing of it.
  const ranges = random.pick(["met with ease", "from anywhere"] as const);
  const [less, stopped] =
    ranges === "met with ease" ? [15, 6] : [random.uniform(-5, 25), random.uniform(0, 8)];
  const laws = [
    {
      name: "green compression",
      batchSd: random.uniform(1.5, 4),
      at: (clay: number) => top - rise * (clay - best) ** 2,
    },
    { name: "permeability", batchSd: random.uniform(2, 5), at: (clay: number) => open - stops * (clay - 5) },
    { name: "compactability", batchSd: 1.5, at: () => 45 },
  ];
  const batches = Array.from({ length: count }, (_, k) => {
    const share = two ? 5 + 2 * (k % 4) : 5 + (6 * k) / (count - 1);
    const second = two && k >= 4;
    const masses = {
      sandG: 5000,
      clayG: (5000 * share) / (100 - share) / (1 - bag / 100),
      sandMoisturePercent: 0.2,
      clayMoisturePercent: bag,
    };
    const made = mixed(
      pan,
      { ...masses, waterG: waterFor(2.6 + 0.12 * share, masses) },
      { sand: "0.2 % ± 0.1 %", clay: "9 % ± 1 %" },
    );
    const clay = made.shares.clayOfDryMixPercent;
    const [strength, permeability, tube] = laws.map(
      ({ at, batchSd }) => at(clay) + batchSd * random.normal(),
    ) as [number, number, number];
    const truth: Truths = {
      moisture: made.shares.moistureOfDampPercent,
      compactability: tube,
      "green compression": Math.max(12, strength + (second ? stronger : 0)),
      permeability: Math.max(6, permeability),
      density: 1.56 + 0.005 * random.normal(),
    };
    const lines = testLines(bench, truth, made.shares.clayOfDampPercent);
    return `  C${k + 1}:\n    date: 2026-08-08\n    order: ${k + 1}\n${two ? `    block: ${second ? "new" : "old"} clay\n` : ""}${made.line}    mulled: 12 min\n${lines}`;
  });
  const log =
    logOf(`${head("Clay trial")}${benchHead(bench).replace("scales:\n", `scales:\n${pan.line}\n`)}aims:
  green compression: ${Math.round(top - less)} to ${Math.round(top + 25)} kPa
  permeability: ${Math.round(open - stopped * stops)} to 130
trial: { axis: clay }
batches:
${random.shuffle(batches).join("")}`);
  const report = trialReport(log, { axis: "clay" });
  for (const { first, figures } of blockComparisons(report, shownUnits(log))) {
    const { test, low, high } = figures;
    if (test === "compactability") continue;
    const of = (value: number): number => asRead(bench, test as "permeability", value);
    const middle = test === "green compression" ? top : open;
    const gained = test === "green compression" ? of(middle + stronger) - of(middle) : 0;
    const truth = first === "old clay" ? gained : -gained;
    const ends = { low, high, atLeast: false };
    note({ founder, notebook, figure: "new clay less old clay", ends, truth });
  }
  if (two) return;
  // What the page calls clay is what he weighed: the bag's own water and the scale stay in its place on the axis.
  noteTrial({
    note: (figure, ends, truth) => note({ founder, notebook, figure, ends, truth }),
    noteChance: (figure, promised, kept) =>
      noteChance({
        founder,
        notebook,
        figure: `${figure}, ranges ${ranges}`,
        promised,
        within: 5,
        kept,
      }),
    random,
    report,
    laws: laws.map(({ name, batchSd, at }) => ({
      name,
      batchSd,
      mean: (x: number) => at(x * ((100 - bag) / 91)),
    })),
    bench,
  });
}
