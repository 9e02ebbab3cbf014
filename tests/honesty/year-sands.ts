// A founder's sands: a bag on a full stack, one on a home stack, and two bags of which he wants to know whether they are one.

import { compareSands } from "../../lib/finding/compare-sands.ts";
import { figureText } from "../../lib/finding/sand-findings.ts";
import { type SandReport, sandReports } from "../../lib/finding/sand-report.ts";
import { grainResult } from "../../lib/page/grain-result.ts";
import { trueFineness } from "../sand/home-stack-coverage.ts";
import { elevenMm, type Passing, plausibleSand } from "../sand/plausible-sands.ts";
import type { Seeded } from "../seeded.ts";
import { proseOf } from "./blocks.ts";
import { foundersScale, foundersSieves } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted, endsIn } from "./printed.ts";
import { head, logOf } from "./read.ts";
import { homeStacks, sandText } from "./sieved.ts";

const notebook = "grain fineness";

export function sandsOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const full = random.uniform() < 0.5;
  const scale = foundersScale(random, "kitchen scale", { stepG: 0.1, withinG: 0.2, capacityG: 200 });
  const openings = full ? elevenMm : random.pick(homeStacks);
  const sieves = foundersSieves(random, "own stack", openings, random.uniform() < 0.3);
  const first = plausibleSand(random).passing;
  // Every other founder has bought the same sand twice.
  const same = random.uniform() < 0.5;
  const second = same ? first : plausibleSand(random).passing;
  const grabs = random.integer(1, 4);
  const sand = (name: string, passing: Passing): string =>
    sandText(random, { name, passing, grabs, wander: 0.03, startG: 100 }, sieves, scale);
  const text = `${head("Sands")}scales:\n${scale.line}\nsieve sets:\n${sieves.line}\nsands:\n${sand("Old bag", first)}${sand("New bag", second)}`;
  const reports = sandReports(logOf(text));
  const what = (name: string): string => `${name}, ${full ? "full stack" : "home stack"}`;
  const truths = [first, second].map((passing) => ({ passing, number: trueFineness(passing) }));
  reports.forEach((report, k) => {
    const { passing, number } = truths[k]!;
    const naive = report.fineness.scatter?.sd;
    if (report.printed)
      note({
        founder,
        notebook,
        figure: what("fineness number"),
        ends: endsIn(figureText(report)),
        truth: number,
        ...(naive ? { naiveSd: naive / Math.sqrt(grabs) } : {}),
      });
    noteCurve(report, passing, (figure, ends, truth) =>
      note({ founder, notebook, figure: what(figure), ends, truth }),
    );
  });
  const compared = compareSands(reports[0]!, reports[1]!);
  if (!compared) return;
  const truth = truths[1]!.number - truths[0]!.number;
  const { difference, missing } = compared;
  note({
    founder,
    notebook,
    figure: what(same ? "two bags of one sand, difference" : "two sands, difference"),
    ends: asPrinted(difference, missing.length > 0),
    truth,
  });
}

type Note = (figure: string, ends: ReturnType<typeof endsIn>, truth: number) => void;

/** What passes a sieve of exactly that name, and the size that half of the sand passes. */
function noteCurve(report: SandReport, passing: Passing, note: Note): void {
  for (const { openingMm, passing: figure } of report.sieves) {
    const truth = 100 * passing(openingMm);
    // Where next to all or nothing passes, the figure is printed without a ± worth the name.
    if (openingMm === 0 || truth < 2 || truth > 98) continue;
    // The page says once for all what the sieving lacks.
    note("what passes a sieve", asPrinted(figure, report.fineness.missing.length > 0), truth);
  }
  const said = proseOf(grainResult([report], [])).find((text) => text.includes("half of it passes"));
  const range = said && /\(([^)]*)\)/.exec(said)?.[1];
  if (range) note("D50", endsIn(range), sizeAt(passing, 0.5));
}

function sizeAt(passing: Passing, share: number): number {
  let [low, high] = [0.02, 6];
  for (let round = 0; round < 60; round++) {
    const middle = Math.sqrt(low * high);
    if (passing(middle) < share) low = middle;
    else high = middle;
  }
  return low;
}
