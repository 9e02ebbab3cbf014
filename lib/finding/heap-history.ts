// The record of a log's heap as numbers with their doubt, and what had to be assumed for it.

import { heapFigure } from "../log/heap.ts";
import type { HeapEvent } from "../log/heap-events.ts";
import type { BasedShare, MeasuredState } from "../log/heap-state.ts";
import type { Log, Measured } from "../log/types.ts";
import { combine } from "../quantity/combine.ts";
import type { Spread } from "../quantity/spread.ts";
import { constant, spread, spreadOfQuantity } from "../quantity/spread-of.ts";
import { burntSandPerKgMetal } from "../sand/burn-out.ts";
import { type Metal, metalNamed } from "../sand/metals.ts";
import type { HeapHistory, HistoryEvent } from "../trial/heap-history.ts";
import * as say from "./heap-messages.ts";

export interface LoggedHistory {
  readonly history: HeapHistory;
  readonly metal: Metal;
  /** Sentences. */
  readonly assumed: readonly string[];
  readonly finesKnown: boolean;
}

export type HistoryAnswer =
  | { readonly known: LoggedHistory }
  | { readonly known?: undefined; readonly missing: readonly string[] };

/** Usual moisture where nothing is written, % of damp mass. */
const usualMoisture = () =>
  spread({ mean: 3.3, halfWidth: 0.8, source: "moisture of the heap, not measured", doubt: "method" });
/** Water of bagged bentonite: supplier sheets say 10 at most to 15. */
export const usualClayMoisture = () =>
  spread({ mean: 10, halfWidth: 3, source: "water of the bagged clay, not measured", doubt: "method" });
/** Live clay by a test without a ± of its own, surely within so many points. Our own. */
const liveClayWithin = 0.5;

/** The history of a log with pours; else what is missing for it, in words. */
export function heapHistory(log: Log): HistoryAnswer {
  const { events } = log;
  const pours = events.filter(({ kind }) => kind === "pour");
  if (pours.length === 0) return { missing: [say.needsPours] };
  const metal = log.metal === undefined ? undefined : metalNamed(log.metal);
  const start = startOf(log);
  const missing = [
    ...(metal ? [] : [say.needsMetal]),
    ...(start.dryKg ? [] : [say.needsMass]),
    ...(start.live ? [] : [say.needsClay]),
  ];
  if (!metal || !start.dryKg || !start.live) return { missing };
  const range = burntSandPerKgMetal({ metal, clayKind: log.heap?.clayKind });
  const last = log.measured.findLast(({ moisturePercent }) => moisturePercent);
  const history: HeapHistory = {
    start: {
      dryKg: start.dryKg,
      moistureOfDampPercent: start.moisture,
      liveClayOfDryMixPercent: start.live,
      deadClayOfDryMixPercent: constant(0),
      finesOfGrainPercent: start.fines ?? constant(0),
      otherOfDryMixPercent: constant(0),
    },
    events: inOrder(log, start.first),
    burntKgPerKg: { low: range.low, high: range.high },
    unwrittenLossPercent: spread({
      mean: 0.5,
      halfWidth: 0.5,
      source: "sand lost and not written down",
      doubt: "method",
    }),
    newSandFinesPercent: spread({
      mean: 0.75,
      halfWidth: 0.75,
      source: "fines of the new sand, not sieved",
      doubt: "method",
    }),
    betweenPours: 0.2,
    ...(last?.moisturePercent && last !== start.first
      ? { moistureNowOfDampPercent: asSpread(last.moisturePercent, `moisture, ${last.date}`) }
      : {}),
  };
  return {
    known: {
      history,
      metal,
      assumed: [...start.assumed, ...say.assumedAlways],
      finesKnown: start.fines !== undefined,
    },
  };
}

