// Reminders of a log: how they are written, and what is said where they are wrong.

import { expect, test } from "vitest";
import { issueText } from "../../lib/issue.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { diaryEvents } from "../../lib/trial/control-events.ts";

const read = (remind: string) => {
  const text = `format: 1\nmetal: bronze\nbond: bentonite\nmeasured: [ { date: 2026-05-09, moisture: 2.6 % } ]\n${remind}\n`;
  const { value, issues } = readLog(text, { name: "heap.yaml" });
  return {
    days: value!.remind!.map(({ property, everyDays }) => [property, everyDays.value]),
    said: issues.map(issueText),
    measured: value!.measured.length,
  };
};

test("days, words, weeks; gfn is fineness", () => {
  expect(
    read("remind: { moisture: daily, green compression: 2 weeks, permeability: 36 h, gfn: monthly }"),
  ).toEqual({
    days: [
      ["moisture", 1],
      ["green compression", 14],
      ["permeability", 1.5],
      ["fineness", 30],
    ],
    said: [],
    measured: 1,
  });
});

test("each fault has its place and leaves the others", () => {
  const { days, said, measured } = read(
    "remind: { moistur: 1 day, compactability: often, clay by wash: 3 kg, fines: 9 days }",
  );
  expect(days).toEqual([["fines", 9]]);
  expect(measured).toBe(1);
  expect(said).toHaveLength(3);
  expect(said[0]).toMatch(/^heap\.yaml:5:11.*"moistur".*Did you mean "moisture"\?/s);
  expect(said[1]).toMatch(/^heap\.yaml:5:43.*often/s);
  expect(said[2]).toMatch(/^heap\.yaml:5:64.*3 kg/s);
});

test("nothing after remind, or no names, is told with a line to write", () => {
  expect(read("remind: {}").said[0]).toContain("remind: { moisture: 1 day, green compression: 7 days }");
  expect(read("remind: weekly").said[0]).toContain("After remind, names with values are expected");
});

test("a log without reminders has none", () => {
  expect(read("").days).toEqual([]);
});

const batchNotes = (head: string, dates: readonly string[], more = "") => {
  const batches = dates.map(
    (date, i) =>
      `  B${i}: { date: ${date}, moisture: { method: oven, damp: 100.0 g, dry: 96.7 g }${i === 0 ? ", compactability: 44 %" : ""}${more} }`,
  );
  const text = `format: 1\nmetal: bronze\nbond: bentonite\n${head}batches:\n${batches.join("\n")}\n`;
  const { issues } = readLog(text, { name: "heap.yaml" });
  return issues.map(({ code }) => code).filter((code) => code !== "log/scale-unnamed");
};
const weeks = ["2026-05-02", "2026-05-09", "2026-05-16"];

test("what a trial asks of its batches is not asked of a heap that is tested over weeks", () => {
  expect(batchNotes("", weeks)).toEqual([]);
  const asked = ["log/all-at-one", "log/missing-test"];
  // A trial that is named, batches that were made up, and batches of a few days are asked for it.
  expect(batchNotes("trial: { axis: moisture }\n", weeks)).toEqual(expect.arrayContaining(asked));
  expect(batchNotes("", ["2026-05-02", "2026-05-03", "2026-05-09"])).toEqual(expect.arrayContaining(asked));
  const recipe = ", made of: { sand: 5 kg, bentonite: 0.4 kg, water: 0.18 kg }";
  expect(batchNotes("", weeks, recipe)).toEqual(expect.arrayContaining(asked));
});

test("weather, and a note alone, are remarks of a day; they change no mass and stand beside what else happened", () => {
  const events = `events:
  - { date: 2026-05-20, weather: thunder }
  - { date: 2026-05-21, weather: sleet, note: the shed leaked }
  - { date: 2026-05-22, rebond: 0.4 kg, weather: dry wind, note: new bag }
  - { date: 2026-05-23, note: swept }
  - { date: 2026-05-23 }
  - { date: 2026-05-24, weather: }`;
  const text = `format: 1\nmetal: bronze\nbond: bentonite\n${events}\n`;
  const { value, issues } = readLog(text, { name: "heap.yaml" });
  expect(value!.remarks!.map(({ date, text: told }) => [date, told])).toEqual([
    ["2026-05-20", "thunder"],
    ["2026-05-21", "sleet; the shed leaked"],
    ["2026-05-22", "dry wind"],
    ["2026-05-23", "swept"],
  ]);
  expect(value!.events.map(({ kind, note }) => [kind, note])).toEqual([["rebond", "new bag"]]);
  expect(
    issues.filter(({ code }) => code === "log/event-of-nothing").map(({ place }) => place?.line),
  ).toEqual([9, 10]);
  expect(diaryEvents(value!).events.map(({ kind, note, changes }) => [kind, note, changes])).toEqual([
    ["note", "thunder", false],
    ["note", "sleet; the shed leaked", false],
    ["rebond", "new bag", true],
    ["note", "dry wind", false],
    ["note", "swept", false],
  ]);
});
