// What moisture a heap comes down to while it stands, and to what it must be tempered to have a wanted one after that.

import { type Input, lift } from "../quantity/combine.ts";
import { type Figure, figure } from "../quantity/figure.ts";
import { isSpread } from "../quantity/spread.ts";
import { type StandingHeap, type WaterLost, waterLostKg } from "./water-lost.ts";

/**
 * Moisture after the hours, % of damp mass, of the whole heap once it is mixed: 100 (w M/100 − L)/(M − L).
 * heap and limits as waterLostKg. The dry skin has less and the inside as much as before: mix before you sample.
 * Source: mass balance. Example: 100 kg at 4 % that loses 0.5181 kg: 3.5 %.
 */
export function moistureAfter(heap: StandingHeap): WaterLost & { readonly moistureOfDampPercent: Figure } {
  const lost = waterLostKg(heap);
  const after = lift(
    ({ m, w, l }) => moistureLeft(m, w, l),
    { m: heap.heapKg, w: heap.moistureOfDampPercent, l: lost.figure },
    "moisture left",
  );
  return { ...lost, moistureOfDampPercent: figure(after) };
}

export function moistureLeft(heapKg: number, ofDampPercent: number, lostKg: number): number {
  return (100 * ((heapKg * ofDampPercent) / 100 - lostKg)) / (heapKg - lostKg);
}

/**
 * Moisture to temper a heap to now, % of damp mass, so that it has the wanted one after standing:
 * 100 (D w/(100 − w) + L)/(D w/(100 − w) + L + D), D its dry mass.
 *
 * heap: as waterLostKg, but its moistureOfDampPercent is the one that is wanted afterwards; heapKg: its mass at that
 * moisture. The loss is that of a heap of the moisture which it starts from, found in three rounds (√w: they settle).
 * A figure for dosing by its lower end: what is missing in the morning is soon added, what is too much is not soon lost.
 * Source: mass balance. Example: 3.5 % wanted and 0.36 kg of 120 lost: 3.79 %.
 */
export function temperTonight(heap: StandingHeap): WaterLost & { readonly moistureOfDampPercent: Figure } {
  const wanted = heap.moistureOfDampPercent;
  const rise = ({ m, w, l }: { readonly m: number; readonly w: number; readonly l: number }): number =>
    (100 * ((m * w) / 100 + l)) / (m + l);
  let start: Input = wanted;
  let lost = waterLostKg(heap);
  for (let round = 0; round < 2; round++) {
    const middle = rise({ m: middleOf(heap.heapKg), w: middleOf(wanted), l: lost.figure.value });
    const up: number = middle - middleOf(wanted);
    start = lift(({ w }) => w + up, { w: wanted }, `moisture raised by ${up}`);
    lost = waterLostKg({ ...heap, moistureOfDampPercent: start });
  }
  return {
    ...lost,
    moistureOfDampPercent: figure(
      lift(rise, { m: heap.heapKg, w: wanted, l: lost.figure }, "moisture to temper to"),
    ),
  };
}

const middleOf = (input: Input): number => (isSpread(input) ? input.value : input);
