// Fineness numbers by every scheme, against published worked examples; misprints kept as misprints.

import { averageGrainSizeUm } from "../../lib/sand/average-grain-size.ts";
import { britishFineness } from "../../lib/sand/british-fineness.ts";
import { roughFineness, roughSizeUm } from "../../lib/sand/fineness-size.ts";
import { usFineness } from "../../lib/sand/grain-fineness.ts";
import { meanMultiplier } from "../../lib/sand/multiplier-scheme.ts";
import { afsClasses } from "../../lib/sand/multipliers.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";
import { sizeGrade } from "../../lib/sand/size-grades.ts";
import { din, ks } from "./fineness-factors.ts";
import {
  britishRetained,
  fineness,
  fineStackGrading,
  isoRetained,
  koreanG,
  koreanPercent,
  products,
  quevedoG,
  sizeTable,
  student,
  total,
} from "./fineness-sands.ts";
import type { Published } from "./published.ts";

const third = 80 / 3;
const threeAnd = (place: number): number => {
  const masses = [0, 0, 0, 0, 0, third, third, third, 0, 0, 0, 0];
  masses[place] = 20;
  return fineness(masses);
};
/** 99 % of a sand of fineness 60, half on No. 70 and half on No. 100, and 1 % elsewhere. */
const onePercentOn = (label: string): number =>
  fineness(
    afsClasses.map((one) =>
      one.label === "No. 70" || one.label === "No. 100" ? 49.5 : one.label === label ? 1 : 0,
    ),
  );
const british = [0, 0, 0, 0, 0.4, 1.3, 2.4, 4.5, 17.1, 22.1, 21.8, 18.6];
const gbPercent = [0, 0, 0, 1.6, 8.1, 33.8, 32.1, 16.5, 6.78, 0, 0, 0];

