// Two hands in one log, and what differs between them.

import fc from "fast-check";
import { expect, test } from "vitest";
import { aligned } from "../../lib/live/edit-align.ts";
import { differences } from "../../lib/live/keep-differences.ts";
import { mergedTexts } from "../../lib/live/keep-merge.ts";

const log = (text: string) => [{ name: "a.yaml", text }];
const base = "one\ntwo\nthree\nfour\nfive\n";

test("changes of other lines are put together", () => {
  const { texts, meets } = mergedTexts(
    log(base),
    log(base.replace("two", "TWO")),
    log(base.replace("four\n", "")),
  );
  expect(texts).toEqual(log("one\nTWO\nthree\nfive\n"));
  expect(meets).toEqual([]);
});

test("the same line changed by both meets; changed alike it does not", () => {
  const mine = log(base.replace("three", "3"));
  expect(mergedTexts(log(base), mine, mine).texts).toEqual(mine);
  const { texts, meets } = mergedTexts(log(base), mine, log(base.replace("three", "iii")));
  expect(texts).toBeUndefined();
  expect(meets).toEqual([{ file: "a.yaml", line: 3, mine: "3\n", theirs: "iii\n" }]);
});

test("rows that both put in at one place meet", () => {
  expect(mergedTexts(log(base), log(`${base}six\n`), log(`${base}seven\n`)).texts).toBeUndefined();
  const [here, there] = [base.replace("three", "3"), `${base.replace("three", "iii")}six\n`];
  expect(mergedTexts(log(base), log(here), log(there)).mineFirst).toEqual(log(`${here}six\n`));
});

test("line ends and a last line without one stay", () => {
  const windows = "one\r\ntwo\r\nthree";
  const { texts } = mergedTexts(log(windows), log("ONE\r\ntwo\r\nthree"), log("one\r\ntwo\r\nthree!"));
  expect(texts).toEqual(log("ONE\r\ntwo\r\nthree!"));
});

const lines = fc.array(fc.constantFrom("a", "b", "c", "d", "e", "f"), { maxLength: 14 });

test("two lists side by side: every place once and in order, pairs alike", () => {
  fc.assert(
    fc.property(lines, lines, (a, b) => {
      const pairs = aligned(a, b);
      expect(pairs.flatMap(([i]) => i ?? [])).toEqual(a.map((_, i) => i));
      expect(pairs.flatMap(([, j]) => j ?? [])).toEqual(b.map((_, j) => j));
      for (const [i, j] of pairs) if (i !== undefined && j !== undefined) expect(a[i]).toBe(b[j]);
    }),
    { seed: 7, numRuns: 300 },
  );
});

test("a side that changed nothing takes the other's text, whatever it is", () => {
  fc.assert(
    fc.property(lines, lines, (a, b) => {
      const [was, now] = [log(a.join("\n")), log(b.join("\n"))];
      expect(mergedTexts(was, was, now).texts).toEqual(now);
      expect(mergedTexts(was, now, was).texts).toEqual(now);
    }),
    { seed: 8, numRuns: 200 },
  );
});

test("long texts are set side by side by lines that stand once in both, without a hang", () => {
  const long = Array.from({ length: 30_000 }, (_, i) => `row ${i}`);
  const other = long.flatMap((line, i) => (i % 997 === 0 ? [] : i % 991 === 0 ? [line, "new"] : [line]));
  const pairs = aligned(long, other);
  expect(pairs.filter(([i, j]) => i !== undefined && j !== undefined).length).toBe(
    long.filter((_, i) => i % 997 !== 0).length,
  );
}, 20_000);

test("differences are runs of lines, with the line of the first text", () => {
  expect(differences(log(base), log("one\nTWO\nthree\nfour\nfive\nsix\n"))).toEqual([
    { file: "a.yaml", line: 2, before: ["two"], after: ["TWO"] },
    { file: "a.yaml", line: 6, before: [], after: ["six"] },
  ]);
});
