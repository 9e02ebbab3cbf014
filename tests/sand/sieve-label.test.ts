import fc from "fast-check";
import { expect, test } from "vitest";
import type { Sieve } from "../../lib/sand/sieve.ts";
import { readSieveLabel } from "../../lib/sand/sieve-label.ts";
import { astmSieves } from "../../lib/sand/sieve-table-astm.ts";
import { britishSieves } from "../../lib/sand/sieve-table-british.ts";
import { isoOpeningsMm } from "../../lib/sand/sieve-table-iso.ts";

const read = (label: string) => readSieveLabel(label);
const sieve = (label: string) => read(label).value as Sieve;
const codes = (label: string) => read(label).issues.map(({ code }) => code);

test.each([
  "No. 40",
  "no 40",
  "NO.40",
  " No.  40 ",
  "#40",
  "# 40",
  "US 40",
  "US No. 40",
  "U.S. 40",
  "ASTM 40",
])("%j is the US sieve No. 40", (label) => {
  expect(read(label)).toEqual({
    value: { label: "No. 40", series: "astm", openingMm: 0.425, toleranceMm: 0.0155, number: 40 },
    issues: [],
  });
});

test.each([
  "US 40 mesh",
  "US mesh 40",
  "No. 40 sieve",
  "0.425 mm",
  ".425mm",
  "425 µm",
  "425 μm",
  "425 um",
  "425 microns",
])("%j is No. 40 too", (label) => {
  expect(sieve(label).label).toBe("No. 40");
  expect(codes(label)).toEqual([]);
});

// Older openings as coursework sheets print them (Univ. Técnica Estatal de Quevedo 2019).
test.each([
  ["3.36 mm", 6],
  ["1.68 mm", 12],
  ["0.84 mm", 20],
  ["0.59 mm", 30],
  ["0.42 mm", 40],
  ["0.297 mm", 50],
  ["297 µm", 50],
  ["0.210 mm", 70],
  ["0.149 mm", 100],
  ["0.105 mm", 140],
  ["0.074 mm", 200],
])("%j is an older print of No. %i, and that is said", (label, number) => {
  expect(sieve(label).number).toBe(number);
  expect(codes(label)).toEqual(["sand/sieve-older-print"]);
});

test("0.053 mm is the same in both tables, so nothing is said", () => {
  expect(sieve("0.053 mm").number).toBe(270);
  expect(codes("0.053 mm")).toEqual([]);
});

test("an opening that only ISO 565 has is an ISO sieve", () => {
  expect(sieve("0.56 mm")).toMatchObject({ label: "0.56 mm", series: "iso", openingMm: 0.56 });
  expect(sieve("560 µm")).toEqual(sieve("0.56 mm"));
  // 560^0.98/27 + 1.6 = 19.88 µm, by hand.
  expect(sieve("0.56 mm").toleranceMm * 1000).toBeCloseTo(19.88, 1);
});

test("BS 60 is 0.250 mm, and no US 60 by name", () => {
  expect(sieve("BS 60")).toMatchObject({ label: "BS 60", series: "british", openingMm: 0.25, number: 60 });
  expect(sieve("bs 60 mesh")).toEqual(sieve("BS 60"));
});

test.each(["pan", "Pan", "bottom", "tray", "Bottom pan"])("%j is the pan", (label) => {
  expect(read(label)).toEqual({ value: "pan", issues: [] });
});

test("any other opening is measured cloth with twice a test sieve's tolerance, and says so", () => {
  // 385^0.98/27 + 1.6 = 14.26 µm, by hand.
  expect(sieve("0.385 mm").series).toBe("cloth");
  expect(sieve("0.385 mm").toleranceMm * 1000).toBeCloseTo(2 * 14.26, 1);
  expect(codes("0.385 mm")).toEqual(["sand/sieve-not-standard"]);
  expect(read("0.452 mm").issues[0]!.remedy).toContain("0.45 mm");
});

