// A table of columns turned into a triangle by reflections, the steady way to least squares.

export interface Triangle {
  /** How many columns are independent of those before them. Below it the triangle is of no use. */
  readonly rank: number;
  /** R, upward from the diagonal: upper[i][j] for j ≥ i. */
  readonly upper: readonly (readonly number[])[];
  /** Qᵀ·b; its first entries, one a column, are the right side for the triangle. */
  turn(b: Float64Array): Float64Array;
  /** Q·b. */
  turnBack(b: Float64Array): Float64Array;
}

/** A column whose part outside the span of those before it is less than this share of its length adds nothing. */
const leastNewPart = 1e-13;

/**
 * A = Q·R by Householder reflections, column after column without exchange. columns: all of one length.
 * A column that depends on those before it is passed over and lowers the rank; so do more columns than rows.
 * Source: A. S. Householder, J. ACM 5 (1958) 339–342; G. H. Golub, Numer. Math. 7 (1965) 206–216.
 * @example triangleOf([Float64Array.of(3, 4)]).upper // [[-5]]
 */
export function triangleOf(columns: readonly Float64Array[]): Triangle {
  const rows = columns[0]?.length ?? 0;
  const mirrors: Float64Array[] = [];
  const tops: Float64Array[] = [];
  for (const given of columns) {
    const column = Float64Array.from(given);
    const whole = lengthFrom(column, 0);
    mirrors.forEach((mirror, k) => {
      reflect(mirror, k, column);
    });
    const k = mirrors.length;
    const left = k < rows ? lengthFrom(column, k) : 0;
    if (!(left > leastNewPart * whole)) continue;
    const corner = column[k]! > 0 ? -left : left;
    const mirror = Float64Array.from(column);
    mirror[k]! -= corner;
    mirrors.push(mirror);
    column[k] = corner;
    tops.push(column.slice(0, k + 1));
  }
  const upper = tops.map((_, i) => tops.map((top) => top[i] ?? 0));
  return {
    rank: mirrors.length,
    upper,
    turn(b) {
      const turned = Float64Array.from(b);
      mirrors.forEach((mirror, k) => {
        reflect(mirror, k, turned);
      });
      return turned;
    },
    turnBack(b) {
      const turned = Float64Array.from(b);
      for (let k = mirrors.length - 1; k >= 0; k--) reflect(mirrors[k]!, k, turned);
      return turned;
    },
  };
}

/** x with R·x = b for an upper triangle R without a zero on its diagonal; b may be longer. */
export function solveUpper(upper: Triangle["upper"], b: ArrayLike<number>): number[] {
  const x: number[] = new Array(upper.length).fill(0);
  for (let i = upper.length - 1; i >= 0; i--) {
    let rest = b[i]!;
    for (let j = i + 1; j < upper.length; j++) rest -= upper[i]![j]! * x[j]!;
    x[i] = rest / upper[i]![i]!;
  }
  return x;
}

/** R⁻¹, upper too. */
export function invertUpper(upper: Triangle["upper"]): number[][] {
  const columns = upper.map((_, j) =>
    solveUpper(
      upper,
      upper.map((_, i) => (i === j ? 1 : 0)),
    ),
  );
  return upper.map((_, i) => columns.map((column) => column[i]!));
}

function lengthFrom(column: Float64Array, from: number): number {
  let largest = 0;
  for (let i = from; i < column.length; i++) largest = Math.max(largest, Math.abs(column[i]!));
  if (largest === 0) return 0;
  let squares = 0;
  for (let i = from; i < column.length; i++) squares += (column[i]! / largest) ** 2;
  return largest * Math.sqrt(squares);
}

/** b less twice its part along the mirror, from row k on. */
function reflect(mirror: Float64Array, k: number, b: Float64Array): void {
  let squares = 0;
  let along = 0;
  for (let i = k; i < b.length; i++) {
    squares += mirror[i]! * mirror[i]!;
    along += mirror[i]! * b[i]!;
  }
  const share = (2 * along) / squares;
  for (let i = k; i < b.length; i++) b[i]! -= share * mirror[i]!;
}
