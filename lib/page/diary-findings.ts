// The findings of a diary as blocks: what decides first, smaller notes on demand; and the page's first sentences.

import { listed } from "../finding/batch-names.ts";
import { nameOf } from "../finding/diary-findings.ts";
import { alarmsOfAll } from "../finding/diary-signals.ts";
import type { Finding } from "../finding/finding.ts";
import type { Controlled, ControlReport } from "../trial/control-report.ts";
import type { Block, Text } from "./blocks.ts";

const small: readonly string[] = [
  "diary/few",
  "diary/undated",
  "diary/made-up",
  "diary/several-rigs",
  "diary/rig-share",
];

/**
 * The findings of a diary as blocks, smaller notes folded.
 * @example diaryFindingBlocks(diaryFindings(controlReport(log))).length
 */
export function diaryFindingBlocks(findings: readonly Finding[]): Block[] {
  const isSmall = ({ code, tone }: Finding): boolean => tone === "note" && small.includes(code);
  const block = (finding: Finding): Block => ({ kind: "finding", finding });
  return [
    ...findings.filter((one) => !isSmall(one)).map(block),
    { kind: "fold", summary: "Smaller notes on the diary", blocks: findings.filter(isSmall).map(block) },
  ];
}

/**
 * Which figures are in hand, which have moved, which cannot be told; then the first finding that asks for something.
 * @example
 * const report = controlReport(log);
 * diaryAnswer(report, diaryFindings(report))
 */
export function diaryAnswer(report: ControlReport, findings: readonly Finding[]): Text[] {
  const { controlled, few, lastDate } = { ...report, ...report.diary };
  if (controlled.length === 0) {
    return [
      few.length === 0
        ? "This log holds no dated test of a heap: test it, write the date and the figure, and the charts follow."
        : `No test of this log has eight values by one method yet, so nothing can be called steady or moved; ${listed(few.map(({ property, values }) => `${property} has ${values.length}`))}.`,
    ];
  }
  const named = (chosen: (one: Controlled) => boolean): string =>
    listed(controlled.filter(chosen).map(({ series }) => lowerName(nameOf(series))));
  const parts = [
    ["In hand and steady", named(({ verdict, restless }) => verdict === "steady" && !restless)],
    [
      "Steady, by a baseline that was not",
      named(({ verdict, restless }) => verdict === "steady" && restless),
    ],
    ["Moved", named(({ verdict }) => verdict === "moved")],
    ["Perhaps moved", named(({ verdict }) => verdict === "perhaps moved")],
    ["A signal that has passed", named(({ verdict }) => verdict === "signal passed")],
    ["Not steady yet", named(({ verdict }) => verdict === "unsteady")],
    ["Baseline only so far", named(({ verdict }) => verdict === "baseline only")],
  ].filter(([, names]) => names !== "");
  const strong = parts.map(([word, names]) => `${word}: ${names}.`).join(" ");
  const alarms = alarmsOfAll(controlled);
  const urgent = findings.filter(({ code }) =>
    ["diary/moved", "diary/perhaps-moved", "diary/change-suggested", "diary/due"].includes(code),
  );
  return [
    [{ strong }, ` By the log's last day, ${lastDate}.`],
    ...urgent.slice(0, 3).map(({ text }) => text),
    ...(alarms === undefined ? [] : [alarms]),
    "Steady says that the heap is as it was in its baseline, not that this is good sand.",
  ];
}

const lowerName = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
