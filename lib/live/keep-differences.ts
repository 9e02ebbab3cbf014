// Where two texts differ, in lines, to be shown side by side.

import type { LogText } from "../log/types.ts";
import { aligned } from "./edit-align.ts";
import { linesOf } from "./keep-merge.ts";

export interface Difference {
  readonly file: string;
  /** Of the first text, from 1. */
  readonly line: number;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Runs of lines that differ, without their line ends. */
export function differences(before: readonly LogText[], after: readonly LogText[]): Difference[] {
  const names = [...new Set([...before, ...after].map(({ name }) => name))];
  return names.flatMap((file) => {
    const of = (texts: readonly LogText[]) =>
      linesOf(texts.find(({ name }) => name === file)?.text ?? "").map((line) =>
        line.replace(/[\r\n]+$/, ""),
      );
    const [a, b] = [of(before), of(after)];
    const found: { file: string; line: number; before: string[]; after: string[] }[] = [];
    let open = false;
    let line = 0;
    for (const [i, j] of aligned(a, b)) {
      if (i !== undefined) line = i + 1;
      if (i !== undefined && j !== undefined) {
        open = false;
        continue;
      }
      if (!open) found.push({ file, line: i === undefined ? line + 1 : line, before: [], after: [] });
      open = true;
      if (i !== undefined) found.at(-1)!.before.push(a[i]!);
      if (j !== undefined) found.at(-1)!.after.push(b[j]!);
    }
    return found;
  });
}
