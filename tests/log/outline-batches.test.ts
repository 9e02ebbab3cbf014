import { expect, test } from "vitest";
import { logOutline } from "../../lib/log/outline.ts";
import { outlinedBatches } from "../../lib/log/outline-batches.ts";

const batches = (log: string, csv?: string) =>
  outlinedBatches(
    logOutline([
      { name: "log.yaml", text: log },
      ...(csv === undefined ? [] : [{ name: "rows.csv", text: csv }]),
    ]),
  );

test("entries that fold, entries that are rows of a table, and what is left out of them", () => {
  const text = `batches:
  W1: { moisture: { damp: 10 g, dry: 9 g }, left out: too wet }
  W2: { moisture: 3 % }
`;
  expect(batches(text)).toEqual([
    { kind: "entry", name: "W1", path: ["batches", "W1"], keptOut: "too wet" },
    { kind: "entry", name: "W2", path: ["batches", "W2"] },
  ]);
  expect(
    batches("batches: { W1: { moisture: 3 % }, W2: { moisture: 4 %, left out: torn } }\n"),
  ).toMatchObject([{ name: "W1" }, { name: "W2", keptOut: "torn" }]);
});

test("rows of a CSV file by name, repeats together; the log's own come first", () => {
  const csv = "Batch,moisture,Left out\nW1,3 %,\nw1 ,3.1 %,spilt\nW2,4 %,\n";
  expect(batches("batches file: rows.csv\n", csv)).toEqual([
    { kind: "csv", name: "W1", file: "rows.csv", rows: [0, 1], keptOut: "spilt" },
    { kind: "csv", name: "W2", file: "rows.csv", rows: [2] },
  ]);
  expect(batches("batches: { W2: { moisture: 3 % } }\nbatches file: rows.csv\n", csv)).toMatchObject([
    { kind: "entry", name: "W2" },
    { kind: "csv", name: "W1" },
  ]);
});
