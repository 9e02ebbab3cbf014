// Readings that should agree and don't: each has its complaint, its place and its remedy; what is right has none. Invented figures.

import { describe, expect, test } from "vitest";
import { hasError, type Issue } from "../../lib/issue.ts";
import * as complaints from "../../lib/log/complaints-agreement.ts";
import { readLog } from "../../lib/log/read-log.ts";
import { issueOf } from "./helpers.ts";

const head = `format: 1
metal: aluminium
bond: bentonite
scales: { small scale: { reads to: 0.1 g, within: 0.2 g } }
`;

interface Line {
  readonly moisture?: string;
  readonly strength?: string;
  readonly compactability?: string;
  readonly made?: string;
  readonly other?: string;
}

function logOf(lines: readonly Line[], top = ""): string {
  const batches = lines.map(({ moisture, strength, compactability, made, other }, i) => {
    const rows = [
      `date: 2026-05-0${i + 1}`,
      made && `made of: { ${made} }`,
      moisture && `moisture: ${moisture}`,
      compactability && `compactability: ${compactability}`,
      strength && `green compression: ${strength}`,
      other,
    ].filter((row) => row);
    return `  Wren ${i + 1}:\n${rows.map((row) => `    ${row}\n`).join("")}`;
  });
  return `${head}${top}batches:\n${batches.join("")}`;
}

const read = (text: string) => readLog(text, { name: "agree.yaml" });
const strengths = (...texts: string[]) => logOf(texts.map((strength) => ({ strength })));
const codes = (text: string) => read(text).issues.map(({ code }) => code);
function pointed(text: string, code: string): { readonly issue: Issue; readonly at: string } {
  const issue = issueOf(read(text), code);
  return { issue, at: text.slice(issue.place?.offset).split("\n")[0]! };
}

describe("psi among kPa", () => {
  // 1 psi = 6.894757 kPa (NIST SP 811): 10.3 psi = 71.0 kPa.
  test("a bare number that fits in psi only is left out, and the batch says so", () => {
    const text = strengths("70 kPa", "74 kPa", "10.3", "66 kPa");
    const { issue, at } = pointed(text, "log/psi-among-kpa");
    expect(issue.severity).toBe("error");
    expect(issue.message).toMatch(/about 70 kPa\), as psi it is 71 kPa/);
    expect(issue.remedy).toContain("`10.3 psi`");
    expect(at).toBe("10.3");
    const batch = read(text).value?.batches[2];
    expect([batch?.readings, batch?.leftOut]).toEqual([[], ["green compression"]]);
    // One message for one fault: neither "looks like psi" nor "not tested" beside it.
    expect(codes(text)).toEqual(["log/psi-among-kpa"]);
  });

  test("one that says kPa is doubted and kept; one that is weak and no psi either has no complaint", () => {
    const text = strengths("70 kPa", "74 kPa", "10.3 kPa", "66 kPa");
    expect(pointed(text, "log/fits-as-psi").issue.severity).toBe("warning");
    expect(read(text).value?.batches[2]?.readings).toHaveLength(1);
    expect(codes(strengths("70 kPa", "74 kPa", "22 kPa", "66 kPa"))).toEqual([]);
    expect(codes(strengths("70 kPa", "74 kPa", "15.5 kPa", "66 kPa"))).toEqual([]);
  });

  test("the reverse: kPa written as psi, and a number converted twice", () => {
    const asPsi = strengths("10 psi", "10.6 psi", "71 psi", "9.8 psi");
    expect(pointed(asPsi, "log/kpa-among-psi").at).toBe("71 psi");
    // 71 psi = 490 kPa; the median of the others is 10 psi = 69 kPa.
    expect(issueOf(read(asPsi), "log/kpa-among-psi").message).toMatch(/490 kPa, far above.*about 69 kPa/);
    expect(pointed(strengths("70", "74", "490", "66"), "log/converted-twice").issue.message).toMatch(
      /71 kPa/,
    );
  });

  test("all in psi, said or not, is no fault of one of them; two batches are no neighbourhood", () => {
    expect(codes(strengths("10 psi", "10.6 psi", "9.8 psi"))).toEqual([]);
    expect(new Set(codes(strengths("10", "10.6", "9.8")))).toEqual(new Set(["log/psi-for-kpa"]));
    expect(codes(strengths("70 kPa", "10.3"))).toEqual(["log/psi-for-kpa"]);
  });
});

