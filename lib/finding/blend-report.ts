// A blend of the log's sands: shares with their ±, and what the blend comes to.

import type { LoggedPrices } from "../log/heap-record.ts";
import type { Log } from "../log/types.ts";
import { combine } from "../quantity/combine.ts";
import type { Figure } from "../quantity/figure.ts";
import { type BlendPair, blended, blendPairs, blendShares } from "../sand/blend.ts";
import { gradingCurve } from "../sand/curve.ts";
import { type Fines, fines } from "../sand/fines.ts";
import { gradingOf } from "../sand/grading.ts";
import { type Screens, screens } from "../sand/screens.ts";
import { type BlendTarget, blendTarget, type NoTarget } from "./blend-aim.ts";
import { type BlendCurve, blendCurve, commonSieves, passingOf } from "./blend-curve.ts";
import { blendDraws, type DrawnShare } from "./blend-draws.ts";
import { type SandReport, sandReports } from "./sand-report.ts";

export interface BlendedSand extends DrawnShare {
  readonly report: SandReport;
  /** 0 to 1, of the dry blend. */
  readonly share: number;
  /** Of a kilogram, in the log's currency. */
  readonly costPerKg?: number;
}

export interface BlendReport {
  /** Those that the blend may be of, in the log's order. */
  readonly sands: readonly BlendedSand[];
  /** Named in the log, and without a fineness that can be relied on. */
  readonly leftOut: readonly string[];
  readonly target: BlendTarget;
  /** The lowest and the highest number of the sands: no blend passes them. */
  readonly reach: { readonly low: number; readonly high: number };
  /** Where the aim lies beyond what any blend reaches. */
  readonly outside?: "finer" | "coarser";
  /** Fineness number of the blend at these shares, with the doubt of the sievings. */
  readonly number: Figure;
  /** True where a part of the doubt is not known, so that a ± is a lower bound. */
  readonly atLeast: boolean;
  /** Share of one sand for which a blend of two stays within the wanted range, 0 to 1; only of two, and of a range. */
  readonly window?: { readonly of: string; readonly low: number; readonly high: number };
  /** Other pairs that reach the number too. */
  readonly others: readonly BlendPair[];
  /** Undefined where the sands have fewer than two sieves in common. */
  readonly curve?: BlendCurve;
  readonly screens?: Screens;
  readonly fines?: Fines;
  readonly cost?: { readonly value: number; readonly low: number; readonly high: number };
  readonly currency: string;
}

/** Why a log has no blend to work out. */
export type NoBlend = "no blend" | "too few sands" | NoTarget;

/**
 * The blend that a log asks for. To a number: of two sands the one blend that has it, of more the pair that is cheapest (where all
 * have a price) or lies closest; to a range: its middle, as far as the sands reach. To a curve: non-negative least squares on the
 * percents retained on the sieves that all have in common. Sands without a fineness that can be relied on are left out.
 * @example blendReport(log)
 */
export function blendReport(log: Log): BlendReport | NoBlend {
  const { blend } = log;
  if (!blend) return "no blend";
  const all = sandReports(log);
  const target = blendTarget(blend, log.bond, all);
  const named = blend.of.map((name) => all.find(({ sand }) => sand.name === name));
  const reports = named.filter((one) => one?.trusted && one.printed !== undefined);
  const used = reports as readonly SandReport[];
  const leftOut = blend.of.filter((name) => !used.some(({ sand }) => sand.name === name));
  if (used.length < 2) return "too few sands";
  if (typeof target === "string") return target;
  const sieves = commonSieves(target.kind === "curve" ? [...used, target.report] : used);
  if (target.kind === "curve" && sieves.length < 2) return "no curve";

  const costs = costsOf(used, log.prices);
  const numbers = used.map(({ fineness }) => fineness.figure.value);
  const reach = { low: Math.min(...numbers), high: Math.max(...numbers) };
  const plan =
    target.kind === "number" ? toNumber(target, numbers, reach, costs) : toCurve(used, target.report, sieves);
  const drawn = blendDraws(plan.figures(used), plan.wanted, plan.free, costs);
  const { shares } = plan;
  const number = combine(
    (values) => blended(shares, values),
    used.map(({ fineness }) => fineness.figure),
    { as: `number of the blend ${shares.join()}` },
  );
  const curve = sieves.length < 2 ? undefined : blendCurve(used, shares, sieves, target);
  const grading = curve && gradingOf(curve.fractions);
  return {
    sands: used.map((report, j) => ({
      report,
      share: shares[j]!,
      ...drawn.shares[j]!,
      ...(costs ? { costPerKg: costs[j]! } : {}),
    })),
    leftOut,
    target,
    reach,
    ...(plan.outside ? { outside: plan.outside } : {}),
    number,
    atLeast: used.some(({ fineness }) => fineness.missing.length > 0),
    ...windowOf(target, used, numbers, reach),
    others: plan.others,
    ...(curve && grading ? { curve, screens: screens(grading), fines: fines(gradingCurve(grading)) } : {}),
    ...(costs && drawn.cost ? { cost: { value: blended(shares, costs), ...drawn.cost } } : {}),
    currency: log.prices?.currency ?? "",
  };
}

