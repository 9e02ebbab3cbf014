// Days as ISO 8601 has them, and what other spellings could mean.

import fc from "fast-check";
import { expect, test } from "vitest";
import { readDate } from "../../lib/quantity/read-date.ts";

const complaint = (text: string) => {
  const read = readDate(text);
  return typeof read === "string" ? read : `${read.code}: ${read.message} ${read.remedy}`;
};

test("every day of the calendar is read as it stands", () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date("1900-01-01"), max: new Date("2199-12-31"), noInvalidDate: true }),
      (day) => {
        const iso = day.toISOString().slice(0, 10);
        expect(readDate(iso)).toBe(iso);
        expect(readDate(`${iso}T10:30`)).toBe(iso);
      },
    ),
  );
});

test("leap days by the Gregorian rule: 2000 has one, 1900 and 2026 have none", () => {
  expect(readDate("2000-02-29")).toBe("2000-02-29");
  expect(readDate("2024-02-29")).toBe("2024-02-29");
  expect(complaint("1900-02-29")).toContain("February 1900 has 28 days");
  expect(complaint("2026-02-29")).toContain("log/impossible-date");
  expect(complaint("2026-13-01")).toContain("month");
  expect(complaint("0026-03-02")).toContain("1900 and 2199");
  expect(complaint("2026-04-31")).toContain("April 2026 has 30 days");
});

test("another spelling shows which days it could be", () => {
  expect(complaint("2/3/2026")).toContain("2 March 2026 (2026-03-02) or 3 February 2026 (2026-02-03)");
  expect(complaint("25/3/2026")).toContain("it could be 25 March 2026 (2026-03-25).");
  expect(complaint("2.3.26")).toContain("2026-03-02 or 2026-02-03");
  expect(complaint("3/3/2026")).toContain("it could be 3 March 2026 (2026-03-03).");
  expect(complaint("2026/3/2")).toContain("Write the day as 2026-03-02.");
  expect(complaint("2026-3-2")).toContain("Write the day as 2026-03-02.");
  expect(complaint("2 March 2026")).toContain("Write the day as 2026-03-02.");
  expect(complaint("Mar 2, 2026")).toContain("Write the day as 2026-03-02.");
  expect(complaint("last Tuesday")).toBe(
    'log/bad-date: "last Tuesday" is not a date as year-month-day. Write the day as 2026-03-02.',
  );
});
