// Units through formulas. Conversion factors by NIST SP 811, appendix B, unless it says otherwise.

import { expect, test } from "vitest";
import { faults, formula, worked } from "./formula-scope.ts";

test("a moisture is worked out from two weighings: 100 (damp − dry) / damp", () => {
  // TJFS-201: 25 g damp, 23.414 g dry.
  const row = { wet: 25, dry: 23.414 };
  const { value, unit } = worked("100 * (wet - dry) / wet", row, { wants: "% of damp mass" });
  expect(value).toBeCloseTo(6.344, 3);
  expect(unit).toBe("% of damp mass");
  expect(worked("percentOf(wet - dry, wet)", row, { wants: "% of damp mass" }).value).toBeCloseTo(6.344, 3);
});

test("a label that was put on a plain number is told, one that came with it is not", () => {
  expect(formula("(wet - dry) / wet", { wants: "% of damp mass" }).percentPutOn).toBe(true);
  expect(formula("moisture", { wants: "% of damp mass" }).percentPutOn).toBeUndefined();
  expect(formula("percentOf(dry, wet)", { wants: "% of damp mass" }).percentPutOn).toBeUndefined();
});

test("sums take the unit of the left, and need one kind of unit", () => {
  expect(worked("wet + heap", { wet: 5, heap: 2 })).toMatchObject({ value: 2005, unit: "g" });
  expect(worked("heap + wet", { wet: 5, heap: 2 })).toMatchObject({ value: 2.005, unit: "kg" });
  expect(faults("5 g + 3 cm")).toEqual(["5 g + 3 cm | g and cm cannot be added."]);
  expect(faults("2 * (wet - height)")).toEqual(["wet - height | g and mm cannot be subtracted."]);
  expect(faults("wet + 3")).toEqual(["wet + 3 | g and a plain number cannot be added."]);
  expect(worked("max(wet - dry, 0)", { wet: 5, dry: 7 })).toMatchObject({ value: 0, unit: "g" });
});

test("products make their own unit, and units of one kind cancel", () => {
  expect(worked("wet / heap", { wet: 5, heap: 2 })).toMatchObject({ value: 0.0025, unit: undefined });
  expect(worked("height * (3 cm)", { height: 20 })).toMatchObject({ value: 600, unit: "mm²" });
  expect(worked("sqrt(height ^ 2)", { height: 20 })).toMatchObject({ value: 20, unit: "mm" });
  expect(worked("cbrt(height³)", { height: 20 }).unit).toBe("mm");
  expect(worked("wet / height^3", { wet: 8, height: 2 })).toMatchObject({ value: 1, unit: "g/mm³" });
  expect(worked("wet * (1.5 g/cm³)", { wet: 1 }).unit).toBe("g²/cm³");
  expect(worked("wet / (1.6 g/cm³)", { wet: 3.2 }, { wants: "ml" }).value).toBeCloseTo(2, 12);
  expect(worked("1 / (2 s)").unit).toBe("1/s");
});

test("force over area is a strength in any unit that is asked for", () => {
  // 1 lbf is 4.448 222 N, 1 psi 6.894 757 kPa.
  const text = "load * 9.80665 m/s^2 / (1 in²)";
  expect(worked(text, { load: 1 }, { wants: "psi" }).value).toBeCloseTo(1, 12);
  expect(worked(text, { load: 1 }, { wants: "kPa" }).value).toBeCloseTo(6.894757, 6);
  expect(faults("load / (1 in²)", { wants: "kPa" })[0]).toContain("lb/in², and kPa is asked for");
});

test("the same data in psi and kPa, lb and kg give the same result", () => {
  const kilos = new Map([["load", { kind: "number", per: "row", unit: formula("1 kg").unit! } as const]]);
  const text = "compressionKPa(load, 2 in)";
  const metric = worked(text, { load: 0.45359237 * 20 }, { names: kilos }).value;
  expect(worked(text, { load: 20 }).value).toBeCloseTo(metric, 12);
  expect(worked("strength", { strength: 10 }, { wants: "kPa" }).value).toBeCloseTo(68.94757, 5);
});

test("a difference of temperatures is no temperature", () => {
  // (30 degC - 20 degC) to K must be 10 degrees of difference, not 283.15 K.
  expect(worked("30 °C - 20 °C")).toMatchObject({ value: 10, unit: "°C difference" });
  expect(faults("30 °C - 20 °C", { wants: "K" })[0]).toContain("°C difference, and K is asked for");
  expect(worked("inside - outside", { inside: 20, outside: 50 })).toMatchObject({ unit: "°C difference" });
  expect(worked("inside - outside", { inside: 20, outside: 50 }).value).toBeCloseTo(10, 11);
  expect(worked("outside - inside", { inside: 20, outside: 50 })).toMatchObject({ unit: "°F difference" });
  expect(worked("outside - inside", { inside: 20, outside: 50 }).value).toBeCloseTo(-18, 11);
  expect(worked("inside + warming", { inside: 20, warming: 5 })).toMatchObject({ value: 25, unit: "°C" });
  expect(worked("outside + warming", { outside: 32, warming: 5 }).value).toBeCloseTo(41, 11);
  expect(worked("outside", { outside: 212 }, { wants: "°C" }).value).toBeCloseTo(100, 11);
  expect(worked("inside", { inside: 20 }, { wants: "K" }).value).toBe(293.15);
  expect(worked("-5 °C")).toMatchObject({ value: -5, unit: "°C" });
});

