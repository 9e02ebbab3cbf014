// The README's script prints what the README says, and its log gives a page.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { grainFineness, logSheets, readLog } from "../lib/index.ts";
import notebook from "../notebooks/grain-fineness.ts";
import recipe from "../notebooks/recipe.ts";

const root = join(import.meta.dirname, "..");
const readme = readFileSync(join(root, "README.md"), "utf8");
const block = (language: string, which = 0): string => {
  const found = [...readme.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, "g"))][which];
  expect(found, `a block of ${language}`).toBeDefined();
  return found![1]!;
};

test("the ten lines print what stands below them", () => {
  const folder = mkdtempSync(join(tmpdir(), "mullbook-readme-"));
  try {
    const door = pathToFileURL(join(root, "lib/index.ts")).href;
    const file = join(folder, "readme.mts");
    writeFileSync(file, block("ts").replace('"mullbook"', JSON.stringify(door)));
    const printed = execFileSync(process.execPath, [join(root, "node_modules/tsx/dist/cli.mjs"), file], {
      encoding: "utf8",
    });
    expect(printed).toBe(block("text"));
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);

test("the log reads without a complaint but for what it leaves out, and gives a figure", () => {
  const { value, issues } = readLog(block("yaml"), { name: "README.md" });
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  const page = notebook.run(value!);
  const { gfn } = grainFineness({
    retained: { "No. 20": 0.1, "No. 40": 9.5, "No. 60": 42.9, "No. 100": 37.3, "No. 200": 9.8, pan: 0.2 },
  });
  expect(JSON.stringify(page.answer)).toContain(gfn!.toFixed(1));
});

test("the batches read too", () => {
  const { value, issues } = readLog(
    `format: 1\nscales: { kitchen scale: { reads to: 0.1 g } }\n${block("yaml", 1)}`,
    {
      name: "README.md",
    },
  );
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  expect(value?.batches[0]?.readings.length).toBe(4);
});

test("the heap's lines read, and give a recipe and a heap", () => {
  const text = `format: 1\nmetal: aluminium\nbond: bentonite\n${block("yaml", 2)}`;
  const { value, issues } = readLog(text, { name: "README.md" });
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  // By hand: 0.7 kg of water and the bag's 0.135 in 27.2 kg.
  expect(value?.recipe?.moisturePercent?.value).toBeCloseTo(83.5 / 27.2, 10);
  expect(value?.events.map(({ kind }) => kind)).toEqual(["pour", "rebond"]);
  expect(JSON.stringify(recipe.run(value!).answer)).toContain("25 kg of sand");
});

test("the sheet is worked out", () => {
  const text = `format: 1\nscales: { kitchen scale: { reads to: 0.1 g } }\n${block("yaml", 3)}`;
  const { value, issues } = readLog(text, { name: "README.md" });
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  const [made] = logSheets(value!);
  expect(made!.issues).toEqual([]);
  // By hand: (100 · 13.9/152.4 + 100 · 17.8/148.0)/2.
  const { cell } = made!.foot[0]!;
  expect(cell.kind === "figure" && cell.value).toBeCloseTo((13.9 / 1.524 + 17.8 / 1.48) / 2, 10);
});

test("the README opens with the job, then two commands", () => {
  const [, job, commands] = readme.match(/^# Mullbook\n\n([^\n]+)\n\n[^\n]+\n\n((?: {4}[^\n]+\n)+)/)!;
  expect(job!.length).toBeGreaterThan(200);
  expect(commands!.trim().split("\n").length).toBe(2);
});
