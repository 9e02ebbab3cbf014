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

/** As many sands as are given, each sieved once on one stack. */
function sands(names: readonly string[], retained: (place: number) => string, head = ""): string {
  return `format: 1
metal: aluminium
bond: bentonite
${head}scales: { pocket scale: { reads to: 0.01 g, within: 0.02 g } }
sieve sets: { own: { frame: 200 mm } }
sands:
${names
  .map(
    (name, place) => `  ${name}:
    state: new
    sievings: { date: 2026-03-02, scale: pocket scale, sieve set: own, washed: yes, start: 50 g, retained: { ${retained(place)} } }`,
  )
  .join("\n")}
`;
}
/** The further, the finer. */
const shifted = (place: number): string =>
  `No. 40: 0.2, No. 50: ${8 - place}, No. 70: 16.5, No. 100: 17.1, No. 140: ${5.8 + place}, No. 200: 1.6, No. 270: 0.3, pan: 0.5`;
const texts = (page: Page): string[] => findings(page).map(({ text }) => text);
const steps = (page: Page): string =>
  JSON.stringify(page.sections.find(({ role }) => role === "next")!.blocks);

test("what holds for two sands alike is said once, with both figures", () => {
  const page = run(sands(["Alder", "Birch"], shifted));
  const once = (code: string) => expect(codes(page).filter((one) => one === code)).toHaveLength(1);
  for (const code of ["grain/unrepeated", "grain/inside-band", "grain/doubt-carrier", "grain/screens"])
    once(code);
  expect(texts(page)).toContainEqual(expect.stringMatching(/^Alder and Birch were sieved once each: /));
  expect(texts(page)).toContainEqual(
    expect.stringMatching(
      /^[\d.]+ ± at least [\d.]+ \(Alder\) and [\d.]+ ± at least [\d.]+ \(Birch\) lie inside/,
    ),
  );
  expect(findings(page)[0]!.because.at(-1)).toMatch(/\d % of Alder passes it, \d+ % of Birch\.$/);
  // Fresh grabs are second portions as well: one step, not two.
  expect(steps(page)).toContain("two fresh grabs from each bag");
  expect(steps(page)).not.toContain("a second portion");
});

test("many sands: the first lines tell the coarsest and the finest, the table each and its step to the next", () => {
  const names = ["Alder", "Birch", "Cedar", "Dogwood", "Elm", "Fir"];
  const page = run(sands(names, (place) => shifted(5 - Math.max(1, place))));
  expect(JSON.stringify(page.answer)).toMatch(
    /from Fir, the coarsest of 6 sands, to (Alder|Birch), the finest/,
  );
  const table = page.sections
    .flatMap(({ blocks }) => blocks)
    .find((block) => block.kind === "table" && block.name === "fineness");
  if (table?.kind !== "table") throw new Error("no table");
  expect(table.rows.map(([name]) => name)).toEqual(["Fir", "Elm", "Dogwood", "Cedar", "Alder", "Birch"]);
  const numbers = table.rows.map(([, cell]) => (cell as { number: number }).number);
  const differences = table.rows.map(([, , cell]) =>
    cell === "" ? undefined : (cell as { number: number }).number,
  );
  // The number is linear in the shares: each step moves 1 g of 50 from No. 50 (40) to No. 140 (100).
  expect(differences[0]).toBeUndefined();
  for (const k of [1, 2, 3, 4]) {
    expect(differences[k]).toBeCloseTo(60 / 50, 6);
    expect(differences[k]).toBeCloseTo(numbers[k]! - numbers[k - 1]!, 6);
  }
  // What one stack's openings bring cancels in a difference.
  const halves = (text: string): number => Number(/± (?:at least )?([\d.]+)/.exec(text)![1]);
  const [, number, difference] = table.rows[2]! as readonly { readonly text: string }[];
  expect(halves(difference!.text)).toBeLessThan(halves(number!.text) / 2);
  expect(texts(page)[0]).toBe(
    "1 of 5 neighbours in the table cannot be told apart by their fineness: Alder and Birch.",
  );
  // Four by four, so that nobody is left to a table.
  const charts = page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((b) => (b.kind === "chart" ? [b.chart] : [])),
  );
  expect(charts.map(({ name }) => name)).toEqual([
    "fineness-strip",
    ...["grain-curve-1", "retained-1", "grain-curve-2", "retained-2"],
  ]);
  for (const name of names) expect(charts.slice(1).some(({ alt }) => alt.includes(name))).toBe(true);
});

