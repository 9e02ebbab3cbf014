// Every notebook on every log of its demo folder: reads clean, says it is invented, and is the page last looked at.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filesNamedIn, type Notebook, readLog, writeMarkdown } from "../../lib/index.ts";
import { promisesIn } from "../forbidden-words.ts";
import { expectGolden } from "../golden.ts";

const root = join(import.meta.dirname, "../..");
const names = readdirSync(join(root, "notebooks")).map((file) => file.replace(".ts", ""));
const demos = names.flatMap((name) =>
  readdirSync(join(root, "data-demo", name))
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => [name, file] as const),
);

/** The log with the CSV files that it names. */
function readDemo(name: string, file: string) {
  const text = readFileSync(join(root, "data-demo", name, file), "utf8");
  const beside = filesNamedIn(text).map((one) => [
    one,
    readFileSync(join(root, "data-demo", name, one), "utf8"),
  ]);
  return readLog(text, { name: file, files: Object.fromEntries(beside) });
}

async function notebookOf(name: string): Promise<Notebook> {
  return ((await import(`../../notebooks/${name}.ts`)) as { default: Notebook }).default;
}

test("every notebook has a demo, and a question for the list", async () => {
  for (const name of names) {
    expect(
      demos.some(([one]) => one === name),
      name,
    ).toBe(true);
    expect((await notebookOf(name)).question, name).toMatch(/\?$/);
    expect((await notebookOf(name)).name).toBe(name);
  }
});

test.each(demos)("%s, %s", async (name, file) => {
  const { value, issues } = readDemo(name, file);
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  const before = JSON.stringify(value);
  const page = (await notebookOf(name)).run(value!);
  expect(JSON.stringify(value)).toBe(before);
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("invented");
  expect(promisesIn(markdown)).toEqual([]);
  expectGolden(`${name}/${file.replace(".yaml", ".md")}`, markdown);
});

test.each(demos)("%s, %s: a caution stands before the first figure of the results", async (name, file) => {
  const { value } = readDemo(name, file);
  const { sections } = (await notebookOf(name)).run(value!);
  const [cautions] = sections.filter(({ role }) => role === "cautions");
  expect(cautions!.blocks.length).toBeGreaterThan(0);
  expect(sections.indexOf(cautions!)).toBe(0);
});
