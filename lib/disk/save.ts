// A page's edits into the founder's own files: old or new, always whole, and never over what somebody else wrote.

import { isUtf8 } from "node:buffer";
import { realpathSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { sizeLimit } from "../log/check-text.ts";
import * as say from "../log/complaints-save.ts";
import { filesNamedIn } from "../log/files-named.ts";
import type { LogText } from "../log/types.ts";
import { readBytes } from "./read-bytes.ts";
import { isRefusal } from "./refusal.ts";
import { type Lock, takeLock } from "./save-lock.ts";
import { cannotRead, cannotSave, type Refused, refused } from "./save-messages.ts";
import { DISK, type Disk, sweepFresh } from "./save-replace.ts";
import { requestFault, type SaveRequest } from "./save-request.ts";
import { foldersOf, isWritable, type Now, replaceAll, type Target } from "./save-swap.ts";

export type Saved =
  | { readonly kind: "saved"; readonly texts: readonly LogText[] }
  /** A file is no longer what the edits began from; theirs is what stands there now. */
  | { readonly kind: "changed"; readonly theirs: readonly LogText[] }
  | Refused;

/**
 * Saves the texts of a log and of CSV files that it names, all in its folder, if they still are what the edits began
 * from, byte for byte. It is done in one go, so that a signal waits until it is done.
 *
 * Each changed file is written beside the old one and flushed, the old one is copied to "<name>.before", and only then
 * the new ones are renamed into place, CSV files first and the log last. A program killed between two of these renames
 * leaves new CSV files with the old log: each whole, and .before beside it. A link stays and the file behind it is
 * replaced. Two Mullbooks are kept apart by a lock on the folder. Another program, which knows no lock, can still
 * write in the moment between the last comparison and the rename, a fraction of a millisecond: what it wrote then is
 * lost, and is what the rename replaced.
 */
export function saveLog(path: string, request: SaveRequest, disk: Disk = DISK): Saved {
  const fault = requestFault(basename(path), request);
  if (fault) return fault;
  const targets: Target[] = [];
  for (const [i, { name, text }] of request.texts.entries()) {
    const target = targetOf(join(dirname(path), name), name, request.base[i]!.text, text);
    if ("kind" in target) return target;
    targets.push(target);
  }
  const locks: Lock[] = [];
  try {
    for (const folder of foldersOf(targets)) {
      const lock = takeLock(folder);
      if (!lock) return refused(say.busy(basename(path)));
      locks.push(lock);
      sweepFresh(folder);
    }
    return compareAndReplace(path, targets, locks, disk);
  } catch (error) {
    return cannotSave(error, basename(path));
  } finally {
    for (const lock of locks) lock.release();
  }
}

function targetOf(path: string, name: string, base: string, text: string): Target | Refused {
  try {
    const real = realpathSync(path);
    if (!statSync(real).isFile()) return refused(say.noFile(name));
    return { name, path: real, base: Buffer.from(base), text: Buffer.from(text) };
  } catch (error) {
    return cannotSave(error, name);
  }
}

function compareAndReplace(
  path: string,
  targets: readonly Target[],
  locks: readonly Lock[],
  disk: Disk,
): Saved {
  const now: Now[] = [];
  for (const target of targets) {
    const there = nowAt(target);
    if ("kind" in there) return there;
    now.push(there);
  }
  const texts = targets.map(({ name, text }) => ({ name, text: text.toString() }));
  // An answer that got lost is asked for again: it is saved already.
  if (now.every(({ bytes, target }) => bytes.equals(target.text))) return { kind: "saved", texts };
  if (now.some(({ bytes, target }) => !bytes.equals(target.base))) {
    const lossy = now.find(({ bytes }) => !isUtf8(bytes));
    return lossy ? refused(say.notUtf8There(lossy.target.name)) : theirsAt(path);
  }
  const named = filesNamedIn(now[0]!.bytes.toString());
  if (targets.slice(1).some(({ name }) => !named.includes(name)))
    return refused(say.strangeFiles(basename(path)));

  const changed = now.filter(({ bytes, target }) => !bytes.equals(target.text));
  for (const { target } of changed) {
    if (!isWritable(target.path)) return refused(say.readOnly(target.name));
  }
  // CSV files first, the log last.
  const outcome = replaceAll([...changed].reverse(), locks, disk);
  if (outcome === "changed") return theirsAt(path);
  return outcome ?? { kind: "saved", texts };
}

function nowAt(target: Target): Now | Refused {
  // Looked at before it is read: what is written meanwhile is seen later.
  const stats = statSync(target.path, { throwIfNoEntry: false });
  if (!stats) return refused(say.vanished(target.name));
  const bytes = readBytes(target.path, sizeLimit, target.name);
  if (isRefusal(bytes)) return cannotRead(bytes);
  return Buffer.isBuffer(bytes) ? { target, bytes, stats } : refused(say.tooLong(target.name));
}

/** The log as it stands now and the CSV files that it names, as far as they can be read. */
function theirsAt(path: string): Saved {
  const name = basename(path);
  const log = readBytes(path, sizeLimit, name);
  if (isRefusal(log)) return cannotRead(log);
  if (!Buffer.isBuffer(log)) return refused(say.tooLong(name));
  const text = log.toString();
  const beside = filesNamedIn(text).flatMap((file) => {
    const bytes = readBytes(join(dirname(path), file), sizeLimit, file);
    return Buffer.isBuffer(bytes) ? [{ name: file, text: bytes.toString() }] : [];
  });
  return { kind: "changed", theirs: [{ name, text }, ...beside] };
}
