import { expect, test } from "vitest";
import { areaLoadG, fiveLayersG, overload } from "../../lib/sand/overload.ts";

test("verdicts between and beyond the two limits", () => {
  const on = (massG: number) => overload({ openingMm: 0.075, frameMm: 200, massG });
  expect([10, 40, 240].map((massG) => on(massG).verdict)).toEqual(["good", "crowded", "overloaded"]);
  expect(on(40).issues).toMatchObject([{ code: "sand/sieve-crowded", severity: "warning" }]);
  expect(on(240).issues).toMatchObject([{ code: "sand/sieve-overloaded", severity: "error" }]);
  expect(on(on(0).fiveLayersG).layers).toBeCloseTo(5, 12);
});

test("the sieve above sets the grain size; without it, √2 above", () => {
  const guess = overload({ openingMm: 0.1, frameMm: 200, massG: 0 });
  expect(guess.fiveLayersG).toBeCloseTo(fiveLayersG(0.1 * 2 ** 0.25, 200), 12);
  const known = overload({ openingMm: 0.1, nextOpeningMm: 0.4, frameMm: 200, massG: 0 });
  expect(known.fiveLayersG).toBeCloseTo(fiveLayersG(0.2, 200), 12);
});

test("both limits go with the area of the frame", () => {
  expect(fiveLayersG(0.25, 100)).toBeCloseTo(fiveLayersG(0.25, 200) / 4, 12);
  expect(areaLoadG(0.25, 100)).toBeCloseTo(areaLoadG(0.25, 200) / 4, 12);
});

test("from 4.75 mm on the limit grows with the opening and layers are not judged", () => {
  expect(areaLoadG(4.75, 200) / areaLoadG(4.74, 200)).toBeCloseTo((2.5 * 4.75) / 7, 12);
  const gravel = overload({ openingMm: 4.75, frameMm: 200, massG: 370 });
  expect(gravel.verdict).toBe("good");
});

test("misuse throws", () => {
  const good = { openingMm: 0.1, frameMm: 200, massG: 5 };
  for (const bad of [
    { openingMm: 0 },
    { frameMm: -1 },
    { massG: -1 },
    { nextOpeningMm: 0.05 },
    { grainKgM3: 0 },
  ])
    expect(() => overload({ ...good, ...bad })).toThrow(RangeError);
});
