// The mulling page on whole logs: what is told, what is left open, and units.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Finding, type Log, mullingReport, type Page, readLog, writeMarkdown } from "../../lib/index.ts";
import notebook from "../../notebooks/mulling-trial.ts";

const demo = (name: string): string =>
  readFileSync(join(import.meta.dirname, `../../data-demo/mulling-trial/${name}.yaml`), "utf8");
const logOf = (text: string): Log => readLog(text, { name: "log.yaml" }).value!;
const run = (text: string): Page => notebook.run(logOf(text));
const findings = (page: Page): Finding[] =>
  page.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "finding" ? [block.finding] : [])),
  );
const codes = (text: string): string[] => findings(run(text)).map(({ code }) => code);

const whole = demo("hand-and-barrel");

test("both ways have a time, one is told slower, and the muller its turns", () => {
  const said = codes(whole);
  expect(said.filter((code) => code === "mulling/time")).toHaveLength(2);
  expect(said).toContain("mulling/slower");
  const { muller, comparisons } = mullingReport(logOf(whole));
  expect(comparisons[0]).toMatchObject({ slower: "by hand", quicker: "barrel muller" });
  expect(muller.rpm!.value).toBeCloseTo(1450 / 60, 10);
  // ± 30 rpm surely is ± 0.475 with 95 % on the pan.
  expect(muller.rpm!.high - muller.rpm!.value).toBeCloseTo((0.95 * 30) / 60, 2);
  expect(muller.loads!.value).toBe(8);
});

test("common practice is set beside the figure and not made a finding that judges", () => {
  const practice = findings(run(whole)).find(({ code }) => code === "mulling/common-practice");
  expect(practice).toMatchObject({ tone: "note" });
  expect(practice?.text).toContain("five minutes dry and ten to fifteen after the water");
  expect(practice?.source).toContain("common practice");
});

test("four readings before the bend: open above, in doubt, and the next readings named", async () => {
  const page = run(demo("four-readings"));
  expect(findings(page)[0]).toMatchObject({ code: "mulling/time-open", tone: "doubt" });
  const { markdown } = await writeMarkdown(page);
  expect(markdown).toContain("read at 16 and 24 minutes");
  expect(markdown).toContain("psi");
  expect(markdown).not.toMatch(/\d kPa/);
  expect(findings(page).map(({ code }) => code)).toContain("mulling/hot");
});

test("a row of the muller's table has its number in the unit that it names", () => {
  const rows = (text: string) =>
    run(text)
      .sections.flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "table" && block.name === "muller" ? block.rows : []));
  const numbers = (text: string, what: RegExp) => {
    const row = rows(text).find(([name]) => what.test(name as string))!;
    return [(row[1] as { number: number }).number, row[2]];
  };
  const us = whole.replace("bond: bentonite", "bond: bentonite\nunits: US");
  // By hand: 12 kg in 500 mm at 1100 kg/m³ is 55.6 mm, 2.19 in; 500 mm at 24.2 turns is 0.633 m/s, 2.08 ft/s.
  expect(numbers(whole, /^Depth/)).toEqual([expect.closeTo(55.6, 1), "mm"]);
  expect(numbers(us, /^Depth/)).toEqual([expect.closeTo(2.19, 2), "in"]);
  expect(numbers(whole, /^Speed/)).toEqual([expect.closeTo(0.633, 3), "m/s"]);
  expect(numbers(us, /^Speed/)).toEqual([expect.closeTo(2.077, 2), "ft/s"]);
});

test("metric and US pages have the same figures", () => {
  const text = demo("four-readings");
  expect(JSON.stringify(run(text.replace("units: US\n", "")).figures)).toBe(
    JSON.stringify(run(text).figures),
  );
});

test("sand above 160 °F is too hot to mull, and the caution comes up first among equals", () => {
  const page = run(demo("four-readings").replace("131 °F", "170 °F"));
  expect(findings(page).map(({ code }) => code)).toContain("mulling/too-hot");
  const [first, second] = page.sections[0]!.blocks.flatMap((block) =>
    block.kind === "caution" ? [block.caution] : [],
  );
  expect([first!.code, second!.code]).toEqual(["caution/moving-muller", "caution/hot-sand"]);
});

test("strength that falls at the end, and moisture that moves, are told", () => {
  const fell = whole.replace(
    "minutes: 16, green compression: 74 kPa",
    "minutes: 16, green compression: 40 kPa",
  );
  expect(codes(fell)).toContain("mulling/fell");
  const dried = whole.replace(
    "minutes: 35, green compression: 66 kPa, moisture: 3.3 %",
    "minutes: 35, green compression: 66 kPa, moisture: 2.8 %",
  );
  expect(codes(dried)).toContain("mulling/moisture-moved");
});

test("too few readings, no trial at all: a page all the same", async () => {
  const two = `format: 1
mulling:
  by hand: { readings: [ { minutes: 2, green compression: 30 kPa }, { minutes: 4, green compression: 40 kPa } ] }
`;
  expect(codes(two)).toEqual(["mulling/too-few"]);
  const none = run("format: 1\nmuller: { motor: 1450 rpm, reduction: 60 }\n");
  expect((await writeMarkdown(none)).markdown).toContain("no mulling trial");
  expect(findings(none).map(({ code }) => code)).toEqual(["mulling/turns"]);
  expect((await writeMarkdown(run("format: 1\n"))).markdown).toContain("This log has no mulling trial");
});
