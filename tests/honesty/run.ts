// So many founders' years, each from its own seed, into one ledger.

import { type Seeded, seeded } from "../seeded.ts";
import { type Ledger, ledger } from "./ledger.ts";
import { blendOfTheYear } from "./year-blend.ts";
import { clayTrialOfTheYear } from "./year-clay.ts";
import { diaryOfTheYear } from "./year-diary.ts";
import { heapOfTheYear } from "./year-heap.ts";
import { moistureTrialOfTheYear } from "./year-moisture.ts";
import { mullingOfTheYear } from "./year-mulling.ts";
import { rangesOfTheYear } from "./year-ranges.ts";
import { recipeOfTheYear } from "./year-recipe.ts";
import { sandsOfTheYear } from "./year-sands.ts";
import { sheetsOfTheYear } from "./year-sheets.ts";
import { washOfTheYear } from "./year-wash.ts";

/** What one founder does in his year, each part a log of its own. */
export const parts = {
  sands: sandsOfTheYear,
  recipe: recipeOfTheYear,
  moisture: moistureTrialOfTheYear,
  clay: clayTrialOfTheYear,
  mulling: mullingOfTheYear,
  heap: heapOfTheYear,
  blend: blendOfTheYear,
  diary: diaryOfTheYear,
  sheets: sheetsOfTheYear,
  ranges: rangesOfTheYear,
  wash: washOfTheYear,
} as const satisfies { readonly [name: string]: (random: Seeded, founder: number, into: Ledger) => void };
export type PartName = keyof typeof parts;
export const partNames = Object.keys(parts) as PartName[];

/** Founders from the first seed on; narrowed: as ledger() has it. */
export function foundersYears(part: PartName, count: number, first = 1, narrowed = 1): Ledger {
  const into = ledger(narrowed);
  const salt = partNames.indexOf(part) * 104_729;
  for (let founder = first; founder < first + count; founder++)
    parts[part](seeded(founder * 7919 + salt), founder, into);
  return into;
}