/** A figure with its ± as a spread of its own name; without one exact, or surely within what is said. */
export function asSpread({ value, plusMinus }: Measured, source: string, within = 0): Spread {
  if (plusMinus) return spreadOfQuantity({ value, plusMinus }, { source });
  return within > 0 ? spread({ mean: value, halfWidth: within, source }) : constant(value);
}

/** A clay share on the dry mix, %. */
export function clayOfDryMix(
  { value, of }: Pick<BasedShare, "value" | "of">,
  moisturePercent: number,
): number {
  if (of === "sand") return (100 * value) / (100 + value);
  return of === "dry mix" ? value : value / (1 - moisturePercent / 100);
}

function startOf(log: Log) {
  const assumed: string[] = [];
  const { events, measured, recipe } = log;
  const firstDay = events[0]!.date;
  const first = measured.find(({ date }) => date <= firstDay);
  const moist = first?.moisturePercent ?? recipe?.moisturePercent;
  const moisture = moist ? asSpread(moist, "moisture at the start", 0.3) : usualMoisture();
  if (!moist) assumed.push(say.moistureTaken);
  const live = first?.liveClay
    ? asSpread(onDryMix(first.liveClay, moisture.value), `live clay, ${first.date}`, liveClayWithin)
    : recipe?.clayPercent && recipe.basis
      ? recipeClay(recipe.clayPercent, recipe.basis, moisture.value)
      : undefined;
  if (!first?.liveClay && live) assumed.push(say.liveFromRecipe);
  const fines = first?.finesPercent && asSpread(first.finesPercent, `fines, ${first.date}`, 0.3);
  return { first, moisture, live, fines, dryKg: dryAtStart(log, moisture, assumed), assumed };
}

const onDryMix = (share: BasedShare, moisture: number): Measured => {
  const factor = clayOfDryMix(share, moisture) / share.value;
  const { plusMinus } = share;
  return {
    ...share,
    value: share.value * factor,
    ...(plusMinus ? { plusMinus: { ...plusMinus, size: plusMinus.size * factor } } : {}),
  };
};

/** As weighed in, to within three parts in a hundred. */
function recipeClay(clay: Measured, of: BasedShare["of"], moisture: number): Spread {
  const mean = clayOfDryMix({ value: clay.value, of }, moisture);
  return spread({ mean, halfWidth: 0.03 * mean, source: "clay as made up" });
}

/** The heap as it was made up; else as it is now, with what was lost and put in since counted back. */
function dryAtStart(log: Log, moisture: Spread, assumed: string[]): Spread | undefined {
  const { recipe, events } = log;
  const made = recipe?.makeKg;
  if (made) {
    const dampKg = asSpread(made, "the heap as made up", 0.02 * made.value);
    return combine(({ dampKg, moisture }) => dampKg * (1 - moisture / 100), { dampKg, moisture });
  }
  const now = heapFigure(log);
  if (!now) return undefined;
  assumed.push(say.massCountedBack);
  const pours = events.filter(({ kind }) => kind === "pour").length;
  const since = events.reduce((all, event) => all + dryPutIn(event), 0);
  return combine(
    ({ damp, moisture }) => Math.max(1, (damp * (1 - moisture / 100) - since) * (1 + 0.005 * pours)),
    { damp: now.figure, moisture },
  );
}

/** Dry, as about as is needed for a sum. */
function dryPutIn(event: HeapEvent): number {
  if (event.kind === "lost") return -event.massKg.value * (event.as === "damp" ? 0.967 : 1);
  if (event.kind === "rebond")
    return event.clayKg.value * (1 - (event.clayMoisturePercent?.value ?? 10) / 100);
  if (event.kind === "new sand") return event.massKg.value * (1 - (event.moisturePercent?.value ?? 0) / 100);
  return 0;
}

