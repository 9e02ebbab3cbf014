// Files written whole or not at all.

import { randomBytes } from "node:crypto";
import {
  closeSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { makeFolders } from "./make-folders.ts";
import { fileRefusal, type Refusal } from "./refusal.ts";

export type FileTexts = { readonly [nameInFolder: string]: string };

/**
 * Writes each text by a temporary file, flush and rename, and makes the folders that are missing. Nothing is
 * written where one of the files would take the place of a kept one, whatever name or link leads to it.
 * Returns the paths, in the order given.
 */
export function writeFiles(
  folder: string,
  texts: FileTexts,
  kept: readonly string[],
): { readonly paths: readonly string[] } | Refusal {
  const files = Object.entries(texts).map(([name, text]) => ({ path: join(folder, name), text }));
  for (const { path } of files) {
    const there = statOf(path);
    if (there && kept.some((other) => same(there, statOf(other)))) {
      return {
        refused: `The page would be written over ${path}, which is your log or belongs to it.`,
        remedy: "Choose another folder: --to DIR.",
      };
    }
  }
  for (const { path, text } of files) {
    const refusal = writeWhole(path, text);
    if (refusal) return refusal;
  }
  return { paths: files.map(({ path }) => path) };
}

function writeWhole(path: string, text: string): Refusal | undefined {
  const fresh = join(dirname(path), `.mullbook-${randomBytes(6).toString("hex")}.tmp`);
  try {
    makeFolders(dirname(path));
    const file = openSync(fresh, "wx");
    try {
      writeFileSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(fresh, path);
    return undefined;
  } catch (error) {
    if (statOf(fresh)) rmSync(fresh);
    return fileRefusal(error, path, "written");
  }
}

function statOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    // What cannot be looked at cannot be written either, and writing says why.
    return undefined;
  }
}

function same(a: Stats, b: Stats | undefined): boolean {
  return b !== undefined && a.dev === b.dev && a.ino === b.ino;
}