describe("fractions for percent", () => {
  test.each([
    ["compactability", "0.42 to 0.48", "compactability: 42 to 48 %"],
    ["compactability", "0.42 to 0.48 %", "compactability: 42 to 48 %"],
    ["moisture", "0.03 to 0.04", "moisture: 3 to 4 %"],
    ["clay by wash", "0.07 to 0.1", "clay by wash: 7 to 10 % of dry mix"],
  ])("an aim for %s of %s", (what, range, better) => {
    const { issue, at } = pointed(
      logOf([{ compactability: "45 %" }], `aims: { ${what}: ${range} }\n`),
      "log/fraction-for-percent",
    );
    expect(issue.remedy).toContain(`\`${better}\``);
    expect(at.startsWith(range)).toBe(true);
  });

  test("a reading of 0.45, and a moisture of 0.034", () => {
    const text = logOf([{ compactability: "0.45" }, { moisture: "0.034" }]);
    const found = read(text).issues.filter(({ code }) => code === "log/fraction-for-percent");
    expect(found.map(({ remedy }) => /`(.*?)`/.exec(remedy!)![1])).toEqual([
      "compactability: 45 %",
      "moisture: 3.4 %",
    ]);
    expect(read(text).value?.batches.flatMap(({ readings }) => readings)).toEqual([]);
  });

  test("what says % and may be so little stands; so do ordinary aims", () => {
    expect(codes(logOf([{ moisture: "0.1 %" }]))).toEqual([]);
    expect(
      codes(logOf([{ compactability: "45" }], "aims: { moisture: 0.5 to 4 %, permeability: 40 to 90 }\n")),
    ).toEqual([]);
  });

  test("water of sand and clay: read as typed, and asked about", () => {
    const made = "sand: 5 kg, sand moisture: 0.02, bentonite: 480 g, bentonite moisture: 0.09";
    const text = logOf([{ made, compactability: "45 %" }]);
    const found = read(text).issues.filter(({ code }) => code === "log/fraction-or-percent");
    expect(found.map(({ remedy }) => remedy)).toEqual([
      "Write the sign: `sand moisture: 2 %` or `sand moisture: 0.02 %`.",
      "Write the sign: `bentonite moisture: 9 %` or `bentonite moisture: 0.09 %`.",
    ]);
    expect(codes(text.replace("0.02", "0.02 %").replace("0.09", "9"))).toEqual([]);
  });
});

describe("g for kg in a recipe", () => {
  const withMade = (made: string) => logOf([{ made, compactability: "45 %" }]);
  test.each([
    ["sand: 5 kg, bentonite: 208 kg, water: 110 g", "208 kg", "Did you mean 208 g?"],
    ["sand: 5 kg, bentonite: 480, water: 110 g", "480", "Did you mean 480 g?"],
    ["sand: 5 kg, bentonite: 0.48 g, water: 110 g", "0.48 g", "Did you mean 480 g?"],
    ["sand: 5 kg, bentonite: 480 g, water: 110 kg", "110 kg", "Did you mean 110 g?"],
    ["sand: 5 kg, bentonite: 480 g, water: 0.11 g", "0.11 g", "Did you mean 110 g?"],
    ["sand: 5 g, bentonite: 480 g, water: 110 g", "5 g", "Did you mean 5 kg?"],
    ["sand: 5000 kg, bentonite: 480 g, water: 110 g", "5000 kg", "Did you mean 5 kg?"],
  ])("%s", (made, at, meant) => {
    const found = pointed(withMade(made), "log/g-for-kg");
    expect(found.at.startsWith(at)).toBe(true);
    expect(found.issue.remedy).toContain(meant);
    const batch = read(withMade(made)).value?.batches[0];
    expect([batch?.recipe, batch?.readings.length]).toEqual([undefined, 1]);
  });

  test("lean, rich, dry and wet recipes stand, and so does a touch of water on a heap", () => {
    for (const made of [
      "sand: 5 kg, bentonite: 50 g, water: 20 g",
      "sand: 10 kg, bentonite: 2 kg, water: 600 g, additive: 300 g",
      "sand: 120 kg, water: 200 g",
      "sand: 5 kg, bentonite: 8 % of dry mix, water: 0",
    ])
      expect(codes(withMade(made)), made).toEqual([]);
  });
});

describe("compactability against water", () => {
  const trial = (compactabilities: readonly number[], made = "") =>
    logOf(
      compactabilities.map((c, i) => ({
        moisture: `{ method: oven, scale: small scale, damp: 150 g, dry: ${150 - 1.5 * (2.5 + 0.4 * i)} g }`,
        compactability: `${c} %`,
        ...(made === "" ? {} : { made: `sand: 5 kg, bentonite: ${made.split(" ")[i]} g` }),
      })),
    );
  test("that falls, or stays: a note at the first reading", () => {
    const { issue, at } = pointed(trial([50, 47, 44, 40, 38]), "log/compactability-unmoved");
    expect(issue.severity).toBe("note");
    expect(issue.message).toMatch(/5 batches from 2\.5 to 4\.1 %.*[-−]1/);
    expect(at).toBe("50 %");
    expect(codes(trial([45, 45, 45, 45, 45]))).toContain("log/compactability-unmoved");
  });
  test("that rises, four batches, or another clay in each: no note", () => {
    expect(codes(trial([38, 40, 44, 43, 50]))).not.toContain("log/compactability-unmoved");
    expect(codes(trial([50, 47, 44, 40]))).not.toContain("log/compactability-unmoved");
    expect(codes(trial([50, 47, 44, 40, 38], "250 300 350 400 450"))).not.toContain(
      "log/compactability-unmoved",
    );
  });
});

