// A heap's record worked through for many draws of what is not known.

import { normalQuantile } from "../numbers/distributions.ts";
import { drawsOf, openDrawing } from "../quantity/drawing.ts";
import type { Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import {
  addClay,
  addNewSand,
  addWater,
  burn,
  dryKgAt,
  type HeapColumns,
  heapColumns,
  lose,
} from "../sand/heap-columns.ts";
import { unevenPour } from "../sand/season.ts";
import type { HeapHistory, HistoryEvent } from "./heap-history.ts";

/** The numbers of one event, one for each draw; of a pour also how it differs from others, as a factor. */
type Columns = { readonly [name: string]: Float64Array | undefined };

export interface HistoryDraws {
  readonly count: number;
  readonly unwrittenLossPercent: Float64Array;
  readonly newSandFinesPercent: Float64Array;
  readonly moistureNow: Float64Array | undefined;
  /** Burnt sand over the whole range, or where the record has shown it to be; all else is the same draws. */
  burntFrom(proposal?: LogNormal): BurntDraws;
  /** Heaps as they were before the first event, of these draws. */
  startOf(draws: Int32Array): HeapColumns;
  /** Works the event into heaps that were begun for these draws. */
  work(heaps: HeapColumns, event: number, draws: Int32Array, burnt: BurntDraws): void;
}

export interface BurntDraws {
  readonly kgPerKg: Float64Array;
  /** ln of the range's density over that of the proposal, of each draw; the weights start from it. */
  readonly logRatio: Float64Array;
}

/** ln of burnt sand as normal: the range before the record, or where the record has shown it to be. */
export interface LogNormal {
  readonly mean: number;
  readonly sd: number;
}

export function rangeOf({ low, high }: HeapHistory["burntKgPerKg"]): LogNormal {
  return { mean: Math.log(low * high) / 2, sd: Math.log(high / low) / 2 / normalQuantile(0.975) };
}

export function historyDraws(history: HeapHistory, count: number): HistoryDraws {
  const range = rangeOf(history.burntKgPerKg);
  const drawing = openDrawing(count);
  const draw = (of: Spread): Float64Array => drawsOf(of, drawing);
  const { start, events, betweenPours } = history;
  const dry = draw(start.dryKg);
  const moisture = draw(start.moistureOfDampPercent);
  const live = draw(start.liveClayOfDryMixPercent);
  const dead = draw(start.deadClayOfDryMixPercent);
  const other = draw(start.otherOfDryMixPercent);
  const fines = draw(start.finesOfGrainPercent);
  const burnOut = (from: LogNormal) =>
    draw(spread({ ...from, source: "burn-out", doubt: "model", says: "how much clay is burnt" }));
  const unwrittenLossPercent = draw(history.unwrittenLossPercent);
  const newSandFinesPercent = draw(history.newSandFinesPercent);
  const columns = events.map((event) => columnsOf(event, betweenPours, draw));
  return {
    count,
    unwrittenLossPercent,
    newSandFinesPercent,
    moistureNow: history.moistureNowOfDampPercent && draw(history.moistureNowOfDampPercent),
    burntFrom(from = range) {
      const logs = burnOut(from);
      return {
        kgPerKg: logs.map((x) => Math.exp(x)),
        logRatio: logs.map(
          (x) => (((x - from.mean) / from.sd) ** 2 - ((x - range.mean) / range.sd) ** 2) / 2,
        ),
      };
    },
    startOf(draws) {
      const heaps = heapColumns(draws.length);
      const { liveClayKg, deadClayKg, otherKg, finesKg, sandKg, waterKg } = heaps;
      for (let j = 0; j < draws.length; j++) {
        const i = draws[j]!;
        const dryKg = dry[i]!;
        liveClayKg[j] = Math.max(0, (dryKg * live[i]!) / 100);
        deadClayKg[j] = Math.max(0, (dryKg * dead[i]!) / 100);
        otherKg[j] = Math.max(0, (dryKg * other[i]!) / 100);
        const grainKg = dryKg - liveClayKg[j]! - deadClayKg[j]! - otherKg[j]!;
        finesKg[j] = Math.max(0, (grainKg * fines[i]!) / 100);
        sandKg[j] = grainKg - finesKg[j]!;
        waterKg[j] = Math.max(0, (dryKg * moisture[i]!) / (100 - moisture[i]!));
      }
      return heaps;
    },
    work(heaps, at, draws, burnt) {
      const { kind } = events[at]!;
      const { metalKg, factor, dryKg, kg, weighedKg, moisturePercent } = columns[at]!;
      for (let j = 0; j < draws.length; j++) {
        const i = draws[j]!;
        if (kind === "pour") {
          burn(heaps, j, Math.max(0, metalKg![i]! * burnt.kgPerKg[i]! * factor![i]!));
          lose(heaps, j, (dryKgAt(heaps, j) * unwrittenLossPercent[i]!) / 100);
        } else if (kind === "lost") {
          lose(heaps, j, Math.max(0, dryKg![i]!));
        } else if (kind === "water") {
          addWater(heaps, j, kg![i]!);
        } else if (kind === "clay") {
          addClay(heaps, j, weighedKg![i]!, moisturePercent![i]!, 100);
        } else if (kind === "new sand") {
          addNewSand(heaps, j, weighedKg![i]!, moisturePercent![i]!, Math.max(0, newSandFinesPercent[i]!));
        }
      }
    },
  };
}

function columnsOf(event: HistoryEvent, betweenPours: number, draw: (of: Spread) => Float64Array): Columns {
  const given = Object.entries(event).filter(
    (entry): entry is [string, Spread] => typeof entry[1] === "object",
  );
  const columns = Object.fromEntries(given.map(([name, of]) => [name, draw(of)]));
  if (event.kind !== "pour") return columns;
  return { ...columns, factor: draw(pourScatter(event.id)).map((score) => unevenPour(betweenPours, score)) };
}

/** How one pour differs from the next: a score of mean 0 and sd 1, the pour's own. */
export function pourScatter(id: string): Spread {
  return spread({
    mean: 0,
    sd: 1,
    source: `burn-out of the pour ${id}`,
    doubt: "repeat",
    says: "pours differ",
  });
}
