// The squeeze: what the hand feels, as one of five ordered steps, held against compactability so that it is calibrated.

import { requireNumber } from "./require.ts";

export type SqueezeStep = 1 | 2 | 3 | 4 | 5;

export interface Squeeze {
  readonly step: SqueezeStep;
  readonly name: string;
  /** What is seen when a fistful is squeezed once, the hand opened, and the lump broken in the middle. */
  readonly shows: string;
}

/** Dry to wet, in our own words; common practice. The steps are in order, not evenly spaced: no means of steps. */
export const squeezeSteps: readonly Squeeze[] = Object.freeze(
  (
    [
      [1, "falls apart", "No lump: the sand runs off the open palm."],
      [
        2,
        "crumbles",
        "A lump that keeps its shape until touched; its edges come away as grains when it is broken.",
      ],
      [3, "snaps clean", "The fingers' marks stay, the break is sharp-edged, and the palm is left dry."],
      [4, "bends first", "It gives before it parts; the break is blunt, and the palm is damp."],
      [5, "smears", "It deforms like putty and leaves sand and a wet shine on the palm. Too wet to pour on."],
    ] as const
  ).map(([step, name, shows]) => Object.freeze({ step, name, shows })),
);

export interface SqueezeReading {
  readonly step: SqueezeStep;
  /** Compactability of the same batch, % of height. */
  readonly compactabilityPercent: number;
}

export interface SqueezeRow extends Squeeze {
  readonly count: number;
  /** Middle, least and most compactability at this step, %; null where the founder has none. */
  readonly middlePercent: number | null;
  readonly lowPercent: number | null;
  readonly highPercent: number | null;
}

/**
 * The founder's hand against compactability: for each step how many batches, and the middle, least and most
 * compactability. inOrder: false where a wetter step has a lower middle than a drier one: the hand is not
 * calibrated yet.
 *
 * readings: step 1 to 5 with a compactability, finite, else RangeError. Not a strength: the hand says nothing of that.
 * Source: median and range; a good squeeze goes with about 40 to 50 % (common practice).
 * @example
 * squeezeTable([{ step: 2, compactabilityPercent: 36 }, { step: 3, compactabilityPercent: 45 }]).inOrder
 * // true
 */
export function squeezeTable(readings: readonly SqueezeReading[]): {
  readonly rows: readonly SqueezeRow[];
  readonly inOrder: boolean;
} {
  for (const { step, compactabilityPercent } of readings) {
    requireNumber("squeezeTable", { compactabilityPercent });
    if (!squeezeSteps.some((one) => one.step === step))
      throw new RangeError(`squeezeTable: step must be 1 to 5, got ${step}`);
  }
  const rows = squeezeSteps.map((one): SqueezeRow => {
    const own = readings
      .filter(({ step }) => step === one.step)
      .map(({ compactabilityPercent }) => compactabilityPercent)
      .sort((a, b) => a - b);
    const middle = own.length === 0 ? null : (own[(own.length - 1) >> 1]! + own[own.length >> 1]!) / 2;
    return {
      ...one,
      count: own.length,
      middlePercent: middle,
      lowPercent: own[0] ?? null,
      highPercent: own.at(-1) ?? null,
    };
  });
  const middles = rows.flatMap(({ middlePercent }) => (middlePercent === null ? [] : [middlePercent]));
  return { rows, inOrder: middles.every((middle, i) => i === 0 || middle >= middles[i - 1]!) };
}
