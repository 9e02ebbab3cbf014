// A few cases of each kind with one seed for everybody, so that nobody is hit by luck: npm run fuzz takes a new one.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { notebookOf } from "../demos.ts";
import { fuzzKinds } from "./kinds.ts";
import { runBatch } from "./run-kind.ts";

const SEED = 20261126;
/** Half as many cases of logs: each is read some three times. */
const counts: { readonly [kind: string]: number } = {
  "logs from the grammar": 90,
  "logs from the demos": 30,
  "logs of words": 80,
  "logs that choke": 25,
  "logs with other line ends": 20,
  "logs with CSV files": 60,
  "files of any bytes": 40,
  formulas: 800,
  "formulas of plain numbers": 300,
  quantities: 2000,
  sieves: 1000,
};
const names = readdirSync(join(import.meta.dirname, "../../notebooks")).map((file) =>
  file.replace(".ts", ""),
);
const notebooks = await Promise.all(names.sort().map(notebookOf));
const kinds = fuzzKinds({ notebooks, often: { again: 3, edit: 20, page: 40, drawn: 0 } });
afterAll(() => {
  for (const { done } of kinds) done?.();
});

test("every kind of case is tried", () => {
  expect(kinds.map(({ name }) => name).sort()).toEqual(Object.keys(counts).sort());
});

test.each(kinds)(`$name (seed ${SEED})`, async (kind) => {
  let seen = 0;
  const watch = { step: () => undefined, over: () => void seen++ };
  const failure = await runBatch(kind, { seed: SEED, cases: counts[kind.name]! }, watch);
  expect(failure).toBeUndefined();
  expect(seen).toBe(counts[kind.name]);
});
