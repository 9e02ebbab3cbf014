// A log from the disk, with the CSV files that it names beside it.

import { isUtf8 } from "node:buffer";
import { basename, dirname, join } from "node:path";
import type { Issue } from "../issue.ts";
import { sizeLimit } from "../log/check-text.ts";
import { notUtf8, unreadable } from "../log/complaints-disk.ts";
import { tooLarge } from "../log/complaints-file.ts";
import { filesNamedIn } from "../log/files-named.ts";
import { readLog } from "../log/read-log.ts";
import { placeIn, sourceOf } from "../log/source.ts";
import type { Log } from "../log/types.ts";
import { readBytes } from "./read-bytes.ts";
import { isRefusal, type Refusal } from "./refusal.ts";

/** More CSV files than a season fills. */
const MOST_FILES = 100;

export interface ReadLogFile {
  /** Undefined where nothing could be made of the file: the issues say why. */
  readonly log?: Log;
  /** Places name files as they lie beside the log. */
  readonly issues: readonly Issue[];
  /** Paths of the log and of all that it names: never to be written over. */
  readonly paths: readonly string[];
}

/**
 * Reads a log of at most 5 MB and the CSV files that it names; these stand beside the log, whatever the name says,
 * since a name with a folder in it is never read. What is larger is refused by its size, without reading it.
 */
export function readLogFile(path: string): ReadLogFile | Refusal {
  const name = basename(path);
  const bytes = readBytes(path, sizeLimit);
  if (isRefusal(bytes)) return bytes;
  if (!Buffer.isBuffer(bytes)) return { issues: [sizeIssue(bytes.bytes, name)], paths: [path] };

  const text = bytes.toString("utf8");
  const names = filesNamedIn(text).slice(0, MOST_FILES);
  const beside = names.map((file) => ({ file, ...csvBeside(join(dirname(path), file), file) }));
  const files = Object.fromEntries(
    beside.flatMap(({ file, text }) => (text === undefined ? [] : [[file, text]])),
  );
  const { value, issues } = readLog(text, { name, files });

  const ours = [
    ...(isUtf8(bytes) || value === undefined ? [] : [lossyIn(text, name)]),
    ...beside.flatMap(({ issue }) => issue ?? []),
  ];
  // A file that is there and cannot be read is not missing.
  const unread = beside.flatMap(({ file, issue, text }) => (issue && text === undefined ? [file] : []));
  const missing = ({ code, message }: Issue) =>
    code === "log/no-such-file" && unread.some((file) => message.includes(`"${file}"`));
  return {
    ...(value === undefined ? {} : { log: value }),
    issues: [...issues.filter((issue) => !missing(issue)), ...ours],
    paths: [path, ...names.map((file) => join(dirname(path), file))],
  };
}

/** No text and no issue where there is no such file: the log's reader says so, at the line that names it. */
function csvBeside(path: string, file: string): { readonly text?: string; readonly issue?: Issue } {
  const bytes = readBytes(path, sizeLimit, file);
  if (Buffer.isBuffer(bytes)) {
    return {
      text: bytes.toString("utf8"),
      ...(isUtf8(bytes) ? {} : { issue: lossyIn(bytes.toString("utf8"), file) }),
    };
  }
  if (!isRefusal(bytes)) return { issue: sizeIssue(bytes.bytes, file) };
  if (bytes.refused.startsWith("There is no file")) return {};
  return { issue: { ...unreadable(bytes.refused, bytes.remedy), place: { file } } };
}

/** At the first letter that is lost. */
function lossyIn(text: string, file: string): Issue {
  const at = text.indexOf("\ufffd");
  return { ...notUtf8(), place: at < 0 ? { file } : placeIn(sourceOf(file, text), at, 1) };
}

function sizeIssue(bytes: number, file: string): Issue {
  const megabytes = (size: number) => `${(size / 1e6).toFixed(1).replace(/\.0$/, "")} MB`;
  return { ...tooLarge(megabytes(bytes), megabytes(sizeLimit)), place: { file } };
}
