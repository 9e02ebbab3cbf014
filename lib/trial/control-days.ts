// Days of a diary as numbers.

/** Days since 1970-01-01 of a date as the log has it: "2026-05-09". */
export function dayOf(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 86_400_000;
}

export function dateOfDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
