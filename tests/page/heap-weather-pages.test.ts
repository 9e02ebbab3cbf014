// The parts of a heap's page about water for tomorrow and about heat: words, order, units, what is missing.

import { expect, test } from "vitest";
import type { Block, Section, TableCell, TableRow } from "../../lib/page/blocks.ts";
import { heatAndBurnOut, heatCautions } from "../../lib/page/heat-burn-out.ts";
import { heatFindings } from "../../lib/page/heat-findings.ts";
import { weatherFindings } from "../../lib/page/weather-findings.ts";
import { waterForTomorrow } from "../../lib/page/weather-water.ts";
import { promisesIn } from "../forbidden-words.ts";
import { heapLog } from "./heap-weather-log.ts";

const codes = (findings: readonly { readonly code: string }[]) => findings.map(({ code }) => code);
const textOf = (of: Section | readonly unknown[]): string => JSON.stringify(of);
const table = (section: Section, name: string) =>
  section.blocks.find(
    (block): block is Block & { kind: "table" } => block.kind === "table" && block.name === name,
  )!;

test("the wish first, then the heap's own cover, then the other", () => {
  const open = codes(weatherFindings(heapLog()));
  expect(open.slice(0, 3)).toEqual(["weather/temper-tonight", "weather/uncovered", "weather/covered"]);
  const sheet = weatherFindings(heapLog({ heap: "{ mass: 120 kg ± 5 kg, cover: sheet }" }));
  expect(codes(sheet).slice(1, 3)).toEqual(["weather/covered", "weather/uncovered"]);
  expect(sheet[0]!.text).toMatch(/^To have 3\.50 % of damp mass after 16 h: temper to 3\.50 % now, cover it/);
  const lid = weatherFindings(heapLog({ heap: "{ mass: 120 kg ± 5 kg, cover: lid }" }));
  expect(lid[1]!.text).toContain("under a lid");
});

test("covered: the printed most is never below the high end", () => {
  const text = weatherFindings(heapLog()).find(({ code }) => code === "weather/covered")!.text;
  const grams = Number(/At most (\d+) g/.exec(text)![1]);
  expect(grams).toBeGreaterThan(20);
  expect(grams).toBeLessThan(120);
});

test("hot sand brings a doubt; a start without its ± is said to make the range at least that wide", () => {
  const hot = heapLog({
    weather: "{ air: 18 °C, humidity: 60 %, hours: 16 h, start: 3.8 %, sand: 48 °C }",
  });
  const found = weatherFindings(hot);
  // 120 kg × 30 K × 1 kJ/(kg K) ÷ 2388 kJ/kg, by hand.
  expect(found.at(-1)!.text).toMatch(/^Up to 1\.51 kg more .* sand of 48 °C/);
  expect(found.find(({ code }) => code === "weather/uncovered")!.because.join(" ")).toContain(
    "at least that wide",
  );
  expect(codes(found)).not.toContain("weather/temper-tonight");
});

test("a heap that stays too wet even when left open is to be spread, not tempered up", () => {
  const wet = heapLog({ weather: "{ air: 18 °C, humidity: 60 %, hours: 16 h, start: 6 %, want: 3.5 % }" });
  const [first] = weatherFindings(wet);
  expect(first!.code).toBe("weather/too-wet");
  expect(first!.text).toMatch(
    /^At 6\.00 % .* spread 50 mm deep and turned, it takes [\d.]+ to \d+ h in this air/,
  );
  const fog = weatherFindings(
    heapLog({ weather: "{ air: 18 °C, humidity: 100 % ± 0 %, hours: 16 h, start: 6 %, want: 3.5 % }" }),
  );
  expect(fog[0]!.text).toContain("longer than it can be waited for");
});

test("what is missing is asked for in one sentence; without weather there is nothing", () => {
  const asked = waterForTomorrow(heapLog({ heap: "{ shape: bin }" }));
  expect(asked.blocks).toHaveLength(1);
  expect(textOf(asked)).toContain("this needs the mass of the heap (mass, under heap)");
  expect(waterForTomorrow(heapLog({ weather: "" })).blocks).toEqual([]);
});

