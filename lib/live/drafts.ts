// Edits that are not saved yet, kept by the browser, so that they survive a reload.

import { fingerprint } from "../log/fingerprint.ts";
import type { LogText } from "../log/types.ts";

/** What of the browser's storage is used; a test hands in its own. */
export type DraftStorage = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

export interface Draft {
  readonly key: string;
  /** What the edits began from. */
  readonly base: readonly LogText[];
  readonly texts: readonly LogText[];
}

/** Every key of a log's drafts begins with it; the page looks for one before anything of the live part is loaded. */
export const draftHead = (logName: string): string => `mullbook draft ${logName} `;

export const draftKey = (base: readonly LogText[]): string =>
  draftHead(base[0]?.name ?? "") + fingerprint(...base.map(({ text }) => text));

/** Keeps the texts as they are edited, takes the draft away where nothing differs. False: the browser keeps nothing. */
export function keepDraft(
  storage: () => DraftStorage,
  base: readonly LogText[],
  texts: readonly LogText[],
): boolean {
  try {
    const key = draftKey(base);
    const same = texts.every(({ text }, i) => text === base[i]?.text);
    if (same) storage().removeItem(key);
    else storage().setItem(key, JSON.stringify({ base, texts }));
    return true;
  } catch {
    return false;
  }
}

export function dropDraft(storage: () => DraftStorage, key: string): void {
  try {
    storage().removeItem(key);
  } catch {
    // Nothing was kept.
  }
}

/** The draft that began from these texts; else another one of the same log. What is no draft is passed over. */
export function findDraft(storage: () => DraftStorage, base: readonly LogText[]): Draft | undefined {
  try {
    const kept = storage();
    const head = draftHead(base[0]?.name ?? "");
    const keys = Array.from({ length: kept.length }, (_, i) => kept.key(i) ?? "");
    const own = draftKey(base);
    const drafts = [own, ...keys.filter((key) => key.startsWith(head) && key !== own)];
    for (const key of drafts) {
      const draft = readDraft(key, kept.getItem(key));
      if (draft) return draft;
    }
  } catch {
    // Storage is refused, or holds what we did not write.
  }
  return undefined;
}

function readDraft(key: string, kept: string | null): Draft | undefined {
  if (kept === null) return undefined;
  const read = JSON.parse(kept) as Partial<Draft> | null;
  const { base, texts } = read ?? {};
  return areTexts(base) && areTexts(texts) ? { key, base, texts } : undefined;
}

function areTexts(value: unknown): value is readonly LogText[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((one) => typeof one?.name === "string" && typeof one?.text === "string")
  );
}
