// Many heaps at once, a column for each part, and what each event does to one of them: mass in equals mass out and mass
// there. Columns, since a record for each draw costs ten times the arithmetic.

/** Masses in a heap, kg; all but the water dry. */
export interface HeapContents {
  /** Grain that is no fines. */
  readonly sandKg: number;
  /** Grain finer than No. 140: stone dust, not clay. */
  readonly finesKg: number;
  /** Clay that binds, counted as clay of the founder's own bag. */
  readonly liveClayKg: number;
  /** Clay that heat has killed, and what of a bag never bound. */
  readonly deadClayKg: number;
  /** Additives and what is left of them. */
  readonly otherKg: number;
  readonly waterKg: number;
}

export type HeapColumns = { readonly [part in keyof HeapContents]: Float64Array };

/** Empty heaps. */
export function heapColumns(count: number): HeapColumns {
  const column = () => new Float64Array(count);
  return {
    sandKg: column(),
    finesKg: column(),
    liveClayKg: column(),
    deadClayKg: column(),
    otherKg: column(),
    waterKg: column(),
  };
}

export function columnsOfHeaps(heaps: readonly HeapContents[]): HeapColumns {
  const columns = heapColumns(heaps.length);
  for (const [i, heap] of heaps.entries()) putHeap(columns, i, heap);
  return columns;
}

function putHeap(heaps: HeapColumns, i: number, heap: HeapContents): void {
  heaps.sandKg[i] = heap.sandKg;
  heaps.finesKg[i] = heap.finesKg;
  heaps.liveClayKg[i] = heap.liveClayKg;
  heaps.deadClayKg[i] = heap.deadClayKg;
  heaps.otherKg[i] = heap.otherKg;
  heaps.waterKg[i] = heap.waterKg;
}

export function heapAt(heaps: HeapColumns, i: number): HeapContents {
  return {
    sandKg: heaps.sandKg[i]!,
    finesKg: heaps.finesKg[i]!,
    liveClayKg: heaps.liveClayKg[i]!,
    deadClayKg: heaps.deadClayKg[i]!,
    otherKg: heaps.otherKg[i]!,
    waterKg: heaps.waterKg[i]!,
  };
}

export function copyOfHeaps(heaps: HeapColumns): HeapColumns {
  return {
    sandKg: heaps.sandKg.slice(),
    finesKg: heaps.finesKg.slice(),
    liveClayKg: heaps.liveClayKg.slice(),
    deadClayKg: heaps.deadClayKg.slice(),
    otherKg: heaps.otherKg.slice(),
    waterKg: heaps.waterKg.slice(),
  };
}

/** All that is dry in heap i, kg. */
export function dryKgAt(heaps: HeapColumns, i: number): number {
  return (
    heaps.sandKg[i]! + heaps.finesKg[i]! + heaps.liveClayKg[i]! + heaps.deadClayKg[i]! + heaps.otherKg[i]!
  );
}

// Each step into heap i itself, without a look at its arguments.

export function burn(heaps: HeapColumns, i: number, burntKg: number): void {
  const killed = heaps.liveClayKg[i]! * Math.min(1, burntKg / dryKgAt(heaps, i));
  heaps.liveClayKg[i]! -= killed;
  heaps.deadClayKg[i]! += killed;
}

export function lose(heaps: HeapColumns, i: number, dryKg: number): void {
  const kept = 1 - Math.min(1, dryKg / dryKgAt(heaps, i));
  heaps.sandKg[i]! *= kept;
  heaps.finesKg[i]! *= kept;
  heaps.liveClayKg[i]! *= kept;
  heaps.deadClayKg[i]! *= kept;
  heaps.otherKg[i]! *= kept;
  heaps.waterKg[i]! *= kept;
}

/** livePercent: of the clay's dry mass. */
export function addClay(
  heaps: HeapColumns,
  i: number,
  weighedKg: number,
  moisturePercent: number,
  livePercent: number,
): void {
  const dry = weighedKg * (1 - moisturePercent / 100);
  heaps.liveClayKg[i]! += (dry * livePercent) / 100;
  heaps.deadClayKg[i]! += dry * (1 - livePercent / 100);
  heaps.waterKg[i]! += weighedKg - dry;
}

/** finesPercent: of the sand's dry mass. */
export function addNewSand(
  heaps: HeapColumns,
  i: number,
  weighedKg: number,
  moisturePercent: number,
  finesPercent: number,
): void {
  const dry = weighedKg * (1 - moisturePercent / 100);
  heaps.finesKg[i]! += (dry * finesPercent) / 100;
  heaps.sandKg[i]! += dry * (1 - finesPercent / 100);
  heaps.waterKg[i]! += weighedKg - dry;
}

/** Below zero it dries. */
export function addWater(heaps: HeapColumns, i: number, kg: number): void {
  heaps.waterKg[i] = Math.max(0, heaps.waterKg[i]! + kg);
}
