import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { castingChart } from "../../lib/chart/casting-chart.ts";
import { type Block, readLog, writeMarkdown } from "../../lib/index.ts";
import { Misuse } from "../../lib/issue.ts";
import notebook from "../../notebooks/castings.ts";
import { promisesIn } from "../forbidden-words.ts";

const demo = readFileSync(join(import.meta.dirname, "../../data-demo/castings/nine-pours.yaml"), "utf8");
const made = new Map<string, ReturnType<typeof notebook.run>>();
function pageOf(text: string) {
  const page = made.get(text) ?? notebook.run(readLog(text, { name: "log.yaml" }).value!);
  made.set(text, page);
  return page;
}
const blocks = (text: string): Block[] => pageOf(text).sections.flatMap((section) => section.blocks);
const tables = (text: string) => blocks(text).flatMap((block) => (block.kind === "table" ? [block] : []));
const charts = (text: string) =>
  blocks(text).flatMap((block) => (block.kind === "chart" ? [block.chart] : []));

test("logs that say little give a page that says what to write, with its cautions first", () => {
  const bare = "format: 1\nmetal: aluminium\nbond: bentonite\n";
  const pour = "  - { date: 2026-05-02, pour: { metal: 2 kg } }\n";
  for (const text of [
    `${bare}events:\n${pour}`,
    `${bare}castings:\n  - { date: 2026-05-02, name: a, faults: none }\n`,
    `${bare}castings:\n  - { date: 2026-05-02, name: a, faults: swells }\n`,
    `${bare}castings:\n  - { date: 2026-05-02, name: a }\n`,
    `${bare}events:\n${pour}questions:\n  - { fault: swells, against: section }\n`,
    `format: 1\ncastings:\n  - { date: 2026-05-02, name: a, faults: [ swells, drops ] }\nquestions:\n  - { fault: drops, against: live clay, limit: 7 % }\n`,
  ]) {
    const page = pageOf(text);
    expect(page.sections[0]!.role).toBe("cautions");
    expect(page.sections[0]!.blocks.length).toBe(4);
    expect(page.answer.length).toBeGreaterThan(0);
    expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|null,null/);
  }
  expect(pageOf(`${bare}events:\n${pour}`).answer[0]).toContain("no castings yet");
});

test("without a question nothing is put to a test: no p stands on the page", () => {
  const unasked = demo.slice(0, demo.indexOf("questions:"));
  const text = JSON.stringify(pageOf(unasked));
  expect(text).toContain("casting/no-questions");
  expect(text).not.toContain("p = ");
  expect(charts(unasked)).toEqual([]);
});

