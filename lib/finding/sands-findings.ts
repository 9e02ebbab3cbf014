// What is worth saying of several sands: what can be said of two or more in the same words is said once.

import type { Band } from "../sand/band.ts";
import { another, apartButUnrepeated } from "./compare-messages.ts";
import type { Finding } from "./finding.ts";
import * as say from "./grain-messages.ts";
import { gravestFirst, sandFindings } from "./sand-findings.ts";
import type { SandReport } from "./sand-report.ts";

/** The messages that tell several sands together: the first argument lists them, the others are alike for all. */
const together: ReadonlyMap<string, (...said: never[]) => Finding> = new Map(
  [
    another,
    apartButUnrepeated,
    say.notWashedNew,
    say.insideBand,
    say.outsideBand,
    say.acrossBand,
    say.crowded,
    say.doubtCarrier,
    say.unrepeated,
    say.weighingUnknown,
    say.scaleUnchecked,
    say.screensAre,
  ].map((message) => [message.code, message]),
);

/**
 * Findings of all sands, the gravest first. bands: the usual ranges for their metal and bond.
 * @example
 * sandsFindings(sandReports(log), bands({ metal: "aluminium", bond: "bentonite" })).map(({ text }) => text)
 */
export function sandsFindings(reports: readonly SandReport[], bands: readonly Band[]): readonly Finding[] {
  return gravestFirst(saidTogether(reports.flatMap((report) => sandFindings(report, bands))));
}

/**
 * Findings in their order, those that say the same of several sands as one.
 * @example saidTogether(sandsFindings(sandReports(log), [])).length
 */
export function saidTogether(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  findings.forEach((finding, place) => {
    const [, ...alike] = finding.said ?? [];
    const key = together.has(finding.code) ? `${finding.code} ${JSON.stringify(alike)}` : `${place}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  });
  return [...groups.values()].map(asOne);
}

function asOne(group: readonly Finding[]): Finding {
  const [first] = group as readonly [Finding];
  if (group.length === 1) return first;
  const sands = group.flatMap(({ said }) => said![0] as readonly unknown[]);
  return together.get(first.code)!(...([sands, ...first.said!.slice(1)] as never[]));
}
