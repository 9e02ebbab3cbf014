// The charts of every demo page as files for any Vega-Lite tool: plain JSON that Vega-Lite itself takes without a word.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { compile } from "vega-lite";
import { expect, test } from "vitest";
import {
  type Chart,
  chartSvg,
  type Notebook,
  notebook,
  pointsChart,
  readLog,
  section,
  trialCharts,
  trialReport,
  writeVegaLite,
} from "../../lib/index.ts";
import { demoLogs } from "../browser/demo-pages.ts";

const root = join(import.meta.dirname, "../..");
const demos = demoLogs().map((demo) => [`${demo.notebook}, ${demo.name}`, demo] as const);

/** What Vega-Lite complains of. */
function complaints(spec: unknown): string[] {
  const heard: string[] = [];
  const hear = (...parts: readonly unknown[]) => {
    heard.push(parts.map(String).join(" "));
    return logger;
  };
  const logger = { level: () => logger, error: hear, warn: hear, info: () => logger, debug: () => logger };
  compile(structuredClone(spec) as never, { logger: logger as never });
  return heard;
}

/** The schema that Vega-Lite publishes with itself. */
const { definitions } = JSON.parse(
  readFileSync(join(root, "node_modules/vega-lite/build/vega-lite-schema.json"), "utf8"),
) as { readonly definitions: { readonly [name: string]: Schema } };
interface Schema {
  readonly $ref?: string;
  readonly anyOf?: readonly Schema[];
  readonly properties?: { readonly [key: string]: Schema };
}

/** The keys that a part of a spec may have by the published schema of Vega-Lite. */
function keysOf({ $ref, anyOf, properties = {} }: Schema): string[] {
  const referred = $ref === undefined ? [] : keysOf(definitions[$ref.replace("#/definitions/", "")]!);
  return [...Object.keys(properties), ...referred, ...(anyOf ?? []).flatMap(keysOf)];
}
const channels = definitions.FacetedEncoding!.properties!;
const channelKeys = new Map(Object.entries(channels).map(([channel, schema]) => [channel, keysOf(schema)]));

/** Every value in a spec, with its way there. */
function walk(value: unknown, path = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) => walk(inner, `${path}/${key}`));
}

test.each(demos)("%s", async (_name, demo) => {
  const { value } = readLog(demo.text, { name: demo.name, files: demo.files });
  const own = (await import(`../../notebooks/${demo.notebook}.ts`)) as { readonly default: Notebook };
  const page = own.default.run(value!);
  const files = writeVegaLite(page);
  const charts = new Set<Chart>();
  JSON.stringify(page, (_key, part) => {
    if (part?.kind === "chart") charts.add(part.chart);
    return part;
  });
  expect(Object.keys(files).length).toBe(charts.size);
  for (const chart of charts) {
    const spec = chart.spec(720);
    // What JSON would drop or change: functions, NaN, dates, undefined in a list.
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
    const odd = walk(spec).filter(([, one]) => !["string", "number", "boolean"].includes(typeof one) && one);
    expect(odd.filter(([, one]) => one !== undefined)).toEqual([]);
  }
  for (const [name, text] of Object.entries(files)) {
    expect(name).toMatch(/^[a-z0-9-]+\.vl\.json$/);
    const spec = JSON.parse(text);
    expect(spec.$schema).toBe("https://vega.github.io/schema/vega-lite/v6.json");
    expect(spec.width + spec.padding.left + spec.padding.right).toBe(720);
    expect(complaints(spec)).toEqual([]);
    expect(spec.description).toContain("invented");
    for (const { encoding = {} } of spec.layer) {
      for (const [channel, one] of Object.entries<object>(encoding))
        expect(channelKeys.get(channel), channel).toEqual(expect.arrayContaining(Object.keys(one)));
    }
    // Nothing is fetched: all data are in the spec.
    expect(walk(spec).filter(([path]) => /\/(url|href)$/.test(path))).toEqual([]);
  }
});

test("Vega-Lite is heard where there is something to complain of", () => {
  const x = { field: "a", type: "quantitative" };
  const spec = { data: { values: [] }, mark: "bar", encoding: { x, shape: x } };
  expect(complaints(spec)).not.toEqual([]);
});

test("a script takes a chart of a trial and draws its spec at a width of its own", async () => {
  const demo = demoLogs().find(({ notebook: name }) => name === "moisture-trial")!;
  const { value } = readLog(demo.text, { name: demo.name });
  const [response] = trialCharts(trialReport(value!));
  for (const width of [340, 720, 960]) {
    const spec = response!.spec(width);
    expect(complaints(spec)).toEqual([]);
    expect(await chartSvg(spec)).toContain(`viewBox="0 0 ${width} `);
  }
});

test("text of a log that would turn the line round or hide stands there as codes", () => {
  const chart = pointsChart({
    name: "one",
    x: { title: "wet\u202ewater", values: [1, 2] },
    y: { title: "y", values: [1, 2] },
  });
  const made = notebook("Own", () => ({
    question: "What?",
    answer: [],
    sections: [section("result", "R", [chart])],
  }));
  const page = made.run(readLog("format: 1\n", { name: "log.yaml" }).value!);
  const { "one.vl.json": text } = writeVegaLite(page, { width: 400 });
  expect(text).not.toMatch(/\u202e/);
  expect(text).toContain("wet⟨U+202E⟩water");
  expect(JSON.parse(text!).description).not.toContain("invented");
});