test("a ± of the founder's own stands instead", () => {
  for (const label of ["0.385 ± 0.01 mm", "0.385 mm ± 0.01 mm", "385 +/- 10 µm", "0.385 mm +- 10 µm"]) {
    expect(read(label)).toEqual({
      value: { label: "0.385 ± 0.01 mm", series: "cloth", openingMm: 0.385, toleranceMm: 0.01 },
      issues: [],
    });
  }
  expect(sieve("0.425 ± 0.002 mm")).toMatchObject({ label: "No. 40", number: 40, toleranceMm: 0.002 });
  // With a ± it was measured, so it is not an old table's name for No. 50.
  expect(sieve("0.297 ± 0.005 mm")).toMatchObject({ series: "cloth", openingMm: 0.297 });
  expect(codes("0.3 ± 0.3 mm")).toEqual(["sand/sieve-plus-minus"]);
});

test("cloth by count and wire: 25.4/40 − 0.25 = 0.385 mm, ± half a wire in the inch and 0.01 mm of wire", () => {
  const cloth = sieve("40 mesh, 0.25 mm wire");
  expect(cloth).toMatchObject({ label: "40 mesh, 0.25 mm wire", series: "cloth" });
  expect(cloth.openingMm).toBeCloseTo(0.385, 10);
  // 25.4 · 0.5 / 40² + 0.01 = 0.0179, by hand.
  expect(cloth.toleranceMm).toBeCloseTo(0.0179375, 10);
  for (const same of [
    "40 MESH 0.25mm wire",
    "40 mesh; 250 µm wire",
    "40 mesh, wire 0.25 mm",
    "40x40 mesh, 0.25 mm wire",
  ]) {
    expect(sieve(same)).toEqual(cloth);
  }
  expect(sieve("40 mesh, 0.01 in wire").openingMm).toBeCloseTo(0.635 - 0.254, 10);
});

test("a ± on the wire takes the place of the 0.01 mm", () => {
  expect(sieve("40 mesh, 0.25 ± 0.002 mm wire").toleranceMm).toBeCloseTo(0.0079375 + 0.002, 10);
});

test("warp and weft: the smaller opening counts, and the difference goes into the ±", () => {
  const cloth = sieve("40 x 42 mesh, 0.25 mm wire");
  // 25.4/42 − 0.25 = 0.354762; 0.385 − 0.354762 = 0.030238; 25.4 · 0.5 / 42² = 0.0071995; by hand.
  expect(cloth.openingMm).toBeCloseTo(0.354762, 6);
  expect(cloth.toleranceMm).toBeCloseTo(0.0071995 + 0.01 + 0.030238, 6);
  const two = sieve("40 × 42 mesh, 0.25/0.22 mm wire");
  expect(two.openingMm).toBeCloseTo(0.384762, 6);
  expect(two.label).toBe("40 × 42 mesh, 0.25/0.22 mm wire");
});

test("a mesh count alone is refused with the spread that its wire leaves", () => {
  expect(read("60 mesh").value).toBeUndefined();
  const { message, severity } = read("60 mesh").issues[0]!;
  expect(severity).toBe("error");
  // Worked by hand: 25.4/60 less 0.12, 0.16, 0.19.
  for (const figure of ["0.303", "0.263", "0.233", "0.12", "0.16", "0.19"]) expect(message).toContain(figure);
});

/** The labels that a remedy proposes, in quotes. */
const proposed = (label: string) =>
  [...(read(label).issues[0]!.remedy ?? "").matchAll(/"([^"]*\d[^"]*)"/g)].map(([, one]) => one!);

