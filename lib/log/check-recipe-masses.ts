// Masses of a recipe against its sand: g written as kg, kg as g.

import { printNumber } from "../quantity/print.ts";
import type { Recipe } from "./batch.ts";
import { thousandfold } from "./complaints-agreement.ts";
import type { Report } from "./node.ts";
import type { Measured } from "./types.ts";

interface Part {
  readonly name: string;
  readonly mass: Measured | undefined;
  /** Parts per part of sand that a moulding sand can have: our own, wide on purpose. */
  readonly least: number;
  readonly most: number;
}

/** The recipe; undefined, with an error at the mass, where one is a thousandfold of what fits its sand. */
export function soundMasses(recipe: Recipe, clayName: string, report: Report): Recipe | undefined {
  const { sandKg, clayKg, waterKg, additiveKg } = recipe;
  if (!sandKg) return recipe;
  const parts: readonly Part[] = [
    { name: clayName, mass: clayKg, least: 0.005, most: 0.5 },
    { name: "water", mass: waterKg, least: 0.002, most: 0.3 },
    { name: "additive", mass: additiveKg, least: 0.0005, most: 0.2 },
  ];
  const fits = ({ least, most }: Part, share: number) => share >= least && share <= most;
  const given = parts.filter(({ mass }) => mass && mass.value > 0);
  const off = given.flatMap((part) => {
    const share = part.mass!.value / sandKg.value;
    if (fits(part, share)) return [];
    const factor = [0.001, 1000].find((times) => fits(part, share * times));
    return factor === undefined ? [] : [{ part, share, factor }];
  });
  // What is little of a large heap (water for a touch) is no slip: only a share that nobody weighs out is.
  const absurd = off.filter(({ part, share }) => share > part.most || share < part.least / 20);
  const [first] = absurd;
  if (!first) return recipe;
  // All of them off by one factor: the sand itself is the one.
  const bySand =
    given.length > 1 && absurd.length === given.length && absurd.every((one) => one.factor === first.factor);
  const shareWords = ({ part, share }: typeof first) =>
    `${printNumber(100 * share, share < 0.01 ? 4 : 0)} parts of ${part.name} to 100 of sand`;
  if (bySand) {
    report(
      thousandfold("sand", sandKg.text, shareWords(first), massWords(sandKg.value / first.factor)),
      sandKg.place,
    );
  } else {
    for (const one of absurd) {
      const { name, mass } = one.part;
      const better = massWords(mass!.value * one.factor);
      report(thousandfold(name, mass!.text, shareWords(one), better), mass!.place);
    }
  }
  return undefined;
}

function massWords(kg: number): string {
  const plain = (value: number) => String(Number(value.toPrecision(6)));
  return kg < 1 ? `${plain(kg * 1000)} g` : `${plain(kg)} kg`;
}
