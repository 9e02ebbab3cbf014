import { expect, test } from "vitest";
import { aimsFromBands } from "../../lib/sand/aims-from-bands.ts";

const by = (found: ReturnType<typeof aimsFromBands>, property: string) =>
  found.aims.find((aim) => aim.property === property);
const codes = ({ issues }: { issues: readonly { code: string }[] }) => issues.map(({ code }) => code);

test("aluminium in bentonite, hand-rammed: what was read comes first, our own fills in and says so", () => {
  const found = aimsFromBands({ metal: "aluminium", bond: "bentonite", gfn: 80 });
  // Standard practice of a thesis (read): 3.5 to 4.5 % water, 7.5 to 9 % bentonite. The rest: our own proposal.
  expect(by(found, "moisture")).toMatchObject({
    low: 3.5,
    high: 4.5,
    basis: "damp mass",
    tag: "read",
    decides: true,
  });
  expect(by(found, "clay")).toMatchObject({ low: 7.5, high: 9, tag: "read" });
  expect(by(found, "compactability")).toMatchObject({ low: 42, high: 48, tag: "our own", decides: false });
  expect(by(found, "green compression")).toMatchObject({ low: 50, high: 100, tag: "our own" });
  expect(by(found, "permeability")).toMatchObject({ low: 25, high: 110, tag: "our own" });
  expect(by(found, "moisture")!.says).toMatch(/^3.5 to 4.5 % of damp mass, from a usual range \(read\)/);
  expect(codes(found)).toEqual(["sand/aims-weak"]);
});

test("permeability has no aim without a fineness, nor with one that no band goes with", () => {
  for (const gfn of [undefined, 55]) {
    const found = aimsFromBands({
      metal: "aluminium",
      bond: "bentonite",
      ...(gfn === undefined ? {} : { gfn }),
    });
    expect(by(found, "permeability")).toBeUndefined();
    expect(codes(found)).toContain("sand/aim-needs-fineness");
  }
  expect(
    by(aimsFromBands({ metal: "aluminium", bond: "bentonite", gfn: 135 }), "permeability"),
  ).toBeUndefined();
});

test("practice: machine bands are never handed to a hand rammer", () => {
  const hand = aimsFromBands({ metal: "grey iron", bond: "bentonite" });
  expect(by(hand, "green compression")!.high).not.toBe(200);
  const machine = aimsFromBands({
    metal: "grey iron",
    bond: "bentonite",
    practice: "machine, high pressure",
  });
  // Foseco Ferrous Foundryman's Handbook (from memory): 150 to 200 kPa, compactability 38 to 40 %.
  expect(by(machine, "green compression")).toMatchObject({ low: 150, high: 200, tag: "from memory" });
  expect(by(machine, "compactability")).toMatchObject({ low: 38, high: 40 });
});

test("natural sand: its moisture comes with the warning that it is none for bentonite", () => {
  const found = aimsFromBands({ metal: "aluminium", bond: "natural" });
  expect(codes(found)).toContain("sand/aim-natural");
  expect(by(found, "moisture")!.band.bond).toBe("natural");
  expect(codes(found)).toContain("sand/aim-not-known"); // no compactability was found for natural sands
});

test("a bond or metal that is not known throws", () => {
  expect(() => aimsFromBands({ metal: "lead" as never, bond: "natural" })).toThrow(RangeError);
  expect(() => aimsFromBands({ metal: "aluminium" } as never)).toThrow(/bond/);
});