test("a mesh count alone shows a wire that fits, and an opening for who has no micrometer", () => {
  // ASTM E11: No. 200 has 0.050 mm wire, so 25.4 / (0.075 + 0.050) = 203 to the inch; No. 45 has 0.224 mm, 43.9.
  // By hand: 25.4 / 200 less 0.036 and 0.057 mm is 0.091 and 0.070 mm.
  expect(proposed("200 mesh")).toEqual(["200 mesh, 0.05 mm wire", "0.081 ± 0.011 mm"]);
  expect(proposed("40 mesh")[0]).toBe("40 mesh, 0.224 mm wire");
  for (const count of [1, 4, 12, 60, 80, 120, 230, 325, 500, 635]) {
    for (const label of proposed(`${count} mesh`)) {
      expect({ label, codes: codes(label) }).toEqual({ label, codes: [] });
      expect(sieve(label).openingMm).toBeLessThan(25.4 / count);
    }
  }
  // Finer than any test sieve: only the wire is left to measure.
  expect(proposed("2000 mesh")).toHaveLength(1);
});

// Old British sieves were named by their count to the inch (openings of BS 410 from memory), so each is a cloth of known
// opening that the spread of its count must hold.
test.each(britishSieves)("the opening of BS $number lies in what its count alone leaves open", (row) => {
  const { openingMm, toleranceMm } = sieve(proposed(`${row.number} mesh`)[1]!);
  expect(Math.abs(openingMm - row.openingMm)).toBeLessThanOrEqual(toleranceMm);
});

test("a number that is in the other series says so, and warns of a wrong name", () => {
  const remedy = read("No. 150").issues[0]!.remedy!;
  for (const one of ['"No. 140" (0.106 mm)', '"No. 170" (0.09 mm)', '"BS 150" (0.106 mm)', '"150 mesh"'])
    expect(remedy).toContain(one);
  expect(remedy).toMatch(/wrong fineness number/);
  expect(read("BS 40").issues[0]!.remedy).toMatch(/"BS 36".*"BS 44".*"No\. 40"/);
  expect(read("No. 41").issues[0]!.remedy).not.toContain("BS");
});

test("a letter for a digit is named", () => {
  for (const [typed, meant] of [
    ["No. 5O", "No. 50"],
    ["No. l00", "No. 100"],
    ["O.425 mm", "0.425 mm"],
    ["BS l5O", "BS 150"],
  ] as const) {
    expect(codes(typed)).toEqual(["sand/sieve-letter-digit"]);
    expect(read(typed).issues[0]!.remedy).toContain(`"${meant}"`);
  }
  expect(read("No. 15O").issues[0]!.remedy).toContain('"BS 150"');
});

test("curly quotes are named", () => {
  expect(codes("“No. 40”")).toEqual(["sand/sieve-curly-quotes"]);
  expect(read("“#200”").issues[0]).toMatchObject({
    message: expect.stringMatching(/curly quotes; use straight ones/),
    remedy: 'Write "#200".',
  });
});

test("a bare number is refused with its readings", () => {
  const { issues, value } = read("40");
  expect(value).toBeUndefined();
  expect(issues[0]!.message).toContain('"No. 40"');
  expect(issues[0]!.message).toContain('"40 mesh"');
  expect(read("44").issues[0]!.message).not.toContain("No. 44");
  expect(read("44").issues[0]!.message).toContain('"BS 44"');
  expect(codes("0.425")).toEqual(["sand/sieve-no-unit"]);
});

