// Files that founders and others hand in: each is answered in words, with its place, in bounded time.

import { existsSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { logWith, soundRows } from "./logs.ts";
import { built, mullbook, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

interface Case {
  readonly name: string;
  readonly content: string | Uint8Array;
  readonly code: 0 | 1;
  readonly says: RegExp;
  /** False where nothing can be read as a log, so that there is no page. */
  readonly page: boolean;
}

const levels = Array.from({ length: 9 }, (_, level) => {
  const below = level === 0 ? "x" : `*a${level - 1}`;
  return `a${level}: &a${level} [${Array(9).fill(below).join(", ")}]`;
});

const cases: readonly Case[] = [
  { name: "empty", content: "", code: 1, says: /bad\.yaml:1:1: error: The file is empty/, page: false },
  {
    name: "binary",
    content: Uint8Array.from({ length: 3000 }, (_, i) => (i * 151 + (i >> 3)) % 256),
    code: 1,
    says: /bad\.yaml:1:1: error: This is not a text file/,
    page: false,
  },
  {
    name: "grams and percent mixed",
    content: logWith(...soundRows.with(1, "No. 50: 25 %")),
    code: 1,
    says: /bad\.yaml:15:19: error: .*No\. 50/,
    page: true,
  },
  {
    name: "unknown label",
    content: logWith(...soundRows.with(1, "Nr. fifty: 12.60")),
    code: 1,
    says: /bad\.yaml:15:11: error: .*fifty/,
    page: true,
  },
  {
    name: "pan of zero",
    content: logWith(...soundRows.with(5, "pan: 0")),
    code: 0,
    says: /bad\.yaml:19:16: warning: .*zero/,
    page: true,
  },
  {
    name: "all sand on one sieve",
    content: logWith("No. 40: 0", "No. 50: 50.0", "No. 70: 0", "pan: 0"),
    code: 0,
    says: /bad\.yaml:15:19: warning: .*No\. 50/,
    page: true,
  },
  {
    name: "one sieve only",
    content: logWith("No. 50: 49.0", "pan: 1.0"),
    code: 1,
    says: /bad\.yaml:13:9: error: Only one sieve/,
    page: true,
  },
  {
    name: "wrong order",
    content: logWith(soundRows[2]!, soundRows[0]!, soundRows[1]!, ...soundRows.slice(3)),
    code: 0,
    says: /bad\.yaml:15:11: warning: .*No\. 40.*No\. 70/,
    page: true,
  },
  {
    name: "sum above the start mass, two digits swapped",
    content: logWith(...soundRows.with(1, "No. 50: 21.60")),
    code: 1,
    // 49.95 − 12.60 + 21.60 = 58.95 g
    says: /bad\.yaml:15:19: error: .*58\.95 g.*12\.60/,
    page: true,
  },
  {
    name: "aliases of aliases",
    content: levels.join("\n"),
    code: 1,
    says: /bad\.yaml:5:\d+: error: .*\*/,
    page: true,
  },
];

test.each(cases)("$name", async ({ content, code, says, page }) => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "bad.yaml"), content);
  const checked = await mullbook(["check", "bad.yaml"], { cwd });
  expect(checked.code).toBe(code);
  expect(checked.out).toMatch(says);
  expect(checked.seconds).toBeLessThan(5);

  // As JSON: drawing is no part of the answer.
  const written = await mullbook(["write", "grain-fineness", "bad.yaml", "--as", "json"], { cwd });
  expect(written.code).toBe(code);
  expect(existsSync(join(cwd, "bad-grain-fineness.json"))).toBe(page);
  expect(written.out).toBe(page ? "bad-grain-fineness.json\n" : "");
  if (!page) expect(written.err).toContain("No page is written");
});

test("50 MB are refused by their size, as log and as CSV file", async () => {
  const cwd = temporaryFolder();
  const big = join(cwd, "big.yaml");
  writeFileSync(big, "");
  truncateSync(big, 50_000_000);
  expect(statSync(big).size).toBe(50_000_000);
  const checked = await mullbook(["check", "big.yaml"], { cwd });
  expect(checked.code).toBe(1);
  expect(checked.out).toMatch(/^big\.yaml: error: The file holds 50 MB.* up to 5 MB/);
  expect(checked.seconds).toBeLessThan(2);

  writeFileSync(join(cwd, "rows.csv"), "");
  truncateSync(join(cwd, "rows.csv"), 50_000_000);
  writeFileSync(
    join(cwd, "log.yaml"),
    "format: 1\nsands:\n  Dune sand:\n    state: new\n    sievings file: rows.csv\n",
  );
  const named = await mullbook(["check", "log.yaml"], { cwd });
  expect(named.code).toBe(1);
  expect(named.out).toMatch(/^rows\.csv: error: The file holds 50 MB/m);
  // It is there, so nobody is told to put it there.
  expect(named.out).not.toContain("There is no file");
});
