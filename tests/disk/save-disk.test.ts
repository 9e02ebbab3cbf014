// Saving on disks that are full or may only be read, as they are and not as they are played.

import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { begin } from "../../lib/disk/begin.ts";
import { consoleOn } from "../../lib/disk/console.ts";
import { saveLog } from "../../lib/disk/save.ts";
import { ended, programOf, start } from "./save-program.ts";
import { folderWith, namesIn, temporaryFolder, textsIn, version } from "./saving.ts";

const run = (command: string, ...words: readonly string[]) => spawnSync(command, words, { encoding: "utf8" });

/** A small disk in memory, where the account may mount one. */
function smallDisk(): string | undefined {
  const folder = temporaryFolder();
  if (run("mount", "-t", "tmpfs", "-o", "size=64k,mode=777", "tmpfs", folder).status !== 0) return undefined;
  onTestFinished(() => {
    run("umount", folder);
  });
  return folder;
}

const request = { base: version(1), texts: version(2) };

test("a full disk: the old files stay whole, and the message says what to do", ({ skip }) => {
  const folder = smallDisk();
  if (folder === undefined) return skip("this account may not mount a disk");
  for (const { name, text } of version(1)) writeFileSync(join(folder, name), text);
  const { bfree, bsize } = statfsSync(folder);
  writeFileSync(join(folder, "filler"), Buffer.alloc((bfree - 1) * bsize));
  expect(saveLog(join(folder, "log.yaml"), request)).toEqual({
    kind: "refused",
    message: expect.stringContaining("the disk is full. The file is as it was."),
    remedy: expect.stringContaining("Make room and save again."),
  });
  expect(textsIn(folder)).toEqual(version(1));
  expect(namesIn(folder)).toEqual(["bags.csv", "filler", "log.yaml"]);
});

test("a new log for which there is no room leaves nothing that would stand in the way of the next try", ({
  skip,
}) => {
  const folder = smallDisk();
  if (folder === undefined) return skip("this account may not mount a disk");
  const { bfree, bsize } = statfsSync(folder);
  writeFileSync(join(folder, "filler"), Buffer.alloc((bfree - 1) * bsize));
  let said = "";
  const stream = {
    write: (text: string) => {
      said += text;
    },
  };
  const tried = () => begin(join(folder, "new.yaml"), {}, consoleOn(stream, stream));
  expect(tried()).toBe(2);
  expect(said).toMatch(/cannot be begun: the disk is full\.\n {4}Make room, or choose another disk for it\./);
  expect(namesIn(folder)).toEqual(["filler"]);
  rmSync(join(folder, "filler"));
  expect(tried()).toBe(0);
});

test("a disk that may only be read", ({ skip }) => {
  const folder = smallDisk();
  if (folder === undefined) return skip("this account may not mount a disk");
  for (const { name, text } of version(1)) writeFileSync(join(folder, name), text);
  expect(run("mount", "-o", "remount,ro", folder).status).toBe(0);
  expect(saveLog(join(folder, "log.yaml"), request)).toEqual({
    kind: "refused",
    message: "log.yaml is not saved: the disk is read-only.",
    remedy: "Save a copy elsewhere from the page, to another disk.",
  });
  expect(textsIn(folder)).toEqual(version(1));
});

test("a folder or a file that this account may not write, and one that it may", async ({ skip }) => {
  if (process.getuid?.() === 0 && process.platform !== "linux")
    return skip("only tried on Linux for an administrator");
  const program = await programOf("save-once.ts");
  const save = (folder: string) => {
    // An administrator may write everywhere: the save is then done by the account that owns nothing.
    const id = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const child = spawnSync(process.execPath, [program, folder, "1", "2"], { encoding: "utf8", ...id });
    if (child.stdout === "") throw new Error(child.stderr);
    return JSON.parse(child.stdout) as { readonly kind: string; readonly message?: string };
  };
  const outer = temporaryFolder();
  chmodSync(outer, 0o755);
  const folder = join(outer, "logs");
  mkdirSync(folder);
  for (const { name, text } of version(1)) writeFileSync(join(folder, name), text);
  chmodSync(folder, 0o555);
  expect(save(folder)).toMatchObject({
    kind: "refused",
    message:
      "log.yaml is not saved: your account may not write the file, or may write nothing in its folder.",
  });
  chmodSync(folder, 0o777);
  for (const { name } of version(1)) chmodSync(join(folder, name), 0o444);
  expect(save(folder)).toMatchObject({ kind: "refused" });
  expect(textsIn(folder)).toEqual(version(1));
  for (const { name } of version(1)) chmodSync(join(folder, name), 0o666);
  expect(save(folder)).toMatchObject({ kind: "saved" });
  expect(textsIn(folder)).toEqual(version(2));
});

test("two programs that save the same log: one is first, the other is told what stands there now", async () => {
  const folder = folderWith(version(1));
  const program = await programOf("save-once.ts");
  const moment = Date.now() + 1000;
  const outcomes = await Promise.all(
    [2, 3, 4, 5].map(async (n) => {
      const said = await ended(start(program, folder, 1, n, moment));
      return { n, ...(JSON.parse(said) as { readonly kind: string; readonly theirs?: unknown }) };
    }),
  );
  const saved = outcomes.filter(({ kind }) => kind === "saved");
  expect(saved.length).toBe(1);
  expect(textsIn(folder)).toEqual(version(saved[0]!.n));
  for (const other of outcomes.filter(({ kind }) => kind !== "saved"))
    expect(other).toMatchObject({ kind: "changed", theirs: version(saved[0]!.n) });
});
