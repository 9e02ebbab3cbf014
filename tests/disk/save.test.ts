// Saving into the founder's own files: what is written, what is kept, and when nothing is touched.

import {
  chmodSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  unlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { saveLog } from "../../lib/disk/save.ts";
import { LOCK_FILE } from "../../lib/disk/save-lock.ts";
import { DISK, type Disk } from "../../lib/disk/save-replace.ts";
import { folderWith, namesIn, temporaryFolder, textsIn, version } from "./saving.ts";

const both = (base: number, texts: number) => ({ base: version(base), texts: version(texts) });

function fault(code: string): never {
  throw Object.assign(new Error(code), { code });
}

test("log and CSV file are replaced, and what they were stands beside them", () => {
  const folder = folderWith(version(1));
  expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toEqual({ kind: "saved", texts: version(2) });
  expect(textsIn(folder)).toEqual(version(2));
  expect(namesIn(folder)).toEqual(["bags.csv", "bags.csv.before", "log.yaml", "log.yaml.before"]);
  const [log, rows] = version(1);
  expect(readFileSync(join(folder, "log.yaml.before"), "utf8")).toBe(log!.text);
  expect(readFileSync(join(folder, "bags.csv.before"), "utf8")).toBe(rows!.text);
  saveLog(join(folder, "log.yaml"), both(2, 3));
  expect(readFileSync(join(folder, "log.yaml.before"), "utf8")).toBe(version(2)[0]!.text);
});

test("a file that does not change is not written", () => {
  const folder = folderWith(version(1));
  utimesSync(join(folder, "bags.csv"), 1e9, 1e9);
  const inode = statSync(join(folder, "bags.csv")).ino;
  const texts = [version(2)[0]!, version(1)[1]!];
  expect(saveLog(join(folder, "log.yaml"), { base: version(1), texts }).kind).toBe("saved");
  expect(statSync(join(folder, "bags.csv"))).toMatchObject({ ino: inode, mtimeMs: 1e12 });
  expect(namesIn(folder)).not.toContain("bags.csv.before");
});

test("byte order mark, line ends and letters stay as they were typed", () => {
  const text = "\uFEFFformat: 1\r\ntitle: Grüner Sand ±\r\nfounder: Ø\r";
  const folder = folderWith([{ name: "log.yaml", text }]);
  const after = text.replace("Ø", "Å 𝒳");
  const saved = saveLog(join(folder, "log.yaml"), {
    base: [{ name: "log.yaml", text }],
    texts: [{ name: "log.yaml", text: after }],
  });
  expect(saved.kind).toBe("saved");
  expect(readFileSync(join(folder, "log.yaml")).equals(Buffer.from(after))).toBe(true);
});

test("mode stays, and so does a link: the file behind it is replaced", () => {
  const there = folderWith(version(1));
  chmodSync(join(there, "log.yaml"), 0o640);
  const folder = temporaryFolder();
  symlinkSync(join(there, "log.yaml"), join(folder, "log.yaml"));
  writeFileSync(join(folder, "bags.csv"), version(1)[1]!.text);
  expect(saveLog(join(folder, "log.yaml"), both(1, 2)).kind).toBe("saved");
  expect(lstatSync(join(folder, "log.yaml")).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(there, "log.yaml"), "utf8")).toBe(version(2)[0]!.text);
  expect(statSync(join(there, "log.yaml")).mode & 0o777).toBe(0o640);
  expect(namesIn(there)).toEqual(["bags.csv", "log.yaml", "log.yaml.before"]);
  expect(textsIn(folder)).toEqual(version(2));
});

test("a hard link keeps the old text under its other name", () => {
  const folder = folderWith(version(1));
  linkSync(join(folder, "log.yaml"), join(folder, "other.yaml"));
  saveLog(join(folder, "log.yaml"), both(1, 2));
  expect(readFileSync(join(folder, "other.yaml"), "utf8")).toBe(version(1)[0]!.text);
});

test("what somebody else changed is not written over; theirs is handed out", () => {
  for (const name of ["log.yaml", "bags.csv"] as const) {
    const folder = folderWith(version(1));
    const theirs = version(1).map((one) =>
      one.name === name ? { name, text: `${one.text}# theirs\n` } : one,
    );
    writeFileSync(join(folder, name), theirs.find((one) => one.name === name)!.text);
    expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toEqual({ kind: "changed", theirs });
    expect(textsIn(folder)).toEqual(theirs);
    expect(namesIn(folder)).toEqual(["bags.csv", "log.yaml"]);
  }
});