/** Events and measurements by date; what was measured on a day stands before what happened on it. */
function inOrder(log: Log, first: MeasuredState | undefined): HistoryEvent[] {
  const found = log.measured
    .filter((state) => state !== first)
    .flatMap((state) => liveClayOf(state, state.date).map((event) => ({ date: state.date, rank: 0, event })));
  const happened = log.events.flatMap((event, i) =>
    eventsOf(event, i, log).map((one) => ({ date: event.date, rank: i + 1, event: one })),
  );
  const ordered = [...found, ...happened]
    .sort((a, b) => (a.date === b.date ? a.rank - b.rank : a.date < b.date ? -1 : 1))
    .map(({ event }) => event);
  return [...ordered, ...weighedNow(log)];
}

/** The heap of today on the scales, where its mass at the start is known apart from that: it tells what was lost. */
function weighedNow(log: Log): HistoryEvent[] {
  const now = heapFigure(log)?.figure;
  const moist = log.measured.findLast(({ moisturePercent }) => moisturePercent);
  if (!log.recipe?.makeKg || !now || !moist?.moisturePercent || !(now.sd > 0)) return [];
  const dry = 1 - moist.moisturePercent.value / 100;
  return [{ kind: "weighed", date: log.events.at(-1)!.date, dryKg: now.value * dry, sd: now.sd * dry }];
}

function liveClayOf(
  { liveClay, moisturePercent }: Pick<MeasuredState, "liveClay" | "moisturePercent">,
  date: string,
) {
  if (!liveClay) return [];
  const { value, plusMinus } = onDryMix(liveClay, moisturePercent?.value ?? 3.3);
  const sd =
    plusMinus === undefined
      ? liveClayWithin / Math.sqrt(3)
      : plusMinus.meaning === "sd"
        ? plusMinus.size
        : plusMinus.size / (plusMinus.meaning === "95 %" ? 1.96 : Math.sqrt(3));
  return [{ kind: "live clay", date, percent: value, sd } satisfies HistoryEvent];
}

function eventsOf(event: HeapEvent, place: number, log: Log): HistoryEvent[] {
  const { date } = event;
  // Two events of one kind, day and size are two: told apart by how many like them stand before.
  const like = log.events
    .slice(0, place)
    .filter((one) => one.kind === event.kind && one.date === date).length;
  const id = `${date}${like === 0 ? "" : `, ${like + 1}`}`;
  const source = (what: string): string => `${what}, ${id}`;
  if (event.kind === "pour")
    return event.metalKg
      ? [{ kind: "pour", id, date, metalKg: asSpread(event.metalKg, source("metal")) }]
      : [];
  if (event.kind === "lost") {
    const dry = event.as === "damp" ? 1 - 0.033 : 1;
    const mass = asSpread(event.massKg, source("lost"), 0.1 * event.massKg.value);
    return [{ kind: "lost", date, dryKg: dry === 1 ? mass : combine(({ mass }) => mass * dry, { mass }) }];
  }
  if (event.kind === "water") return [{ kind: "water", date, kg: asSpread(event.massKg, source("water")) }];
  if (event.kind === "rebond") {
    const given = event.clayMoisturePercent ?? log.recipe?.clayMoisturePercent;
    const moisturePercent = given ? asSpread(given, "water of the bagged clay") : usualClayMoisture();
    return [{ kind: "clay", date, weighedKg: asSpread(event.clayKg, source("rebond")), moisturePercent }];
  }
  if (event.kind === "new sand") {
    const given = event.moisturePercent ?? log.recipe?.sandMoisturePercent;
    const moisturePercent = given ? asSpread(given, "water of the new sand") : constant(0);
    return [
      { kind: "new sand", date, weighedKg: asSpread(event.massKg, source("new sand")), moisturePercent },
    ];
  }
  const { greenCompressionKPa: strength, compactabilityPercent: compactability } = event.state;
  const tested: HistoryEvent[] =
    strength && compactability && compactability.value >= 30 && compactability.value <= 55
      ? [
          {
            kind: "tested",
            date,
            strengthKPa: strength.value,
            compactabilityPercent: compactability.value,
          },
        ]
      : [];
  return [...tested, ...liveClayOf(event.state, date)];
}
