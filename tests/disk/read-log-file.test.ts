// What can stand in the way of reading, and what is read of it.

import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readLogFile } from "../../lib/disk/read-log-file.ts";
import { fileRefusal, isRefusal } from "../../lib/disk/refusal.ts";

const folder = () => mkdtempSync(join(tmpdir(), "mullbook-test-"));
const log = (csv: string) =>
  `format: 1\ninvented: yes\nmetal: steel\nbond: natural\nscales: { s: { reads to: 0.1 g } }\nsieve sets: { r: { frame: 200 mm } }\nsands:\n  Dune sand:\n    state: new\n    sievings file: ${csv}\n`;
const csv = "date,portion,scale,sieve set,start,No. 40,No. 50,No. 70,pan\n2026-03-02,A,s,r,50,10,20,19,1\n";

function read(path: string) {
  const result = readLogFile(path);
  if (isRefusal(result)) throw new Error(result.refused);
  return result;
}

test("the log, its CSV file, and the paths that must never be written over", () => {
  const dir = folder();
  writeFileSync(join(dir, "log.yaml"), log("rows.csv"));
  writeFileSync(join(dir, "rows.csv"), csv);
  const { log: value, issues, paths } = read(join(dir, "log.yaml"));
  expect(issues).toEqual([]);
  expect(value?.file).toBe("log.yaml");
  expect(value?.sands[0]?.sievings[0]?.retained.map(({ mass }) => mass.value)).toEqual([10, 20, 19, 1]);
  expect(paths).toEqual([join(dir, "log.yaml"), join(dir, "rows.csv")]);
});

test("a CSV file that is there and cannot be read is not called missing", () => {
  const dir = folder();
  writeFileSync(join(dir, "log.yaml"), log("rows.csv"));
  mkdirSync(join(dir, "rows.csv"));
  const { issues } = read(join(dir, "log.yaml"));
  expect(issues.map(({ code }) => code)).toEqual(["disk/unreadable"]);
  expect(issues[0]).toMatchObject({
    message: "rows.csv is a folder, not a file.",
    place: { file: "rows.csv" },
  });
});

test("a name with a folder in it is not read, even where there is such a file", () => {
  const dir = folder();
  mkdirSync(join(dir, "logs"));
  writeFileSync(join(dir, "rows.csv"), csv);
  for (const name of ["../rows.csv", join(dir, "rows.csv")]) {
    writeFileSync(join(dir, "logs", "log.yaml"), log(name));
    const { log: value, issues, paths } = read(join(dir, "logs", "log.yaml"));
    expect(issues.map(({ code }) => code)).toEqual(["log/file-elsewhere"]);
    expect(value?.sands.flatMap(({ sievings }) => sievings)).toEqual([]);
    expect(paths).toHaveLength(1);
  }
});

test("a file that is not in UTF-8 is read, with a warning", () => {
  const dir = folder();
  // "µ" as one byte, as older editors save it.
  writeFileSync(join(dir, "log.yaml"), Buffer.from(log("rows.csv").replace("Dune", "D\u00b5ne"), "latin1"));
  writeFileSync(join(dir, "rows.csv"), csv);
  const { log: value, issues } = read(join(dir, "log.yaml"));
  expect(value?.sands).toHaveLength(1);
  expect(issues.find(({ code }) => code === "disk/not-utf8")).toMatchObject({
    severity: "warning",
    place: { file: "log.yaml", line: 8, column: 4 },
  });
});

test("faults of the file system are told in words", () => {
  const dir = folder();
  symlinkSync(join(dir, "loop.yaml"), join(dir, "loop.yaml"));
  expect(readLogFile(join(dir, "loop.yaml"))).toMatchObject({
    refused: expect.stringMatching(/leads back to itself/),
  });
  const coded = (code: string) => Object.assign(new Error(code), { code });
  expect(fileRefusal(coded("EACCES"), "log.yaml", "read").refused).toMatch(/may not be read: .*permission/);
  expect(fileRefusal(coded("EACCES"), "a.html", "written").remedy).toMatch(/--to DIR/);
  expect(fileRefusal(coded("ENOSPC"), "a.html", "written").refused).toMatch(/disk is full/);
  expect(fileRefusal(coded("ENOSPC"), "my.yaml", "begun").remedy).not.toContain("--to");
  expect(fileRefusal(coded("EISDIR"), "a.html", "written").remedy).toMatch(/^Move that folder away/);
  expect(fileRefusal(coded("ENOENT"), "", "read").refused).toBe("The name of the file is empty.");
  expect(fileRefusal(coded("EIO"), "a.html", "written").refused).toBe("a.html cannot be written (EIO).");
  expect(() => fileRefusal(new TypeError("ours"), "a.html", "read")).toThrow("ours");
});
