// What a log holds of a season: the heap and its diary, castings, an experiment.

import { type HeapFigure, heapFigure } from "../log/heap.ts";
import type { Log } from "../log/types.ts";
import { printFigure } from "../quantity/print.ts";
import { leastValues } from "../trial/control-report.ts";
import { diaryOf } from "../trial/control-series.ts";
import { listed } from "./batch-names.ts";
import { capital, counted, type Held, heldBy } from "./guide-held-state.ts";
import * as say from "./guide-messages.ts";

const weighs = ({ figure: { value, low, high }, missing }: HeapFigure): string =>
  printFigure({ value, low, high, unit: "kg", atLeast: missing.length > 0 }).text;

export function heapHeld(log: Log): Held {
  const mass = heapFigure(log);
  const pours = log.events.filter(({ kind }) => kind === "pour").length;
  const others = log.events.length - pours + (log.remarks?.length ?? 0);
  const [longest] = [...diaryOf(log).series].sort((a, b) => b.values.length - a.values.length);
  const values = longest?.values.length ?? 0;
  const holds = [
    ...(mass ? [say.heapWeighs(weighs(mass))] : []),
    ...(pours + others > 0 ? [say.heapEvents(counted(pours, "pour"), counted(others, "other event"))] : []),
    ...(longest ? [say.heapTests(capital(longest.property), counted(values, "day"))] : []),
  ];
  if (holds.length === 0) return heldBy([], [say.noHeap()]);
  return heldBy(holds, [
    ...(mass ? [] : [say.heapUnweighed()]),
    ...(values < leastValues ? [say.fewTests(String(leastValues))] : []),
  ]);
}

export function castingsHeld({ castings, questions }: Log): Held {
  const seen = castings.filter(({ faults }) => faults !== undefined);
  if (seen.length === 0) return heldBy([], [say.noCastings()]);
  const days = new Set(seen.map(({ date }) => date)).size;
  const faulty = seen.filter(({ faults }) => faults!.length > 0).length;
  return heldBy(
    [say.castingsSeen(counted(seen.length, "casting"), counted(days, "day"), String(faulty))],
    questions.length === 0 ? [say.noQuestion()] : [],
  );
}

export function writeUpHeld({ experiment }: Log): Held {
  if (!experiment) return heldBy([], [say.noExperiment()]);
  const { question, changed, held } = experiment;
  const lacks = [
    ...(question ? [] : ["what it asks"]),
    ...(changed.length > 0 ? [] : ["what was changed"]),
    ...(held.length > 0 ? [] : ["what was held alike"]),
  ];
  return {
    state: lacks.length === 0 ? "on record" : "begun",
    holds: question ? [say.asks(question.text)] : [],
    lacks: lacks.length === 0 ? [] : [say.experimentLacks(listed(lacks))],
  };
}
