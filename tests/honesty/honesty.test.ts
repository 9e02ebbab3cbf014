// A few founders' years in every run: an interval that were half as wide would be seen. The table over thousands is
// printed by npm run honesty.

import { expect, test } from "vitest";
import { type Entry, errorAtEdge, heldPercent, type Ledger } from "./ledger.ts";
import { endsIn } from "./printed.ts";
import { foundersYears, type PartName } from "./run.ts";

/** As many founders as a second or so allows, and more where each is cheap; a clay trial takes the way of a moisture trial. */
const counts: readonly (readonly [PartName, number])[] = [
  ["sands", 6],
  ["recipe", 40],
  ["moisture", 4],
  ["mulling", 20],
  ["heap", 6],
  ["blend", 36],
  ["diary", 20],
  ["sheets", 40],
  ["wash", 12],
];
/** None of them is among those of the table. */
const first = 500_001;

/** All figures of a part with a whole ± together: few founders say little of one figure. */
function whole(of: Ledger): Entry {
  const all = of
    .entries()
    .filter(({ figure, promised, asked }) => promised === 95 * asked && !figure.endsWith("at least"));
  const founders = new Map<number, [number, number]>();
  for (const entry of all)
    for (const [founder, [asked, held]] of entry.founders) {
      const own = founders.get(founder) ?? [0, 0];
      founders.set(founder, [own[0] + asked, own[1] + held]);
    }
  const sum = (pick: (entry: Entry) => number): number =>
    all.reduce((total, entry) => total + pick(entry), 0);
  return { ...all[0]!, asked: sum(({ asked }) => asked), held: sum(({ held }) => held), founders };
}

/** Fewer than this are held in less than one run of a thousand where 93 in 100 are in truth. */
const leastOf = (entry: Entry): number => 93 - 3.1 * errorAtEdge(entry, 93);

test.each(counts)("%s: what is printed with a whole ± holds the truth", (part, count) => {
  const entry = whole(foundersYears(part, count, first));
  expect(entry.asked).toBeGreaterThan(30);
  expect(heldPercent(entry)).toBeGreaterThan(leastOf(entry));
});

test.each(["recipe", "sheets"] as const)("%s: half as wide would be seen", (part) => {
  const count = counts.find(([name]) => name === part)![1];
  const entry = whole(foundersYears(part, count, first, 0.5));
  expect(heldPercent(entry)).toBeLessThan(leastOf(entry));
});

test("what nothing but the masses allow holds the truth of every portion", () => {
  const entries = foundersYears("ranges", 60, first).entries();
  expect(entries.map(({ asked }) => asked)).toEqual([60, 60]);
  for (const { figure, asked, held } of entries) expect(held, figure).toBe(asked);
});

test("a figure is read as a page prints it", () => {
  expect(endsIn("69.5 ± 0.5 kPa")).toEqual({ low: 69, high: 70, atLeast: false });
  expect(endsIn("−1.50 ± at least 0.25 kg")).toEqual({ low: -1.75, high: -1.25, atLeast: true });
  expect(endsIn("62 to 75 or wider")).toEqual({ low: 62, high: 75, atLeast: true });
  expect(endsIn("12.4 (± not known)")).toBeUndefined();
});
