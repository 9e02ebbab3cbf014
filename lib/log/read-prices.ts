// What sand, clay and additives cost.

import { nearest } from "../numbers/nearest.ts";
import { priceIncomplete, priceOfUnknown } from "./complaints-recipe.ts";
import { fieldsOf, mapOf, textOf, uniqueEntries } from "./fields.ts";
import type { LoggedPrices, Price } from "./heap-record.ts";
import { type Entry, plainName, type Report } from "./node.ts";
import { numberIn } from "./read-season-fields.ts";

/** known: what the log names that can be bought, besides sand and clay. */
export function readPrices(
  entry: Entry | undefined,
  known: readonly string[],
  report: Report,
): LoggedPrices | undefined {
  const map = mapOf(entry?.value, "prices", report);
  if (!map || !entry) return undefined;
  const entries = uniqueEntries(map, report);
  const textAt = (name: string) =>
    textOf(entries.find(({ key }) => plainName(key) === name)?.value, name, report);
  textAt("note");
  const currency = textAt("currency") ?? "";
  const goods = [...new Set(["sand", "bentonite", "clay", ...known])];
  const of = entries.flatMap((one) => {
    const name = plainName(one.key);
    if (name === "note" || name === "currency") return [];
    if (!goods.some((good) => plainName(good) === name)) {
      report(priceOfUnknown(one.key, nearest(name, goods) ?? "", goods.join(", ")), one.keyPlace);
      return [];
    }
    return priceOf(one, report) ?? [];
  });
  return { currency, of, place: entry.keyPlace };
}

function priceOf({ key, keyPlace, value }: Entry, report: Report): Price | undefined {
  const name = key.trim();
  const map = mapOf(value, name, report);
  if (!map) return undefined;
  const fields = fieldsOf(map, ["cost", "for", "note"], `of the price of "${name}"`, report);
  textOf(fields.get("note"), "note", report);
  const reader = { fields, report };
  const cost = numberIn(reader, "cost", "", 1e9, { aboveZero: false });
  const forKg = numberIn(reader, "for", "kg", 1e6);
  const missing = ["cost", "for"].filter((part) => !fields.get(part));
  if (missing.length > 0 && !fields.holed) report(priceIncomplete(name, missing.join("` and `")), keyPlace);
  return cost && forKg ? { name, cost, forKg, place: keyPlace } : undefined;
}