test.each([
  ["20 °C + 10 K", "Two temperatures, in °C and K, have no sum."],
  ["20 °C + 10 °C", "Two temperatures, in °C and °C, have no sum."],
  ["inside * 2", "A temperature in °C cannot be multiplied: its zero is not absolute zero."],
  ["2 / inside", "A temperature in °C cannot be divided"],
  ["inside ^ 2", "cannot be raised to a power"],
  ["sqrt(inside)", "cannot be put under a root"],
  ["percentOf(inside, outside)", "cannot be made a percentage"],
  ["-inside", "cannot be turned about zero"],
  ["inside + 5", "°C and a plain number cannot be added."],
  ["inside > 0", "°C and a plain number cannot be compared."],
  ["warming - inside", "°C difference and °C cannot be subtracted."],
  ["inside > warming", "°C and °C difference cannot be compared."],
  ["sum(inside)", "Temperatures in °C have no sum."],
])("%s is refused: %s", (text, message) => {
  expect(faults(text)).toHaveLength(1);
  expect(faults(text)[0]).toContain(message);
});

test("kelvin is a measure from absolute zero", () => {
  expect(worked("absolute * 2", { absolute: 300 })).toMatchObject({ value: 600, unit: "K" });
  expect(worked("absolute / absolute", { absolute: 300 })).toMatchObject({ value: 1, unit: undefined });
  expect(
    worked("(absolute - 273.15 K) * (2 W/(m·K))", { absolute: 283.15 }, { wants: "W/m" }).value,
  ).toBeCloseTo(20, 11);
});

test("a percentage keeps what it is of on + and −, and loses it on × and ÷", () => {
  expect(worked("moisture + moisture", { moisture: 3 })).toMatchObject({ value: 6, unit: "% of damp mass" });
  expect(worked("moisture + 1", { moisture: 3 })).toMatchObject({ value: 4, unit: "% of damp mass" });
  expect(worked("percent + moisture", { moisture: 3, percent: 1 }).unit).toBe("% of damp mass");
  expect(worked("moisture / 100 * heap", { moisture: 3, heap: 10 })).toMatchObject({
    value: 0.3,
    unit: "kg",
  });
  expect(worked("max(0, moisture, percent)", { moisture: 3, percent: 1 }).unit).toBe("% of damp mass");
  expect(worked("moisture + 2 * percent / 4", { moisture: 3, percent: 1 })).toMatchObject({
    value: 3.5,
    unit: "% of damp mass",
  });
  expect(worked("(moisture + 3 * moisture) / 2", { moisture: 3 })).toMatchObject({
    value: 6,
    unit: undefined,
  });
  expect(faults("moisture + 2 * clay")[0]).toContain("cannot be added");
  expect(faults("moisture + n * moisture")[0]).toContain("cannot be added");
  expect(faults("moisture + clay")[0]).toContain("% of damp mass and % of dry mix cannot be added.");
  expect(faults("moisture > clay")[0]).toContain("cannot be compared");
  expect(faults("moisture + n")[0]).toContain("% of damp mass and a plain number cannot be added.");
  expect(faults("clay", { wants: "% of damp mass" })[0]).toContain(
    "% of dry mix, and % of damp mass is asked for",
  );
});

test.each([
  ["ln(wet)", "ln needs a plain number, and this is in g."],
  ["log10(moisture)", "log10 needs a plain number, and this is in % of damp mass."],
  ["exp(3 g)", "exp needs a plain number, and this is in g."],
  ["wet ^ n", "A figure in g can only be raised to a power that is written as a number."],
  ["2 ^ wet", "A power needs a plain number, and this is in g."],
  ["n > 2 ? wet : height", "g and mm cannot be two answers of one question."],
  ["if(n, wet, dry)", "if needs a condition, and this is a plain number."],
  ["clamp(wet, 1 g, 2 mm)", "g and mm cannot be compared."],
  ["min(0, 5, wet)", "g and a plain number cannot be compared."],
  ["wet", "g, and kPa is asked for"],
])("%s is refused: %s", (text, message) => {
  expect(faults(text, text === "wet" ? { wants: "kPa" } : {}).join()).toContain(message);
});

test("quantities are read as a founder writes them", () => {
  expect(worked("1/2 in", {}, { wants: "mm" }).value).toBeCloseTo(12.7, 12);
  expect(worked("13/32 in + 0 mm", {}, { wants: "in" }).value).toBe(13 / 32);
  expect(worked("10 cm of water", {}, { wants: "mmH2O" }).value).toBeCloseTo(100, 12);
  expect(worked("2 US gal", {}, { wants: "in³" }).value).toBeCloseTo(462, 10);
  expect(worked("6 m / 2 s")).toMatchObject({ value: 3, unit: "m/s" });
  expect(worked("height² × 2 ÷ 4 − 1 mm²", { height: 2 })).toMatchObject({ value: 1, unit: "mm²" });
});

test("dates give days, and are compared with dates", () => {
  expect(worked("tested - made", { tested: 20_575, made: 20_570 })).toMatchObject({ value: 5, unit: "d" });
  expect(worked('tested >= "2026-05-02"', { tested: 20_575 }).value).toBe(1);
  expect(worked('tested > "2026-05-02"', { tested: 20_575 }).value).toBe(0);
  expect(faults("tested > 2026-05-02")[0]).toContain("a date and a plain number cannot be compared.");
  expect(faults('tested > "2 May"')[0]).toContain("needs a date");
  expect(faults("tested + made")[0]).toContain("+ needs figures, and this is a date.");
});