export const finenessRows: readonly Published[] = [
  {
    figure: "fineness, Korean page: sums of products and of percent",
    source: "korean page",
    theirs: ["6843", "99.0"],
    ours: () => [total(products(koreanPercent)), total(koreanPercent)],
    tag: "read",
    note: "the quotient is cut off there",
  },
  {
    figure: "its fineness, by percent and by grams",
    source: "korean page",
    theirs: ["69.12", "69.12"],
    ours: () => [fineness(koreanPercent), fineness(koreanG)],
    tag: "by hand",
    note: "6843 over 99.0, both read",
  },
  {
    figure: "fineness, natural bonded sand",
    source: "american handbooks",
    theirs: ["88.2", "173"],
    ours: () => [total(british), fineness(british)],
    tag: "from memory",
    note: "rows from memory; 88.2 % and 173 read",
  },
  {
    figure: "its sum of products, 15.243 in print",
    source: "chinese entry",
    theirs: ["15.243"],
    ours: () => [total(products(british))],
    agree: { instead: ["15243"] },
    tag: "misprint",
    note: "a decimal point for thousands",
  },
  {
    figure: "fineness, 558 g of grain in 600 g",
    source: "quevedo",
    theirs: ["558", "54.4"],
    ours: () => [total(quevedoG), fineness(quevedoG)],
    tag: "read",
  },
  {
    figure: "fineness of three model mixes",
    source: "abifa",
    theirs: ["43.3", "102.7", "62.7"],
    ours: () => [threeAnd(0), threeAnd(11), threeAnd(8)],
    tag: "read",
    note: "the three sieves are inferred: they give every printed figure",
  },
  {
    figure: "fineness, student sheet 2011",
    source: "student sheet 2011",
    theirs: ["58.94"],
    ours: () => [fineness(student)],
    agree: { instead: ["58.62"] },
    tag: "misprint",
    note: "145 for 140 at No. 200",
  },
  {
    figure: "the percent column of that sheet",
    source: "student sheet 2011",
    theirs: ["101.02"],
    ours: () => [total(student)],
    agree: { instead: ["100.00"] },
    tag: "misprint",
    note: "worked on a base of 98.99 g",
  },
  {
    figure: 'fineness, "GB/T 9442" example',
    source: "chinese entry",
    theirs: ["47.2"],
    ours: () => [fineness(gbPercent)],
    agree: { instead: ["51.22"] },
    tag: "misprint",
    note: "rows and total disagree",
  },
  {
    figure: "fineness, fine stack without No. 270",
    source: "construction sand",
    theirs: ["31.8", "34.9"],
    ours: () => [usFineness(fineStackGrading(63, 0)).gfn!, usFineness(fineStackGrading(0, 63)).gfn!],
    tag: "by hand",
    note: "cumulative grams read",
  },
  {
    figure: "AFS multipliers",
    source: ["quevedo", "chinese entry"],
    theirs: ["3", "5", "10", "20", "30", "40", "50", "70", "100", "140", "200", "300"],
    ours: () => afsClasses.map(({ multiplier }) => multiplier!),
    tag: "read",
  },
  {
    figure: "fineness by British mesh",
    source: "foseco 1994",
    theirs: ["67.4"],
    ours: () => [britishFineness(readGrading(britishRetained).value!).value!.gfn!],
    tag: "from memory",
  },
  {
    figure: "average grain size by ISO sieves, µm",
    source: "foseco 1994",
    theirs: ["204"],
    ours: () => [averageGrainSizeUm({ retained: isoRetained })!],
    tag: "from memory",
  },
  {
    figure: "grain size that goes with a fineness, ten pairs, µm",
    source: "foseco 1994",
    theirs: sizeTable.map(([, um]) => String(um)),
    ours: () => sizeTable.map(([gfn]) => roughSizeUm(gfn).value!.value),
    agree: { share: 0.035 },
    tag: "from memory",
    note: "a rule with a scatter; all ten lie inside its low and high",
  },
  {
    figure: "fineness that goes with a grain size, the same pairs",
    source: "foseco 1994",
    theirs: sizeTable.map(([gfn]) => String(gfn)),
    ours: () => sizeTable.map(([, um]) => roughFineness(um).value!.value),
    agree: { share: 0.035 },
    tag: "from memory",
  },
  {
    figure: "grain size of a wide sand of fineness 88.05, µm: that rule does not hold",
    source: "ihom",
    theirs: ["335.78"],
    ours: () => {
      const { low, high } = roughSizeUm(88.05).value!;
      return [low, high];
    },
    agree: { beyond: "ours" },
    tag: "read",
    note: "ours says that it is for narrow sands",
  },
  {
    figure: "names of sands by fineness, at 17.9, 18, 35, 60 and 150.1",
    source: "quevedo",
    theirs: ["very coarse", "coarse", "medium", "fine", "very fine"],
    ours: () => [17.9, 18, 35, 60, 150.1].map((gfn) => sizeGrade(gfn).name),
    tag: "read",
  },
  {
    figure: "what 1 % in the pan, and 1 % on No. 6, moves a fineness of 60 by",
    theirs: ["2.4", "−0.57"],
    ours: () => ["pan", "No. 6"].map((label) => onePercentOn(label) - 60),
    tag: "by hand",
  },
  {
    figure: "KS/JIS factors on the Korean sand",
    source: "korean page",
    theirs: ["124.1"],
    ours: () => {
      const retained = Object.fromEntries(afsClasses.map(({ label }, k) => [label, koreanPercent[k]!]));
      const { value } = readGrading({ ...retained, "2.38 mm": 0, "1.19 mm": 0 });
      return [meanMultiplier(value!, ks).value!];
    },
    tag: "by hand",
    note: "factors read; shows that schemes do not mix",
  },
  {
    figure: "DIN factors on the ISO example",
    source: ["korean page", "foseco 1994"],
    theirs: ["84"],
    ours: () => [meanMultiplier(readGrading(isoRetained).value!, din).value!],
    tag: "by hand",
    note: "factors read, the sand from memory",
  },
];
