// What the faults of a log's castings say, and what they don't.

import type { Log } from "../log/types.ts";
import type { Phrase } from "../phrase.ts";
import type { SandCause } from "../sand/casting-fault.ts";
import { castingFaultRows } from "../sand/casting-faults.ts";
import type { FaultCount, FaultsAndSand } from "../trial/faults-and-sand.ts";
import { listed } from "./batch-names.ts";
import { answerFinding } from "./casting-answers.ts";
import { type CauseStanding, causeStandings, linkSource } from "./casting-causes.ts";
import * as say from "./casting-messages.ts";
import { type CastingPrint, castingInOwnUnits } from "./casting-print.ts";
import { capital, shareWords } from "./casting-words.ts";
import type { Finding } from "./finding.ts";
import { outsideMeans } from "./outside-means.ts";

/**
 * The questions first, in the log's order; then each fault, those of most pours first; then what is missing.
 * @example castingFindings(faultsAndSand(log), log).map(({ text }) => text)
 */
export function castingFindings(
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
  print: CastingPrint = castingInOwnUnits,
): Finding[] {
  if (report.pours.length === 0) return [];
  const asked = report.answers.map((answer, i) => answerFinding(answer, report.adjusted[i], report, print));
  const unread = report.pours
    .flatMap(({ castings }) => castings)
    .filter(({ faults, incomplete }) => !faults || incomplete)
    .map(({ name, date }) => `${name} of ${date}`);
  const madeUp = report.diary.madeUp.length;
  return [
    ...(asked.length > 0 ? asked : [say.noQuestions()]),
    ...report.faults.map((count) => faultFinding(count, report, log)),
    ...(unread.length > 0 ? [say.notLookedOver(listed(unread))] : []),
    ...(madeUp > 0 ? [say.madeUpLeftOut(madeUp === 1 ? "One batch is" : `${madeUp} batches are`)] : []),
  ];
}

/** What it means besides to lie on that side: over-wet sand is a hazard before it is a fault. */
function meaning(test: SandCause["test"], bond: string | undefined): Phrase[] {
  const means = test && outsideMeans(test.property, test.side === "high" ? "above" : "below", bond ?? "");
  return means ? [means] : [];
}

function faultFinding(
  count: FaultCount,
  report: FaultsAndSand,
  log: Pick<Log, "aims" | "metal" | "bond">,
): Finding {
  const { fault, withIt, without, castings } = count;
  const standings = causeStandings(count, report, log);
  const first = castingFaultRows[fault].first;
  const onSide = ({ cause, withIt: own, without: other }: CauseStanding): Phrase =>
    say.causeOnSide(
      cause.says,
      String(own!.on),
      String(own!.tested),
      String(other!.on),
      String(other!.tested),
    );
  const pointing = standings.filter(({ points }) => points);
  const sources = standings.filter(({ range }) => range).map(({ cause }) => linkSource(cause));
  return say.faultFound(
    capital(fault),
    shareWords(withIt.length, withIt.length + without.length),
    say.castingsCounted(String(castings)),
    pointing.map(onSide),
    [
      say.lookedAtFirst(first),
      ...pointing.flatMap(({ cause: { test } }) => meaning(test, log.bond)),
      ...(pointing.length > 0 ? [] : [say.noCauseSeen()]),
    ],
    sources.length > 0 ? [...new Set(sources)].join("; ") : "common practice",
  );
}
