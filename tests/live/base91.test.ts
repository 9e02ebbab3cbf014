// Bytes there and back, and how much longer they get.

import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { fromBase91, toBase91 } from "../../lib/live/base91.ts";
import { seeded } from "../seeded.ts";

test("any bytes come back, in signs that end no element and need no escape", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const text = toBase91(bytes);
      expect(text).toMatch(/^[!-;=-[\]-_a-~]*$/);
      expect([...fromBase91(text)]).toEqual([...bytes]);
    }),
    { numRuns: 500, seed: 91 },
  );
});

test("every length of the edge cases 0 and 255 comes back", () => {
  for (const byte of [0, 88, 89, 255]) {
    for (let length = 0; length < 40; length++) {
      const bytes = new Uint8Array(length).fill(byte);
      expect([...fromBase91(toBase91(bytes))]).toEqual([...bytes]);
    }
  }
});

test("compressed bytes take less than a quarter more", () => {
  const random = seeded(1);
  const bytes = Uint8Array.from({ length: 50_000 }, () => random.integer(0, 255));
  const ratio = toBase91(gzipSync(bytes)).length / gzipSync(bytes).length;
  expect(ratio).toBeGreaterThan(1.2);
  expect(ratio).toBeLessThan(1.235);
});
