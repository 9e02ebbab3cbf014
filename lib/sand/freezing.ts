// How long a section takes to freeze, for comparing one section with another: never a time to open a mould.

import type { Metal } from "./metals.ts";
import { effusivity, type MetalHeat, metalHeats, type SandHeat, sandHeats } from "./moulding-heat.ts";
import { requireAboveZero } from "./require.ts";

/**
 * Freezing time, s: C M², M the casting modulus (volume ÷ cooled surface; a plate's is half its thickness).
 * modulusMm: > 0, mm. constantSMm2: > 0, s/mm². Else RangeError.
 * For comparing sections: the constant holds for one metal, pouring temperature and sand, and was never yours. What has
 * frozen is still near its freezing point, and thick parts are liquid inside: no time to open a mould follows.
 * Source: Chvorinov's rule.
 * @example freezingSeconds({ modulusMm: 8.333, constantSMm2: 2.232 }) // 155
 */
export function freezingSeconds({
  modulusMm,
  constantSMm2,
}: {
  readonly modulusMm: number;
  readonly constantSMm2: number;
}): number {
  requireAboveZero("freezingSeconds", { modulusMm, constantSMm2 });
  return constantSMm2 * modulusMm ** 2;
}

/**
 * Casting modulus, mm: volume ÷ cooled surface. Both > 0, else RangeError.
 * Source: its definition.
 * @example
 * castingModulusMm({ volumeMm3: Math.PI * 250 ** 2 * 20, surfaceMm2: 2 * Math.PI * 250 ** 2 + Math.PI * 500 * 20 })
 * // 9.26, a disc of 500 by 20 mm
 */
export function castingModulusMm({
  volumeMm3,
  surfaceMm2,
}: {
  readonly volumeMm3: number;
  readonly surfaceMm2: number;
}): number {
  requireAboveZero("castingModulusMm", { volumeMm3, surfaceMm2 });
  return volumeMm3 / surfaceMm2;
}

/**
 * Chvorinov's constant by theory, s/mm²: (π/4) (ρ (H + c ΔT)/(Tf − T₀))²/(kρc), ΔT the superheat, for a flat face.
 *
 * metal, sand: from moulding-heat or alike. sandC: below freezing. pouredC: at freezing (no superheat) or above. Else
 * RangeError. Perfect contact, a flat face, all sand at its start but the heated skin.
 * Superheat adds to H before it is squared; some handbooks print 1 + (c ΔT/H)² instead, which is less.
 * Source: Flemings; Poirier & Geiger (from memory). Example: aluminium, Flemings' sand, 660 °C: 1.68; from 720 °C: 2.28.
 */
export function freezingConstantSMm2({
  metal,
  sand,
  pouredC = metal.freezesC,
  sandC = 20,
}: {
  readonly metal: MetalHeat;
  readonly sand: SandHeat;
  readonly pouredC?: number;
  readonly sandC?: number;
}): number {
  const { freezesC, latentKJKg, densityKgM3, liquidJKgK } = metal;
  if (!(pouredC >= freezesC && freezesC > sandC))
    throw new RangeError(
      `freezingConstantSMm2: pouredC, freezing and sandC must fall in this order, got ${pouredC}, ${freezesC}, ${sandC}`,
    );
  const heatJKg = 1000 * latentKJKg + liquidJKgK * (pouredC - freezesC);
  const perDegree = (densityKgM3 * heatJKg) / (freezesC - sandC);
  return ((Math.PI / 4) * (perDegree / effusivity(sand)) ** 2) / 1e6;
}

/**
 * The range of the constant for a metal, s/mm²: the lowest without superheat and the highest from pouredC, over three
 * published sands. For aluminium a textbook's 2.0 and the 2.23 of its exercise lie inside (the attribution from memory).
 * pouredC: the metal's usual one unless given; one at or below freezing counts as freezing.
 * Source: freezingByShape over the published sands.
 * @example freezingConstants("aluminium") // { low: 1.07, high: 2.51 }
 */
export function freezingConstants(
  metal: Metal,
  pouredC?: number,
): { readonly low: number; readonly high: number; readonly source: string } {
  const [heat] = metalHeats[metal];
  const at = Math.max(heat!.freezesC, pouredC ?? heat!.pouredC);
  const none = sandHeats.map((sand) => freezingConstantSMm2({ metal: heat!, sand }));
  const hot = sandHeats.map((sand) => freezingConstantSMm2({ metal: heat!, sand, pouredC: at }));
  return {
    low: Math.min(...none),
    high: Math.max(...hot),
    source: `Chvorinov's constant by theory (Flemings, from memory) with three published sands, ${heat!.source}${
      metal === "aluminium" ? "; textbook exercises use 2.0 and 2.23 s/mm²" : ""
    }`,
  };
}

/**
 * Freezing time of a plate and of a sphere of one modulus by conduction into deep sand, s: t = (M/β)²/α with
 * λ = (Tf − T₀) ρs cs/(ρm H); plate β = 2λ/√π; sphere β² = (2/√π) λ β + λ/3, since heat spreads out around it.
 *
 * modulusMm: > 0. metal, sand as freezingConstantSMm2, without superheat. Else RangeError. A lump freezes sooner than a
 * plate of its modulus; real castings lie between.
 * Source: Ghosh & Mallik, Manufacturing Science, example 2.5. Example: iron slab, M 50 mm: 2417; sphere, M 16.67: 196.
 */
export function freezingByShape({
  modulusMm,
  metal,
  sand,
  sandC = 20,
}: {
  readonly modulusMm: number;
  readonly metal: MetalHeat;
  readonly sand: SandHeat;
  readonly sandC?: number;
}): { readonly plateSeconds: number; readonly sphereSeconds: number } {
  requireAboveZero("freezingByShape", { modulusMm });
  const plateSeconds = freezingSeconds({
    modulusMm,
    constantSMm2: freezingConstantSMm2({ metal, sand, sandC }),
  });
  const lambda =
    ((metal.freezesC - sandC) * sand.densityKgM3 * sand.heatJKgK) /
    (metal.densityKgM3 * metal.latentKJKg * 1000);
  const half = lambda / Math.sqrt(Math.PI);
  const plate = 2 * half;
  const sphere = half + Math.sqrt(half ** 2 + lambda / 3);
  return { plateSeconds, sphereSeconds: plateSeconds * (plate / sphere) ** 2 };
}