test("a sand that is not said to be new is not called used, and the page says which line gives it its number", async () => {
  const page = run(log("Pit sand", usual, "note: bought in spring").replace(" washed: no,", ""));
  expect(texts(page)[0]).toMatch(/the log says neither that the sand is new nor that it was washed\.$/);
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain(
    "- If Pit sand is as you bought it, write `state: new` under its name in the log.",
  );
  expect(JSON.stringify(page.answer)).not.toContain("clay on");
  const used = run(log("Pit sand", usual, "state: used"));
  expect(texts(used)[0]).toMatch(/this is used sand, and it was not washed out\.$/);
  expect(steps(used)).not.toContain("state: new");
});

test("weighings that carry two fifths of the doubt together ask for a finer scale, none of them alone", () => {
  const coarse = sands(["Alder"], () => "No. 20: 1, No. 40: 12, No. 60: 38, No. 100: 36, No. 200: 12, pan: 1")
    .replace("reads to: 0.01 g, within: 0.02 g", "reads to: 1 g, within: 0.1 g")
    .replace("start: 50 g", "start: 100 g");
  expect(steps(run(coarse))).toMatch(
    /the weighings carry \d\d % of the doubt about Alder, the weighing of the pan most/,
  );
});

test("a ± below a half of a number asks for no further sieve", () => {
  const gravel = "No. 6: 61.2, No. 12: 88, No. 20: 40.1, No. 40: 8, No. 100: 1.5, pan: 0.9";
  const page = run(sands(["Grit"], () => gravel).replace("start: 50 g", "start: 200 g"));
  expect(codes(page)).not.toContain("grain/sieve-would-narrow");
  expect(steps(page)).not.toContain("buy");
});

test("masses that were typed in ounces are printed in ounces, files keep grams", async () => {
  const us = sands(
    ["Creek sand"],
    () =>
      "No. 20: 0.05 oz, No. 40: 0.48 oz, No. 60: 1.50 oz, No. 100: 1.44 oz, No. 200: 0.46 oz, pan: 0.04 oz",
  ).replace("start: 50 g", "start: 4.00 oz");
  const page = run(
    us.replace("frame: 200 mm", "frame: 8 in").replace("reads to: 0.01 g", "reads to: 0.01 oz"),
  );
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("own, 8 in wide");
  expect(markdown).toContain("reads to 0.01 oz");
  expect(markdown).toContain("Start (oz)");
  const sievings = page.sections
    .flatMap(({ blocks }) => blocks)
    .find((block) => block.kind === "table" && block.name === "sievings");
  if (sievings?.kind !== "table") throw new Error("no table");
  // NIST SP 811: 1 oz = 28.349 523 125 g.
  expect(sievings.rows[0]![5]).toMatchObject({ text: "4.000", number: 4 * 28.349523125 });
  expect(sievings.columns[5]).toMatchObject({ unit: "oz", dataUnit: "g" });
});

test("what carries the doubt is called as the founder calls the sieve, and a step names its sand", () => {
  const metric = sands(
    ["Alder"],
    () => "0.5 mm: 1.5, 0.355 mm: 7.2, 0.25 mm: 16.3, 0.18 mm: 14.6, 0.125 mm: 7.4, 0.09 mm: 2.1, pan: 0.7",
  );
  const carrier = findings(run(metric)).find(({ code }) => code === "grain/doubt-carrier")!;
  expect(carrier.text).toMatch(/comes from the opening of the 0\.\d+ mm sieve\.$/);
  const top = run(
    sands(["Alder", "Birch"], (k) => (k === 0 ? "No. 100: 41, No. 200: 7, pan: 2" : shifted(0))),
  );
  expect(steps(top)).toMatch(/Alder: 82 % stayed on the top sieve: a coarser one is needed/);
  const [figure] = keyFigures(top);
  // The figure is what is possible itself: its line does not say it again.
  expect(figure!.under).toMatch(/^With openings at their names and nothing else assumed\. /);
});

test("three sands of which two differ from the first are compared in one sentence", () => {
  const page = run(sands(["Alder", "Birch", "Cedar"], (place) => shifted(2 * place)));
  const told = findings(page).filter(({ code }) => code === "compare/apart-but-unrepeated");
  expect(told).toHaveLength(1);
  expect(told[0]!.text).toMatch(
    /^2\.\d* ± at least [\d.]+ \(Birch finer than Alder\) and 4\.\d* ± at least [\d.]+ \(Cedar finer than Alder\): the sieving/,
  );
  expect(told[0]!.because.filter((line) => line.includes("furthest apart"))).toHaveLength(2);
  expect(JSON.stringify(page.answer).match(/the sieving does not explain it/g)).toHaveLength(1);
});