test("heat: burnt sand first, as a range with its source, kind of clay asked for where it is not said", () => {
  const [first, second] = heatFindings(heapLog());
  expect(first!.text).toMatch(
    /^0\.02 to 0\.25 kg of sand loses its clay for each kg of aluminium, with sodium bentonite/,
  );
  // 0.02 and 0.25 × 6.8 % × 5.5 kg, by hand: 7.48 and 93.5 g.
  expect(first!.text).toContain("So far, 2 pours of 5.5 kg in all: 7.5 to 94 g of clay.");
  expect(second!.code).toBe("heat/share-of-clay");
  const unknown = heatFindings(heapLog({ heap: "{ mass: 120 kg ± 5 kg }" }));
  expect(unknown[1]!.tone).toBe("doubt");
  expect(unknown[0]!.text).toMatch(/^0\.02 to 0\.9 kg/);
  expect(codes(heatFindings(heapLog({ metal: "" })))).toEqual(["heat/metal-unknown"]);
  expect(heatAndBurnOut(heapLog({ events: "[]", planned: "" })).blocks).toEqual([]);
});

test("freezing is for comparing, wherever it is named, and a caution stands for it", () => {
  const log = heapLog();
  const found = heatFindings(log).find(({ code }) => code === "heat/freezing")!;
  expect(found.text).toContain("no time to open a mould");
  expect(table(heatAndBurnOut(log), "heated-sections").caption).toContain("never a time to open a mould");
  expect(heatCautions(log).map(({ code }) => code)).toEqual([
    "caution/frozen-is-hot",
    "caution/water-on-hot-sand",
  ]);
  expect(heatCautions(heapLog({ events: "[]", planned: "", weather: "" }))).toEqual([]);
});

test("no promise in any word, of either section", () => {
  const log = heapLog();
  for (const part of [waterForTomorrow(log), heatAndBurnOut(log), heatCautions(log)])
    expect(promisesIn(textOf(part as Section))).toEqual([]);
});

test("US units: the same loss in pounds, sections in inches, limits as they are printed in °F", () => {
  const us = heapLog({ units: "US" });
  const lost = (text: string) => Number(/to ([\d.]+) (kg|lb) of water/.exec(text)![1]);
  const text = (log = heapLog()) =>
    weatherFindings(log).find(({ code }) => code === "weather/uncovered")!.text;
  expect(Math.abs(lost(text(us)) / lost(text()) / 2.20462 - 1)).toBeLessThan(0.1);
  expect(text(us)).toContain("64 °F");
  const heat = textOf(heatAndBurnOut(us));
  for (const limit of ["600 °F", "930 °F", "1180 °F"]) expect(heat).toContain(limit);
  expect(heat).toContain("oz of clay");
  const sections = table(heatAndBurnOut(us), "heated-sections");
  expect(sections.columns[0]).toMatchObject({ unit: "in", dataUnit: "mm" });
  // 8 mm are 0.315 in; the number for files stays metric, as do the tables behind the charts.
  expect(sections.rows[1]![0]).toEqual({ text: "0.315", number: 8 });
  // A range keeps its ends in mm: the printed inches are those of the metric page.
  const ends = (row: TableRow) => row.slice(2).map((cell) => (cell as TableCell).ends);
  expect(sections.rows.map(ends)).toEqual(table(heatAndBurnOut(heapLog()), "heated-sections").rows.map(ends));
  expect(ends(sections.rows[0]!)[0]!.low).toBeGreaterThan(0);
  const covers = (log: ReturnType<typeof heapLog>) =>
    table(waterForTomorrow(log), "water-by-cover").rows.map(
      ([, cell]) => (cell as { number: number }).number,
    );
  expect(covers(us)).toEqual(covers(heapLog()));
  for (const section of [waterForTomorrow, heatAndBurnOut]) {
    const charts = [us, heapLog()].map((log) =>
      section(log).blocks.flatMap((block) => (block.kind === "chart" ? [block.chart] : [])),
    );
    expect(charts[0]!.map(({ data }) => data)).toEqual(charts[1]!.map((chart) => chart.table));
    expect(charts[0]![0]!.table).not.toEqual(charts[1]![0]!.table);
  }
});
