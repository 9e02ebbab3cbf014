// Faults of castings pour by pour, beside the sand and the pour of that day.

import type { CastingQuestion } from "../log/casting-record.ts";
import type { Log } from "../log/types.ts";
import { exactShare } from "../numbers/exact-share.ts";
import { holm } from "../numbers/holm.ts";
import { type CastingFault, castingFaults } from "../sand/casting-faults.ts";
import { type CastPour, castPours, foundOn } from "./cast-pours.ts";
import { type Diary, diaryOf } from "./control-series.ts";
import { answerOf, type FaultAnswer } from "./fault-questions.ts";

export interface FaultCount {
  readonly fault: CastingFault;
  readonly withIt: readonly CastPour[];
  readonly without: readonly CastPour[];
  readonly castings: number;
  /** Of the pours that can be told, with the exact 95 % interval; 0 to 1. */
  readonly share: { readonly share: number; readonly low: number; readonly high: number };
}

export interface FaultsAndSand {
  /** By date. */
  readonly pours: readonly CastPour[];
  /** Faults that were found, those of most pours first. */
  readonly faults: readonly FaultCount[];
  /** One for each question of the log, in its order. */
  readonly answers: readonly FaultAnswer[];
  /** Of answers that have a p, each as it counts beside the others (Holm), in the same order; undefined without a p. */
  readonly adjusted: readonly (number | undefined)[];
  readonly questions: readonly CastingQuestion[];
  readonly diary: Diary;
}

/**
 * Puts the castings of a log beside the sand of their day (the tests of that day, else the nearest before, see
 * sandThatDay) and beside their pour, counts each fault by pours, and answers the questions of the log: no other pair is
 * tested. A log without castings gives empty lists.
 * Source of the tests: fisherExact, mannWhitneyExact, holm.
 * @example faultsAndSand(log).faults[0]?.share // { share: 0.333, low: 0.075, high: 0.701 }
 */
export function faultsAndSand(log: Log): FaultsAndSand {
  const diary = diaryOf(log);
  const pours = castPours(log, diary);
  const answers = log.questions.map((question) => answerOf(question, pours));
  const ps = answers.flatMap(({ result }) => (result.kind === "none" ? [] : [result.p]));
  const steps = holm(ps);
  let next = 0;
  return {
    pours,
    faults: castingFaults.flatMap((fault) => countOf(fault, pours) ?? []).toSorted(mostPours),
    answers,
    adjusted: answers.map(({ result }) => (result.kind === "none" ? undefined : steps[next++])),
    questions: log.questions,
    diary,
  };
}

const mostPours = (a: FaultCount, b: FaultCount): number => b.withIt.length - a.withIt.length;

function countOf(fault: CastingFault, pours: readonly CastPour[]): FaultCount | undefined {
  const withIt = pours.filter((pour) => foundOn(pour, fault) === true);
  if (withIt.length === 0) return undefined;
  const without = pours.filter((pour) => foundOn(pour, fault) === false);
  return {
    fault,
    withIt,
    without,
    castings: withIt.flatMap(({ castings }) => castings.filter(({ faults }) => faults?.includes(fault)))
      .length,
    share: exactShare(withIt.length, withIt.length + without.length),
  };
}
