// Tells when one of some files may have been changed by somebody.

import { type FSWatcher, statSync, watch } from "node:fs";
import { dirname } from "node:path";

export interface WatchOptions {
  /** Quiet time after which a change counts as done. */
  readonly settleMs?: number;
  /** How often the files are looked at where the system tells nothing: on network disks, in some containers. */
  readonly pollMs?: number;
}

/**
 * Calls `changed` once the files have been still for a moment. The folders are watched, not the files: an editor that
 * renames a new file into place leaves a watched file behind. `paths` is asked anew each time, since an edit may name
 * another CSV file. Does not keep the process alive.
 */
export function watchFiles(
  paths: () => readonly string[],
  changed: () => void,
  { settleMs = 120, pollMs = 2000 }: WatchOptions = {},
): { close(): void } {
  const folders = new Map<string, FSWatcher>();
  let settled = marksOf(paths());
  let waiting: NodeJS.Timeout | undefined;

  const look = () => {
    watchFolders();
    const marks = marksOf(paths());
    if (marks === settled) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      if (marksOf(paths()) !== marks) return look();
      settled = marks;
      changed();
    }, settleMs);
    waiting.unref();
  };
  const watchFolders = () => {
    for (const folder of new Set(paths().map((path) => dirname(path)))) {
      if (folders.has(folder)) continue;
      try {
        const watcher = watch(folder, { persistent: false }, look);
        watcher.on("error", () => {
          watcher.close();
          folders.delete(folder);
        });
        folders.set(folder, watcher);
      } catch {
        // What cannot be watched is still looked at every now and then.
      }
    }
  };
  const poll = setInterval(look, pollMs);
  poll.unref();
  watchFolders();
  return {
    close: () => {
      clearInterval(poll);
      clearTimeout(waiting);
      for (const watcher of folders.values()) watcher.close();
    },
  };
}

/** What tells one state of the files from another without reading them. */
function marksOf(paths: readonly string[]): string {
  return paths
    .map((path) => {
      try {
        const { ino, size, mtimeMs, ctimeMs } = statSync(path);
        return `${ino} ${size} ${mtimeMs} ${ctimeMs}`;
      } catch {
        return "none";
      }
    })
    .join("\n");
}