test.each([
  ["", "sand/sieve-empty", "No. 40"],
  ["0,425 mm", "sand/sieve-decimal-comma", "0.425 mm"],
  ["No. 41", "sand/sieve-number-unknown", "No. 40"],
  ["No. 4000", "sand/sieve-number-unknown", "No. 635"],
  ["BS 61", "sand/sieve-number-unknown", "BS 60"],
  ["sieve 40", "sand/sieve-unknown", "No. 40"],
  ["40#", "sand/sieve-bare-number", "stamped"],
  ["40M", "sand/sieve-mesh-alone", '"40 mesh, 0.224 mm wire"'],
  ["40-mesh", "sand/sieve-mesh-alone", '"40 mesh, 0.224 mm wire"'],
  ["mesh 40", "sand/sieve-mesh-alone", '"40 mesh, 0.224 mm wire"'],
  ["Nr. 40", "sand/sieve-unknown", 'mean "No. 40"'],
  ["№ 40", "sand/sieve-unknown", 'mean "No. 40"'],
  ["+40", "sand/sieve-unknown", 'mean "No. 40"'],
  ["• No. 40", "sand/sieve-unknown", 'mean "No. 40"'],
  ["No. 40 (0.425 mm)", "sand/sieve-unknown", 'mean "No. 40"'],
  ["425 mic", "sand/sieve-unknown", 'mean "425 µm"'],
  // A series of another maker: its numbers are not those of the US series.
  ["Marlow 35", "sand/sieve-unknown", 'Write "No. 40", "0.425 mm"'],
  // What went through a sieve lies in the pan.
  ["-270", "sand/sieve-unknown", 'mean "pan"'],
  ["<0.053 mm", "sand/sieve-unknown", 'mean "pan"'],
  ["passing 270", "sand/sieve-unknown", 'mean "pan"'],
  ["under 270", "sand/sieve-unknown", 'mean "pan"'],
  ["receiver", "sand/sieve-unknown", 'mean "pan"'],
  ["fines", "sand/sieve-unknown", 'mean "pan"'],
  ["pann", "sand/sieve-unknown", '"pan"'],
  ["lid", "sand/sieve-unknown", "0.425 mm"],
  ["425 mm", "sand/sieve-opening-range", "425 µm"],
  ["0.425 µm", "sand/sieve-opening-range", "0.425 mm"],
  ["40 mesh, 0.7 mm wire", "sand/sieve-wires-overlap", "per inch"],
])("%j is refused (%s) with a way on", (label, code, hint) => {
  expect(read(label).value).toBeUndefined();
  expect(codes(label)).toEqual([code]);
  expect(read(label).issues[0]!.remedy).toContain(hint);
});

test("cloth that is unusually open keeps its figure with a doubt", () => {
  expect(codes("40 mesh, 0.025 mm wire")).toEqual(["sand/sieve-odd-wire"]);
  expect(sieve("40 mesh, 0.025 mm wire").openingMm).toBeCloseTo(0.61, 10);
});

test("every label that the library writes reads back to the same sieve", () => {
  const labels = [
    ...astmSieves.flatMap((row) => [`No. ${row.number}`, `${row.openingMm} mm`]),
    ...britishSieves.map((row) => `BS ${row.number}`),
    ...isoOpeningsMm.map((mm) => `${mm} mm`),
    "0.385 mm",
    "0.385 ± 0.01 mm",
    "40 × 42 mesh, 0.25/0.22 ± 0.005 mm wire",
  ];
  for (const label of labels) expect(sieve(sieve(label).label)).toEqual(sieve(label));
  fc.assert(
    fc.property(
      fc.integer({ min: 4, max: 325 }),
      fc.integer({ min: 25, max: 60 }),
      (count, percentOfPitch) => {
        const wire = Number(((25.4 / count) * (percentOfPitch / 100)).toPrecision(3));
        const first = sieve(`${count} mesh, ${wire} mm wire`);
        expect(sieve(first.label)).toEqual(first);
        expect(first.openingMm + wire).toBeCloseTo(25.4 / count, 9);
      },
    ),
  );
});

test("nothing that can be typed makes it throw, and what is not text does", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9.,#x±/ meshnowirμµ-]{0,20}$/)), (label) => {
      const { value, issues } = read(label);
      expect(value !== undefined || issues.some(({ severity }) => severity === "error")).toBe(true);
    }),
  );
  expect(() => readSieveLabel(40 as never)).toThrow();
});

test("a wire that is thinner than any is spelt in digits, so that the label reads as itself", () => {
  const { label } = sieve("2 mesh, 0.0000001 mm wire");
  expect(label).toBe("2 mesh, 0.0000001 mm wire");
  expect(sieve(label)).toEqual(sieve("2 mesh, 0.0000001 mm wire"));
});