describe("bores", () => {
  const rigs = (...bores: string[]) =>
    logOf(
      [{ compactability: "45 %" }],
      `rigs:\n${bores.map((bore, i) => `  tube ${i + 1}: { bore: ${bore} }\n`).join("")}`,
    );
  test("cm and inches for mm, told by the other tubes where there are some", () => {
    expect(pointed(rigs("5"), "log/bore-unlikely").issue.remedy).toBe(
      "Did you mean 5 cm (50 mm) or 5 in (127 mm)?",
    );
    expect(pointed(rigs("2"), "log/bore-unlikely").issue.remedy).toBe(
      "Did you mean 2 in (50.8 mm) or 2 cm (20 mm)?",
    );
    expect(pointed(rigs("50 mm", "5"), "log/bore-unlikely").issue.remedy).toBe("Did you mean 5 cm (50 mm)?");
    expect(pointed(rigs("50 mm", "2"), "log/bore-unlikely").issue.remedy).toBe(
      "Did you mean 2 in (50.8 mm)?",
    );
    expect(pointed(rigs("400 mm"), "log/bore-unlikely").issue.remedy).toMatch(/Measure the inside/);
    expect(codes(rigs("50 mm", "2 in", "75 mm", "38"))).toEqual([]);
  });
  test("a diameter beside a load", () => {
    const text = logOf([{ strength: "{ load: 14 kg ± 0.1 kg, diameter: 5 }" }]);
    expect(pointed(text, "log/bore-unlikely").issue.message).toMatch(/A diameter of "5"/);
  });
});

test("a scale that is not named: once for a rig, whatever the number of readings", () => {
  const list =
    "[{ rig: tube, load: 14 kg }, { rig: tube, load: 15 kg }, { rig: tube, load: 15.1 kg ± 0.1 kg }]";
  const text = logOf([{ strength: list }, { strength: list }], "rigs: { tube: { bore: 50 mm } }\n");
  const found = read(text).issues.filter(({ code }) => code === "log/scale-unnamed");
  expect(found.map(({ message }) => /with the tube \(4 readings\)/.test(message))).toEqual([true]);
});

test("a test whose reading is faulty is not called untested", () => {
  const text = logOf([
    { compactability: "45 %", strength: "70 kPa" },
    { compactability: "{ filled: 66 mm, rammed: 120 mm }", strength: "72 kPa" },
    { compactability: "48 %", strength: "71 kPa" },
  ]);
  expect(codes(text)).toEqual(["sand/compactability-impossible"]);
  expect(read(text).value?.batches[1]?.leftOut).toEqual(["compactability"]);
  // Where all of a batch is faulty, that is said, and not that nothing was tested.
  expect(codes(logOf([{ compactability: "120 %" }]))).toEqual(["sand/compactability-impossible"]);
});

test("many repeats at one moisture: five one by one, the rest in a note", () => {
  const damp = "moisture: { method: oven, scale: small scale, damp: 150 g, dry: ";
  const other = (dry: number) => ({ other: `${damp}${dry} g }` });
  const text = logOf([145, 145, 145, 145, 145, 145, 145, 147.5, 147.5].map(other));
  expect(codes(text).filter((code) => code === "log/same-axis")).toHaveLength(5);
  expect(issueOf(read(text), "log/more-at-one").message).toMatch(
    /^2 more batches from here on repeat a moisture/,
  );
});

test("every complaint is in a case above, in whole sentences, and errors leave the rest", () => {
  const made = (Object.values(complaints) as ((...words: string[]) => Issue)[]).map((one) =>
    one(...Array.from({ length: one.length }, () => "x")),
  );
  for (const { code, message, remedy } of made) {
    expect(message, code).toMatch(/\.$/);
    expect(remedy, code).toMatch(/[.x?]$/);
  }
  expect(made.map(({ code }) => code).sort()).toEqual([
    "log/bore-unlikely",
    "log/compactability-unmoved",
    "log/converted-twice",
    "log/fits-as-psi",
    "log/fraction-for-percent",
    "log/fraction-or-percent",
    "log/g-for-kg",
    "log/kpa-among-psi",
    "log/psi-among-kpa",
    "log/scale-unnamed",
  ]);
  expect(hasError(read(logOf([{ compactability: "45 %" }])).issues)).toBe(false);
});

test("a batch of another block is no repeat, whatever its moisture", () => {
  const at = (block: string, moisture: string) => ({ moisture, other: `block: ${block}` });
  const text = (second: string) => logOf([at("old clay", "3 %"), at(second, "3 %"), at("old clay", "4 %")]);
  expect(codes(text("new clay"))).not.toContain("log/same-axis");
  expect(codes(text("old clay"))).toContain("log/same-axis");
});
