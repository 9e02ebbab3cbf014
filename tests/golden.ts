// Golden files: what a page said when it was last looked at.

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect } from "vitest";

/** Compares with tests/golden/<name>; with GOLDEN=write the file is written anew, to be read before it is committed. */
export function expectGolden(name: string, text: string): void {
  const path = join(import.meta.dirname, "golden", name);
  if (process.env.GOLDEN === "write") {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  expect(
    existsSync(path),
    `${name} is not there: run GOLDEN=write npx vitest run --config tests/vitest.config.ts`,
  ).toBe(true);
  expect(text).toBe(readFileSync(path, "utf8"));
}
