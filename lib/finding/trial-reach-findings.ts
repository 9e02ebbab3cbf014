// Aims that the trial does not come to, alone or together.

import { printNumber } from "../quantity/print.ts";
import type { Unreachable } from "../trial/reach.ts";
import type { TrialReport } from "../trial/trial-report.ts";
import type { Finding } from "./finding.ts";
import { axisInWords, axisName, axisPlaces, spanText } from "./trial-axis.ts";
import { inOwnUnits, type PrintTest } from "./trial-print.ts";
import * as say from "./trial-reach-messages.ts";

/** One finding for each aim out of reach and each pair that is met only apart. */
export function reachFindings(report: TrialReport, print: PrintTest = inOwnUnits): readonly Finding[] {
  return [
    ...report.unreachable.map((one) => outOfReach(report, one, print)),
    ...report.apart.map(({ tests: [a, b], aAt, bAt }) =>
      say.onlyApart(a, spanText(aAt, report), b, spanText(bAt, report), axisInWords(report)),
    ),
  ];
}

function outOfReach(report: TrialReport, one: Unreachable, print: PrintTest): Finding {
  const { test, best, at, short, side, onlyThis } = one;
  const wanted = report.properties.find((property) => property.test === test)?.wanted;
  const places = report.x.map(({ value }) => value);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const hair = 0.02 * (last - first);
  const end = at <= first + hair ? "low" : at >= last - hair ? "high" : undefined;
  return say.unreachable({
    test,
    best: print(best, test),
    at: `${printNumber(at, axisPlaces(report))} ${axisInWords(report)}`,
    axis: axisName(report),
    side,
    wanted: wanted ? `${print(wanted.low, test)} to ${print(wanted.high, test)}` : "",
    short: `${print(short.value, test)} (95 %: ${print(Math.max(0, short.low), test)} to ${print(short.high, test)})`,
    perhapsMet: short.low <= 0,
    end:
      end && report.axis === "moisture"
        ? { low: "drier", high: "wetter" }[end]
        : end && { low: "lower", high: "upper" }[end],
    onlyThis,
  });
}
