// Bits mixed so well that rows of numbers made of them look like chance, and are the same each time.

/** 32 bits, every one of which moves every other: the finalizer of MurmurHash3 (A. Appleby, public domain). */
export function mixed(bits: number): number {
  let x = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return (x ^ (x >>> 16)) >>> 0;
}

/** The words of a Weyl sequence from a start, mixed: 0 to 2³² − 1, each once before the row begins again. */
export function mixedWords(start: number): () => number {
  let state = start;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    return mixed(state);
  };
}
