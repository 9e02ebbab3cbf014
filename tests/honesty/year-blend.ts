// Two sieved bags blended to a number: how much of each, and what the blend comes to.

import { blendReport } from "../../lib/finding/blend-report.ts";
import { trueFineness } from "../sand/home-stack-coverage.ts";
import { plausibleSand } from "../sand/plausible-sands.ts";
import type { Seeded } from "../seeded.ts";
import { foundersScale, foundersSieves } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { asPrinted } from "./printed.ts";
import { head, logOf } from "./read.ts";
import { sandText } from "./sieved.ts";

const notebook = "blend";

export function blendOfTheYear(random: Seeded, founder: number, { note }: Ledger): void {
  const scale = foundersScale(random, "kitchen scale", { stepG: 0.1, withinG: 0.2, capacityG: 200 });
  const sieves = foundersSieves(random, "own stack", [0.6, 0.425, 0.3, 0.212, 0.15, 0.106, 0.075, 0.053]);
  const bags = ["Coarse bag", "Fine bag"].map((name) => {
    const { passing } = plausibleSand(random);
    return { name, passing, number: trueFineness(passing) };
  });
  const [a, b] = bags as [(typeof bags)[number], (typeof bags)[number]];
  if (Math.abs(a.number - b.number) < 12) return;
  const wanted = Math.round(a.number + (b.number - a.number) * random.uniform(0.25, 0.75));
  const grabs = random.integer(3, 5);
  const text = bags.map(({ name, passing }) =>
    sandText(random, { name, passing, grabs, wander: 0.03, startG: 100 }, sieves, scale),
  );
  const log = logOf(
    `${head("Blend")}scales:\n${scale.line}\nsieve sets:\n${sieves.line}\nsands:\n${text.join("")}blend: { of: [ ${a.name}, ${b.name} ], to: { gfn: ${wanted} } }\n`,
  );
  const report = blendReport(log);
  if (typeof report === "string" || report.outside) return;
  const share = (wanted - b.number) / (a.number - b.number);
  const [first, second] = report.sands;
  note({
    founder,
    notebook,
    figure: "share of a sand",
    ends: asPrinted(
      { value: 100 * first!.share, low: 100 * first!.low, high: 100 * first!.high },
      report.atLeast,
    ),
    truth: 100 * Math.min(1, Math.max(0, share)),
  });
  note({
    founder,
    notebook,
    figure: "fineness number of the blend",
    ends: asPrinted(report.number, report.atLeast),
    truth: first!.share * a.number + second!.share * b.number,
  });
}
