// How often the likely range of a home stack holds the number of the full stack, and how wide it is.

import { fourGrabs, oneSieving } from "../sand/fineness-founders.ts";
import { randomTrials, summarise, type Trial, trueFineness, tryStack } from "../sand/home-stack-coverage.ts";
import { passingOf, publishedStacks, thinnedStacks } from "../sand/published-stacks.ts";
import type { Row } from "./row.ts";

export function coverageRows(): Row[] {
  const { trials, refused } = randomTrials(6000, 20_262);
  const random = row(`6,000 random sands on home stacks (${refused} too poor to say)`, trials, true);
  const stacks = thinnedStacks(3, 9);
  const published = publishedStacks.map((sand) => {
    const passing = passingOf(sand.masses);
    const truth = trueFineness(passing);
    const tried = stacks.flatMap((stack) => tryStack(sand.name, passing, stack, truth, 512) ?? []);
    return { sand, tried, refused: stacks.length - tried.length };
  });
  const all = published.flatMap(({ tried }) => tried);
  return [
    random,
    wholeDoubt("four grabs on a full stack, 2,000 founders", fourGrabs(2000, 4096)),
    wholeDoubt("one sieving on six home sieves, 4,000 founders", oneSieving(4000, 4096)),
    row(
      `${publishedStacks.length} published sievings, every ${stacks.length} stacks of 3 to 9 of the eleven`,
      all,
      true,
    ),
    ...published.map(({ sand, tried, refused }) =>
      row(`of these, ${sand.name} (${refused} too poor to say)`, tried, false),
    ),
  ];
}

function wholeDoubt(work: string, percent: number): Row {
  return {
    of: "coverage",
    work: `coverage of the whole ± of the fineness: ${work}`,
    measured: `${percent.toFixed(1)} %`,
    against: "",
    figure: percent,
    target: { least: 93, most: 97.5, unit: "%" },
  };
}

function row(work: string, trials: readonly Trial[], held: boolean): Row {
  const { coverPercent, widthPercent, possibleWidthPercent, count } = summarise(trials);
  return {
    work: `coverage of the 95 % range: ${work}`,
    measured: `${coverPercent.toFixed(1)} % of ${count}; median width ${widthPercent.toFixed(1)} % of the number`,
    against: `possible range: ${possibleWidthPercent.toFixed(0)} % wide`,
    ...(held ? { of: "coverage", figure: coverPercent, target: { least: 93, most: 97, unit: "%" } } : {}),
  };
}
