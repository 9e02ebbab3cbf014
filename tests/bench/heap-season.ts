// How often the intervals of burn-out and of a season hold the truth, on simulated heaps: npx tsx tests/bench/heap-season.ts 1000

import { forecastSeason } from "../../lib/sand/season.ts";
import type { Band } from "../../lib/sand/season-bands.ts";
import { ownBurnOut } from "../../lib/trial/own-burn-out.ts";
import { type FounderHabits, leftAlone, simulatedHeap } from "../trial/heap-founders.ts";

const count = Number(process.argv[2] ?? 400);
const small = { heapKg: 60, metalKg: 4, pours: 24, testEvery: 2, scatter: 0.08, later: 10 };
const kinds: readonly (readonly [string, FounderHabits])[] = [
  ["100 kg, 12 pours of 2.5 kg", { ...small, heapKg: 100, metalKg: 2.5, pours: 12, testEvery: 3 }],
  ["60 kg, 24 pours of 4 kg", small],
  ["40 kg, 40 pours of 5 kg", { ...small, heapKg: 40, metalKg: 5, pours: 40, scatter: 0.06 }],
  ["60 kg, tests scatter by 12 %", { ...small, scatter: 0.12 }],
  ["60 kg, always 0.03 kg/kg", { ...small, burntKgPerKg: 0.03 }],
  ["60 kg, always 0.20 kg/kg", { ...small, burntKgPerKg: 0.2 }],
];
const holds = ({ low, high }: Band, truth: number): number => (low <= truth && truth <= high ? 1 : 0);

console.log("| heap | burn-out | live clay | dead clay | dry mass | moved | width, share of before |");
console.log("|---|---:|---:|---:|---:|---:|---:|");
for (const [name, habits] of kinds) {
  const sums = [0, 0, 0, 0, 0, 0];
  for (let seed = 1; seed <= count; seed++) {
    const heap = simulatedHeap(seed * 7919 + 13, habits);
    const found = ownBurnOut(heap.history, { draws: 1024 });
    const last = forecastSeason(found.now, leftAlone(habits), found.scores).points.at(-1)!;
    const row = [
      holds(found.own, heap.burntKgPerKg),
      holds(last.liveClayOfDryMixPercent, heap.laterPercent),
      holds(last.deadClayOfDryMixPercent, heap.laterDeadPercent),
      holds(last.dryKg, heap.laterDryKg),
      found.moved ? 1 : 0,
      found.widthShare,
    ];
    row.forEach((one, i) => {
      sums[i]! += one;
    });
  }
  const percent = sums.map((sum) => `${((100 * sum) / count).toFixed(1)} %`);
  console.log(`| ${name} | ${percent.join(" | ")} |`);
}
