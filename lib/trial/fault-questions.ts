// One question of a log: a fault against a test of the sand or a fact of the pour.

import { type CastingQuestion, type PourSide, pourSides } from "../log/casting-record.ts";
import type { Measured } from "../log/figure-types.ts";
import { fisherExact } from "../numbers/fisher-exact.ts";
import { type MannWhitneyExact, mannWhitneyExact, mostValues } from "../numbers/mann-whitney-exact.ts";
import { figure } from "../quantity/figure.ts";
import { spreadOfQuantity } from "../quantity/spread-of.ts";
import { type CastPour, foundOn } from "./cast-pours.ts";
import type { DiarySeries } from "./control-series.ts";

/** One value, with or without the fault: a pour, or several on one test of the sand, which then count once. */
export interface FaultValue {
  /** "2026-05-02", "2026-05-02 and 2026-05-03". */
  readonly name: string;
  readonly has: boolean;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly atLeast: boolean;
}

/** Pours that could not be asked, by their names. */
export interface LeftOut {
  /** Whether the fault was there is not known. */
  readonly untold: readonly string[];
  readonly unmeasured: readonly string[];
  /** Tested too long before, or changed since. */
  readonly stale: readonly string[];
  /** Tested by another method than most. */
  readonly otherMethod: readonly string[];
}

export type FaultResult =
  | (MannWhitneyExact & { readonly kind: "rank" })
  | {
      readonly kind: "sides";
      readonly p: number;
      readonly least: number;
      /** Above the limit, or degassed. */
      readonly over: { readonly withIt: number; readonly of: number };
      readonly under: { readonly withIt: number; readonly of: number };
      /** Values whose ± runs across the limit. */
      readonly across: number;
    }
  | {
      readonly kind: "none";
      readonly why: "no values" | "never found" | "always found" | "one side" | "too many";
    };

export interface FaultAnswer {
  readonly question: CastingQuestion;
  /** "% of damp mass", "°C"; empty for a bare number and for yes or no. */
  readonly unit: string;
  /** The series of the sand that was used. */
  readonly series?: DiarySeries;
  readonly values: readonly FaultValue[];
  readonly leftOut: LeftOut;
  readonly result: FaultResult;
}

interface Found extends FaultValue {
  /** What makes two pours one value. */
  readonly key: string;
}

type Told = readonly (readonly [CastPour, boolean])[];

export function answerOf(question: CastingQuestion, pours: readonly CastPour[]): FaultAnswer {
  const told: Told = pours.flatMap((pour): [CastPour, boolean][] => {
    const has = foundOn(pour, question.fault);
    return has === undefined ? [] : [[pour, has]];
  });
  const untold = pours.filter((pour) => !told.some(([one]) => one === pour)).map(({ name }) => name);
  const { found, unit, series, ...out } = isPourSide(question.against)
    ? ofPours(question.against, told)
    : ofSand(question.against, told);
  const values = merged(found);
  return {
    question,
    unit,
    ...(series ? { series } : {}),
    values,
    leftOut: { untold, ...out },
    result: resultOf(question, values),
  };
}

interface Side extends Omit<LeftOut, "untold"> {
  readonly found: readonly Found[];
  readonly unit: string;
  readonly series?: DiarySeries | undefined;
}

const isPourSide = (side: CastingQuestion["against"]): side is PourSide =>
  (pourSides as readonly string[]).includes(side);

