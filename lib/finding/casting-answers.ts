// The answer to one question of a log, in words.

import type { Phrase } from "../phrase.ts";
import { foundOn } from "../trial/cast-pours.ts";
import type { FaultAnswer, LeftOut } from "../trial/fault-questions.ts";
import type { FaultsAndSand } from "../trial/faults-and-sand.ts";
import { listed } from "./batch-names.ts";
import * as say from "./casting-messages.ts";
import { pourDifferences } from "./casting-pour-facts.ts";
import type { CastingOf, CastingPrint } from "./casting-print.ts";
import { capital, pWords, shareWords } from "./casting-words.ts";
import type { Finding } from "./finding.ts";

/** adjusted: the answer's p beside the others, undefined where it has none. */
export function answerFinding(
  answer: FaultAnswer,
  adjusted: number | undefined,
  report: FaultsAndSand,
  print: CastingPrint,
): Finding {
  const { question, result, values, leftOut, series, unit } = answer;
  const { fault, against, limit } = question;
  const of: CastingOf = { unit, ...(series?.test ? { test: series.test } : {}) };
  const missing = leftOutLines(leftOut);
  const method = series?.method === undefined ? "" : ` (${series.method})`;
  if (result.kind === "none")
    return say.notAnswered(capital(fault), against, say.whyNoFigure(result.why), missing);
  const others = report.adjusted.filter((p) => p !== undefined).length - 1;
  const counted = {
    p: pWords(result.p),
    least: pWords(result.least),
    ...(others > 0 ? { adjusted: pWords(adjusted!) } : {}),
    beside: say.besideQuestions(String(others)),
    ...(others > 0 && result.least * (others + 1) > 0.05
      ? { leastBeside: pWords(Math.min(1, result.least * (others + 1))) }
      : {}),
    clear: (adjusted ?? result.p) <= 0.05,
  };
  const having = (wanted: boolean) => report.pours.filter((pour) => foundOn(pour, fault) === wanted);
  const differ = pourDifferences(having(true), having(false), against, print);
  const more = [...(differ.length > 0 ? [say.goTogether(fault, differ)] : []), ...missing];
  if (result.kind === "rank") {
    return say.ranked(
      fault,
      `${capital(against)}${method}`,
      print.difference({ value: result.shift, ...result.interval }, of),
      say.withAndWithout(numbersIn(values, true, of, print), numbersIn(values, false, of, print)),
      counted,
      more,
    );
  }
  const edge = limit ? print.number(limit.value, of) : "";
  const [overName, underName] =
    against === "degassed"
      ? [say.degassedOrNot(true), say.degassedOrNot(false)]
      : [say.aboveEdge(`${against}${method}`, edge), say.atEdgeOrBelow(edge)];
  const across = result.across > 0 ? [say.acrossLimit(String(result.across), String(values.length))] : [];
  return say.sided(
    capital(fault),
    say.onSideOfLimit(overName!, shareWords(result.over.withIt, result.over.of)),
    say.onSideOfLimit(underName!, shareWords(result.under.withIt, result.under.of)),
    counted,
    [...across, ...more],
  );
}

function numbersIn(values: FaultAnswer["values"], has: boolean, of: CastingOf, print: CastingPrint): string {
  const own = values.filter((one) => one.has === has).map(({ value }) => value);
  return print.numbers(
    own.sort((a, b) => a - b),
    of,
  );
}

function leftOutLines(leftOut: LeftOut): Phrase[] {
  return (["untold", "unmeasured", "stale", "otherMethod"] as const).flatMap((why) =>
    leftOut[why].length === 0 ? [] : [say.poursLeftOut(listed([...leftOut[why]]), why)],
  );
}
