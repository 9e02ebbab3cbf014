// Every demo page of a log in US measures: no finding and no issue gives a figure in metric units alone.

import { expect, test } from "vitest";
import { readLog } from "../../lib/index.ts";
import { issuesInUnits } from "../../lib/page/issue-units.ts";
import { everyBlock, layOut } from "../../lib/page/lay-out.ts";
import { demos, notebookOf, readDemo } from "../demos.ts";

const inUs = (text: string): string =>
  /^units:/m.test(text)
    ? text.replace(/^units:.*$/m, "units: US")
    : text.replace(/^format: 1$/m, "format: 1\nunits: US");

const us = /(?:psi|lbf?|oz|in|ft|°F|fl oz|lb\/ft³|ft\/s|mph)(?![\p{L}])/u;
const metric = /\d[\d.,]*(?: ± [\d.]+)? (?:g|kg|kPa|mm|cm|°C|ml|l|L|m\/s|g\/cm³|kg\/m³|m)(?![\p{L}/²³])/gu;

/** Metric figures beside which no US figure stands, in brackets after it or before it. */
function alone(text: string): string[] {
  return [...text.matchAll(metric)]
    .filter(({ 0: figure, index }) => {
      const after = /^[^.;:]{0,12}\(([^)]*)\)/.exec(text.slice(index + figure.length));
      const before = /\(?[\d.,]+ (\S+)\s*\($/.exec(text.slice(0, index));
      return !(after && us.test(after[1]!)) && !(before && us.test(before[1]!));
    })
    .map(({ 0: figure }) => figure);
}

/** What stays metric, and why. */
const kept: readonly { readonly code: string; readonly figures: RegExp; readonly why: string }[] = [
  { code: "blend/fines", figures: /^0\.106 mm$/, why: "the opening of a standard sieve" },
  { code: "log/no-sieve-set", figures: /^200 mm$/, why: "a line of a log to copy" },
  { code: "recipe/buckets", figures: /kg$/, why: "a bucket as the log typed it" },
  { code: "sheet/slope", figures: /kPa$/, why: "a sheet's own column, in the unit that the log gave it" },
];

const used = new Set<string>();

test.each(demos)("%s, %s", async (name, file) => {
  const { value, issues } = readDemo(name, file, inUs);
  const page = (await notebookOf(name)).run(value!);
  const laid = layOut({ ...page, issues: [...issuesInUnits(issues, value!), ...page.issues] });
  const texts = [
    ...laid.sections
      .flatMap(({ blocks }) => everyBlock(blocks))
      .flatMap((block) => (block.kind === "finding" ? [block.finding] : []))
      .flatMap(({ code, text, because }) => [text, ...because].map((one) => [code, one] as const)),
    ...laid.issues.flatMap(({ code, message, remedy = "" }) => [
      [code, message] as const,
      [code, remedy] as const,
    ]),
  ];
  const left = texts.flatMap(([code, text]) =>
    alone(text)
      .filter((figure) => {
        const reason = kept.find((one) => one.code === code && one.figures.test(figure));
        if (reason) used.add(reason.code);
        return !reason;
      })
      .map((figure) => `${code}: ${figure} in "${text}"`),
  );
  expect(left).toEqual([]);
});

test("an issue prints what was weighed and measured in the units of its log", () => {
  const log = (units: string) => `format: 1
${units}metal: aluminium
bond: bentonite
scales: { kitchen scale: { reads to: 0.05 oz } }
sieve sets: { shed stack: { frame: 8 in } }
sands:
  Coppice Lane sand:
    state: new
    sievings:
      - date: 2026-05-02
        scale: kitchen scale
        sieve set: shed stack
        washed: yes
        start: 3.50 oz
        retained: { No. 20: 0.05 oz, No. 40: 0.30 oz, No. 60: 1.50 oz, No. 100: 1.30 oz, No. 200: 0.80 oz, pan: 0.05 oz }
`;
  const told = (units: string): string => {
    const { value, issues } = readLog(log(units), { name: "a.yaml" });
    const found = issuesInUnits(issues, value!).find(({ code }) => code === "log/sum-above-start");
    return found?.message ?? "";
  };
  // 4.00 and 3.50 oz; 1 oz is 28.3495 g.
  expect(told("")).toContain("hold 113.4 g together, more than the 99.223 g");
  expect(told("units: US\n")).toContain("hold 4 oz together, more than the 3.5 oz");
});

test("what a message puts after its place, and within another phrase, is printed anew as well", () => {
  const text = `format: 1
units: US
batches:
  W1:
    date: 2026-05-02
    density: { mass: 5.5 oz, height: 0.2 in, rig: tube }
rigs: { tube: { bore: 2 in, tube: 5 in } }
`;
  const { value, issues } = readLog(text, { name: "a.yaml" });
  const found = issuesInUnits(issues, value!).find(({ code }) => code === "log/density-impossible");
  // By hand: 155.9 g in 10.3 cm³ are 15.1 g/cm³, 945 lb/ft³; told to two figures.
  expect(found?.message).toBe(
    "The specimen would have 950 lb/ft³ (5.5 oz in a tube of 2 in bore, 0.2 in high), which no rammed sand has.",
  );
});

test("every figure that is let stand still stands somewhere", () => {
  expect(kept.map(({ code }) => code).filter((code) => !used.has(code))).toEqual([]);
});
