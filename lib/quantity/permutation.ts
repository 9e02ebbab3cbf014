// A cheap bijection of the draw's number, keyed by the source: draws need no storage.

import { mixed, mixedWords } from "../numbers/mixing.ts";

/** The odd multipliers and the offsets of the four rounds. */
export interface PermutationKey {
  readonly add: readonly [number, number, number, number];
  readonly multiply: readonly [number, number, number, number];
}

/** 32 well-mixed bits of a text: FNV-1a over its UTF-16 units, then the finalizer of MurmurHash3. */
export function hashText(text: string, seed = 0): number {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 0xff), 0x01000193);
    hash = Math.imul(hash ^ (unit >>> 8), 0x01000193);
  }
  return mixed(hash);
}

/** The key of a source: eight words of a Weyl sequence that starts at the hash of its id. */
export function permutationKey(id: string): PermutationKey {
  const word = mixedWords(hashText(id));
  return {
    add: [word(), word(), word(), word()],
    multiply: [word() | 1, word() | 1, word() | 1, word() | 1],
  };
}

/**
 * Adds scale × table[place of draw start + j] to out[j]. The place of draw i in a table of 2^bits scores, 4 to 24 bits:
 * four rounds of add, odd multiply and xor-shift, unrolled. Each step can be undone modulo 2^bits, so every place is
 * taken just once.
 */
export function addPermuted(
  table: Float64Array,
  key: PermutationKey,
  scale: number,
  out: Float64Array,
  start: number,
): void {
  const mask = table.length - 1;
  const shift = (32 - Math.clz32(mask) + 1) >>> 1;
  // Only the low bits of a product matter, and they come from the low bits of its factors: the mask can wait.
  const [a0, a1, a2, a3] = key.add.map((word) => word & mask) as [number, number, number, number];
  const [m0, m1, m2, m3] = key.multiply.map((word) => (word & mask) | 1) as [number, number, number, number];
  for (let j = 0; j < out.length; j++) {
    let x = Math.imul(start + j + a0, m0) & mask;
    x ^= x >>> shift;
    x = Math.imul(x + a1, m1) & mask;
    x ^= x >>> shift;
    x = Math.imul(x + a2, m2) & mask;
    x ^= x >>> shift;
    x = Math.imul(x + a3, m3) & mask;
    x ^= x >>> shift;
    out[j]! += scale * table[x]!;
  }
}
