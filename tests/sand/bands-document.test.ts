// The docs table of bands and curves says what the library holds. GOLDEN=write writes it anew.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { everyBand } from "../../lib/sand/all-bands.ts";
import { bandsDocument } from "../reference/bands-document.ts";

const path = join(import.meta.dirname, "..", "reference", "bands.md");

test("bands.md is what the lists give", () => {
  const text = bandsDocument();
  if (process.env.GOLDEN === "write") writeFileSync(path, text);
  expect(text).toBe(readFileSync(path, "utf8"));
});

test("every band has a row with source and tag", () => {
  const rows = bandsDocument()
    .split("\n")
    .filter((line) => line.startsWith("|"));
  for (const { low, high, source, tag } of everyBand())
    expect(
      rows.some(
        (row) => row.includes(` ${low} to ${high} `) && row.includes(source) && row.includes(` ${tag} `),
      ),
    ).toBe(true);
});
