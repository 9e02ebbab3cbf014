// What a trial's page says of curves, aim, dose and chance, against the laws that its batches follow.

import { tubeAim } from "../../lib/finding/tube-aim.ts";
import type { WaterNow } from "../../lib/finding/water-now.ts";
import { waterNeedKg } from "../../lib/sand/water-to-add.ts";
import { gridOver } from "../../lib/trial/aim.ts";
import { bestPlace } from "../../lib/trial/best-place.ts";
import type { TrialReport } from "../../lib/trial/trial-report.ts";
import type { Seeded } from "../seeded.ts";
import type { PrintedEnds } from "./printed.ts";
import { asRead, type FoundersBench, type Tested } from "./tested.ts";

export interface Law {
  readonly name: string;
  /** Of one batch about the mean of its days. */
  readonly batchSd: number;
  /** True mean at a place of the axis as the founder reads it. */
  readonly mean: (x: number) => number;
}

export interface TrialTold {
  readonly note: (figure: string, ends: PrintedEnds | undefined, truth: number) => void;
  readonly noteChance: (figure: string, promised: number, kept: boolean) => void;
  readonly random: Seeded;
  readonly report: TrialReport;
  readonly laws: readonly Law[];
  readonly bench: FoundersBench;
}

const plain = (low: number, high: number, atLeast = false): PrintedEnds => ({ low, high, atLeast });

/** Gives the true aim, for what hangs on it; undefined where the page gives none. */
export function noteTrial({ note, noteChance, random, report, laws, bench }: TrialTold): number | undefined {
  const { properties, result } = report;
  for (const { test, curve } of properties) {
    const law = laws.find(({ name }) => name === test);
    const x = random.uniform(curve.from, curve.to);
    const at = law && curve.at(x);
    if (!at) continue;
    const read = (value: number): number => asRead(bench, test as Tested, value);
    note(`curve of ${test}`, plain(at.low, at.high), read(law.mean(x)));
    if (curve.newBlock === true) continue;
    const one = tested(law, bench, random, x);
    note(`new batch, ${test}`, plain(at.newLow, at.newHigh), read(one));
  }
  const known = report.aimed.every((test) => laws.some(({ name }) => name === test));
  if (!result || !known) return undefined;
  const aimed = report.aimed.map((test) => {
    const property = properties.find((one) => one.test === test)!;
    return { curve: property.curve, low: property.wanted!.low, high: property.wanted!.high };
  });
  const own = report.aimed.map((test) => laws.find(({ name }) => name === test)!);
  const chance = random.pick([...result.chances.filter(({ all }) => all >= 0.6 && all <= 0.8), undefined]);
  if (chance)
    for (let k = 0; k < 4; k++) {
      const batch = own.map((law) => tested(law, bench, random, chance.x));
      const kept = batch.every((value, i) => value >= aimed[i]!.low && value <= aimed[i]!.high);
      noteChance("chance of 60 to 80 in 100", 100 * chance.all, kept);
    }
  const { aim, window } = result;
  if (!window || aim.open.low || aim.open.high) return undefined;
  const from = Math.max(...aimed.map(({ curve }) => curve.from));
  const to = Math.min(...aimed.map(({ curve }) => curve.to));
  const grid = gridOver(from, to, 320);
  const truth = bestPlace(aimed, grid, (k, row) => own[k]!.mean(grid[row]!));
  note("aim", plain(aim.low, aim.high), truth);
  const tube = tubeAim(report);
  const rises = laws.find(({ name }) => name === "compactability");
  if (tube && rises) note("aim by the tube", plain(tube.low, tube.high), rises.mean(truth));
  return truth;
}

/** A batch made at x and tested as the others were, by rigs without a bias. */
function tested(law: Law, { scatter, repeats }: FoundersBench, random: Seeded, x: number): number {
  const test = law.name as Tested;
  return law.mean(x) + Math.hypot(law.batchSd, scatter[test] / Math.sqrt(repeats[test])) * random.normal();
}

export interface DoseTold extends Pick<TrialTold, "note" | "noteChance"> {
  readonly doses: readonly WaterNow[];
  /** Of the last batch, as the founder's oven would have it. */
  readonly last: { readonly moisture: number; readonly compactability: number };
  readonly compactability: (moisture: number) => number;
  readonly aim: number | undefined;
}

/** The water in all, and that its first part is not already too much. */
export function noteDoses({ note, noteChance, doses, last, compactability, aim }: DoseTold): void {
  for (const { by, toIs, per10, atLeast } of doses) {
    if (aim === undefined || toIs !== "the aim of this trial") continue;
    const to = by === "moisture" ? aim : last.moisture + stepTo(compactability, last, aim);
    const need = waterNeedKg({ heapKg: 10, fromOfDampPercent: last.moisture, toOfDampPercent: to });
    const all = per10.verdict === "too wet" ? per10.loseKg : per10.inAllKg;
    note(
      `dose by ${by}, in all`,
      plain(all.low, all.high, atLeast),
      per10.verdict === "too wet" ? -need : need,
    );
    // Of sand that wants water, whatever the page says of it: those told to add alone are more often those misjudged.
    if (need > 0 && !atLeast) noteChance(`first dose by ${by} is not too much`, 90, per10.nowKg <= need);
  }
}

/** Points of moisture that bring this sand from its own compactability to that of the mean at the aim. */
function stepTo(mean: (x: number) => number, last: DoseTold["last"], aim: number): number {
  const wanted = mean(last.moisture) + mean(aim) - last.compactability;
  let [low, high] = [-3, 3];
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (mean(last.moisture + middle) < wanted) low = middle;
    else high = middle;
  }
  return low;
}
