// A line that stands wrong is the one that is blamed, alone, and costs no other sand.

import { expect, test } from "vitest";
import { brief, read, sandNamed, soundLog } from "./helpers.ts";

const usable = (text: string) => {
  const { value, issues } = read(text);
  const sand = (name: string) => sandNamed(value, name)?.sievings.map((sieving) => sieving.usable);
  return { said: brief(issues), dune: sand("Dune sand"), pit: sand("Pit sand"), sands: value?.sands.length };
};

test("a sand's name that slipped by a space is its own fault, not that of the sand above", () => {
  for (const [slipped, at] of [
    ["   Pit sand:", "27:4 log/indent"],
    [" Pit sand:", "27:2 log/indent"],
  ] as const)
    expect(usable(soundLog.replace("  Pit sand:", slipped))).toMatchObject({
      said: [at],
      dune: [true],
      pit: undefined,
    });
});

test("a name without its colon is one complaint, and its lines are not taken for its neighbour's", () => {
  const { said, dune, sands } = usable(soundLog.replace("  Pit sand:", "  Pit sand"));
  expect({ said, dune, sands }).toEqual({ said: ["27:3 log/no-colon-after"], dune: [true], sands: 1 });
  expect(usable(soundLog.replace("  Dune sand:", "  Dune sand"))).toMatchObject({ pit: [true], sands: 1 });
  const batches =
    "batches:\n  W1:\n    date: 2026-03-04\n    moisture: 3 %\n  W2\n    date: 2026-03-05\n    moisture: 4 %\n  W3:\n    moisture: 5 %\n";
  const found = read(soundLog + batches);
  expect(brief(found.issues)).toEqual(["43:3 log/no-colon-after"]);
  expect(found.value?.batches.map(({ name }) => name)).toEqual(["W1", "W3"]);
});

test("of very many slips twenty are told, and how many more there are", () => {
  const more = Array.from({ length: 50 }, (_, k) => `  Sand ${k}\n    state: new\n    note: dry\n`).join("");
  const { issues, value } = read(soundLog + more);
  expect(issues.filter(({ code }) => code === "log/no-colon-after")).toHaveLength(20);
  expect(issues.find(({ code }) => code === "log/more-faults")?.message).toContain("30 more");
  expect(value?.sands).toHaveLength(2);
});

test("the first sand's name may slip as well, by any number of spaces", () => {
  for (const spaces of [1, 3, 4, 5, 6, 9]) {
    const slipped = soundLog.replace("  Dune sand:", `${" ".repeat(spaces)}Dune sand:`);
    expect({ spaces, ...usable(slipped) }).toEqual({
      spaces,
      said: [`11:${spaces + 1} log/indent`],
      dune: undefined,
      pit: [true],
      sands: 1,
    });
  }
});

test("a word after sands: and a note with a colon on its second line cost no sand", () => {
  for (const text of [
    soundLog.replace("sands:", "sands: mine"),
    soundLog.replace("bond: bentonite", "bond: bentonite\nnote: sieved twice\n  on the bench\n  by day: dry"),
    `${soundLog.replace("    state: new\n", "    state: new\n    note: dry\n      and: clean\n")}`,
  ]) {
    const { said, dune, pit, sands } = usable(text);
    expect(said).toHaveLength(1);
    expect({ dune, pit, sands }).toEqual({ dune: [true], pit: [true], sands: 2 });
  }
});

test("the first row of a sieving that slipped is blamed, and its sand is kept with the rest", () => {
  for (const spaces of [9, 11, 12]) {
    const { said, pit, sands } = usable(
      soundLog.replace("          No. 40: 3.20", `${" ".repeat(spaces)}No. 40: 3.20`),
    );
    expect(said).toEqual([`21:${spaces + 1} log/indent`]);
    expect({ pit, sands }).toEqual({ pit: [true], sands: 2 });
  }
});

test("spaces of another width, as from a web page, are spaces where YAML wants one", () => {
  const sound = read(soundLog);
  const plain = (value: unknown) =>
    JSON.stringify(value).replace(/"(fingerprint|texts)":("[^"]*"|\[.*?\])/g, "");
  for (const space of ["\u00a0", "\u2009", "\u3000"]) {
    for (const text of [
      soundLog.replace(/: /g, `:${space}`),
      soundLog.replace(/- /g, `-${space}`),
      soundLog.replace(/^ +/gm, (spaces) => space.repeat(spaces.length)),
      soundLog.replace(/[{,] /g, (sign) => sign[0] + space),
    ]) {
      const { value, issues } = read(text);
      expect(issues).toEqual(sound.issues);
      expect(plain(value?.sands)).toBe(plain(sound.value?.sands));
    }
  }
  // Within a text they stay.
  expect(read(soundLog.replace("An invented", "An\u00a0invented")).value?.title).toBe("An\u00a0invented log");
});

test("of a second log that is pasted below, nothing is read and one thing is said", () => {
  const { value, issues } = read(
    soundLog + soundLog.replaceAll("Dune", "Hill").replace("bond: bentonite", "units: US"),
  );
  expect(brief(issues)).toEqual(["39:1 log/second-log"]);
  expect(value?.sands.map(({ name }) => name)).toEqual(["Dune sand", "Pit sand"]);
  expect(value?.units).toBeUndefined();
  // One name twice is only that.
  expect(brief(read(`${soundLog}title: Again\n`).issues)).toEqual(["39:1 log/repeated-key"]);
});
