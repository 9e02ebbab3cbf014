// How many sands one drawing bears: there are four fills and colours that all readers tell apart.

const usually = 4;

export interface FirstSands<T> {
  readonly drawn: readonly T[];
  /** Ends a caption or a text: which sands are drawn; empty where all are. */
  readonly says: string;
}

/** All sands up to so many; of more, the first of them, and a sentence that the others stand in the table. */
export function firstSands<T>(sands: readonly T[], most = usually): FirstSands<T> {
  const left = sands.length - most;
  if (left <= 0) return { drawn: sands, says: "" };
  const others = left === 1 ? "one more is" : `${left} more are`;
  return {
    drawn: sands.slice(0, most),
    says: ` The first ${most} of ${sands.length} sands are drawn; ${others} in the table.`,
  };
}
