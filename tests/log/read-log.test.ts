// A sound log, read whole.

import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { beginLog } from "../../lib/log/begin.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { fingerprint } from "../../lib/log/fingerprint.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { read, sandNamed, soundLog, spoilt } from "./helpers.ts";

test("a sound log has no issues and every figure with its place", () => {
  const { value, issues } = read(soundLog);
  expect(issues).toEqual([]);
  expect(value).toMatchObject({
    format: 1,
    file: "log.yaml",
    title: "An invented log",
    invented: true,
    metal: "aluminium",
    bond: "bentonite",
    scales: [{ name: "small scale", stepG: 0.01, withinG: 0.02 }],
    sets: [{ name: "home stack", frameMm: 200, checked: false }],
  });
  const sieving = sandNamed(value, "Dune sand")?.sievings[0];
  expect(sieving).toMatchObject({
    id: "Dune sand / 2026-03-02 / A",
    date: "2026-03-02",
    washed: false,
    unit: "g",
    usable: true,
    scale: { name: "small scale" },
    set: { name: "home stack" },
    startG: { value: 50, text: "50.0 g", place: { line: 19, column: 16, length: 6 } },
  });
  const first = sieving?.retained[0];
  expect(first).toMatchObject({
    label: "No. 40",
    sieve: { openingMm: 0.425 },
    place: { line: 21, column: 11 },
  });
  // The scalar's own text is kept: 3.20, not 3.2.
  expect(first?.mass).toMatchObject({ value: 3.2, text: "3.20", place: { line: 21, column: 19, length: 4 } });
  expect(sieving?.retained.at(-1)?.sieve).toBeUndefined();
});

test("a place's offset and length cut the figure out of the text, with a byte order mark and CR LF as well", () => {
  for (const text of [
    soundLog,
    `\uFEFF${soundLog.replaceAll("\n", "\r\n")}`,
    soundLog.replaceAll("\n", "\r"),
  ]) {
    const { value, issues } = read(text);
    expect(issues).toEqual([]);
    for (const sand of value?.sands ?? []) {
      for (const { mass } of sand.sievings.flatMap((sieving) => sieving.retained)) {
        const { offset = -1, length = 0 } = mass.place;
        expect(text.slice(offset, offset + length)).toBe(mass.text);
      }
    }
    expect(value?.sands.length).toBe(2);
    expect(sandNamed(value, "Dune sand")?.sievings[0]?.startG?.place).toMatchObject({ line: 19, column: 16 });
  }
});

test("the same log with tabs-free braces, quotes and other yes/no words reads the same", () => {
  const { value, issues } = spoilt("washed: no", "washed: 'False'");
  expect(issues).toEqual([]);
  expect(value?.sands[0]?.sievings[0]?.washed).toBe(false);
});

test("figures in ounces, kilograms and with ± come out in grams", () => {
  // 1 oz = 28.349523125 g exactly: NIST SP 811, appendix B.8.
  const { value, issues } = spoilt("start: 50.0 g", "start: 1.7637 oz");
  expect(issues).toEqual([]);
  expect(value?.sands[0]?.sievings[0]?.startG?.value).toBeCloseTo(1.7637 * 28.349523125, 9);
  const kg = spoilt("start: 50.0 g", "start: 0.05 kg ± 0.0001 kg").value?.sands[0]?.sievings[0]?.startG;
  expect(kg).toMatchObject({ value: 50, plusMinus: { size: 0.1, meaning: "surely" } });
});

test("a sieving in percent: % on every row, or unit: percent", () => {
  const rows = "No. 40: 3 %\n No. 50: 27 %\n No. 70: 40 %\n No. 100: 28 %\n pan: 2 %".replaceAll(
    "\n",
    "\n         ",
  );
  const text = `format: 1\nmetal: steel\nbond: natural\nsands:\n  Dune sand:\n    state: new\n    sievings:\n      - retained:\n          ${rows}\n`;
  const percent = read(text);
  expect(percent.issues).toEqual([]);
  expect(percent.value?.sands[0]?.sievings[0]).toMatchObject({ unit: "percent", usable: true });
  const said = read(text.replaceAll(" %", "").replace("- retained", "- unit: percent\n        retained"));
  expect(said.issues).toEqual([]);
  const masses = (log: typeof said) =>
    log.value?.sands[0]?.sievings[0]?.retained.map((entry) => entry.mass.value);
  expect(masses(said)).toEqual([3, 27, 40, 28, 2]);
  expect(masses(percent)).toEqual(masses(said));
});

test("the log is frozen and the same text gives the same log", () => {
  const { value } = read(soundLog);
  expect(Object.isFrozen(value?.sands[0]?.sievings[0]?.retained[0]?.mass.place)).toBe(true);
  expect(read(soundLog)).toEqual(read(soundLog));
});

test("anything but a text is misuse", () => {
  expect(() => readLog(undefined as unknown as string, { name: "x" })).toThrow(Misuse);
});

test("fingerprint: FNV-1a, 32 bits, test vectors of IETF draft-eastlake-fnv (from memory)", () => {
  expect(fingerprint("")).toBe("811c9dc5");
  expect(fingerprint("a")).toBe("e40c292c");
  expect(fingerprint("foobar")).toBe("bf9cf968");
  expect(fingerprint("foo", "bar")).toBe("bf9cf968");
  expect(read(soundLog).value?.fingerprint).toBe(fingerprint(soundLog));
});

test("the starter log reads without errors or warnings, and says that it is invented", () => {
  const { value, issues } = readLog(beginLog(), { name: "my-log.yaml" });
  expect(issues).toEqual([]);
  expect(value?.invented).toBe(true);
  expect(value?.sands.map((sand) => sand.sievings.map((sieving) => sieving.usable))).toEqual([[true, true]]);
  expect(beginLog()).toMatch(/INVENTED/);
  // Its sums agree with what went on, within what a tenth of a gram can tell.
  for (const sieving of value?.sands[0]?.sievings ?? []) {
    const held = sieving.retained.reduce((sum, entry) => sum + entry.mass.value, 0);
    expect(Math.abs(held - 50)).toBeLessThan(0.3);
  }
});

test("filesNamedIn lists each CSV file once, and none from a text that is no log", () => {
  const text =
    "sands:\n  A:\n    sievings file: a.csv\n  B: { sievings file: b.csv }\n  C:\n    sievings file: a.csv\n";
  expect(filesNamedIn(text)).toEqual(["a.csv", "b.csv"]);
  for (const name of ["../a.csv", "/etc/passwd", "C:\\a.csv", "a/b.csv", ".csv"]) {
    expect(filesNamedIn(`sands:\n  A:\n    sievings file: '${name}'\n`)).toEqual([]);
  }
  expect(filesNamedIn("")).toEqual([]);
  expect(filesNamedIn("\0\0")).toEqual([]);
  expect(filesNamedIn("a: [")).toEqual([]);
});

test("sections under a name that is nearly right: the first message is what to write", () => {
  for (const [section, line] of [
    ["sands", "sand"],
    ["batches", "batch"],
  ] as const) {
    const { issues } = read(`format: 1\nmetal: steel\nbond: natural\n${line}:\n  Yard:\n    note: x\n`);
    expect(issues.map(({ code }) => code)).toEqual(["log/unknown-key"]);
    expect(issues[0]?.remedy).toBe(`Did you mean "${section}"? Write \`${section}:\``);
  }
  const dashed = read("format: 1\nmetal: steel\nbond: natural\nsands:\n  - name: Yard\n    state: new\n");
  expect(dashed.issues.map(({ code }) => code)).toEqual(["log/dash-before-name"]);
});
