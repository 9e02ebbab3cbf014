// The answer to one question of a log, in words.

import { foundOn } from "../trial/cast-pours.ts";
import type { FaultAnswer, FaultResult, LeftOut } from "../trial/fault-questions.ts";
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
  if (result.kind === "none") return say.notAnswered(capital(fault), against, reasons[result.why], missing);
  const others = report.adjusted.filter((p) => p !== undefined).length - 1;
  const counted = {
    p: pWords(result.p),
    least: pWords(result.least),
    ...(others > 0 ? { adjusted: pWords(adjusted!) } : {}),
    beside: others === 1 ? "question" : `${others} questions`,
    ...(others > 0 && result.least * (others + 1) > 0.05
      ? { leastBeside: pWords(Math.min(1, result.least * (others + 1))) }
      : {}),
    clear: (adjusted ?? result.p) <= 0.05,
  };
  const having = (wanted: boolean) => report.pours.filter((pour) => foundOn(pour, fault) === wanted);
  const differ = pourDifferences(having(true), having(false), against, print);
  const more = [...(differ.length > 0 ? [say.goTogether(fault, differ.join("; "))] : []), ...missing];
  if (result.kind === "rank") {
    return say.ranked(
      fault,
      `${capital(against)}${method}`,
      print.difference({ value: result.shift, ...result.interval }, of),
      `With it: ${numbersIn(values, true, of, print)}; without: ${numbersIn(values, false, of, print)}. The readings' own ± is not in p.`,
      counted,
      more,
    );
  }
  const edge = limit ? print.number(limit.value, of) : "";
  const [overName, underName] =
    against === "degassed"
      ? ["degassed", "not degassed"]
      : [`${against}${method} above ${edge}`, `at ${edge} or below`];
  const across =
    result.across > 0
      ? [
          `The ± of ${result.across} of ${values.length} readings runs across the limit: their side is not sure.`,
        ]
      : [];
  return say.sided(
    capital(fault),
    `${overName} on ${shareWords(result.over.withIt, result.over.of)}`,
    `${underName} on ${shareWords(result.under.withIt, result.under.of)}`,
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

const reasons: { readonly [why in Extract<FaultResult, { kind: "none" }>["why"]]: string } = {
  "no values": "no pour has a figure for it that stands for its day",
  "never found": "no pour with a figure shows the fault",
  "always found": "every pour with a figure shows the fault",
  "one side": "all figures lie on one side of the limit",
  "too many": "there are more than a hundred figures, which this page does not count out",
};

function leftOutLines({ untold, unmeasured, stale, otherMethod }: LeftOut): string[] {
  const line = (names: readonly string[], why: string): string[] =>
    names.length === 0 ? [] : [`Left out: ${listed([...names])}, ${why}.`];
  return [
    ...line(untold, "where it is not known whether the fault was there"),
    ...line(unmeasured, "without a figure"),
    ...line(stale, "tested too long before, or the heap was changed since"),
    ...line(otherMethod, "tested by another method"),
  ];
}
