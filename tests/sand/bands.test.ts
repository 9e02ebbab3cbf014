import { expect, test } from "vitest";
import { type Band, decides } from "../../lib/sand/band.ts";
import { bands } from "../../lib/sand/bands.ts";
import { bondNames, metalNamed, metalNames } from "../../lib/sand/metals.ts";

const every = metalNames.flatMap((metal) => bondNames.flatMap((bond) => bands({ metal, bond })));
const ends = (list: readonly Band[]) => list.map(({ low, high }) => [low, high]);

test("a look-up never mixes bonds or metals", () => {
  for (const metal of metalNames) {
    for (const bond of bondNames) {
      for (const band of bands({ metal, bond })) expect([band.metal, band.bond]).toEqual([metal, bond]);
    }
  }
});

test("without a bond, or with one that is not known, it throws", () => {
  expect(() => bands({ metal: "aluminium" } as never)).toThrow(/bentonite, natural/);
  expect(() => bands({ metal: "aluminium", bond: "oil" as never })).toThrow(RangeError);
  expect(() => bands({ metal: "lead" as never, bond: "natural" })).toThrow(RangeError);
});

// Limits no source is needed for: what a figure of each property can be at all.
const possible = {
  fineness: [3, 300],
  moisture: [0.5, 12],
  clay: [1, 60],
  compactability: [20, 65],
  "green compression": [10, 300],
  density: [1.3, 1.8],
  permeability: [1, 500],
} as const;

test("every band says where it comes from and lies where a figure of its property can", () => {
  for (const band of every) {
    const [least, most] = possible[band.property];
    expect(band.low).toBeLessThan(band.high);
    expect(band.low).toBeGreaterThanOrEqual(least);
    expect(band.high).toBeLessThanOrEqual(most);
    expect(band.source.length).toBeGreaterThan(20);
    expect(Object.isFrozen(band)).toBe(true);
  }
});

test("a percentage names its basis, a clay says which clay", () => {
  for (const band of every) {
    if (band.unit === "%") expect(band.basis).toMatch(/mass|dry|height|mix/);
    expect(band.clayIs !== undefined).toBe(band.property === "clay");
    if (band.property === "moisture") expect(band.basis).toBe("damp mass");
  }
});

test("moisture of natural sands never reaches a look-up for bentonite", () => {
  // Class table (from memory): natural sands 6 to 8.5 %. Bentonite: no range read or proposed goes above 6 %.
  const bentonite = metalNames.flatMap((metal) => bands({ metal, bond: "bentonite", property: "moisture" }));
  expect(bentonite.length).toBeGreaterThan(10);
  expect(Math.max(...bentonite.map(({ high }) => high))).toBeLessThanOrEqual(6);
  const natural = bands({ metal: "aluminium", bond: "natural", property: "moisture" });
  expect(Math.max(...natural.map(({ high }) => high))).toBe(9);
});

test("a permeability band that follows fineness names it", () => {
  // Class table (from memory): aluminium 7 to 13 goes with fineness 160 to 225.
  const [classRow] = bands({ metal: "aluminium", bond: "natural", property: "permeability" }).filter(
    ({ low }) => low === 7,
  );
  expect(classRow).toMatchObject({ high: 13, goesWithFineness: { low: 160, high: 225 }, tag: "from memory" });
  const [own] = bands({ metal: "aluminium", bond: "bentonite", property: "permeability" });
  expect(own?.goesWithFineness).toEqual({ low: 70, high: 130 });
});

// Class table rows in psi (from memory); 1 psi = 6.894757 kPa: 6.5 to 7.5 psi is 45 to 52 kPa.
test("strengths of the class table are in kPa", () => {
  const rows = bands({ metal: "aluminium", bond: "natural", property: "green compression" });
  expect(ends(rows)).toContainEqual([45, 52]);
});

// Gana et al. (abstract): 35–90 recommended for non-ferrous work in natural sands. Class table: from memory.
test("aluminium in natural sand: the ranges that disagree all stand, only the one read decides", () => {
  const list = bands({ metal: "aluminium", bond: "natural", property: "fineness" });
  expect(ends(list)).toEqual([
    [35, 90],
    [61, 88],
    [160, 225],
  ]);
  expect(ends(list.filter(decides))).toEqual([[35, 90]]);
});

test("aluminium in bentonite sand: our own and common practice, and neither decides", () => {
  const list = bands({ metal: "aluminium", bond: "bentonite", property: "fineness" });
  expect(list.map(({ tag }) => tag)).toEqual(["our own", "common practice"]);
  expect(list.filter(decides)).toEqual([]);
});

// China Materials Engineering Canon vol. 19, as quoted: 55–70 against burn-on.
test("grey iron in bentonite sand: 55 to 70 was read, but its source names no bond, so it does not decide", () => {
  const iron = bands({ metal: "grey iron", bond: "bentonite", property: "fineness" });
  expect(ends(iron)).toContainEqual([55, 70]);
  expect(iron.filter(decides)).toEqual([]);
});

test("what is from memory, our own, common practice or only a report never decides", () => {
  for (const band of every.filter(decides)) {
    expect(["read", "derived"]).toContain(band.tag);
    expect(band.claim).toBe("recommended");
  }
});

test("a property without bands and a metal without bands give an empty list", () => {
  expect(bands({ metal: "aluminium", bond: "natural", property: "density" })).toEqual([]);
  expect(bands({ metal: "copper-nickel", bond: "bentonite", property: "fineness" })).toEqual([]);
});

test("the usual other names of the metals", () => {
  expect(metalNamed(" Aluminum ")).toBe("aluminium");
  expect(metalNamed("bronze")).toBe("brass and bronze");
  expect(metalNamed("Cast iron")).toBe("grey iron");
  expect(metalNamed("iron")).toBeUndefined();
  expect(metalNamed("constructor")).toBeUndefined();
});
