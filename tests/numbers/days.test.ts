import { expect, test } from "vitest";
import { dateOfDay, dayOf, daysBetween } from "../../lib/numbers/days.ts";

test("Julian day numbers of the almanacs: 2000-01-01 is 2451544.5, 1970-01-01 is 2440587.5", () => {
  // Astronomical Almanac, table of Julian days (from memory).
  expect(dayOf("2000-01-01")).toBe(2451544.5 - 2440587.5);
  expect(dateOfDay(2451544.5 - 2440587.5)).toBe("2000-01-01");
});

test("leap years of the Gregorian calendar: 2000 is one, 1900 and 2100 are none", () => {
  expect(daysBetween("2000-02-28", "2000-03-01")).toBe(2);
  expect(daysBetween("1900-02-28", "1900-03-01")).toBe(1);
  expect(daysBetween("2100-03-01", "2100-02-28")).toBe(-1);
});

test("what is no date is no number", () => {
  for (const text of ["", "2026-02-29", "2026-13-01", "2026-5-2", "2 May 2026", "2026-05-02T00:00:00Z"]) {
    expect(dayOf(text), text).toBeNaN();
  }
});
