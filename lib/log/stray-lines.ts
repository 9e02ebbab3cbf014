// Lines among a sand's that slipped towards the left margin: YAML would blame the lines after them.

import { badIndent } from "./complaints-yaml.ts";
import type { SandBlock } from "./sand-blocks.ts";
import { indentOf, lineIndex, lineText, type Source } from "./source.ts";
import type { WordedFault } from "./yaml-faults.ts";

/** For a log that YAML finds fault with: a line that stands less far in than its sand's first field, or a dash out of line with its sand's first. Tabs are left to be told as tabs. */
export function strayLines(source: Source, blocks: readonly SandBlock[]): WordedFault[] {
  return blocks.flatMap((block) => {
    const strays: WordedFault[] = [];
    let body: number | undefined;
    let dash: number | undefined;
    for (let index = lineIndex(source, block.start) + 1; ; index++) {
      const start = source.lineStarts[index];
      if (start === undefined || start >= block.end) return strays;
      const line = lineText(source, index);
      if (/^\s*(#|$)/.test(line) || /^[ \u00A0]*\t/.test(line)) continue;
      const indent = indentOf(line);
      body ??= indent;
      const dashed = line.startsWith("-", indent);
      if (dashed) dash ??= indent;
      if (indent >= body && !(dashed && indent !== dash)) continue;
      strays.push({ complaint: badIndent(line.trim().slice(0, 60)), offset: start + indent });
    }
  });
}
