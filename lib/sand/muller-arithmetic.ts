// What a muller's drive, pan and load come to: turns, passes, speeds, loads for a heap.

import { invariant } from "../issue.ts";
import { requireAboveZero, requireFromZero } from "./require.ts";

/** Standard gravity, m/s². */
const GRAVITY = 9.80665;

/**
 * Turns a minute of the pan, or of the cross that carries the wheels: motor speed ÷ reduction.
 * motorRpm: of the shaft under load, not that of the plate without one; reduction: motor turns for one turn. Both above 0, else RangeError.
 * Source: definition.
 * @example panRpm({ motorRpm: 1450, reduction: 60 }) // 24.2, and common practice says about 24
 */
export function panRpm({
  motorRpm,
  reduction,
}: {
  readonly motorRpm: number;
  readonly reduction: number;
}): number {
  requireAboveZero("panRpm", { motorRpm, reduction });
  return motorRpm / reduction;
}

/**
 * The reduction of several stages, one after another: the product of driven ÷ driver, by diameters of pulleys or teeth of wheels.
 * stages: one or more, each above 0 and both in one unit, else throws. Belts slip by a few percent, which is not in it.
 * Source: definition.
 * @example reductionOf([{ driver: 60, driven: 300 }, { driver: 1, driven: 12 }]) // 60
 */
export function reductionOf(stages: readonly { readonly driver: number; readonly driven: number }[]): number {
  invariant(stages.length > 0, "a reduction has at least one stage");
  return stages.reduce((all, { driver, driven }) => {
    requireAboveZero("reductionOf", { driver, driven });
    return (all * driven) / driver;
  }, 1);
}

/**
 * How often a place of the sand under the wheels' track is rolled over: rpm × wheels × minutes.
 * rpm, wheels above 0, minutes 0 or more, else RangeError. Wheels on one track count together; on two tracks, count one.
 * Source: definition.
 * @example wheelPasses({ rpm: 24, wheels: 2, minutes: 12 }) // 576
 */
export function wheelPasses({
  rpm,
  wheels,
  minutes,
}: {
  readonly rpm: number;
  readonly wheels: number;
  readonly minutes: number;
}): number {
  requireAboveZero("wheelPasses", { rpm, wheels });
  requireFromZero("wheelPasses", { minutes });
  return rpm * wheels * minutes;
}

/**
 * Speed at a radius, m/s: π·D·n/60, of a plough's tip or of sand at the pan's wall.
 * diameterMm of the circle, rpm: above 0, else RangeError. Source: definition.
 * @example rimSpeedMS({ diameterMm: 500, rpm: 24 }) // 0.628
 */
export function rimSpeedMS({
  diameterMm,
  rpm,
}: {
  readonly diameterMm: number;
  readonly rpm: number;
}): number {
  requireAboveZero("rimSpeedMS", { diameterMm, rpm });
  return (Math.PI * (diameterMm / 1000) * rpm) / 60;
}

/**
 * Share of the pan's floor that one wheel's track covers in a turn, %, where the track lies against the wall or further in and
 * does not reach the middle: 4·w·(D_t)/D², with D_t the diameter of the track's middle. Without it the middle of the pan's radius: 2·w/D.
 * panDiameterMm, wheelWidthMm above 0; the width at most half the diameter, else RangeError.
 * What lies outside the track is mulled only if ploughs bring it there. Source: geometry.
 * @example trackSharePercent({ panDiameterMm: 500, wheelWidthMm: 60 }) // 24
 */
export function trackSharePercent({
  panDiameterMm,
  wheelWidthMm,
  trackDiameterMm = panDiameterMm / 2,
}: {
  readonly panDiameterMm: number;
  readonly wheelWidthMm: number;
  readonly trackDiameterMm?: number;
}): number {
  requireAboveZero("trackSharePercent", { panDiameterMm, wheelWidthMm, trackDiameterMm });
  if (wheelWidthMm > trackDiameterMm || trackDiameterMm + wheelWidthMm > panDiameterMm * (1 + 1e-9))
    throw new RangeError("trackSharePercent: the track does not lie inside the pan");
  return (400 * wheelWidthMm * trackDiameterMm) / panDiameterMm ** 2;
}

/**
 * Turns a minute at which sand is carried round with the wall of a drum that lies: n = 60/(2π)·√(2g/D). A barrel muller must
 * stay well below; a pan that stands upright is not meant. diameterMm: inside, above 0, else RangeError.
 * Source: balance of weight and centripetal force at the top.
 * @example carriedRoundRpm({ diameterMm: 300 }) // 77.2
 */
export function carriedRoundRpm({ diameterMm }: { readonly diameterMm: number }): number {
  requireAboveZero("carriedRoundRpm", { diameterMm });
  return (60 / (2 * Math.PI)) * Math.sqrt((2 * GRAVITY) / (diameterMm / 1000));
}

/**
 * Depth of the loose sand in the pan, mm: load ÷ (density × floor).
 * loadKg, panDiameterMm, looseKgM3 above 0, else RangeError; loose tempered sand 1,000 to 1,200 kg/m³ (common practice), 1,100 unless given.
 * Source: geometry.
 * @example sandBedMm({ loadKg: 12, panDiameterMm: 500 }) // 55.6
 */
export function sandBedMm({
  loadKg,
  panDiameterMm,
  looseKgM3 = 1100,
}: {
  readonly loadKg: number;
  readonly panDiameterMm: number;
  readonly looseKgM3?: number;
}): number {
  requireAboveZero("sandBedMm", { loadKg, panDiameterMm, looseKgM3 });
  return (1000 * loadKg) / (looseKgM3 * (Math.PI / 4) * (panDiameterMm / 1000) ** 2);
}

export interface MullerLoads {
  /** Whole loads that the heap takes, the last one perhaps smaller. */
  readonly loads: number;
  /** As many equal loads. */
  readonly eachKg: number;
  readonly loadsPerHour: number;
  readonly hours: number;
}

/**
 * Loads and hours for a heap: ⌈heap ÷ load⌉ loads of (minutes + handlingMinutes) each.
 * heapKg, loadKg, minutes above 0; handlingMinutes, to fill, stop, isolate and empty, 0 or more (default 5, our own). Else RangeError.
 * Source: definition.
 * @example
 * mullerLoads({ heapKg: 120, loadKg: 12, minutes: 12, handlingMinutes: 5 })
 * // { loads: 10, loadsPerHour: 3.53, hours: 2.83 }
 */
export function mullerLoads({
  heapKg,
  loadKg,
  minutes,
  handlingMinutes = 5,
}: {
  readonly heapKg: number;
  readonly loadKg: number;
  readonly minutes: number;
  readonly handlingMinutes?: number;
}): MullerLoads {
  requireAboveZero("mullerLoads", { heapKg, loadKg, minutes });
  requireFromZero("mullerLoads", { handlingMinutes });
  // 120 kg by 12.0 kg are ten loads, whatever the last digit of a conversion says.
  const loads = Math.ceil(heapKg / loadKg - 1e-9);
  const each = minutes + handlingMinutes;
  return { loads, eachKg: heapKg / loads, loadsPerHour: 60 / each, hours: (loads * each) / 60 };
}
