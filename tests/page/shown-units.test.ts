// The same readings typed in metric and in US units: one physical result, and each page in its own units.

import { expect, test } from "vitest";
import { readLog } from "../../lib/log/read-log.ts";
import { writeCsv } from "../../lib/page/csv.ts";
import { writeJson } from "../../lib/page/json.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import { inShownUnit, shownUnits } from "../../lib/page/shown-units.ts";
import { trialCharts } from "../../lib/page/trial-charts.ts";
import { trialReport } from "../../lib/trial/trial-report.ts";
import clayTrial from "../../notebooks/clay-trial.ts";
import homeRigs from "../../notebooks/home-rigs.ts";

// NIST SP 811 (2008), appendix B: 1 lb = 0.453 592 37 kg, 1 in = 25.4 mm, 1 oz = 28.349 523 125 g (all exact),
// 1 psi = 6.894 757 kPa, 1 lb/ft³ = 16.018 46 kg/m³, 1 US fl oz = 29.573 53 ml.
test("the factors are those of NIST SP 811", () => {
  const one = (unit: string, factor: number, us: string) => {
    const shown = inShownUnit(factor, unit, "US");
    expect(shown.unit).toBe(us);
    expect(shown.value).toBeCloseTo(1, 6);
  };
  one("kg", 0.45359237, "lb");
  one("mm", 25.4, "in");
  one("g", 28.349523125, "oz");
  one("kPa", 6.894757, "psi");
  one("g/cm³", 0.01601846, "lb/ft³");
  one("ml", 29.57353, "US fl oz");
  expect(inShownUnit(1538, "°C", "US")).toEqual({ value: 2800.4, unit: "°F" });
  expect(inShownUnit(45, "% of height", "US")).toEqual({ value: 45, unit: "% of height" });
});

type Write = (value: number, unit: string) => string;
const metricText: Write = (value, unit) => `${value} ${unit}`;
const usText: Write = (value, unit) => {
  const shown = inShownUnit(value, unit, "US");
  return `${Number(shown.value.toPrecision(13))} ${shown.unit}`;
};

/** Invented. */
const log = (write: Write, head = ""): string => `format: 1
invented: yes
metal: aluminium
bond: bentonite
${head}scales: { pan scale: { reads to: 0.1 g, within: 0.2 g } }
rigs: { tube: { bore: ${write(50, "mm")}, tube: ${write(120, "mm")} } }
aims: { green compression: ${write(60, "kPa").replace(/ .*/, "")} to ${write(90, "kPa")} }
batches:
${[
  [0.3, 61, 70, 1.55],
  [0.36, 68, 66, 1.53],
  [0.42, 77, 63, 1.52],
]
  .map(
    ([clay, kPa, rammed, density], k) => `  Batch ${k + 1}:
    made of: { sand: ${write(5, "kg")}, bentonite: ${write(clay!, "kg")}, water: ${write(0.16, "kg")} }
    moisture: { damp: ${write(150, "g")}, dry: ${write(145 - k / 10, "g")}, method: oven, scale: pan scale }
    compactability: { filled: ${write(120, "mm")}, rammed: ${write(rammed!, "mm")}, rig: tube }
    green compression: [ ${write(kPa!, "kPa")}, ${write(kPa! + 2, "kPa")} ]
    splitting: { load: ${write(6, "kg")}, height: ${write(50, "mm")}, rig: tube }
    density: ${write(density!, "g/cm³")}`,
  )
  .join("\n")}
`;

const read = (text: string, name: string) => {
  const { value, issues } = readLog(text, { name });
  expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
  return value!;
};
const inMetric = read(log(metricText), "log.yaml");
const inUs = read(log(usText), "log.yaml");

test("the physical result is the same", () => {
  for (const notebook of [homeRigs, clayTrial]) {
    const [a, b] = [inMetric, inUs].map((one) => notebook.run(one));
    const flat = (value: unknown): number[] =>
      typeof value === "number"
        ? [value]
        : value && typeof value === "object"
          ? Object.values(value).flatMap(flat)
          : [];
    const [first, second] = [flat(a!.figures), flat(b!.figures)];
    expect(first.length).toBe(second.length);
    for (const [i, value] of first.entries()) expect(second[i]! / value).toBeCloseTo(1, 8);
  }
});

