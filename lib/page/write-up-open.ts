// What remains open, who looked it over, and what somebody who repeats it would miss.

import type { WriteUp } from "../finding/write-up-record.ts";
import type { Block, Section } from "./blocks.ts";
import { lead, told } from "./write-up-question.ts";

/** open: by what was worked out; lacking: what the log does not say. */
export function writeUpOpen(
  { record }: WriteUp,
  open: readonly string[],
  lacking: readonly string[],
): Section {
  const blocks: Block[] = [...told("By the founder", record?.open)];
  if (open.length > 0) blocks.push(lead("By the figures"), { kind: "list", items: open });
  if (lacking.length > 0) {
    blocks.push(lead("Not said in the log, and wanted by whoever repeats it"), {
      kind: "list",
      items: lacking,
    });
  }
  blocks.push(...told("Looked over", record?.review));
  return { role: "findings", title: "What remains open", blocks };
}
