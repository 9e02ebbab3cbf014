// What a page sends to be saved, checked before any file is looked at.

import { Buffer } from "node:buffer";
import { sizeLimit } from "../log/check-text.ts";
import * as say from "../log/complaints-save.ts";
import { isFileName } from "../log/csv-file.ts";
import type { LogText } from "../log/types.ts";
import { type Refused, refused } from "./save-messages.ts";

export interface SaveRequest {
  /** The texts that the edits began from. */
  readonly base: readonly LogText[];
  /** What they are to become: the same files. */
  readonly texts: readonly LogText[];
}

/** From the request's text; anything but two lists of named texts is refused. */
export function readSaveRequest(json: string): SaveRequest | Refused {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return refused(say.unreadableRequest());
  }
  if (typeof value !== "object" || value === null) return refused(say.unreadableRequest());
  const { base, texts } = value as { readonly base?: unknown; readonly texts?: unknown };
  return isTexts(base) && isTexts(texts) ? { base, texts } : refused(say.unreadableRequest());
}

function isTexts(value: unknown): value is readonly LogText[] {
  if (!Array.isArray(value) || value.length === 0) return false;
  return value.every(
    (one: unknown) =>
      typeof one === "object" &&
      one !== null &&
      "name" in one &&
      typeof one.name === "string" &&
      "text" in one &&
      typeof one.text === "string",
  );
}

/** Undefined where it may be saved: each file once, the same ones on both sides, of a size that can be read again. */
export function requestFault(log: string, { base, texts }: SaveRequest): Refused | undefined {
  const names = base.map(({ name }) => name);
  const same = texts.length === base.length && texts.every(({ name }, i) => name === names[i]);
  const beside = names.slice(1).every((name) => isFileName(name) && name !== log);
  if (!same || !beside || new Set(names).size < names.length || names[0] !== log)
    return refused(say.strangeFiles(log));
  for (const { name, text } of texts) {
    if (Buffer.from(text).toString() !== text) return refused(say.brokenText(name));
    if (Buffer.byteLength(text) > sizeLimit) return refused(say.tooLong(name));
  }
  return undefined;
}