interface Plan {
  readonly shares: readonly number[];
  /** Places of the sands that the blend may be of. */
  readonly free: readonly number[];
  readonly figures: (reports: readonly SandReport[]) => readonly (readonly (Figure | number)[])[];
  readonly wanted: readonly (Figure | number)[];
  readonly others: readonly BlendPair[];
  readonly outside?: "finer" | "coarser";
}

function toNumber(
  { low, high }: { readonly low: number; readonly high: number },
  numbers: readonly number[],
  reach: { readonly low: number; readonly high: number },
  costs: readonly number[] | undefined,
): Plan {
  const outside = low > reach.high ? "finer" : high < reach.low ? "coarser" : undefined;
  const middle = (Math.max(low, reach.low) + Math.min(high, reach.high)) / 2;
  const wanted = outside === "finer" ? reach.high : outside === "coarser" ? reach.low : middle;
  const [best, ...others] = blendPairs({ numbers, wanted, ...(costs ? { costs } : {}) });
  const places = numbers.map((_, j) => j);
  const free = best && numbers.length > 2 ? places.filter((j) => best.of.includes(j)) : places;
  // Beyond reach the aim itself is drawn against, so that a share may move only where the sievings' doubt brings it within reach.
  const aim = outside === "finer" ? low : outside === "coarser" ? high : wanted;
  const part = blendShares({ of: free.map((j) => [numbers[j]!]), to: [aim] });
  return {
    shares: places.map((j) => (free.includes(j) ? part[free.indexOf(j)]! : 0)),
    free,
    figures: (reports) => reports.map(({ fineness }) => [fineness.figure]),
    wanted: [aim],
    others: outside ? [] : others,
    ...(outside ? { outside } : {}),
  };
}

function toCurve(reports: readonly SandReport[], like: SandReport, sieves: readonly number[]): Plan {
  const figures = (all: readonly SandReport[]) => all.map((report) => retainedOn(report, sieves));
  const wanted = retainedOn(like, sieves);
  const values = (row: readonly (Figure | number)[]): number[] =>
    row.map((one) => (typeof one === "number" ? one : one.value));
  return {
    shares: blendShares({ of: figures(reports).map(values), to: values(wanted) }),
    free: reports.map((_, j) => j),
    figures,
    wanted,
    others: [],
  };
}

/** Percents on each common sieve, and below the last: differences of what passes, so that what is shared stays shared. */
function retainedOn(report: SandReport, openings: readonly number[]): Figure[] {
  const passing = openings.map((mm) => passingOf(report, mm));
  const first = combine((v) => 100 - v[0]!, [passing[0]!], { as: "hundred less" });
  const between = passing
    .slice(1)
    .map((finer, k) => combine((v) => v[0]! - v[1]!, [passing[k]!, finer], { as: "less what is finer" }));
  return [first, ...between, passing.at(-1)!];
}

/** In the log's currency for each kilogram; undefined unless every sand has one. A price of plain "sand" stands for all. */
function costsOf(reports: readonly SandReport[], prices: LoggedPrices | undefined): number[] | undefined {
  const plain = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, " ");
  const of = (name: string): number | undefined => {
    const price = prices?.of.find((one) => plain(one.name) === plain(name));
    return price && price.cost.value / price.forKg.value;
  };
  const found = reports.map(({ sand }) => of(sand.name) ?? of("sand"));
  return found.every((cost) => cost !== undefined) ? (found as number[]) : undefined;
}

function windowOf(
  target: BlendTarget,
  reports: readonly SandReport[],
  numbers: readonly number[],
  reach: { readonly low: number; readonly high: number },
): Pick<BlendReport, "window"> {
  if (target.kind !== "number" || target.high === target.low || reports.length !== 2) return {};
  const [low, high] = [Math.max(target.low, reach.low), Math.min(target.high, reach.high)];
  if (!(high >= low && reach.high > reach.low)) return {};
  const finer = numbers.indexOf(reach.high);
  const part = (number: number): number => (number - reach.low) / (reach.high - reach.low);
  return { window: { of: reports[finer]!.sand.name, low: part(low), high: part(high) } };
}
