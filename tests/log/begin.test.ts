// What the starter log teaches in its comments is what a log may say.

import { expect, test } from "vitest";
import { beginLog } from "../../lib/log/begin.ts";
import { readLog } from "../../lib/log/read-log.ts";

const starter = beginLog();
const at = starter.indexOf("# trial: {");
/** The first part with its one commented setting opened, the rest with each "# " taken away. */
const opened =
  starter.slice(0, at).replace("# units: US", "units: US") + starter.slice(at).replace(/^# /gm, "");

test("opened, it reads without an error or a warning: US pages, wind at a mast's height, six mulling readings", () => {
  const { value, issues } = readLog(opened, { name: "log.yaml" });
  expect(issues.filter(({ severity }) => severity !== "note")).toEqual([]);
  expect(value!.units).toBe("US");
  expect(value!.weather!.windAtM!.value).toBe(10);
  expect(value!.mulling[0]!.readings.length).toBe(6);
});

test("its recipe by weight is one: 2.2 kg of clay at 9 % to 25 kg of sand at 0.5 %", () => {
  const told = /basis: by weight, with (sand: .*), (clay: .*), (water: .*?) in it/.exec(starter)!;
  const recipe = `recipe:\n  basis: by weight\n  ${told.slice(1).join("\n  ")}\n  sand moisture: 0.5 %\n  clay moisture: 9 %\n`;
  const text = `format: 1\nmetal: aluminium\nbond: bentonite\n${recipe}`;
  const { value, issues } = readLog(text, { name: "log.yaml" });
  expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
  // By hand, per 100 of dry sand: 100 × 2.2 × 0.91 / (25 × 0.995).
  expect(value!.recipe!.clayPercent!.value).toBeCloseTo((100 * 2.2 * 0.91) / (25 * 0.995), 6);
});
