// Names of sands by fineness: very coarse to very fine.

export interface SizeGrade {
  readonly name: "very coarse" | "coarse" | "medium" | "fine" | "very fine";
  /** Fineness numbers from (included) … */
  readonly fromGfn: number;
  /** … to (excluded; 150 itself is still fine). */
  readonly toGfn: number;
  /** The grain size that goes with it, mm. */
  readonly sizeMm: readonly [low: number, high: number];
}

/** Coarse to fine. Quevedo sheets 2019; the scheme is Capello's (from memory). */
const sizeGrades: readonly SizeGrade[] = Object.freeze([
  { name: "very coarse", fromGfn: 0, toGfn: 18, sizeMm: [1, 2] },
  { name: "coarse", fromGfn: 18, toGfn: 35, sizeMm: [0.5, 1] },
  { name: "medium", fromGfn: 35, toGfn: 60, sizeMm: [0.25, 0.5] },
  { name: "fine", fromGfn: 60, toGfn: 150, sizeMm: [0.1, 0.25] },
  { name: "very fine", fromGfn: 150, toGfn: 300, sizeMm: [0, 0.1] },
]);

/**
 * The name that goes with a fineness number.
 *
 * gfn: 3 to 300, what a fineness number can be; outside it throws. A figure on a border takes the finer name,
 * but 150 is still fine, as the source has it.
 *
 * Source: Quevedo sheets 2019; the scheme is Capello's (from memory).
 *
 *     sizeGrade(69.1).name   // "fine"
 */
export function sizeGrade(gfn: number): SizeGrade {
  if (!(gfn >= 3 && gfn <= 300))
    throw new RangeError(`A fineness number lies between 3 and 300, not ${gfn}.`);
  if (gfn === 150) return sizeGrades[3]!;
  return sizeGrades.find(({ toGfn }) => gfn < toGfn) ?? sizeGrades[4]!;
}
