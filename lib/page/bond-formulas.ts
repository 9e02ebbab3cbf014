// How the state of the bond is worked out, as formulas of a sheet over what was tested.

interface Shown {
  readonly formula: string;
  readonly source: string;
}

const relations = "ICRI Report 610 (2003), Heine–Green parameters";
const equilibrium = "the relation that equilibriumMoisturePercent names, its ± 15 % (our own)";
const clay = "clay: the clay that is meant here, % of dry mix";

/** Names: strength, moisture, compactability and clay of the batch. tests/page/shown-formulas.test.ts runs each. */
export const bondFormulas: Readonly<
  Record<"waterPerClay" | "available" | "working" | "mulling" | "equilibrium" | "moistureAbove", Shown>
> = {
  waterPerClay: {
    formula: "moisture / (clay * (1 - moisture / 100))",
    source: `algebra; moisture as tested, else as weighed; ${clay}`,
  },
  available: { formula: "0.105 * strength / 1 psi + 1.316 * moisture", source: relations },
  working: {
    formula: "15.29 * strength / 1 psi / (132.1 - 1 * compactability)",
    source: relations,
  },
  mulling: { formula: "100 * Working bond / Available bond", source: relations },
  equilibrium: {
    formula: "equilibriumMoisturePercent(clay, compactability)",
    source: `${equilibrium}; ${clay}`,
  },
  moistureAbove: { formula: "moisture - Equilibrium moisture", source: equilibrium },
};
