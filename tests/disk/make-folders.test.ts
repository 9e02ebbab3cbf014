// Folders that are missing are made, or it is said why not.

import { existsSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { makeFolders } from "../../lib/disk/make-folders.ts";
import { temporaryFolder } from "./saving.ts";

test("all folders of a path are made; those that are there stay", () => {
  const folder = temporaryFolder();
  for (const path of ["a/b/c", "a/b", "a/b/d", ".", ""]) {
    makeFolders(join(folder, path));
    expect(statSync(join(folder, path)).isDirectory()).toBe(true);
  }
});

test("a file in the way is a fault", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "file"), "");
  expect(() => makeFolders(join(folder, "file"))).toThrow("EEXIST");
  expect(() => makeFolders(join(folder, "file", "b"))).toThrow("ENOTDIR");
});

test("a folder that takes nothing new is a fault and no endless try", ({ skip }) => {
  if (!existsSync("/proc/self")) return skip("there is no /proc");
  expect(() => makeFolders("/proc/pages/of/mine")).toThrow("ENOENT");
});