test("every fault has a row for each cause, and those that no home test tells say so", () => {
  const causes = tables(demo).find(({ name }) => name === "casting-sand-causes")!;
  const row = (says: string) => causes.rows.find(([first]) => first === says)!;
  expect(row("Pinholes: moisture high").slice(1)).toEqual([
    "1 of 1",
    "0 of 7 (5 not sure)",
    "3.5 to 4.5 % (read)",
    "read",
  ]);
  expect(row("Swells: rammed too softly").slice(1, 4)).toEqual(["", "", "no home test"]);
  // Where they come from stands once, below.
  expect(JSON.stringify(pageOf(demo)).match(/kinds of bentonite; names no metal \(read\)"/g)?.length).toBe(1);
  expect(JSON.stringify(pageOf(demo))).toContain(
    "Gas holes, permeability low; rough skin, permeability high;",
  );
  // On a sand for brass the link that was read for aluminium is passed over.
  const brass = tables(demo.replace("metal: aluminium", "metal: brass")).find(
    ({ name }) => name === "casting-sand-causes",
  )!;
  expect(brass.rows.some(([first]) => first === "Pinholes: moisture high")).toBe(false);
});

test("an older test stands in the table, says how old it is and what was done since", () => {
  const pours = tables(demo).find(({ name }) => name === "pours-and-sand")!;
  const last = pours.rows.at(-1)!;
  expect(last[0]).toBe("2026-05-16");
  expect(last.at(-1)).toContain(
    "not counted: moisture, compactability, green compression and permeability 7 days before, water on 2026-05-10 since",
  );
});

test("in US units the page prints psi and °F, files keep metric, and p stays as it is", () => {
  const us = demo
    .replace("invented: yes", "invented: yes\nunits: US")
    .replace(
      "  - { fault: rough skin, against: permeability }",
      "  - { fault: rough skin, against: green compression }\n  - { fault: gas holes, against: pouring temperature, limit: 735 °C }",
    );
  const metric = us.replace("units: US", "units: metric");
  const pours = tables(us).find(({ name }) => name === "pours-and-sand")!;
  const at = pours.columns.findIndex(({ head }) => head === "Poured at");
  expect(pours.columns[at]).toMatchObject({ unit: "°F", dataUnit: "°C" });
  expect(pours.rows[0]![at]).toMatchObject({ text: "1319 ± 17", number: 715 });
  expect(pageOf(us).figures).toEqual(pageOf(metric).figures);
  const chart = charts(us).find(({ name }) => name.includes("pouring"))!;
  expect(chart.caption).toContain("1355");
  expect(chart.data!.columns.at(-1)!.unit).toBe("°C");
  const asked = tables(us)
    .find(({ name }) => name === "casting-questions")!
    .rows.map(([, against]) => against);
  expect(asked).toContain("pouring temperature, limit 1355 °F");
});

test("a log's own words are data: marks in them reach no page as marks, and nothing is promised", async () => {
  const hostile = demo
    .replace("name: pulley", 'name: "<b>p</b> | *x* [a](b)"')
    .replace('"holes under the cope, as big as lentils"', '"<script>x</script>"');
  const { markdown } = await writeMarkdown(pageOf(hostile));
  expect(markdown).not.toContain("<script>");
  expect(markdown).not.toContain("<b>p");
  expect(promisesIn((await writeMarkdown(pageOf(demo))).markdown)).toEqual([]);
});

test("a chart packs bars that would touch into lanes, at every width, and says what it draws", () => {
  const chart = castingChart({
    name: "gas-holes-moisture",
    fault: "gas holes",
    against: "moisture",
    unit: "% of damp mass",
    withIt: [
      { label: "a", value: 4.4, low: 4.2, high: 4.6 },
      { label: "b", value: 4.4, low: 4.2, high: 4.6 },
    ],
    without: [
      { label: "c", value: 3, low: 2.9, high: 3.1 },
      { label: "d", value: 4 },
      { label: "e", value: Number.NaN },
    ],
    limit: 3.7,
  });
  for (const width of [240, 340, 720]) {
    const { layer } = chart.spec(width) as {
      layer: { name: string; data: { values: { px: number; py: number }[] } }[];
    };
    const points = (name: string) => layer.find((one) => one.name === name)!.data.values;
    expect(new Set(points("points-1").map(({ py }) => py)).size).toBe(2);
    expect(new Set(points("points-2").map(({ py }) => py)).size).toBe(1);
    expect(points("points-2").length).toBe(2);
    for (const { px } of [...points("points-1"), ...points("points-2")]) {
      expect(px).toBeGreaterThan(0);
      expect(px).toBeLessThan(width - 28);
    }
  }
  expect(chart.alt).toContain("With gas holes: 4.4, 4.4.");
  expect(chart.table.rows.map(([pour, found]) => [pour, found])).toEqual([
    ["a", "found"],
    ["b", "found"],
    ["c", "not found"],
    ["d", "not found"],
    ["e", "not found"],
  ]);
  const wrong = {
    name: "x",
    fault: "f",
    against: "a",
    unit: "",
    withIt: [{ label: "a", value: 1, low: 2, high: 1 }],
    without: [],
  };
  expect(() => castingChart(wrong)).toThrow(Misuse);
  expect(() => castingChart({ ...wrong, withIt: [] }).spec(340)).not.toThrow();
});
