// The findings of a trial as blocks: what decides first, smaller notes on demand.

import type { Finding } from "../finding/finding.ts";
import type { Block } from "./blocks.ts";

/** Worth knowing once, and no answer to the page's question. */
const small: readonly string[] = [
  "trial/points-only",
  "trial/straight-only",
  "trial/peak-not-bounded",
  "trial/density-unknown",
  "trial/these-blocks-only",
  "trial/order-unchecked",
  "trial/unchecked",
  "trial/no-surface",
  "rig/wall-leak",
];

/**
 * Every finding as a block, those that are notes on the side in a fold at the end.
 * @example findingBlocks(trialFindings(trialReport(log)))
 */
export function findingBlocks(findings: readonly Finding[]): Block[] {
  const isSmall = ({ code, tone }: Finding): boolean => tone === "note" && small.includes(code);
  const block = (finding: Finding): Block => ({ kind: "finding", finding });
  const aside = findings.filter(isSmall).map(block);
  return [
    ...findings.filter((one) => !isSmall(one)).map(block),
    { kind: "fold", summary: "Smaller notes on curves and rigs", blocks: aside },
  ];
}
