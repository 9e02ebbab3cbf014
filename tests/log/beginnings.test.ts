// Every log to begin with reads clean, says that it is invented and what comes next, and gives its notebook's page.

import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { beginLog, beginningFor, beginnings } from "../../lib/log/begin.ts";
import { readLog } from "../../lib/log/read-log.ts";
import type { Notebook } from "../../lib/page/notebook.ts";

const ways = [undefined, ...beginnings.map(({ name }) => name)];
const page = async (what: string | undefined) => {
  const found = made.get(what) ?? makePage(what);
  made.set(what, found);
  return found;
};
const made = new Map<string | undefined, ReturnType<typeof makePage>>();
const makePage = async (what: string | undefined) => {
  const { value, issues } = readLog(beginLog(what), { name: "my-sands.yaml" });
  const { default: notebook } = (await import(`../../notebooks/${beginningFor(what)!.notebook}.ts`)) as {
    default: Notebook;
  };
  return { log: value!, issues, page: notebook.run(value!) };
};

test.each(ways)("%s: no error and no warning, in the log or on its page", async (what) => {
  const { log, issues, page: run } = await page(what);
  expect([...issues, ...run.issues].filter(({ severity }) => severity !== "note")).toEqual([]);
  expect({ log: log.invented, page: run.invented }).toEqual({ log: true, page: true });
});

/** What the answer of each page begins with: the figure that the way in is there for. */
const answers: { readonly [what: string]: RegExp } = {
  everything: /^Example sand \(invented\): \d+\.\d ± at least/,
  sieving: /^Lime Kiln sand \(invented\): \d+\.\d ± at least/,
  "moisture-trial": /^3\.5\d* \(95 %: .*% moisture of damp mass is where a new batch most surely meets/,
  "clay-trial": /^\d\.\d+ \(95 %: .*% clay of the dry mix is where a new batch most surely meets/,
  "mulling-trial": /^by hand \(invented\): \d+ min \(\d+ to \d+\)/,
  heap: /^To bring the heap back: .* of clay from the bag and .* of water/,
  diary: /^Baseline only so far: moisture \(oven\), compactability and green compression/,
  castings: /^4 castings of 4 pours/,
  blend: /^\d+ ± \d+ % Coarse bag \(invented\) and \d+ ± \d+ % Fine bag \(invented\)/,
  "own-sheets": /^mean moisture \d\.\d+ ± \d\.\d+ % of damp mass/,
  "write-up": /^8 batches at 8 levels from 2\.53 to 4\.00 % of damp mass, 4 of 8 min and 4 of 15 min/,
};

test.each(ways)("%s: its page answers", async (what) => {
  const { answer } = (await page(what)).page;
  const plain = [answer[0]!]
    .flat()
    .map((piece) => (typeof piece === "string" ? piece : Object.values(piece)[0]));
  const { name } = beginningFor(what)!;
  expect(answers[name]).toBeDefined();
  expect(plain.join("")).toMatch(answers[name]!);
});

test.each(ways)("%s: its first lines say that it is invented, the next commands, and the hazard", (what) => {
  const { notebook, cards, hazard } = beginningFor(what)!;
  const text = beginLog(what, "yard log.yaml");
  const head = text.slice(0, text.indexOf("format: 1"));
  expect(head.split("\n").length).toBeLessThan(24);
  expect(head).toContain("INVENTED");
  for (const card of cards) expect(head).toContain(`mullbook card ${card} `);
  // A name that a shell would take apart is left out.
  expect(head).toContain("mullbook check my-sands.yaml");
  expect(head).toContain(`mullbook write ${notebook} my-sands.yaml`);
  expect(head.indexOf(hazard)).toBeGreaterThan(-1);
  expect(head).toMatch(/Local rules come first/);
  expect(beginLog(what, "my-trial.yaml")).toContain("mullbook check my-trial.yaml");
});

test("a way in is found by its name or its notebook's; a script that asks for none of them throws", () => {
  expect(beginningFor("Moisture trial")?.name).toBe("moisture-trial");
  expect(beginningFor("grain-fineness")?.name).toBe("sieving");
  expect(beginningFor("soup")).toBeUndefined();
  expect(() => beginLog("soup")).toThrow(Misuse);
  expect(new Set(beginnings.map(({ name }) => name)).size).toBe(beginnings.length);
});
