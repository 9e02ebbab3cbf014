// How often the founder means to make each test, so that a page can say which one is due.

import { entryOf } from "../numbers/entry-of.ts";
import { remindNothing } from "./complaints-diary.ts";
import { type DiaryProperty, diaryProperties, type Reminder } from "./diary-properties.ts";
import { fieldsOf, mapOf, textNodeOf, textOf } from "./fields.ts";
import type { Measured } from "./figure-types.ts";
import { measuredOf } from "./measured.ts";
import type { Entry, LogNode, Report } from "./node.ts";

const words: { readonly [word: string]: string } = {
  daily: "1 day",
  "every day": "1 day",
  weekly: "7 days",
  "every week": "7 days",
  monthly: "30 days",
  "every month": "30 days",
};
const daysOf: { readonly [unit: string]: number } = { week: 7, month: 30, year: 365 };

/** `remind: { moisture: 1 day, clay by wash: monthly }`; gfn is another name of fineness. */
export function readReminders(entry: Entry | undefined, report: Report): Reminder[] {
  const map = mapOf(entry?.value, "remind", report);
  if (!map) return [];
  const known = [...diaryProperties, "gfn", "note"];
  const fields = fieldsOf(map, known, "as a test to be reminded of", report);
  textOf(fields.get("note"), "note", report);
  const found = known.flatMap((name) => {
    const own = name === "note" ? undefined : fields.entry(name);
    if (!own) return [];
    const everyDays = every(own.value, name, report);
    const property = name === "gfn" ? "fineness" : (name as DiaryProperty);
    return everyDays ? [{ property, everyDays, place: own.keyPlace }] : [];
  });
  if (map.entries.length === 0 && !fields.holed) report(remindNothing(), map.place);
  return found.filter(({ property }, i) => found.findIndex((one) => one.property === property) === i);
}

function every(node: LogNode, what: string, report: Report): Measured | undefined {
  const typed = textNodeOf(node, what, report);
  if (!typed) return undefined;
  const field = { what, unit: "d", most: 3660, aboveZero: true };
  return measuredOf({ ...typed, text: inDays(typed.text) }, field, report);
}

/** "2 weeks" as "14 d": weeks and months are no units of the table, for a month is not always as long. */
function inDays(text: string): string {
  const plain = text.trim().replace(/\s+/g, " ").toLowerCase();
  const long = /^(\d+(?:\.\d+)?)\s*(week|month|year)s?$/.exec(plain);
  return entryOf(words, plain) ?? (long ? `${Number(long[1]) * daysOf[long[2]!]!} d` : text);
}
