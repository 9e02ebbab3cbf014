// A section of a page from its parts, for a script.

import type { Chart } from "../chart/chart.ts";
import type { Caution, Finding } from "../finding/finding.ts";
import type { Block, Section, SectionRole } from "./blocks.ts";

/** What a section can be made of; a text is a paragraph. */
export type SectionPart = string | Block | Chart | Finding | Caution;

/**
 * A section of a page. role decides where it stands: cautions, data, result, findings, next, in this order. Parts are
 * shown in the order given: a text as a paragraph, charts, findings and cautions as they are, any block besides.
 * @example section("next", "What to do next", ["Test the barrow again."]).blocks // [{ kind: "prose", text: "Test the barrow again." }]
 */
export function section(role: SectionRole, title: string, parts: readonly SectionPart[]): Section {
  return { role, title, blocks: parts.map(blockOf) };
}

function blockOf(part: SectionPart): Block {
  if (typeof part === "string") return { kind: "prose", text: part };
  if ("kind" in part) return part;
  if ("spec" in part) return { kind: "chart", chart: part };
  return "tone" in part ? { kind: "finding", finding: part } : { kind: "caution", caution: part };
}