function ofSand(property: string, told: Told): Side {
  const counts = new Map<DiarySeries, number>();
  for (const [{ sand }] of told)
    for (const { series, fresh } of sand)
      if (series.property === property) counts.set(series, (counts.get(series) ?? 0) + (fresh ? 1 : 0));
  const [series] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  const named = (rule: (of: CastPour) => boolean): string[] =>
    told.filter(([pour]) => rule(pour)).map(([{ name }]) => name);
  const own = (pour: CastPour) => pour.sand.find((one) => one.series === series);
  const other = (pour: CastPour) =>
    pour.sand.some((one) => one.series.property === property && one.series !== series && one.fresh);
  return {
    unit: series?.unit ?? "",
    series,
    found: told.flatMap(([pour, has]) => {
      const one = own(pour);
      if (!one?.fresh) return [];
      const { reading } = one;
      const { low, high } = figure(reading.spread);
      const key = `${reading.date} ${reading.name}`;
      return [
        { key, name: pour.name, has, value: reading.value, low, high, atLeast: reading.missing.length > 0 },
      ];
    }),
    unmeasured: named((pour) => !own(pour) && !other(pour)),
    stale: named((pour) => own(pour)?.fresh === false && !other(pour)),
    otherMethod: named((pour) => !own(pour)?.fresh && other(pour)),
  };
}

const pourUnits: { readonly [side in PourSide]: string } = {
  "pouring temperature": "°C",
  "scrap share": "%",
  section: "mm",
  degassed: "",
};

function ofPours(side: PourSide, told: Told): Side {
  const found = told.flatMap(([{ name, pour }, has]): Found[] => {
    if (side === "degassed") {
      if (pour?.degassed === undefined) return [];
      const value = pour.degassed ? 1 : 0;
      return [{ key: name, name, has, value, low: value, high: value, atLeast: false }];
    }
    const measured = {
      "pouring temperature": pour?.atC,
      "scrap share": pour?.scrapSharePercent,
      section: pour?.sectionMm,
    }[side];
    return measured ? [{ key: name, name, has, ...withEnds(measured, `${side}, ${name}`) }] : [];
  });
  const known = new Set(found.map(({ name }) => name));
  return {
    found,
    unit: pourUnits[side],
    unmeasured: told.map(([{ name }]) => name).filter((name) => !known.has(name)),
    stale: [],
    otherMethod: [],
  };
}

export function withEnds(
  { value, plusMinus }: Measured,
  source: string,
): Pick<FaultValue, "value" | "low" | "high" | "atLeast"> {
  if (!plusMinus) return { value, low: value, high: value, atLeast: true };
  const { low, high } = figure(spreadOfQuantity({ value, plusMinus }, { source, says: source }));
  return { value, low, high, atLeast: false };
}

/** Pours on one test of the sand share its value, so they count once: with the fault where any has it. */
function merged(found: readonly Found[]): FaultValue[] {
  const keys = [...new Set(found.map(({ key }) => key))];
  return keys.map((own) => {
    const same = found.filter(({ key }) => key === own);
    const { key: _, ...first } = same[0]!;
    return { ...first, name: same.map(({ name }) => name).join(" and "), has: same.some(({ has }) => has) };
  });
}

function resultOf({ limit, against }: CastingQuestion, values: readonly FaultValue[]): FaultResult {
  const none = (why: Extract<FaultResult, { kind: "none" }>["why"]): FaultResult => ({ kind: "none", why });
  if (values.length === 0) return none("no values");
  if (!values.some(({ has }) => has)) return none("never found");
  if (values.every(({ has }) => has)) return none("always found");
  if (values.length > mostValues) return none("too many");
  const edge = against === "degassed" ? 0.5 : limit?.value;
  const group = (rule: (of: FaultValue) => boolean) => values.filter(rule);
  if (edge === undefined) {
    const numbers = (has: boolean) => group((one) => one.has === has).map(({ value }) => value);
    return { kind: "rank", ...mannWhitneyExact(numbers(true), numbers(false)) };
  }
  const side = (own: readonly FaultValue[]) => ({
    withIt: own.filter(({ has }) => has).length,
    of: own.length,
  });
  const over = side(group(({ value }) => value > edge));
  const under = side(group(({ value }) => value <= edge));
  if (over.of === 0 || under.of === 0) return none("one side");
  const { twoSided, least } = fisherExact([
    [over.withIt, over.of - over.withIt],
    [under.withIt, under.of - under.withIt],
  ]);
  const across = group(({ low, high }) => low < edge && high > edge).length;
  return { kind: "sides", p: twoSided, least, over, under, across };
}
