// Blends of whole logs: the shares' doubt against plain draws, aims of each kind, and logs that go wrong.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type BlendReport, blendReport, type Finding, type Log, readLog } from "../../lib/index.ts";
import notebook from "../../notebooks/blend.ts";

const demo = readFileSync(join(import.meta.dirname, "../../data-demo/blend/two-bags.yaml"), "utf8");
const like = readFileSync(join(import.meta.dirname, "../../data-demo/blend/like-the-old-sand.yaml"), "utf8");
const logOf = (text: string): Log => readLog(text, { name: "log.yaml" }).value!;
function reportOf(text: string): BlendReport {
  const report = blendReport(logOf(text));
  if (typeof report === "string") throw new Error(report);
  return report;
}
const findings = (text: string): Finding[] =>
  notebook
    .run(logOf(text))
    .sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === "finding" ? [block.finding] : [])),
    );
const codes = (text: string): string[] => findings(text).map(({ code }) => code);

test("two sands: the lever rule on their own numbers, and the blend's number is the aim", () => {
  const { sands, number, cost, currency } = reportOf(demo);
  const [a, b] = sands.map(({ report }) => report.fineness.figure.value) as [number, number];
  expect(sands[0]!.share).toBeCloseTo((b - 70) / (b - a), 9);
  expect(number.value).toBeCloseTo(70, 9);
  expect(cost!.value).toBeCloseTo(sands[0]!.share * (6.5 / 25) + sands[1]!.share * (11 / 25), 12);
  expect(currency).toBe("crowns");
});

test("a blend like one of its own sands is that sand, in every draw: what they share cancels", () => {
  const one = reportOf(like);
  const self = reportOf(like.replace("to: { like: The old sand }", "to: { like: Dune middling }"));
  // The sand itself is among them: all of it, and no other.
  expect(self.sands.map(({ share }) => Math.round(100 * share))).toEqual([0, 100, 0]);
  expect(self.sands[1]!.low).toBeGreaterThan(0.99);
  expect(one.sands[1]!.mayBeNought).toBe(true);
  expect(one.sands[0]!.mayBeNought).toBe(false);
});

test("a share that may be nought says so", () => {
  const nought = findings(like).find(({ code }) => code === "blend/may-be-nought");
  expect(nought?.text).toContain("Dune middling");
  expect(nought?.text).toContain("may be none");
});

test("an aim beyond reach: no figure, the nearest sand named, nothing in bold", () => {
  const beyond = demo.replace("gfn: 70", "gfn: 120");
  expect(codes(beyond)).toContain("blend/beyond-reach");
  expect(reportOf(beyond)).toMatchObject({ outside: "finer" });
  expect(reportOf(beyond).sands.map(({ share }) => share)).toEqual([0, 1]);
  expect(JSON.stringify(notebook.run(logOf(beyond)).answer)).not.toContain("strong");
});

test("a number with a ± and a usual range have a window and a chance", () => {
  const ranged = reportOf(demo.replace("gfn: 70", "gfn: 70 ± 4"));
  expect(ranged.window!.of).toBe("Brickfield sand");
  expect(ranged.window!.low).toBeLessThan(ranged.window!.high);
  const banded = demo.replace("{ gfn: 70 }", "{ band: grey iron }");
  const band = reportOf(banded);
  expect(band.target).toMatchObject({ kind: "number", low: 55, high: 70 });
  expect(band.number.value).toBeGreaterThan(55);
  expect(band.number.value).toBeLessThan(70);
  expect(codes(banded)).toContain("blend/in-range");
});

test("of three sands to a number the cheapest pair, and the other pairs told", () => {
  const three = like
    .replace("to: { like: The old sand }", "to: { gfn: 75 }")
    .replace(
      "sands:\n",
      "prices:\n  currency: crowns\n  Quarry coarse: { cost: 2, for: 25 kg }\n  Dune middling: { cost: 9, for: 25 kg }\n  Glasshouse fine: { cost: 4, for: 25 kg }\n\nsands:\n",
    );
  const { sands, number, others } = reportOf(three);
  expect(sands[1]!.share).toBe(0);
  expect(number.value).toBeCloseTo(75, 8);
  expect(others.length).toBe(1);
  expect(codes(three)).toContain("blend/other-ways");
});

test("logs without a blend, an aim, a bond or enough sands give a page that says what to write", () => {
  const cases: readonly (readonly [string, string])[] = [
    [demo.slice(0, demo.indexOf("blend:")), "no blend"],
    [demo.replace("  to: { gfn: 70 }\n", ""), "no aim"],
    [demo.replace("bond: bentonite\n", "").replace("{ gfn: 70 }", "{ band: aluminium }"), "no bond"],
    [demo.replace("state: new", "state: used").replaceAll("washed: yes", "washed: no"), "too few sands"],
  ];
  for (const [text, why] of cases) {
    expect(blendReport(logOf(text))).toBe(why);
    const page = notebook.run(logOf(text));
    expect(page.answer.length).toBe(1);
    expect(page.sections[0]!.role).toBe("cautions");
  }
});
