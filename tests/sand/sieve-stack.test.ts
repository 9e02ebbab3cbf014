import { expect, test } from "vitest";
import { sameSieve } from "../../lib/sand/same-sieve.ts";
import { sieveStack } from "../../lib/sand/sieve-stack.ts";
import { astmSieves } from "../../lib/sand/sieve-table-astm.ts";
import { isoOpeningsMm } from "../../lib/sand/sieve-table-iso.ts";

const codes = (labels: readonly string[]) => sieveStack(labels).issues.map(({ code }) => code);

test("a stack in order, with its pan, says nothing", () => {
  const stack = sieveStack(["No. 20", "0.425 mm", "212 µm", "pan"]);
  expect(stack.sieves.map(({ label }) => label)).toEqual(["No. 20", "No. 40", "No. 70"]);
  expect(stack.hasPan).toBe(true);
  expect(stack.order).toEqual([0, 1, 2, 3]);
  expect(stack.issues).toEqual([]);
});

test("sieves listed fine above coarse are sorted, and the two are named", () => {
  const stack = sieveStack(["No. 40", "No. 70", "No. 50", "pan"]);
  expect(stack.sieves.map(({ number }) => number)).toEqual([40, 50, 70]);
  expect(stack.order).toEqual([0, 2, 1, 3]);
  expect(stack.issues).toHaveLength(1);
  expect(stack.issues[0]!.code).toBe("sand/sieve-misplaced");
  expect(stack.issues[0]!.message).toContain('"No. 70"');
  expect(stack.issues[0]!.message).toContain('"No. 50"');
});

test("one opening under two names is listed twice: the first stays", () => {
  const stack = sieveStack(["No. 60", "BS 60", "0.250 mm", "pan"]);
  expect(stack.sieves.map(({ label }) => label)).toEqual(["No. 60"]);
  expect(stack.issues.map(({ code }) => code)).toEqual(["sand/sieve-repeated", "sand/sieve-repeated"]);
  expect(codes(["No. 60", "pan", "tray"])).toEqual(["sand/sieve-repeated"]);
});

// ASTM E11 tables before 1995 print 1.68, 0.84 and 0.105 mm where today's print 1.70, 0.850 and 0.106 mm (from memory).
test("older and newer openings of one sieve are one, neighbours of any standard series two", () => {
  for (const [older, newer] of [
    [1.68, 1.7],
    [0.84, 0.85],
    [0.105, 0.106],
    [0, 0],
  ] as const)
    expect(sameSieve(older, newer)).toBe(true);
  expect(sameSieve(0.425, Number.POSITIVE_INFINITY)).toBe(false);
  expect(sameSieve(0, 0.02)).toBe(false);
  const standard = [...isoOpeningsMm, ...astmSieves.map(({ openingMm }) => openingMm)].sort((a, b) => a - b);
  for (const [i, mm] of standard.entries()) {
    const next = standard[i + 1];
    if (next !== undefined && next > mm * 1.02) expect(sameSieve(mm, next)).toBe(false);
  }
});

test("openings within 1.5 % are one sieve, 2 % apart are two", () => {
  expect(codes(["0.400 ± 0.001 mm", "0.397 ± 0.001 mm", "pan"])).toEqual(["sand/sieve-repeated"]);
  expect(codes(["0.400 ± 0.001 mm", "0.392 ± 0.001 mm", "pan"])).toEqual([]);
});

test("the pan out of place or missing", () => {
  expect(codes(["No. 40", "pan", "No. 50"])).toEqual(["sand/pan-not-last"]);
  expect(sieveStack(["No. 40", "pan", "No. 50"]).order).toEqual([0, 2, 1]);
  expect(codes(["No. 40", "No. 50"])).toEqual(["sand/pan-missing"]);
  expect(sieveStack(["No. 40"]).hasPan).toBe(false);
});

test("a label that cannot be read is left out with its issue, the rest stands", () => {
  const stack = sieveStack(["No. 40", "60 mesh", "No. 70", "pan"]);
  expect(stack.sieves.map(({ number }) => number)).toEqual([40, 70]);
  expect(stack.order).toEqual([0, 2, 3]);
  expect(stack.issues.map(({ code }) => code)).toEqual(["sand/sieve-mesh-alone"]);
});

test("no labels, no stack; no array, no call", () => {
  expect(sieveStack([])).toEqual({ sieves: [], hasPan: false, order: [], issues: [] });
  expect(() => sieveStack("No. 40" as never)).toThrow();
  expect(() => sieveStack([40] as never)).toThrow();
});
