// mullbook check tells the faults of sheets with their places, those within a formula and in a CSV file too.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { check } from "../../lib/disk/check.ts";
import type { Console } from "../../lib/disk/console.ts";

async function checked(log: string, csv: string) {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-"));
  try {
    writeFileSync(join(folder, "yard.yaml"), log);
    writeFileSync(join(folder, "oven.csv"), csv);
    const lines: string[] = [];
    const console = { result: (line: string) => void lines.push(line) } as unknown as Console;
    const code = await check(join(folder, "yard.yaml"), console);
    return { code, lines: lines.map((line) => line.replaceAll(`${folder}/`, "")) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const log = (formula: string) => `format: 1
metal: aluminium
bond: bentonite
sheets:
  oven:
    columns: { bag: text, wet: g, height: mm, out: { formula: ${formula} } }
    rows: oven.csv
`;

test("a fault in a formula and one in a CSV cell: places, remedies, exit code 1", async () => {
  const { code, lines } = await checked(log("2 + (wet - height)"), "bag,wet (g),height\nA,12.4 kPa,50\n");
  expect(code).toBe(1);
  expect(lines.join("\n")).toContain(
    'yard.yaml:6:68: error: In "wet - height": g and mm cannot be subtracted.',
  );
  expect(lines.join("\n")).toContain("oven.csv:2:3: error:");
});

test("a sound sheet: nothing wrong, and it is counted", async () => {
  const { code, lines } = await checked(log("wet * 2"), "bag,wet (g),height\nA,12.4,50\n");
  expect(lines).toEqual([
    expect.stringMatching(/^yard\.yaml: nothing wrong; 1 sheet; fingerprint [\da-f]{8}\.$/),
  ]);
  expect(code).toBe(0);
});
