// A plate that gives off all its heat into sand on both sides: how hot the sand gets, and how deep.

import { kept } from "../quantity/kept.ts";
import { diffusivityM2S, type MetalHeat, type SandHeat } from "./moulding-heat.ts";
import { requireAboveZero } from "./require.ts";

/** Half a plate, mm: the answers are multiples of it, so that any thickness would do. */
const HALF_MM = 5;
/** Finer where heat does not come far: metals that freeze below 800 °C. */
const stepOf = (metal: MetalHeat): number => (metal.freezesC < 800 ? 0.25 : 0.5);
const DEEP_MM = 120;
const SAND_C = 20;

/**
 * How deep sand passes each temperature beside a plate that stays in the mould, in multiples of the plate's half
 * thickness, and the sand that this is for each kilogram of metal: depth × ρ(sand)/ρ(metal).
 *
 * metal, sand: from moulding-heat or alike. pouredC: above freezing, else RangeError. targetsC: above 20 °C, each; where
 * the sand does not reach one, 0. Independent of the section: heat and way grow alike.
 * Method: conduction into 120 mm of dry sand of 20 °C by explicit differences, 0.25 mm (0.5 for metals above 800 °C) and 0.4 dx²/α, the metal one
 * well-stirred store in perfect contact, peak kept at each depth; within about 2 % of finer grids.
 * A gap at the face, water in the sand and an early shake-out heat it less; corners and cores more.
 * Source: our own model on published properties.
 * @example
 * plateHeatedDepths({ metal: metalHeats.aluminium[0]!, sand: sandHeats[0]!, pouredC: 720, targetsC: [600, 300] })
 * // [{ perHalf: 0.156, sandKgPerKg: 0.097 }, { perHalf: 1.50, sandKgPerKg: 0.94 }], finer grids: 0.153 and 1.48
 */
export function plateHeatedDepths({
  metal,
  sand,
  pouredC = metal.pouredC,
  targetsC,
}: {
  readonly metal: MetalHeat;
  readonly sand: SandHeat;
  readonly pouredC?: number;
  readonly targetsC: readonly number[];
}): readonly { readonly targetC: number; readonly perHalf: number; readonly sandKgPerKg: number }[] {
  requireAboveZero("plateHeatedDepths", { aboveFreezing: pouredC - metal.freezesC });
  for (const targetC of targetsC) requireAboveZero("plateHeatedDepths", { aboveStart: targetC - SAND_C });
  const lowestC = Math.min(...targetsC);
  const key = JSON.stringify([metal, sand, pouredC, lowestC]);
  const peaks = known.get(key) ?? peaksBeside(metal, sand, pouredC, lowestC);
  known.set(key, peaks);
  return targetsC.map((targetC) => {
    const perHalf = depthPast(peaks, targetC, stepOf(metal)) / HALF_MM;
    return { targetC, perHalf, sandKgPerKg: (perHalf * sand.densityKgM3) / metal.densityKgM3 };
  });
}

/** A page asks for the same few metals and sands again and again. */
const known = kept<Float64Array>(200_000, (peaks) => 4 * peaks.length);

/** Peak temperature at each step of depth, the face first, run until nothing warms past the lowest target any more. */
function peaksBeside(metal: MetalHeat, sand: SandHeat, pouredC: number, lowestC: number): Float64Array {
  const alpha = diffusivityM2S(sand);
  const dx = stepOf(metal) / 1000;
  const fourier = 0.4;
  const dt = (fourier * dx ** 2) / alpha;
  const count = DEEP_MM / stepOf(metal) + 1;
  const mass = metal.densityKgM3 * (HALF_MM / 1000);
  const [latent, liquid, solid] = [1000 * metal.latentKJKg, metal.liquidJKgK, metal.solidJKgK];
  // Heat of a kilogram over that of the solid at its freezing point, J.
  let heat = latent + liquid * (pouredC - metal.freezesC);
  const metalC = (): number => {
    if (heat > latent) return metal.freezesC + (heat - latent) / liquid;
    return heat >= 0 ? metal.freezesC : metal.freezesC + heat / solid;
  };
  let now = new Float64Array(count).fill(SAND_C);
  let next = new Float64Array(count).fill(SAND_C);
  now[0] = pouredC;
  const peaks = Float64Array.from(now);
  const perStep = (sand.conductivityWMK * dt) / (dx * mass);
  const faceShare = (sand.densityKgM3 * sand.heatJKgK * dx) / 2;
  // As far as heat has come: nothing beyond it moves.
  let reach = 2;
  while (now[0]! > lowestC) {
    const before = now[0]!;
    heat -= perStep * (before - now[1]!);
    next[0] = metalC();
    // The half step of sand at the face warms and cools with the metal.
    heat -= (faceShare * (next[0]! - before)) / mass;
    next[0] = metalC();
    for (let i = 1; i < reach; i++) {
      const value = now[i]! + fourier * (now[i - 1]! - 2 * now[i]! + now[i + 1]!);
      next[i] = value;
      if (value > peaks[i]!) peaks[i] = value;
    }
    if (reach < count - 1 && next[reach - 1]! > SAND_C + 1e-6) reach++;
    [now, next] = [next, now];
  }
  return peaks;
}

/** Depth, mm, at which the peaks fall below a temperature, straight between the steps. */
function depthPast(peaks: Float64Array, targetC: number, stepMm: number): number {
  let i = 0;
  while (i < peaks.length && peaks[i]! >= targetC) i++;
  if (i === 0) return 0;
  if (i === peaks.length) return DEEP_MM;
  return stepMm * (i - 1 + (peaks[i - 1]! - targetC) / (peaks[i - 1]! - peaks[i]!));
}
