// The list of published figures: long enough, from many sources, each with its tag and a test that is there.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const HEAD = "| what | source | their figure | ours | tag | test |";

/** Rows of the tables of published figures; what was simulated here stands in a table of its own. */
const rows = readFileSync(join(import.meta.dirname, "README.md"), "utf8")
  .split(/\n\s*\n/)
  .map((block) => block.trim())
  .filter((block) => block.startsWith(HEAD))
  .flatMap((block) => block.split("\n").slice(2))
  .map((line) =>
    line
      .slice(1, -1)
      .split(/(?<!\\)\|/)
      .map((cell) => cell.trim()),
  );

/** "same" and the like name the source of the row above; what follows a semicolon is one more. */
const sources = new Set(
  rows.flatMap(([, source = ""]) =>
    source
      .split(/; /)
      .map((one) => one.toLowerCase().replace(/[*]/g, "").split(/[,(]/)[0]!.trim())
      .filter((one) => !/^(the )?same\b/.test(one)),
  ),
);

test("80 figures or more from 30 sources or more", () => {
  expect(rows.length).toBeGreaterThanOrEqual(80);
  expect(sources.size).toBeGreaterThanOrEqual(30);
});

test("each row says where it is from, both figures, how it was come by, and which test holds it", () => {
  for (const row of rows) {
    const [what, source, theirs, ours, tag, where] = row;
    expect(row, what).toHaveLength(6);
    for (const cell of [what, source, theirs, ours]) expect(cell, what).not.toBe("");
    expect(tag, what).toMatch(
      /read|from memory|by hand|misprint|common practice|derived|apart|computed there/,
    );
    const files = where!.split(/, | and /).map((name) => name.replace(/`/g, ""));
    for (const name of files) {
      const path = name.includes("/") ? join("..", name) : name;
      const file = join(import.meta.dirname, path.endsWith("/") ? path : `${path}.test.ts`);
      expect(existsSync(file), `${what}: ${name}`).toBe(true);
    }
  }
});
