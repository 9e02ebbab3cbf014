// The guide: where a log stands, its next step first; every card and log that it names is there, and its lines are read.

import { expect, test } from "vitest";
import { guideReport, guideStages } from "../../lib/finding/guide-held.ts";
import { stageNames } from "../../lib/finding/guide-stage.ts";
import { beginLog, beginnings } from "../../lib/log/begin.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { Log } from "../../lib/log/types.ts";
import { cardNamed } from "../../lib/page/card.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import guide from "../../notebooks/guide.ts";

const logOf = (text: string, name = "log.yaml"): Log => readLog(text, { name }).value!;
const states = (log: Log) =>
  Object.fromEntries(guideReport(log).standings.map(({ stage, state }) => [stage.name, state]));

test("an almost empty log stands before the first stage, and the page is whole", async () => {
  for (const text of [
    "format: 1\n",
    "title: nothing\n",
    "format: 1\nmetal: brass\nbond: natural\nsands:\n",
  ]) {
    const log = logOf(text);
    expect(new Set(Object.values(states(log)))).toEqual(new Set(["not yet"]));
    expect(guideReport(log).next!.stage.name).toBe("sand");
    const { markdown } = await writeMarkdown(guide.run(log));
    expect(markdown).toContain("0 of 10 stages are on record");
    expect(markdown).not.toMatch(/undefined|NaN|\[object/);
  }
});

test("each stage is on record by what it is for, and begun by a part of it", () => {
  expect(guideStages.map(({ name }) => name)).toEqual(stageNames);
  const scales = "scales: { s: { reads to: 0.1 g } }\n";
  const state = (name: string, text: string) => states(logOf(`format: 1\n${text}`))[name];
  expect(state("sand", "sands: { Dune: { state: new } }")).toBe("on record");
  expect(state("scales", scales)).toBe("begun");
  expect(state("scales", "scales: { s: { reads to: 0.1 g, within: 0.1 g } }")).toBe("on record");
  expect(state("rigs", "rigs: { t: { bore: 50 mm, rammer: 2 kg, drop: 161 mm } }")).toBe("begun");
  expect(state("recipe", "recipe: { clay: 8, moisture: 3 %, make: 10 kg }")).toBe("begun");
  expect(state("aim", "aims: { compactability: 42 to 48 % }")).toBe("begun");
  expect(state("heap", "heap: { mass: 50 kg }")).toBe("begun");
  expect(state("castings", "castings: [ { date: 2026-05-02, name: hinge, faults: none } ]")).toBe("begun");
  expect(state("castings", "castings: [ { date: 2026-05-02, name: hinge } ]")).toBe("not yet");
  expect(state("write-up", "experiment: { held: the sand }")).toBe("begun");
  expect(state("write-up", "experiment: { question: Why?, changed: water, held: clay }")).toBe("on record");
});

test("the logs to begin with hold the stage that they teach", () => {
  const held = (what: string) => states(logOf(beginLog(what)));
  expect(held("sieving")).toMatchObject({ sand: "on record", sieving: "on record", scales: "on record" });
  expect(held("moisture-trial")).toMatchObject({
    recipe: "on record",
    "moisture trial": "on record",
    aim: "on record",
  });
  expect(held("diary")).toMatchObject({ heap: "on record", "moisture trial": "not yet" });
  expect(held("clay-trial")).toMatchObject({ recipe: "on record", "moisture trial": "not yet" });
  expect(held("heap")).toMatchObject({ recipe: "on record", heap: "begun" });
  expect(held("castings")).toMatchObject({ castings: "on record" });
});

test("figures of the log stand beside its stages", () => {
  const { standings } = guideReport(logOf(beginLog("moisture-trial")));
  const holds = Object.fromEntries(standings.map(({ stage, holds: all }) => [stage.name, all.join(" ")]));
  expect(holds.scales).toContain("kitchen scale reads to 0.1 g and is right within 0.2 g.");
  // By hand: 2 kg × 9.80665 m/s² × 0.161 m.
  expect(holds.rigs).toContain("home tube: 3.16 J a blow.");
  // By hand: 100 × 3.9/150 and 100 × 6.7/149.9.
  expect(holds["moisture trial"]).toBe("6 batches at 5 waters, 2.60 to 4.47 % of damp mass.");
  expect(holds.aim).toMatch(
    /^3\.5\d* \(95 %: [\d.]+ to [\d.]+\) % moisture of damp mass is where a new batch/,
  );
});

test("the next step stands first, after its cautions; a name from the log is text", async () => {
  const log = logOf("format: 1\nsands: { '<b>*Dune*</b>': { state: new } }\n", "a log;rm.yaml");
  const { sections } = guide.run(log);
  expect(sections.slice(0, 2).map(({ role, title }) => [role, title])).toEqual([
    ["cautions", "Before the next step"],
    ["data", "The next step: Sieve it"],
  ]);
  const { markdown } = await writeMarkdown(guide.run(log));
  expect(markdown).toContain("\\<b\\>\\*Dune\\*\\</b\\>");
  expect(markdown).toContain("mullbook check my-sands.yaml");
  expect(markdown).not.toContain("rm.yaml\n```");
});

const head: { readonly [section: string]: string } = {
  scales: "{ kitchen scale: { reads to: 0.1 g, within: 0.2 g }, bathroom scale: { reads to: 50 g } }",
  "sieve sets": "{ home stack: { frame: 200 mm } }",
  rigs: "{ home tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm } }",
  sands:
    "{ Dune sand: { state: new, sievings: [ { scale: kitchen scale, washed: yes, start: 50 g, retained: { No. 40: 9.0, No. 70: 30.1, No. 100: 10.0, pan: 0.9 } } ] } }",
};

test.each(guideStages)(
  "$title: its lines are read without an error or a warning; its cards and log are there",
  (stage) => {
    const above = Object.entries(head).filter(([section]) => !stage.lines.includes(`${section}:`));
    const text = `format: 1\nmetal: aluminium\nbond: bentonite\n${above.map((pair) => `${pair.join(": ")}\n`).join("")}${stage.lines}\n`;
    const { value, issues } = readLog(text, { name: "log.yaml" });
    // A sand that is only named has no sieving yet: its stage says that check will say so.
    const named = stage.name === "sand" ? "log/no-sievings" : "";
    const others = issues.filter(({ severity, code }) => severity !== "note" && code !== named);
    expect(others).toEqual([]);
    const { state } = guideReport(value!).standings.find((one) => one.stage === stage)!;
    expect(state, stage.name).not.toBe("not yet");
    for (const card of stage.cards) expect(cardNamed(card), card).toBeDefined();
    if (stage.begin !== undefined) expect(beginnings.map(({ name }) => name)).toContain(stage.begin);
    expect(stage.cautions.length).toBeGreaterThan(0);
  },
);
