// A finding of a founder's own script.

import type { Finding } from "./finding.ts";

/**
 * A finding: a sentence with its figure first, and the sentences that it rests on. It is a note unless more says
 * otherwise: tone (good, note, doubt, error), formula, source, code.
 * @example finding("Water 0.12 kg.", ["By the batch of Saturday."], { tone: "good" }).tone // "good"
 */
export function finding(
  text: string,
  because: readonly string[],
  more: Partial<Omit<Finding, "text" | "because">> = {},
): Finding {
  return { code: "own/finding", tone: "note", text, because, ...more };
}
