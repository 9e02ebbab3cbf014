// Eight hex digits that tell two texts apart, so that a page and its data can be matched.

/**
 * FNV-1a hash, 32 bits, of the texts' UTF-8 bytes, one text after the other: h = (h XOR byte) × 16777619.
 * For matching, not for security: one pair of different texts in about 4.3 thousand million agrees.
 * Source: Fowler, Noll and Vo, as in IETF draft-eastlake-fnv (from memory).
 * Example: fingerprint("foobar") is "bf9cf968".
 */
export function fingerprint(...texts: readonly string[]): string {
  let hash = 0x811c9dc5;
  for (const text of texts) {
    for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, "0");
}
