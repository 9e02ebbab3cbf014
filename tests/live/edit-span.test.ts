// What a figure may be tried as, and what a key means.

import { expect, test } from "vitest";
import { trySpan } from "../../lib/live/edit-span.ts";
import { entryName, pathWords } from "../../lib/live/edit-words.ts";
import { keyMeaning } from "../../lib/live/keys.ts";

test.each([
  ["0.107 kg", 0.075, 0.139, 0.001],
  ["152.6 g", 106.8, 198.4, 0.1],
  ["10 g ± 4 g", 0, 26, 1],
  ["90 %", 63, 100, 1],
  ["0", 0, 10, 1],
  ["3", 2.1, 3.9, 0.1],
])("%s is tried from %d to %d by %d", (text, least, most, step) => {
  const span = trySpan(text)!;
  expect([span.least, span.most, span.step]).toEqual([least, most, step]);
});

test("a tried number keeps digits, unit and ± of the figure as typed", () => {
  expect(trySpan("0.107 kg ± 0.002 kg")!.say(0.12)).toBe("0.120 kg ± 0.002 kg");
});

test.each(["oven", "2026-07-11", "42 to 48 %", "13/32 in", "3 lb 4 oz", "1 1/2 lb", "", "12,4 g"])(
  "%j is no single figure to try",
  (text) => {
    expect(trySpan(text)).toBeUndefined();
  },
);

test("places in words", () => {
  expect(pathWords(["batches", "W3", "moisture", "damp"])).toBe("W3, moisture, damp");
  expect(pathWords(["swelling.csv", 3, "dry"])).toBe("swelling.csv, row 4, dry");
  expect(pathWords(["heap", "mass"])).toBe("heap, mass");
  expect(entryName(["a/b", "c~d"])).toBe("a~1b/c~0d");
});

const press = (key: string, more: Partial<KeyboardEvent> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...more,
});

test("a field with typed text keeps its own undo; on a cell a figure opens it", () => {
  const [page, field, cell] = [
    { inField: false, onCell: false },
    { inField: true, onCell: false },
    { inField: false, onCell: true },
  ];
  expect(keyMeaning(press("z", { ctrlKey: true }), page)).toBe("undo");
  expect(keyMeaning(press("Z", { ctrlKey: true, shiftKey: true }), page)).toBe("redo");
  expect(keyMeaning(press("y", { metaKey: true }), page)).toBe("redo");
  expect(keyMeaning(press("z", { ctrlKey: true }), field)).toBeUndefined();
  expect(keyMeaning(press("s", { ctrlKey: true }), field)).toBe("save");
  expect(keyMeaning(press("5"), cell)).toBe("type");
  expect(keyMeaning(press("F2"), cell)).toBe("open");
  expect(keyMeaning(press("5"), page)).toBeUndefined();
  expect(keyMeaning(press("Tab"), cell)).toBeUndefined();
});
