// What the axes and the tests of a trial are called on its charts.

import type { AxisName } from "../chart/axis-words.ts";
import type { TestName, TrialAxis } from "../log/batch.ts";

export const trialAxisNames: { readonly [axis in TrialAxis]: AxisName } = {
  moisture: { title: "moisture", unit: "%", basis: "damp mass" },
  clay: { title: "bentonite added", unit: "%", basis: "dry mix" },
  compactability: { title: "compactability", unit: "%", basis: "height" },
};

/**
 * A test by its name at an axis: a permeability is a number without a unit, and says so there.
 * @example nameAtAxis("permeability") // "permeability number"
 */
export function nameAtAxis(test: string): string {
  return test === "permeability" ? "permeability number" : test;
}

export const testNames: {
  readonly [test in TestName]?: Omit<AxisName, "title"> & { readonly property: string };
} = {
  compactability: { property: "compactability", unit: "%", basis: "height" },
  "green compression": { property: "green compression strength", unit: "kPa" },
  "green shear": { property: "green shear strength", unit: "kPa" },
  splitting: { property: "splitting strength", unit: "kPa" },
  permeability: { property: "permeability number", unit: "" },
  moisture: { property: "moisture", unit: "%", basis: "damp mass" },
  density: { property: "specimen density", unit: "g/cm³" },
};
