// Permeability by home rigs, against published constants and worked examples.

import { expect, test } from "vitest";
import { airViscosityUPaS } from "../../lib/sand/air.ts";
import {
  permeabilityConstant,
  permeabilityFromGd,
  permeabilityM2,
  permeabilityNumber,
} from "../../lib/sand/permeability.ts";
import {
  bleedingVesselPermeability,
  fallingColumnPermeability,
  floatingCanMm,
} from "../../lib/sand/permeability-rigs.ts";
import { specimens } from "../../lib/sand/specimen.ts";

const diameterOf = (areaCm2: number) => Math.sqrt((400 * areaCm2) / Math.PI);

test("constants: 501.275 for the 2 in specimen, 509.296 and 30 557.7 for the 50 mm one", () => {
  const us = permeabilityConstant({ airMl: 2000, ...specimens.us });
  const metric = permeabilityConstant({ airMl: 2000, ...specimens.metric });
  expect(us.toFixed(3)).toBe("501.275");
  expect((60 * us).toFixed(1)).toBe("30076.5");
  expect(metric.toFixed(3)).toBe("509.296");
  expect((60 * metric).toFixed(1)).toBe("30557.7");
  // Printed: 501.28 and 30072 (Scribd 369246990); 30557 (Scribd 393702941); 50.12 (expertsmind), cut short by 0.015 %.
  expect(Math.abs(us / 501.28 - 1)).toBeLessThan(2e-5);
  expect(Math.abs((60 * us) / 30072 - 1)).toBeLessThan(2e-4);
  expect(Math.abs((60 * metric) / 30557 - 1)).toBeLessThan(3e-5);
  expect(Math.abs(us / 501.2 - 1)).toBeLessThan(1.6e-4);
  // 3000.7/t (Scribd 393702941) is a misprint of 3007: no specimen gives it.
  expect(Math.abs((6 * us) / 3000.7 - 1)).toBeGreaterThan(2e-3);
});

test("1 minute at 10 gf/cm²: 50.1", () => {
  // Exam note: 2000 cm³, 50.8 × 50.8 mm, area 20.27: printed 50.1.
  const number = permeabilityNumber({ airMl: 2000, ...specimens.us, waterMm: 100, seconds: 60 });
  expect(number.toFixed(3)).toBe("50.128");
});

test("85 s at 5 gf/cm²: 70.8", () => {
  // P. N. Rao, Manufacturing Technology, from memory.
  const number = permeabilityNumber({ airMl: 2000, ...specimens.us, waterMm: 50, seconds: 85 });
  expect(number.toFixed(2)).toBe("70.77");
});

test("a slip of ten: 38 cm of water were 38 mm", () => {
  // Brawijaya lab report (Scribd 291033794): 2000 mL, 48.2 mm, "38 cm", 0.6 min, 19.625 cm²: printed 215.44, dial 210.
  const run = { airMl: 2000, heightMm: 48.2, diameterMm: diameterOf(19.625), seconds: 36 };
  expect(permeabilityNumber({ ...run, waterMm: 380 }).toFixed(2)).toBe("21.54");
  const asMeant = permeabilityNumber({ ...run, waterMm: 38 });
  expect(asMeant.toFixed(1)).toBe("215.4");
  expect(Math.abs(asMeant / 210 - 1)).toBeLessThan(0.03);
});

test("39.19 of the other group, though its dial said 210", () => {
  // Scribd 329123163: 2000 mL, 4.95 cm, 39 cm, 0.33 min, 19.625 cm²: printed 39.19. Again ten times below the dial.
  const run = { airMl: 2000, heightMm: 49.5, diameterMm: diameterOf(19.625), waterMm: 390, seconds: 19.8 };
  expect(Math.abs(permeabilityNumber(run) - 39.19)).toBeLessThan(0.01);
});

test("Gd: 0.98067 of it is the number; one number is 1.6995e-8 m²/(Pa s) and 3.08e-13 m²", () => {
  // Giesserei-Praxis lexicon for mbar; the rest by hand.
  expect(permeabilityFromGd(100)).toBeCloseTo(98.067, 3);
  expect((permeabilityM2(1, 1) / 1e-6).toExponential(4)).toBe("1.6995e-8");
  expect(permeabilityM2(1).toExponential(2)).toBe("3.08e-13");
  expect((permeabilityM2(1) / 9.869233e-13).toFixed(3)).toBe("0.312");
});

test("air: 18.13 µPa·s at 20 °C; 0.946, 0.973, 1.026 and 1.052 of it at 0, 10, 30 and 40", () => {
  // 17.894 at 15 °C: U.S. Standard Atmosphere 1976, sea level, from memory. Ratios by hand from Sutherland's law.
  expect(airViscosityUPaS(20).toFixed(2)).toBe("18.13");
  expect(airViscosityUPaS(15)).toBeCloseTo(17.894, 2);
  const ratios = [0, 10, 30, 40].map((t) => (airViscosityUPaS(t) / airViscosityUPaS(20)).toFixed(3));
  expect(ratios).toEqual(["0.946", "0.973", "1.026", "1.052"]);
});

test("falling column: 100 cm², 20 to 10 cm, number 50 in 20.8 s", () => {
  // By hand: (a H / (A t)) ln 2 with H 5.08 cm, A 20.27 cm².
  const run = { columnCm2: 100, ...specimens.us, fromMm: 200, toMm: 100, seconds: 20.8 };
  expect(Math.abs(fallingColumnPermeability(run) - 50)).toBeLessThan(0.2);
});

test("bleeding vessel: 20 L, halved, number 50 in 4.0 s", () => {
  const run = { vesselMl: 20_000, ...specimens.us, fromMm: 200, toMm: 100, seconds: 4.0357 };
  expect(bleedingVesselPermeability(run)).toBeCloseTo(50, 2);
});

test("a floating can: grams over square centimetres are gf/cm²", () => {
  expect(floatingCanMm({ netG: 785.4, canCm2: 78.54 })).toBeCloseTo(100, 10);
});
