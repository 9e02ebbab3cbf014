// Days as numbers: 0 is 1970-01-01, by the Gregorian calendar.

const DAY_MS = 86_400_000;

/**
 * Days from 1970-01-01 to a date such as "2026-05-02"; NaN where there is no such day.
 * @example dayOf("2026-05-02") // 20575
 */
export function dayOf(date: string): number {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!parts) return Number.NaN;
  const day = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) / DAY_MS;
  return dateOfDay(day) === date ? day : Number.NaN;
}

/**
 * The date of a day, such as "2026-05-02".
 * @example dateOfDay(20575) // "2026-05-02"
 */
export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

/** Days from one date to another; NaN where either is none. */
export function daysBetween(from: string, to: string): number {
  return dayOf(to) - dayOf(from);
}