test("each page is in its own units, with a strength in both where it is the answer", async () => {
  const [metric, us] = [inMetric, inUs].map((one) => homeRigs.run(one));
  const answers = [metric, us].map((page) => JSON.stringify(page!.answer));
  expect(answers[0]).toMatch(/green compression 62\.0 ± 3\.2 kPa \(8\.99 psi\)/);
  expect(answers[1]).toMatch(/green compression 9\.0 ± 0\.5 psi \(62 kPa\)/);
  expect(answers[0]).toMatch(/density 1\.55 g\/cm³/);
  expect(answers[1]).toMatch(/density 96\.7\d* lb\/ft³/);
  const words = await Promise.all([metric, us].map(async (page) => (await writeMarkdown(page!)).markdown));
  expect(words[0]).toMatch(/\bkg\b/);
  expect(words[0]).not.toMatch(/\blb\b/);
  expect(words[1]).toMatch(/\blb\b/);
  expect(words[1]).not.toMatch(/\bkg\b/);
});

test("curves are drawn in the unit, with its ticks; their files keep kPa", () => {
  const charts = [inMetric, inUs].map((one) => trialCharts(trialReport(one, { axis: "clay" }))[0]!);
  expect(charts[0]!.alt).toContain("Green compression strength, kPa");
  expect(charts[1]!.alt).toContain("Green compression strength, psi");
  expect(charts[1]!.alt).toMatch(/Your aim: 8\.7\d* to 13\.05/);
  expect(JSON.stringify(charts[1]!.spec(340))).toContain("green compression strength, psi");
  expect(charts[0]!.data).toBeUndefined();
  const rows = (table: { rows: readonly (readonly unknown[])[] }) =>
    table.rows.flat().map((cell) => (typeof cell === "number" ? cell.toPrecision(7) : cell));
  expect(rows(charts[1]!.data!)).toEqual(rows(charts[0]!.table));
});

test("CSV and JSON keep metric numbers and name their unit", () => {
  const [metric, us] = [inMetric, inUs].map((one) => clayTrial.run(one));
  expect(writeCsv(us!)["tests.csv"]).toMatch(/Green compression \(kPa\)/);
  expect(writeCsv(us!)).toEqual(writeCsv(metric!));
  const tables = [metric, us].map((page) => JSON.parse(writeJson(page!)).tables);
  const columns = (at: number) => tables[at].map((table: { columns: unknown }) => table.columns);
  expect(columns(1)).toEqual(columns(0));
  expect(JSON.stringify(tables[1])).not.toContain("dataUnit");
});

test("what the log asks for goes before what was typed", () => {
  const asked = read(log(metricText, "units: US\n"), "log.yaml");
  expect(asked.units).toBe("US");
  expect(shownUnits(asked).of("green compression")).toBe("US");
  expect(read(log(usText, "units: metric\n"), "log.yaml").units).toBe("metric");
  expect(shownUnits(read(log(usText, "units: metric\n"), "log.yaml")).recipe).toBe("metric");
  const wrong = readLog(log(metricText, "units: imperial\n"), { name: "log.yaml" }).issues;
  expect(wrong.find(({ message }) => message.includes("imperial"))?.remedy).toMatch(/\bus\b/i);
});

test("each test goes by its own readings, and most of them decide", () => {
  const text = log(metricText)
    .replace("[ 61 kPa, 63 kPa ]", "[ 9 psi, 9.2 psi ]")
    .replace("[ 68 kPa, 70 kPa ]", "[ 10 psi, 70 kPa ]");
  expect(shownUnits(read(text, "log.yaml")).of("green compression")).toBe("metric");
  const more = text.replace("[ 77 kPa, 79 kPa ]", "[ 11 psi, 11.3 psi ]");
  const units = shownUnits(read(more, "log.yaml"));
  expect(units.of("green compression")).toBe("US");
  expect(units.of("splitting")).toBe("metric");
  expect(units.recipe).toBe("metric");
});
