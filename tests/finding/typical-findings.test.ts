import { expect, test } from "vitest";
import { bandStandings, typicalStanding } from "../../lib/finding/typical-findings.ts";
import { bands } from "../../lib/sand/bands.ts";
import { permeabilityModel } from "../../lib/sand/permeability-model.ts";
import { type TypicalValue, typicalFigure } from "../../lib/sand/typical-value.ts";

const origin = {
  unit: "kPa",
  holds: "our own: an invented range",
  source: "An invented relation, for this test",
  tag: "our own",
} as const;
const curve = (low: number, high: number): TypicalValue =>
  typicalFigure(origin, { value: (low + high) / 2, low, high });
const batch = (value: number, half?: number) => ({
  batch: "Batch 2",
  property: "green compression" as const,
  value,
  ...(half === undefined ? {} : { low: value - half, high: value + half }),
  figure: half === undefined ? `${value} kPa` : `${value} ± ${half} kPa`,
});
const at = "8 % bentonite";

test("inside, above, below, across: the side and how sure it is", () => {
  const inside = typicalStanding(batch(60, 5), curve(40, 80), at);
  expect(inside.code).toBe("typical/on-curve");
  expect(inside.text).toBe(
    "60 ± 5 kPa: the green compression of Batch 2 lies within 40 to 80 kPa, typical at 8 % bentonite.",
  );
  expect(inside.because[0]).toContain("inside is more than 98 %");
  expect(typicalStanding(batch(95, 5), curve(40, 80), at).text).toContain("lies above 40 to 80 kPa");
  expect(typicalStanding(batch(30, 5), curve(40, 80), at).text).toContain("lies below 40 to 80 kPa");
  const across = typicalStanding(batch(80, 10), curve(40, 80), at);
  expect(across.code).toBe("typical/across-curve");
  expect(across.text).toContain("the edge at 80");
  // The edge at the middle of a symmetric ±: a chance of one half.
  expect(across.because[0]).toContain("inside is 50 %");
  // Half-width 10 is 1.96 sd, so 5 inside the edge is 0.98 sd: Φ(0.98) = 0.836 (table of the normal distribution).
  expect(typicalStanding(batch(75, 10), curve(40, 80), at).because[0]).toContain("inside is 84 %");
});

test("the edge that is named is the one within the ±", () => {
  const lopsided = { ...batch(55), low: 30, high: 60, figure: "30 to 60 kPa" };
  expect(typicalStanding(lopsided, curve(40, 68), at).text).toContain("the edge at 40");
});

test("a curve never decides; without a ± no sureness is claimed; without a curve it is said why", () => {
  for (const value of [20, 60, 120])
    expect(typicalStanding(batch(value, 5), curve(40, 80), at).tone).toBe("note");
  const unsure = typicalStanding(batch(95), curve(40, 80), at);
  expect(unsure.code).toBe("typical/unsure");
  expect(unsure.text).toContain("how sure that is cannot be said");
  const refused = typicalStanding(
    { ...batch(6, 1), property: "permeability" },
    permeabilityModel({ gfn: 88, clayPercent: 35.7 }),
    "fineness 88",
  );
  expect(refused.code).toBe("typical/no-curve");
  expect(refused.because[0]).toContain("35.7 % clay");
});

const bentonite = bands({ metal: "aluminium", bond: "bentonite" });
const moisture = (value: number, half: number) => ({
  batch: "Batch 3",
  property: "moisture" as const,
  value,
  low: value - half,
  high: value + half,
  figure: `${value} ± ${half} % of damp mass`,
});

test("usual ranges: the one that was read decides, hints are told together and decide nothing", () => {
  const found = bandStandings(moisture(4, 0.2), bentonite);
  // Standard practice of a thesis, 3.5 to 4.5 % (read); our own 3 to 4.5 and common practice 3 to 5 % together.
  expect(found.map(({ tone }) => tone).sort()).toEqual(["good", "note"]);
  const hint = found.find(({ tone }) => tone === "note")!;
  expect(hint.text).toContain(
    "3 to 4.5 (hand-rammed, our own) and 3 to 5 (synthetic sand, common practice) % of damp mass",
  );
  expect(hint.because).toContain(
    "No source was read that recommends this range: it decides nothing by itself.",
  );
});

test("over-wet bentonite sand: the hazard stands in the finding", () => {
  const found = bandStandings(moisture(6.5, 0.2), bentonite);
  expect(found.length).toBeGreaterThan(0);
  for (const { code, because } of found) {
    expect(code).toBe("typical/out-of-range");
    expect(because[0]).toContain("erupt as steam");
  }
  expect(bandStandings(moisture(4.5, 0.2), bentonite).map(({ code }) => code)).toContain(
    "typical/across-range",
  );
});

test("permeability is held only against ranges of its fineness, clay only against the same clay", () => {
  const pn = { ...moisture(60, 5), property: "permeability" as const, figure: "60 ± 5" };
  expect(bandStandings(pn, bentonite).map(({ code }) => code)).toEqual(["typical/range-needs-fineness"]);
  expect(bandStandings(pn, bentonite, { gfn: 80 }).map(({ code }) => code)).toEqual(["typical/in-range"]);
  const clay = { ...moisture(8, 0.3), property: "clay" as const };
  expect(bandStandings(clay, bentonite)).toEqual([]);
  const live = bandStandings(clay, bentonite, { clayIs: "live bentonite" });
  expect(live.map(({ tone }) => tone)).toEqual(["note"]);
  expect(live[0]!.text).toContain("7 to 10");
});
