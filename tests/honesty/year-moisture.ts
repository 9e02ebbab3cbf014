// A moisture trial of the year, from weighings to the aim: tests, shares, curves, new batch, aim, dose, chance.

import { waterNow } from "../../lib/finding/water-now.ts";
import { batchFigures } from "../../lib/log/batch-figures.ts";
import { trialBond } from "../../lib/page/trial-bond.ts";
import { trialData } from "../../lib/page/trial-data.ts";
import { recipeShares } from "../../lib/page/trial-shares.ts";
import { trialReport } from "../../lib/trial/trial-report.ts";
import type { Seeded } from "../seeded.ts";
import { truthKinds, truthsFor } from "../trial/founders-truths.ts";
import { tableRows } from "./blocks.ts";
import { headsOf } from "./heads.ts";
import { foundersScale } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { mixed, waterFor } from "./mixed.ts";
import { endsIn, type PrintedEnds } from "./printed.ts";
import { head, logOf } from "./read.ts";
import { benchHead, foundersBench, ovenShift, type Tested, type Truths, testLines } from "./tested.ts";
import { noteDoses, noteTrial } from "./trial-truths.ts";

const notebook = "moisture trial";

export function moistureTrialOfTheYear(random: Seeded, founder: number, { note, noteChance }: Ledger): void {
  const bench = foundersBench(random);
  const pan = foundersScale(random, "shed scale", { stepG: 1, withinG: 5, capacityG: 6000, flat: true });
  const count = random.pick([5, 7, 9, 12]);
  const laws = truthsFor(random, random.pick(truthKinds));
  const clayPercent = random.uniform(7, 11);
  const clayTyped = `${(clayPercent + random.uniform(-1, 1)).toFixed(1)} % ± 1 %`;
  const sandPercent = random.uniform(0, 0.6);
  const days = count >= 6 ? random.integer(1, count >= 9 ? 3 : 2) : 1;
  const offsets = laws.map(({ batchSd }) => {
    const sd = days > 1 ? batchSd * random.uniform(0.3, 1) : 0;
    return Array.from({ length: days }, () => sd * random.normal());
  });
  const dayOf = random.shuffle(Array.from({ length: count }, (_, k) => k % days));
  const usual = offsets.map((each) => dayOf.reduce((all, day) => all + each[day]!, 0) / count);
  const clayOfDamp = 7.3;
  const batches = Array.from({ length: count }, (_, k) => {
    const wanted = 2.6 + (2.2 * k) / (count - 1) + random.uniform(-0.08, 0.08);
    const masses = {
      sandG: 5000,
      clayG: 455,
      sandMoisturePercent: sandPercent,
      clayMoisturePercent: clayPercent,
    };
    const made = mixed(
      pan,
      { ...masses, waterG: waterFor(wanted + 0.1, masses) },
      {
        sand: "0.3 % ± 0.3 %",
        clay: clayTyped,
      },
    );
    // Some of the water dries while it is mulled.
    const moisture = made.shares.moistureOfDampPercent - random.uniform(0, 0.15);
    const value = (law: number): number =>
      laws[law]!.at(moisture) + offsets[law]![dayOf[k]!]! + laws[law]!.batchSd * random.normal();
    const truth: Truths = {
      moisture,
      compactability: value(0),
      "green compression": Math.max(12, value(1)),
      permeability: Math.max(6, value(2)),
      density: 1.56 + 0.01 * random.normal(),
    };
    return { name: `W${k + 1}`, truth, made, day: dayOf[k]! };
  });
  const order = random.shuffle(batches.map((_, k) => k));
  const text = `${head("Moisture trial")}${benchHead(bench).replace("scales:\n", `scales:\n${pan.line}\n`)}aims:
${laws.map(({ name, low, high }) => `  ${name}: ${low.toFixed(0)} to ${high.toFixed(0)}${name === "permeability" ? "" : name === "compactability" ? " %" : " kPa"}`).join("\n")}
trial: { axis: moisture }
heap: { mass: 100 kg ± 2 kg }
batches:
${batches
  .map(
    ({ name, truth, made, day }, k) => `  ${name}:
    date: 2026-07-1${day}
    order: ${order[k]! + 1}
${days > 1 ? `    block: day ${day + 1}\n` : ""}${made.line}    mulled: 12 min
${testLines(bench, truth, clayOfDamp)}`,
  )
  .join("")}`;
  const log = logOf(text);
  // A few batches a founder: more of one founder's figures go wrong together and tell little more.
  const looked = random.shuffle(batches.map((_, k) => k)).slice(0, 3);
  const all = batchFigures(log).figures;
  const rows = looked.map((k) => all[k]!);
  const [tests, shares, bond] = [
    tableRows(trialData(rows).blocks, "tests"),
    tableRows(recipeShares(rows), "shares"),
    tableRows(trialBond(rows, log).blocks, "bond"),
  ];
  looked.forEach((place, k) => {
    const { truth, made } = batches[place]!;
    for (const test of Object.keys(truth) as Tested[])
      note({
        founder,
        notebook: "home rigs",
        figure: test,
        ends: endsIn(tests[k]?.[headsOf[test]] ?? ""),
        truth: truth[test],
        naiveSd: bench.scatter[test] / Math.sqrt(bench.repeats[test]),
      });
    const share = (figure: string, column: string, is: number | undefined): void =>
      note({
        founder,
        notebook: "home rigs",
        figure,
        ends: endsIn(shares[k]?.[column] ?? ""),
        truth: is ?? Number.NaN,
      });
    share("clay per 100 of sand, as weighed", "Clay, per 100 of sand", made.shares.clayOfSandPercent);
    share("clay of dry mix, as weighed", "Clay, % of dry mix", made.shares.clayOfDryMixPercent);
    share("clay of damp mass, as weighed", "Clay, % of damp mass", made.shares.clayOfDampPercent);
    share(
      "water of damp mass, as weighed",
      "Water as weighed, % of damp mass",
      made.shares.moistureOfDampPercent,
    );
    share("water per clay, as weighed", "Water per clay, by mass", made.shares.waterPerClay ?? undefined);
    const clay = made.shares.clayOfDryMixPercent;
    note({
      founder,
      notebook: "home rigs",
      figure: "water per clay, as tested",
      ends: endsIn(bond[k]?.["Water per clay, by mass"] ?? ""),
      truth: truth.moisture / (clay * (1 - truth.moisture / 100)),
    });
  });
  const shift = ovenShift(bench, clayOfDamp);
  const report = trialReport(log);
  const own = laws.map(({ name, batchSd, at }, k) => ({
    name,
    batchSd,
    mean: (x: number) => at(x - shift) + usual[k]!,
  }));
  const told = {
    note: (figure: string, ends: PrintedEnds | undefined, truth: number) =>
      note({ founder, notebook, figure, ends, truth }),
    noteChance: (figure: string, promised: number, kept: boolean) =>
      noteChance({ founder, notebook, figure, promised, within: 5, kept }),
  };
  const aim = noteTrial({ ...told, random, report, laws: own, bench });
  const latest = batches
    .map((batch, k) => ({ batch, rank: 1000 * batch.day + order[k]! }))
    .reduce((a, b) => (b.rank > a.rank ? b : a)).batch;
  noteDoses({
    ...told,
    doses: waterNow(report, log),
    last: { moisture: latest.truth.moisture + shift, compactability: latest.truth.compactability },
    compactability: own[0]!.mean,
    aim,
  });
}
