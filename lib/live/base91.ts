// Bytes as text that may stand in a script element: 13 or 14 bits in two signs, which is a tenth less than base64 takes.

/** The printable signs of ASCII but for three: "<" could end the element; "`" and "\" are left out to make it 91. */
const SIGNS: readonly string[] = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i)).filter(
  (sign) => !"<`\\".includes(sign),
);
const BASE = SIGNS.length;
/** Of 91² = 8281 pairs, 8192 hold 13 bits; the 89 that are left over let a small number take a 14th. */
const MASK13 = 8191;
const SPARE = BASE * BASE - MASK13 - 2;

/** As basE91 (Joachim Henke, 2006; from memory) with other signs. Example: toBase91 of the bytes 1, 2, 3 has 4 signs. */
export function toBase91(bytes: Uint8Array): string {
  const out: string[] = [];
  let bits = 0;
  let count = 0;
  for (const byte of bytes) {
    bits |= byte << count;
    count += 8;
    if (count <= 13) continue;
    let pair = bits & MASK13;
    const taken = pair > SPARE ? 13 : 14;
    if (taken === 14) pair = bits & (2 * MASK13 + 1);
    bits >>= taken;
    count -= taken;
    out.push(SIGNS[pair % BASE]! + SIGNS[Math.floor(pair / BASE)]!);
  }
  if (count > 0) {
    out.push(SIGNS[bits % BASE]!);
    if (count > 7 || bits >= BASE) out.push(SIGNS[Math.floor(bits / BASE)]!);
  }
  return out.join("");
}

/** The bytes again. */
export function fromBase91(text: string): Uint8Array<ArrayBuffer> {
  const value = new Uint8Array(128);
  for (const [i, sign] of SIGNS.entries()) value[sign.charCodeAt(0)] = i;
  const out = new Uint8Array(text.length);
  let length = 0;
  let bits = 0;
  let count = 0;
  const push = () => {
    out[length++] = bits & 255;
    bits >>= 8;
    count -= 8;
  };
  let i = 0;
  for (; i + 1 < text.length; i += 2) {
    const pair = value[text.charCodeAt(i)]! + BASE * value[text.charCodeAt(i + 1)]!;
    bits |= pair << count;
    count += (pair & MASK13) > SPARE ? 13 : 14;
    while (count > 7) push();
  }
  if (i < text.length) {
    bits |= value[text.charCodeAt(i)]! << count;
    push();
  }
  return out.slice(0, length);
}