test("a change of the same length and time is seen as well", () => {
  const folder = folderWith(version(1));
  const path = join(folder, "log.yaml");
  const { atimeMs, mtimeMs } = statSync(path);
  writeFileSync(path, version(1)[0]!.text.replace("invented", "imagined"));
  utimesSync(path, atimeMs / 1000, mtimeMs / 1000);
  expect(saveLog(path, both(1, 2)).kind).toBe("changed");
});

test("a change between the comparison and the rename is seen", () => {
  const folder = folderWith(version(1));
  const path = join(folder, "log.yaml");
  let renames = 0;
  const disk: Disk = {
    ...DISK,
    renameSync: (from, to) => {
      DISK.renameSync(from, to);
      if (++renames === 2) writeFileSync(path, "format: 1\n# theirs\n");
    },
  };
  // The second rename puts the last .before in place: all is ready, and nothing is replaced yet.
  expect(saveLog(path, both(1, 2), disk)).toEqual({
    kind: "changed",
    theirs: [{ name: "log.yaml", text: "format: 1\n# theirs\n" }],
  });
  expect(readFileSync(path, "utf8")).toBe("format: 1\n# theirs\n");
  expect(readFileSync(join(folder, "bags.csv"), "utf8")).toBe(version(1)[1]!.text);
});

test("asked again after an answer that got lost, it is saved already", () => {
  const folder = folderWith(version(2));
  expect(saveLog(join(folder, "log.yaml"), both(1, 2)).kind).toBe("saved");
  expect(namesIn(folder)).toEqual(["bags.csv", "log.yaml"]);
});

test("only the log and the CSV files that it names, in its own folder", () => {
  const folder = folderWith([
    ...version(1),
    { name: "other.csv", text: "a\n" },
    { name: "other.yaml", text: "a\n" },
  ]);
  mkdirSync(join(folder, "sub"));
  writeFileSync(join(folder, "sub", "bags.csv"), "a\n");
  const names = [
    "other.csv",
    "other.yaml",
    "sub/bags.csv",
    "../log.yaml",
    "/etc/hostname",
    "bags.csv\0.csv",
    ".bags.csv",
  ];
  for (const name of names) {
    const more = (n: number, text: string) => [...version(n), { name, text }];
    const saved = saveLog(join(folder, "log.yaml"), { base: more(1, "a\n"), texts: more(2, "b\n") });
    expect({ name, saved }).toMatchObject({
      name,
      saved: { kind: "refused", message: expect.stringMatching(/files other than log.yaml/) },
    });
  }
  const [log, rows] = version(1);
  for (const base of [[rows!, log!], [rows!], [log!, log!], [log!, rows!, rows!]]) {
    expect(saveLog(join(folder, "log.yaml"), { base, texts: base }).kind).toBe("refused");
  }
  expect(saveLog(join(folder, "log.yaml"), { base: version(1), texts: [version(2)[0]!] }).kind).toBe(
    "refused",
  );
  expect(textsIn(folder)).toEqual(version(1));
  expect(namesIn(folder)).toEqual(["bags.csv", "log.yaml", "other.csv", "other.yaml", "sub"]);
});

test("a text that no file can hold, or that could not be read again, is refused", () => {
  const folder = folderWith(version(1));
  const withLog = (text: string) =>
    saveLog(join(folder, "log.yaml"), {
      base: version(1),
      texts: [{ name: "log.yaml", text }, version(1)[1]!],
    });
  expect(withLog("format: 1\ntitle: \uD800\n")).toMatchObject({
    kind: "refused",
    message: expect.stringMatching(/half of a sign/),
  });
  expect(withLog("#".repeat(5_000_001))).toMatchObject({
    kind: "refused",
    message: expect.stringMatching(/5 MB/),
  });
  expect(textsIn(folder)).toEqual(version(1));
});

