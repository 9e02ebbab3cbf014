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

test("every band says where it comes from and lies where a fineness number can", () => {
  for (const band of every) {
    expect(band.low).toBeLessThan(band.high);
    expect(band.low).toBeGreaterThanOrEqual(3);
    expect(band.high).toBeLessThanOrEqual(300);
    expect(band.source.length).toBeGreaterThan(20);
    expect(Object.isFrozen(band)).toBe(true);
  }
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
  const list = bands({ metal: "aluminium", bond: "bentonite" });
  expect(list.map(({ tag }) => tag)).toEqual(["our own", "common practice"]);
  expect(list.filter(decides)).toEqual([]);
});

// China Materials Engineering Canon vol. 19, as quoted: 55–70 against burn-on.
test("grey iron in bentonite sand: 55 to 70 was read and decides", () => {
  expect(ends(bands({ metal: "grey iron", bond: "bentonite" }).filter(decides))).toEqual([[55, 70]]);
});

test("what is from memory, our own, common practice or only a report never decides", () => {
  for (const band of every.filter(decides)) {
    expect(["read", "derived"]).toContain(band.tag);
    expect(band.claim).toBe("recommended");
  }
});

test("a property without bands and a metal without bands give an empty list", () => {
  expect(bands({ metal: "aluminium", bond: "natural", property: "density" })).toEqual([]);
  expect(bands({ metal: "copper-nickel", bond: "bentonite" })).toEqual([]);
});

test("the usual other names of the metals", () => {
  expect(metalNamed(" Aluminum ")).toBe("aluminium");
  expect(metalNamed("bronze")).toBe("brass and bronze");
  expect(metalNamed("Cast iron")).toBe("grey iron");
  expect(metalNamed("iron")).toBeUndefined();
  expect(metalNamed("constructor")).toBeUndefined();
});
