// What nothing but the masses allow: ranges that are promised for certain, of the sand that lay on the sieves.

import { gradingCurve } from "../../lib/sand/curve.ts";
import { fines } from "../../lib/sand/fines.ts";
import { grainFineness } from "../../lib/sand/grain-fineness.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { trueFineness } from "../sand/home-stack-coverage.ts";
import { plausibleSand, sievedShares } from "../sand/plausible-sands.ts";
import type { Seeded } from "../seeded.ts";
import { foundersSieves } from "./instruments.ts";
import type { Ledger } from "./ledger.ts";
import { homeStacks } from "./sieved.ts";

const notebook = "grain fineness";
/** No. 140. */
const finesMm = 0.106;

/**
 * Openings at their names and masses as they are, which is what the page says beside these ranges: what the sieves are
 * off by, and the bag from which the portion came, are in the ± of the number.
 */
export function rangesOfTheYear(random: Seeded, founder: number, { noteChance }: Ledger): void {
  const openings = random.pick(homeStacks);
  const { labels } = foundersSieves(random, "own stack", openings);
  const { passing } = plausibleSand(random);
  const shares = sievedShares(passing, openings);
  const retained = Object.fromEntries([...labels, "pan"].map((label, k) => [label, shares[k]!]));
  const certain = (figure: string, { low, high }: { low: number; high: number }, truth: number): void => {
    // Shares of a hundred are summed: their last digits are the computer's.
    const kept = truth >= low - 1e-9 && truth <= high + 1e-9;
    noteChance({ founder, notebook, figure, promised: 100, within: 0, kept });
  };
  const { possible } = grainFineness({ retained });
  if (!possible) throw new Error("a simulated stack has no possible range");
  certain("fineness number: what the masses allow", possible, trueFineness(passing));
  const range = fines(gradingCurve(readGrading(retained).value!));
  certain("fines: what the masses allow", range, 100 * passing(finesMm));
}
