// The notebook on logs that go wrong; its demo pages are held by demo-pages.test.ts.

import { expect, test } from "vitest";
import { type Finding, type Page, readLog, writeMarkdown } from "../../lib/index.ts";
import notebook from "../../notebooks/grain-fineness.ts";

function run(text: string, name = "log.yaml"): Page {
  const { value } = readLog(text, { name });
  return notebook.run(value!);
}

const findings = (page: Page): Finding[] =>
  page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "finding" ? [block.finding] : [])),
  );
const codes = (page: Page): string[] => findings(page).map(({ code }) => code);
const keyFigures = (page: Page) =>
  page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "figures" ? block.figures : [])),
  );

/** A log of one sand on one stack. */
function log(sand: string, retained: string, more = ""): string {
  return `format: 1
metal: aluminium
bond: bentonite
scales: { pocket scale: { reads to: 0.01 g } }
sieve sets: { own: { frame: 200 mm } }
sands:
  ${sand}:
    ${more}
    sievings:
      - { date: 2026-03-02, portion: A, scale: pocket scale, sieve set: own, washed: no, start: 50 g, retained: { ${retained} } }
`;
}
const usual =
  "No. 40: 0.2, No. 50: 0.7, No. 70: 16.5, No. 100: 25.1, No. 140: 5.8, No. 200: 0.9, No. 270: 0.3, pan: 0.5";

test("the caution about dust stands before the figures, in every format", async () => {
  const { markdown } = await writeMarkdown(run(log("Sand", usual, "state: new")));
  expect(markdown.indexOf("Silica dust")).toBeGreaterThan(0);
  expect(markdown.indexOf("Silica dust")).toBeLessThan(markdown.indexOf("How fine, and how spread"));
});

test("used sand sieved with its clay: an error-level finding, a weak figure, nothing in bold", async () => {
  const page = run(log("Heap sand", usual, "state: used"));
  expect(findings(page)[0]).toMatchObject({ code: "grain/unwashed", tone: "error" });
  expect(keyFigures(page)[0]!.weak).toBe(true);
  expect(codes(page)).not.toContain("grain/inside-band");
  const { markdown } = await writeMarkdown(page);
  expect(markdown.split("## ")[0]).not.toContain("**Heap sand");
});

test("natural sand holds its clay: unwashed, it has no number either", () => {
  const page = run(log("Pit sand", usual, "state: new").replace("bond: bentonite", "bond: natural"));
  expect(findings(page)[0]).toMatchObject({ code: "grain/unwashed", tone: "error" });
  expect(keyFigures(page)[0]!.weak).toBe(true);
});

test("washed used sand has its figure", () => {
  const page = run(log("Heap sand", usual, "state: used").replace("washed: no", "washed: yes"));
  expect(keyFigures(page)[0]!.weak).toBe(false);
});

test("all sand on one sieve: what is possible, and no figure", () => {
  const page = run(log("Sand", "No. 40: 0, No. 100: 50, No. 200: 0, pan: 0", "state: new"));
  expect(codes(page)).toContain("grain/cannot-estimate");
  expect(keyFigures(page)[0]!.weak).toBe(true);
});

test("which weighing carries the doubt is said in words", () => {
  const page = run(log("Sand", usual, "state: new"));
  const carrier = findings(page).find(({ code }) => code === "grain/doubt-carrier");
  expect(carrier?.text).toMatch(
    /^\d+ % of the doubt about Sand comes from (the opening|the weighing) of No\. \d+\.$/,
  );
});

test("a kitchen scale on a small portion: its weighings carry the doubt, and the remedy says so", () => {
  const text = log(
    "Sand",
    "No. 40: 0, No. 50: 1, No. 70: 2, No. 100: 2, No. 140: 1, No. 200: 0, No. 270: 0, pan: 0",
    "state: new",
  )
    .replace("reads to: 0.01 g", "reads to: 1 g")
    .replace("start: 50 g", "start: 6 g");
  const carrier = findings(run(text)).find(({ code }) => code === "grain/doubt-carrier");
  expect(carrier?.text).toContain("the weighing of");
  expect(carrier?.because[0]).toContain("finer step");
});

test("bands follow metal and bond: natural and bentonite never stand side by side", () => {
  const sources = (page: Page): string => page.sources.join(" ");
  const bentonite = run(log("Sand", usual, "state: new"));
  const natural = run(
    log("Sand", usual, "state: new")
      .replace("bond: bentonite", "bond: natural")
      .replace("washed: no", "washed: yes"),
  );
  expect(sources(bentonite)).not.toContain("Maiduguri");
  expect(sources(natural)).toContain("Maiduguri");
  expect(sources(natural)).not.toContain("washed silica and bentonite");
});

test("no bond in the log: no bands, and nothing is assumed", () => {
  const page = run(log("Sand", usual, "state: new").replace("bond: bentonite\n", ""));
  expect(codes(page).some((code) => code.endsWith("-band"))).toBe(false);
});

test("a fault in one sand leaves the other worked out, and the page says so", () => {
  const two = `${log("Good", usual, "state: new")}  Bad:
    state: new
    sievings:
      - { date: 2026-03-03, portion: A, start: 50 g, retained: { No. 40: 0.2, No. 50: 0,7, pan: 49 } }
`;
  const { value, issues } = readLog(two, { name: "log.yaml" });
  expect(issues.some(({ severity, about }) => severity === "error" && about === "Bad")).toBe(true);
  const page = notebook.run(value!);
  expect(keyFigures(page).map(({ label }) => label)).toEqual(["Good, grain fineness number"]);
});

test("an empty set of sands still gives a page", async () => {
  const { value } = readLog("format: 1\nsands: {}\n", { name: "log.yaml" });
  const page = notebook.run(value!);
  expect((await writeMarkdown(page)).markdown).toContain("No sieving");
});
