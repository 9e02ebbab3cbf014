// Lines that slipped to the left or the right: YAML would blame the lines after them.

import { badIndent, noColonAfter } from "./complaints-yaml.ts";
import { logKeys } from "./log-keys.ts";
import { plainName } from "./node.ts";
import { isNameWithoutColon, type SandBlock } from "./sand-blocks.ts";
import { indentOf, lineIndex, lineText, nextLine, type Source } from "./source.ts";
import type { WordedFault } from "./yaml-faults.ts";

/**
 * For a log that YAML finds fault with: a section of the log that does not stand at the left margin as the others do; a
 * line that stands less far in than its sand's fields; a first field that stands further in than those after it; or a
 * dash out of line with its sand's first. Tabs are left to be told as tabs.
 */
export function strayLines(source: Source, blocks: readonly SandBlock[]): WordedFault[] {
  const strays = [
    ...straySections(source),
    ...strayNames(source, blocks),
    ...blocks.flatMap((block) => straysIn(source, block)),
  ];
  return strays.sort((a, b) => a.offset - b.offset);
}

function strayAt(source: Source, index: number): WordedFault {
  const line = lineText(source, index);
  const offset = (source.lineStarts[index] ?? 0) + indentOf(line);
  const name = line.trim().replace(/\s+#.*$/, "");
  const complaint = isNameWithoutColon(source, index)
    ? noColonAfter(name, `${name}:`)
    : badIndent(line.trim().slice(0, 60));
  return { complaint, offset };
}

/**
 * Of the names in one section those that do not stand as most do; where as many stand one way as the other, those whose
 * own lines do not stand two spaces further in.
 */
function strayNames(source: Source, blocks: readonly SandBlock[]): WordedFault[] {
  const sections: (readonly [SandBlock, number])[][] = [];
  for (const [at, block] of blocks.entries()) {
    const before = blocks[at - 1];
    const placed = [block, indentOf(lineText(source, lineIndex(source, block.start)))] as const;
    if (before && before.end === block.start) sections.at(-1)!.push(placed);
    else sections.push([placed]);
  }
  return sections.flatMap((names) => {
    const count = (indent: number) => names.filter(([, other]) => other === indent).length;
    const kinds = [...new Set(names.map(([, indent]) => indent))];
    const colonless = names.filter(([block]) => isNameWithoutColon(source, lineIndex(source, block.start)));
    if (kinds.length < 2) return colonless.map(([block]) => strayAt(source, lineIndex(source, block.start)));
    const most = Math.max(...kinds.map(count));
    const usual = kinds.filter((indent) => count(indent) === most);
    return names
      .filter(([block, indent]) =>
        usual.length === 1 ? indent !== usual[0] : bodyIndent(source, block) - indent !== 2,
      )
      .map(([block]) => strayAt(source, lineIndex(source, block.start)));
  });
}

function bodyIndent(source: Source, block: SandBlock): number {
  const next = nextLine(source, lineIndex(source, block.start));
  return next === undefined ? 0 : indentOf(lineText(source, next));
}

/** Names that stand at the left margin of a log and nowhere else. */
const sections: readonly string[] = logKeys.filter((key) => key !== "note");

function straySections(source: Source): WordedFault[] {
  const found = source.lineStarts.flatMap((_, index) => {
    const line = lineText(source, index).replace(/^\uFEFF/, "");
    const key = plainName(/^\s{0,4}([^\s:#-][^:]{0,20}):(?:\s|$)/.exec(line)?.[1] ?? "");
    return sections.includes(key) ? [{ index, indent: indentOf(line) }] : [];
  });
  const atMargin = found.filter(({ indent }) => indent === 0);
  return atMargin.length === 0
    ? []
    : found.filter(({ indent }) => indent > 0).map(({ index }) => strayAt(source, index));
}

function straysIn(source: Source, block: SandBlock): WordedFault[] {
  const rows: { readonly index: number; readonly indent: number; readonly dashed: boolean }[] = [];
  for (let index = lineIndex(source, block.start) + 1; index < source.lineStarts.length; index++) {
    if ((source.lineStarts[index] ?? 0) >= block.end) break;
    const line = lineText(source, index);
    if (/^\s*(#|$)/.test(line) || /^[ \u00A0]*\t/.test(line)) continue;
    const indent = indentOf(line);
    rows.push({ index, indent, dashed: line.startsWith("-", indent) });
  }
  const [first, ...others] = rows;
  if (!first) return [];
  const dash = rows.find(({ dashed }) => dashed)?.indent;
  const least = Math.min(...others.map(({ indent }) => indent));
  const standing = (indent: number) => others.filter((row) => row.indent === indent).length;
  // One alone against several that agree: it is the first that slipped.
  const firstSlipped =
    least < first.indent &&
    least > indentOf(lineText(source, lineIndex(source, block.start))) &&
    standing(least) > 1 + standing(first.indent);
  const body = firstSlipped ? least : first.indent;
  return rows
    .filter((row) =>
      row === first ? firstSlipped : row.indent < body || (row.dashed && row.indent !== dash),
    )
    .map(({ index }) => strayAt(source, index));
}
