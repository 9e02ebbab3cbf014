// Files that are far too large, too deep or made to choke a reader are answered, in words.

import { expect, test, vi } from "vitest";
import { issueText } from "../../lib/issue.ts";
import { filesNamedIn } from "../../lib/log/files-named.ts";
import { brief, issueOf, read, soundLog } from "./helpers.ts";

const answered = (text: string, files: Readonly<Record<string, string>> = {}) => {
  const { issues } = read(text, files);
  expect(issues.length).toBeGreaterThan(0);
  const words = issues.map(issueText).join("\n");
  // No trace of the program: no stack, no file of ours, no object printed as such.
  expect(words).not.toMatch(/\bat .*\.(ts|js):\d|node_modules|\[object|undefined|NaN|YAML\w*Error/);
  return issues;
};

// Only that they are answered: how long it takes is for the benchmarks.
vi.setConfig({ testTimeout: 60_000 });

test("50 MB", () => {
  const text = "No. 40: 0.15\n".repeat(4_000_000);
  expect(brief(answered(text))).toEqual(["1:1 log/too-large"]);
  expect(filesNamedIn(text)).toEqual([]);
});

test("aliases by the thousand, and aliases of aliases", () => {
  expect(
    issueOf({ issues: answered(`a: &a x\nb:\n${"  - *a\n".repeat(5000)}`) }, "log/too-many-repeats"),
  ).toBeTruthy();
  const levels = Array.from({ length: 9 }, (_, level) => {
    const below = level === 0 ? "x" : `*a${level - 1}`;
    return `a${level}: &a${level} [${Array(9).fill(below).join(", ")}]`;
  });
  expect(issueOf({ issues: answered(levels.join("\n")) }, "log/too-many-repeats")).toBeTruthy();
  expect(answered("format: 1\nsands: &a\n  Dune: *a\n")).toBeTruthy();
});

test("an anchor and its repeat serve as they do in YAML", () => {
  const text = soundLog
    .replace("scale: small scale\n        sieve set", "scale: &s small scale\n        sieve set")
    .replace("        scale: small scale\n        start: 40", "        scale: *s\n        start: 40");
  const { value, issues } = read(text);
  expect(issues).toEqual([]);
  expect(value?.sands[1]?.sievings[0]?.scale?.name).toBe("small scale");
});

test("brackets and lists within one another by the ten thousand", () => {
  for (const text of [
    "[".repeat(10_000),
    `a: ${"{b: ".repeat(10_000)}`,
    `${"- ".repeat(10_000)}x`,
    `a: {b: [1, 2\n`.repeat(50_000),
  ]) {
    expect(issueOf({ issues: answered(text) }, "log/too-deep").place?.line).toBeGreaterThan(0);
  }
  const steps = Array.from({ length: 3000 }, (_, level) => `${" ".repeat(level)}a:`).join("\n");
  expect(issueOf({ issues: answered(steps) }, "log/too-deep").place?.line).toBe(61);
});

test("long lines of spaces, signs and commas", () => {
  for (const text of [
    `a: b${" ".repeat(300_000)}#1x`,
    `a: ${"#40: 1 ".repeat(40_000)}`,
    `${" ".repeat(300_000)}:`,
    `${"x".repeat(300_000)}: 1`,
  ]) {
    answered(text);
  }
});

test("every line wrong", () => {
  const issues = answered(`sands:\n  Dune:\n${"    a: b: c\n".repeat(5_000)}`);
  expect(issues.length).toBeLessThan(100);
  expect(issueOf({ issues }, "log/more-faults")).toBeTruthy();
  answered("@ % : ]\n".repeat(1000));
  answered(`sands:\n  Dune:\n${"      #40: 0.15\n".repeat(20_000)}`);
});

test("what is no text says what it seems to be", () => {
  const kinds: readonly (readonly [string, RegExp])[] = [
    ["PK\u0003\u0004", /zip archive/],
    ["%PDF-1.7\n", /PDF/],
    ["\uFFFDPNG\r\n\u001A\n", /picture/],
    ["GIF89a", /picture/],
    ["{\\rtf1", /word processor/],
    ["<!DOCTYPE html><html>", /web page/],
    ["\u0001\u0002\0\0\uFFFD\uFFFDabc", /binary/],
  ];
  for (const [text, kind] of kinds) {
    const { value, issues } = read(text);
    expect(value).toBeUndefined();
    expect(issueOf({ issues }, "log/not-text").message).toMatch(kind);
  }
});

test("names that a program might trip over are names like any other", () => {
  const text = soundLog.replace("Dune sand", "__proto__").replace("Pit sand", "constructor");
  const { value, issues } = read(text);
  expect(issues).toEqual([]);
  expect(value?.sands.map((sand) => sand.name)).toEqual(["__proto__", "constructor"]);
  const csvLog = "format: 1\nsands:\n  A:\n    state: new\n    sievings file: constructor.csv\n";
  expect(brief(read(csvLog).issues)).toEqual(["5:20 log/no-such-file"]);
});
