// In which share of the draws a new batch meets each range, and all of them, place by place along the axis.

/** One property: its range, and the draws of its curve b0 + b1·u + b2·u² and of what a batch adds. */
export interface DrawnRange {
  readonly low: number;
  readonly high: number;
  readonly level: Float64Array;
  readonly slope: Float64Array;
  /** Left out of a straight line. */
  readonly bend: Float64Array | undefined;
  readonly batch: Float64Array;
  /** Places on the curve's own axis, upward. */
  readonly u: readonly number[];
}

/** Places that are told from two of them where a curve runs one way between: as many as a byte has bits. */
const runLength = 8;
const whole = 255;
/** So near an edge, as a share of what the figures are, each place is looked at. */
const nearEdge = 1e-9;

/** Shares, 0 to 1, of each property in the order given and of all together, at each place. At least one property and draw. */
export function chancesAlong(ranges: readonly DrawnRange[]): {
  readonly each: readonly Float64Array[];
  readonly all: Float64Array;
} {
  const [{ batch, u }] = ranges as readonly [DrawnRange];
  const all = new Tally(u.length);
  const looks = ranges.map((range) => new Look(range));
  const met = new Uint8Array(all.runs);
  for (let i = 0; i < batch.length; i++) {
    met.fill(whole);
    for (let k = 0; k < looks.length; k++) looks[k]!.draw(i, met);
    all.add(met);
  }
  return { each: looks.map(({ tally }) => tally.shares(batch.length)), all: all.shares(batch.length) };
}

/** How often each place was met, from a byte for each run of places. */
class Tally {
  readonly runs: number;
  readonly #places: number;
  readonly #wholeRuns: Uint32Array;
  readonly #single: Uint32Array;

  constructor(places: number) {
    this.#places = places;
    this.runs = Math.ceil(places / runLength);
    this.#wholeRuns = new Uint32Array(this.runs);
    this.#single = new Uint32Array(this.runs * runLength);
  }

  add(met: Uint8Array): void {
    for (let run = 0; run < met.length; run++) this.addRun(run, met[run]!);
  }

  addRun(run: number, bits: number): void {
    if (bits === whole) this.#wholeRuns[run]!++;
    else
      for (let at = run * runLength, rest = bits; rest > 0; rest >>>= 1, at++) this.#single[at]! += rest & 1;
  }

  shares(count: number): Float64Array {
    const shares = new Float64Array(this.#places);
    for (let row = 0; row < shares.length; row++)
      shares[row] = (this.#wholeRuns[Math.floor(row / runLength)]! + this.#single[row]!) / count;
    return shares;
  }
}

/** One property along the axis, draw by draw. */
class Look {
  readonly tally: Tally;
  readonly #range: DrawnRange;
  readonly #u: Float64Array;
  readonly #square: Float64Array;
  readonly #places: number;

  constructor(range: DrawnRange) {
    this.#range = range;
    this.#places = range.u.length;
    this.tally = new Tally(this.#places);
    // Past the last place it stays there, so that every run is whole.
    const last = range.u[this.#places - 1]!;
    const { runs } = this.tally;
    this.#u = Float64Array.from({ length: runs * runLength }, (_, row) => range.u[row] ?? last);
    this.#square = this.#u.map((u) => u * u);
  }

  /** met: a byte for each run, whose bits go where the range is missed. */
  draw(i: number, met: Uint8Array): void {
    const { low, high, level, slope, bend, batch } = this.#range;
    const middle = batch[i]! + level[i]!;
    const b1 = slope[i]!;
    const b2 = bend ? bend[i]! : 0;
    const turn = -b1 / (2 * b2);
    const [us, squares] = [this.#u, this.#square];
    for (let run = 0, row = 0; run < met.length; run++, row += runLength) {
      const end = row + runLength - 1;
      const [from, to] = [us[row]!, us[end]!];
      const a = middle + from * b1 + squares[row]! * b2;
      const b = middle + to * b1 + squares[end]! * b2;
      const near = nearEdge * (Math.abs(a) + Math.abs(b) + high - low);
      let bits = 0;
      if (turn > from && turn < to) bits = this.#each(row, middle, b1, b2);
      else if (a > low + near && b > low + near && a < high - near && b < high - near) bits = whole;
      else if ((a < low - near && b < low - near) || (a > high + near && b > high + near)) bits = 0;
      else bits = this.#each(row, middle, b1, b2);
      this.tally.addRun(run, bits);
      met[run]! &= bits;
    }
  }

  #each(row: number, middle: number, b1: number, b2: number): number {
    const { low, high } = this.#range;
    let bits = 0;
    for (let at = 0; at < runLength; at++) {
      const y = middle + this.#u[row + at]! * b1 + this.#square[row + at]! * b2;
      if (y >= low && y <= high) bits |= 1 << at;
    }
    return bits;
  }
}
