// A heap's record worked through for many draws of what is not known.

import { normalQuantile } from "../numbers/distributions.ts";
import { drawsOf, openDrawing } from "../quantity/drawing.ts";
import type { Drawing, Spread } from "../quantity/spread.ts";
import { spread } from "../quantity/spread-of.ts";
import {
  addClay,
  addNewSand,
  addWater,
  burn,
  dryHeapKg,
  type HeapDraft,
  lose,
} from "../sand/heap-balance.ts";
import { unevenPour } from "../sand/season.ts";
import type { HeapHistory, HistoryEvent } from "./heap-history.ts";

/** The numbers of one event, one for each draw. */
type Columns = { readonly [name: string]: Float64Array };

export interface HistoryDraws {
  readonly count: number;
  readonly drawing: Drawing;
  readonly burntKgPerKg: Float64Array;
  /** ln of the range's density over that of the proposal, of each draw; the weights start from it. */
  readonly logRatio: Float64Array;
  readonly unwrittenLossPercent: Float64Array;
  readonly newSandFinesPercent: Float64Array;
  readonly moistureNow: Float64Array | undefined;
  /** A heap as it was before the first event. */
  startOf(draw: number): HeapDraft;
  /** Works the event into the heap of one draw. */
  work(heap: HeapDraft, event: number, draw: number): void;
}

/** ln of burnt sand as normal: the range before the record, or where the record has shown it to be. */
export interface LogNormal {
  readonly mean: number;
  readonly sd: number;
}

export function rangeOf({ low, high }: HeapHistory["burntKgPerKg"]): LogNormal {
  return { mean: Math.log(low * high) / 2, sd: Math.log(high / low) / 2 / normalQuantile(0.975) };
}

/** proposal: where burnt sand is drawn, if not over the whole range; logRatio makes up for it. */
export function historyDraws(history: HeapHistory, count: number, proposal?: LogNormal): HistoryDraws {
  const range = rangeOf(history.burntKgPerKg);
  const from = proposal ?? range;
  const drawing = openDrawing(count);
  const draw = (of: Spread): Float64Array => drawsOf(of, drawing);
  const { start, events } = history;
  const dry = draw(start.dryKg);
  const moisture = draw(start.moistureOfDampPercent);
  const live = draw(start.liveClayOfDryMixPercent);
  const dead = draw(start.deadClayOfDryMixPercent);
  const other = draw(start.otherOfDryMixPercent);
  const fines = draw(start.finesOfGrainPercent);
  const logs = draw(spread({ ...from, source: "burn-out", doubt: "model", says: "how much clay is burnt" }));
  const burntKgPerKg = logs.map(Math.exp);
  const logRatio = logs.map(
    (x) => (((x - from.mean) / from.sd) ** 2 - ((x - range.mean) / range.sd) ** 2) / 2,
  );
  const unwrittenLossPercent = draw(history.unwrittenLossPercent);
  const newSandFinesPercent = draw(history.newSandFinesPercent);
  const columns = events.map((event) => columnsOf(event, draw));
  return {
    count,
    drawing,
    burntKgPerKg,
    logRatio,
    unwrittenLossPercent,
    newSandFinesPercent,
    moistureNow: history.moistureNowOfDampPercent && draw(history.moistureNowOfDampPercent),
    startOf(i) {
      const part = (percent: number): number => Math.max(0, (dry[i]! * percent) / 100);
      const clays = { liveClayKg: part(live[i]!), deadClayKg: part(dead[i]!), otherKg: part(other[i]!) };
      const grainKg = dry[i]! - clays.liveClayKg - clays.deadClayKg - clays.otherKg;
      const finesKg = Math.max(0, (grainKg * fines[i]!) / 100);
      const waterKg = Math.max(0, (dry[i]! * moisture[i]!) / (100 - moisture[i]!));
      return { ...clays, finesKg, sandKg: grainKg - finesKg, waterKg };
    },
    work(heap, at, i) {
      const event = events[at]!;
      const number = columns[at]!;
      if (event.kind === "pour") {
        const factor = unevenPour(history.betweenPours, number.scatter![i]!);
        burn(heap, Math.max(0, number.metalKg![i]! * burntKgPerKg[i]! * factor));
        lose(heap, (dryHeapKg(heap) * unwrittenLossPercent[i]!) / 100);
      } else if (event.kind === "lost") {
        lose(heap, Math.max(0, number.dryKg![i]!));
      } else if (event.kind === "water") {
        addWater(heap, number.kg![i]!);
      } else if (event.kind === "clay") {
        addClay(heap, number.weighedKg![i]!, number.moisturePercent![i]!, 100);
      } else if (event.kind === "new sand") {
        const finesPercent = Math.max(0, newSandFinesPercent[i]!);
        addNewSand(heap, number.weighedKg![i]!, number.moisturePercent![i]!, finesPercent);
      }
    },
  };
}

function columnsOf(event: HistoryEvent, draw: (of: Spread) => Float64Array): Columns {
  const given = Object.entries(event).filter(
    (entry): entry is [string, Spread] => typeof entry[1] === "object",
  );
  const columns = Object.fromEntries(given.map(([name, of]) => [name, draw(of)]));
  return event.kind === "pour" ? { ...columns, scatter: draw(pourScatter(event.id)) } : columns;
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
