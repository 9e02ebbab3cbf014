// An opened log as it stands on the disk, and what each page knows of it.

import { createHash } from "node:crypto";
import { realpathSync } from "node:fs";
import { basename } from "node:path";
import type { LogText } from "../log/types.ts";
import { readBytes } from "./read-bytes.ts";
import { type ReadLogFile, readLogFile } from "./read-log-file.ts";
import { isRefusal, type Refusal } from "./refusal.ts";

export interface Files extends ReadLogFile {
  /** The log's first, then those of the CSV files that it names; the log's alone where it cannot be read as one. */
  readonly texts: readonly LogText[];
  /** Short and the same for the same texts. */
  readonly mark: string;
}

export function filesAt(path: string): Files | Refusal {
  const read = readLogFile(path);
  if (isRefusal(read)) return read;
  const texts = read.log?.texts ?? logAlone(path);
  return { ...read, texts, mark: markOf(texts) };
}

export function markOf(texts: readonly LogText[]): string {
  return createHash("sha256")
    .update(JSON.stringify(texts.map(({ name, text }) => [name, text])))
    .digest("base64");
}

/** Also where a link leads: a change behind it is one of the log. */
export function withLinked(paths: readonly string[]): string[] {
  const linked = paths.flatMap((path) => {
    try {
      return [realpathSync(path)];
    } catch {
      return [];
    }
  });
  return [...new Set([...paths, ...linked])];
}

function logAlone(path: string): LogText[] {
  const bytes = readBytes(path, Number.MAX_SAFE_INTEGER);
  return Buffer.isBuffer(bytes) ? [{ name: basename(path), text: bytes.toString() }] : [];
}
