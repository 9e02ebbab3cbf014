// A day as year-month-day (ISO 8601), and what another spelling could mean.

import type { Issue } from "../issue.ts";
import { badDate, impossibleDate } from "./date-messages.ts";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** The day as "2026-03-02", or the complaint. Days from 1900 to 2199; a time after a T is left out. */
export function readDate(text: string): string | Issue {
  const typed = text.trim();
  const iso = /^(\d{4})-(\d{2})-(\d{2})(?:[T ][\d:.+-]*Z?)?$/.exec(typed);
  if (!iso) return notIso(typed);
  const [year, month, day] = [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  const why = whyImpossible(year, month, day);
  return why === undefined ? `${iso[1]}-${iso[2]}-${iso[3]}` : impossibleDate(typed, why);
}

function whyImpossible(year: number, month: number, day: number): string | undefined {
  if (year < 1900 || year > 2199) return "the year should lie between 1900 and 2199";
  const name = months[month - 1];
  if (name === undefined) return "the month in the middle goes from 01 to 12";
  const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (day >= 1 && day <= days) return undefined;
  return `${name} ${year} has ${days} days`;
}

function notIso(typed: string): Issue {
  const readings = dayReadings(typed).filter(([y, m, d]) => whyImpossible(y, m, d) === undefined);
  const days = [...new Map(readings.map((day) => [isoOf(day), day])).values()];
  const words = days.map(([y, m, d]) => `${d} ${months[m - 1]} ${y} (${isoOf([y, m, d])})`).join(" or ");
  return badDate(typed, words, days.map(isoOf).join(" or ") || "2026-03-02");
}

type Day = readonly [year: number, month: number, day: number];

function dayReadings(typed: string): Day[] {
  const yearFirst = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(typed)?.slice(1).map(Number);
  if (yearFirst) return [[yearFirst[0] ?? 0, yearFirst[1] ?? 0, yearFirst[2] ?? 0]];
  const yearLast = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4}|\d{2})$/.exec(typed)?.slice(1).map(Number);
  if (yearLast) {
    const [first = 0, second = 0, short = 0] = yearLast;
    const year = short < 100 ? 2000 + short : short;
    return [
      [year, second, first],
      [year, first, second],
    ];
  }
  const words = /^(?:(\d{1,2})\.? )?([a-z]{3,})\.?(?: (\d{1,2}),?)? (\d{4})$/i.exec(typed);
  const month = months.findIndex((name) => name.toLowerCase().startsWith((words?.[2] ?? "-").toLowerCase()));
  const day = words?.[1] ?? words?.[3];
  return words && month >= 0 && day ? [[Number(words[4]), month + 1, Number(day)]] : [];
}

function isoOf([year, month, day]: Day): string {
  return `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}
