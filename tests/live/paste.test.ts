// Blocks pasted into tables of the log.

import { expect, test } from "vitest";
import { editLog, type LogText } from "../../lib/index.ts";
import { logPlaces } from "../../lib/live/edit-places.ts";
import { copiedTable, filledBy, pastedBlock, type RowsNode } from "../../lib/live/paste.ts";
import { texts } from "./log.ts";

test.each([
  [
    "1\t2\n3\t4\n",
    [
      ["1", "2"],
      ["3", "4"],
    ],
  ],
  [
    "1,2\r\n3,4",
    [
      ["1", "2"],
      ["3", "4"],
    ],
  ],
  [
    "1,5;2,5\n3;4",
    [
      ["1,5", "2,5"],
      ["3", "4"],
    ],
  ],
  ['a\t"two\nlines"\t"with ""quotes"""', [["a", "two\nlines", 'with "quotes"']]],
  [
    '"x, y",3\n5" pipe,4',
    [
      ["x, y", "3"],
      ['5" pipe', "4"],
    ],
  ],
  ["10.1\n10.2\n", [["10.1"], ["10.2"]]],
  ["10.1, 10.2, 10.3", [["10.1", "10.2", "10.3"]]],
  ["1\t\t3", [["1", "", "3"]]],
])("the block %j", (text, cells) => {
  expect(pastedBlock(text)).toEqual(cells);
});

test.each(["12.4 ± 0.1 g", "12,4", "damp, from the middle, late", "12.4 g\n"])(
  "%j is a text for one cell",
  (text) => {
    expect(pastedBlock(text)).toBeUndefined();
  },
);

const rows = (from: readonly LogText[]): RowsNode => {
  const node = logPlaces(from).get(["swelling.csv"]);
  if (node?.kind !== "rows") throw new Error("no rows");
  return node;
};

function filled(text: string, row: number, column: number) {
  const { edits, left } = filledBy(pastedBlock(text)!, rows(texts), row, column);
  let now: readonly LogText[] = texts;
  for (const edit of edits) {
    const { texts: next, issues } = editLog(now, edit);
    expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
    now = next!;
  }
  return { csv: now[1]!.text, left };
}

test("fills from the focused cell on, and adds rows below", () => {
  const { csv, left } = filled("10.2\t14.0\n10.3\t14.3\n10.4\t15\n", 1, 1);
  expect(csv).toBe("jar,dry,wet\nA,10.0,14.1\nB,10.2,14.0\nC,10.3,14.3\n,10.4,15\n");
  expect(left).toEqual([]);
});

test("a first line that names columns says where the others go", () => {
  const { csv } = filled("wet\tjar\n16.5\tX\n", 0, 0);
  expect(csv).toBe("jar,dry,wet\nX,10.0,16.5\nB,10.1,13.9\nC,10.0,14.4\n");
});

test("an empty cell of the block leaves the one that is there; what does not fit is told", () => {
  const { csv, left } = filled("9\t\n8\t13\t77", 0, 1);
  expect(csv).toBe("jar,dry,wet\nA,9,14.1\nB,8,13\nC,10.0,14.4\n");
  expect(left).toEqual(['"77" stands right of the last column']);
});

test("a copied table is pasted as it was", () => {
  const block = pastedBlock(copiedTable(rows(texts)))!;
  expect(block[0]).toEqual(["jar", "dry", "wet"]);
  const { edits } = filledBy(block, rows(texts), 0, 0);
  let now: readonly LogText[] = texts;
  for (const edit of edits) now = editLog(now, edit).texts!;
  expect(now).toEqual(texts);
});
