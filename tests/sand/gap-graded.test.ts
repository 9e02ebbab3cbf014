import { expect, test } from "vitest";
import { gapGraded } from "../../lib/sand/gap-graded.ts";
import { readGrading } from "../../lib/sand/read-grading.ts";

const gaps = (retained: Record<string, number>) => gapGraded(readGrading(retained).value!).gaps;

test("an empty sieve between two full ones is a gap", () => {
  const found = gapGraded(
    readGrading({ "No. 30": 0, "No. 40": 45, "No. 50": 1, "No. 70": 50, "No. 100": 4, pan: 0 }).value!,
  );
  expect(found.gaps).toEqual([{ labels: ["No. 50"], coarse: "No. 40", fine: "No. 70" }]);
  expect(found.issues).toMatchObject([{ code: "sand/gap-graded", severity: "warning" }]);
  expect(found.issues[0]!.message).toContain("No. 50 is nearly empty between No. 40 and No. 70");
});

test("one hump has no gap, however steep its flanks", () => {
  expect(gaps({ "No. 30": 0.1, "No. 40": 0.5, "No. 50": 12, "No. 70": 70, "No. 100": 15, pan: 2.4 })).toEqual(
    [],
  );
});

test("a dip is not yet a gap", () => {
  expect(gaps({ "No. 30": 0, "No. 40": 40, "No. 50": 15, "No. 70": 40, pan: 5 })).toEqual([]);
});

test("a narrow sieve is judged by its width", () => {
  // 0.212 to 0.25 mm is about half as wide in ln d as 0.25 to 0.355 and 0.15 to 0.212 mm: 7 % there is 0.42 of the
  // density of its neighbours, though 0.2 of what they hold.
  expect(gaps({ "0.5 mm": 0, "0.355 mm": 8, "0.25 mm": 36, "0.212 mm": 7, "0.15 mm": 36, pan: 0 })).toEqual(
    [],
  );
});

test("a full pan below empty sieves makes a gap", () => {
  expect(
    gaps({ "No. 50": 0, "No. 70": 40, "No. 100": 40, "No. 140": 0, "No. 200": 0, "No. 270": 0, pan: 20 }),
  ).toEqual([{ labels: ["No. 140", "No. 200", "No. 270"], coarse: "No. 100", fine: "pan" }]);
});
