// The list of what a formula may use, as a page shows it.

import { expect, test } from "vitest";
import { sheetFunctions } from "../../lib/page/sheet-functions.ts";
import { formulaFunctions } from "../../lib/sheet/functions.ts";

test("every function that a formula may call stands in the list, with its arguments and without their units", () => {
  const told = JSON.stringify(sheetFunctions());
  expect(formulaFunctions.length).toBeGreaterThan(60);
  for (const { name } of formulaFunctions) expect(told).toContain(`${name}(`);
  expect(told).toContain("equilibriumMoisturePercent(liveClayPercent, compactabilityPercent)");
  expect(told).toContain("shearKPa(loadKg, diameterMm, planes or nothing)");
});