test("a file that is not in UTF-8 is left alone", () => {
  const folder = folderWith(version(1));
  const bytes = Buffer.concat([Buffer.from(version(1)[0]!.text), Buffer.from([0x23, 0xb1, 0x0a])]);
  writeFileSync(join(folder, "log.yaml"), bytes);
  const base = [{ name: "log.yaml", text: bytes.toString() }, version(1)[1]!];
  expect(saveLog(join(folder, "log.yaml"), { base, texts: version(2) })).toMatchObject({
    kind: "refused",
    message: expect.stringMatching(/not in UTF-8/),
  });
  expect(readFileSync(join(folder, "log.yaml")).equals(bytes)).toBe(true);
});

test("a file that is gone, or a folder in its place, is said, and nothing else is touched", () => {
  for (const name of ["log.yaml", "bags.csv"]) {
    const folder = folderWith(version(1));
    unlinkSync(join(folder, name));
    expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toMatchObject({
      kind: "refused",
      message: `${name} is not saved: it is no longer there, so it was moved, renamed or deleted.`,
    });
    mkdirSync(join(folder, name));
    expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toMatchObject({
      kind: "refused",
      message: expect.stringMatching(/no plain file/),
    });
    rmSync(join(folder, name), { recursive: true });
    expect(namesIn(folder)).toEqual(["bags.csv", "log.yaml"].filter((other) => other !== name));
  }
  const folder = folderWith(version(1));
  mkdirSync(join(folder, "log.yaml.before"));
  expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toMatchObject({
    message: expect.stringMatching(/log.yaml.before/),
  });
  expect(textsIn(folder)).toEqual(version(1));
});

test("a file that is marked read-only is not replaced, not even by an administrator", () => {
  const folder = folderWith(version(1));
  chmodSync(join(folder, "log.yaml"), 0o444);
  expect(saveLog(join(folder, "log.yaml"), both(1, 2))).toMatchObject({
    kind: "refused",
    message: expect.stringMatching(/may not write/),
  });
  expect(textsIn(folder)).toEqual(version(1));
  expect(namesIn(folder)).toEqual(["bags.csv", "log.yaml"]);
});

test("a fault of the disk at any step leaves old or new, says which, and leaves nothing lying about", () => {
  const steps = ["writeFileSync", "fsyncSync", "renameSync"] as const;
  const words: { readonly [code: string]: RegExp } = {
    ENOSPC: /disk is full/,
    EDQUOT: /disk is full/,
    EROFS: /read-only/,
    EACCES: /may not write/,
    EIO: /cannot be written \(EIO\)/,
  };
  let tried = 0;
  for (const [code, says] of Object.entries(words)) {
    for (const step of steps) {
      for (let nth = 1; ; nth++) {
        const folder = folderWith(version(1));
        let calls = 0;
        const failing = (...given: readonly unknown[]) => {
          if (++calls === nth) fault(code);
          return (DISK[step] as (...given: readonly unknown[]) => unknown)(...given);
        };
        const saved = saveLog(join(folder, "log.yaml"), both(1, 2), { ...DISK, [step]: failing });
        if (calls < nth) {
          expect(saved.kind).toBe("saved");
          break;
        }
        tried++;
        expect(saved).toMatchObject({ kind: "refused", message: expect.stringMatching(says) });
        const now = textsIn(folder);
        const news = now.filter(({ text }, i) => text === version(2)[i]!.text).map(({ name }) => name);
        const olds = now.filter(({ text }, i) => text === version(1)[i]!.text).map(({ name }) => name);
        expect(news.length + olds.length).toBe(2);
        const told =
          saved.kind === "refused" && saved.message.includes("saved before that") ? saved.message : "";
        expect(news.filter((name) => !told.includes(name))).toEqual([]);
        expect(namesIn(folder).filter((name) => !/^(bags\.csv|log\.yaml)(\.before)?$/.test(name))).toEqual(
          [],
        );
      }
    }
  }
  expect(tried).toBeGreaterThan(5 * 12);
});

test("what a save that was cut off left is swept by the next one, and its lock holds nobody up", () => {
  const folder = folderWith(version(1));
  writeFileSync(join(folder, ".mullbook-save-0123456789ab.tmp"), "half");
  writeFileSync(join(folder, LOCK_FILE), "");
  utimesSync(join(folder, LOCK_FILE), 1e9, 1e9);
  expect(saveLog(join(folder, "log.yaml"), both(1, 2)).kind).toBe("saved");
  expect(namesIn(folder)).toEqual(["bags.csv", "bags.csv.before", "log.yaml", "log.yaml.before"]);
});
