// Drafts in the browser's storage.

import { expect, test } from "vitest";
import { type DraftStorage, draftKey, dropDraft, findDraft, keepDraft } from "../../lib/live/drafts.ts";
import { texts } from "./log.ts";

function memory(
  kept: Map<string, string> = new Map(),
): DraftStorage & { readonly kept: Map<string, string> } {
  return {
    kept,
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

const edited = [{ ...texts[0]!, text: texts[0]!.text.replace("152.6", "152.9") }, texts[1]!];

test("a draft is found again by the log's name and the text that it began from", () => {
  const storage = memory();
  expect(findDraft(() => storage, texts)).toBeUndefined();
  expect(keepDraft(() => storage, texts, edited)).toBe(true);
  expect([...storage.kept.keys()]).toEqual([draftKey(texts)]);
  expect(findDraft(() => storage, texts)).toEqual({ key: draftKey(texts), base: texts, texts: edited });
});

test("one that began from an older text of the log is found as well, one of another log is not", () => {
  const storage = memory();
  keepDraft(() => storage, texts, edited);
  const newer = [{ ...texts[0]!, text: `${texts[0]!.text}# more\n` }, texts[1]!];
  expect(findDraft(() => storage, newer)?.base).toEqual(texts);
  expect(findDraft(() => storage, [{ name: "other.yaml", text: "format: 1\n" }])).toBeUndefined();
});

test("nothing is kept where nothing differs any more, or the draft is dropped", () => {
  const storage = memory();
  keepDraft(() => storage, texts, edited);
  keepDraft(() => storage, texts, texts);
  expect(storage.kept.size).toBe(0);
  keepDraft(() => storage, texts, edited);
  dropDraft(() => storage, draftKey(texts));
  expect(storage.kept.size).toBe(0);
});

test("a refusing storage and what we did not write do no harm", () => {
  const refusing = (): DraftStorage => {
    throw new Error("refused");
  };
  expect(keepDraft(refusing, texts, edited)).toBe(false);
  expect(findDraft(refusing, texts)).toBeUndefined();
  dropDraft(refusing, "x");
  for (const junk of [
    "",
    "{",
    "null",
    '{"base":1}',
    '{"base":[],"texts":[]}',
    '{"base":[{"name":1}],"texts":[{}]}',
  ]) {
    expect(findDraft(() => memory(new Map([[draftKey(texts), junk]])), texts)).toBeUndefined();
  }
});
