// The outline after an edit, from the one before, is the one that is read anew.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { editLog, type LogText, logOutline } from "../../lib/index.ts";
import { shiftedOutline } from "../../lib/live/edit-shift.ts";
import type { OutlineNode } from "../../lib/log/outline-node.ts";
import { texts } from "./log.ts";

const folder = join(import.meta.dirname, "..", "..", "data-demo");
const demos = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".yaml"))
  .map((name): readonly LogText[] => [{ name, text: readFileSync(join(folder, name), "utf8") }]);

function valuesIn(nodes: readonly OutlineNode[]): (OutlineNode & { kind: "value" })[] {
  return nodes.flatMap((node) => {
    if (node.kind === "value") return [node];
    const parts = node.kind === "group" ? node.parts : node.rows.flat().filter((cell) => cell !== undefined);
    return valuesIn(parts);
  });
}

/** Columns are not kept in step. */
const plain = (outline: readonly OutlineNode[] | undefined): unknown =>
  JSON.parse(
    JSON.stringify(outline, (key, value) => (key === "column" || key === "line" ? undefined : value)),
  );

test("whatever is written where, in every demo log, the outline is right or is to be read", () => {
  let [right, read] = [0, 0];
  fc.assert(
    fc.property(
      fc.constantFrom(texts, ...demos),
      fc.nat(),
      fc.constantFrom(
        "1",
        "12.4 ± 0.1 g",
        "oven",
        "null",
        "a: b",
        "# 4",
        "x, y",
        "",
        "two  words",
        "0,5",
        "yes",
        "-",
        "- 3",
        '"',
        "5 %",
      ),
      (log, pick, text) => {
        const before = logOutline(log);
        const values = valuesIn(before);
        const edited = editLog(log, { kind: "write", at: values[pick % values.length]!.place, text }).texts;
        if (!edited) return;
        const shifted = shiftedOutline(before, log, edited);
        if (shifted) right += 1;
        else read += 1;
        if (shifted) expect(plain(shifted)).toEqual(plain(logOutline(edited)));
      },
    ),
    { seed: 11, numRuns: 150 },
  );
  expect(right).toBeGreaterThan(40);
  expect(read).toBeGreaterThan(20);
});

test("rows put in or taken out, and two values at once, are read", () => {
  const outline = logOutline(texts);
  const row = editLog(texts, { kind: "add", to: ["swelling.csv"], entries: { jar: "D" } }).texts!;
  expect(shiftedOutline(outline, texts, row)).toBeUndefined();
  const [log, csv] = texts;
  const two = [{ ...log!, text: log!.text.replace("152.6", "152.7").replace("148.4", "148.5") }, csv!];
  expect(shiftedOutline(outline, texts, two)).toBeUndefined();
  expect(shiftedOutline(outline, texts, texts)).toBe(outline);
});
