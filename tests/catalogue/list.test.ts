// The list of messages: each that the source defines stands in it, has a code of its own, and is said somewhere.

import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { expect, test } from "vitest";
import { allCautions, allMessages, messageNamed } from "../../lib/catalogue/messages.ts";
import { Misuse } from "../../lib/issue.ts";

const root = join(import.meta.dirname, "../..");
const files = readdirSync(join(root, "lib"), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
  .map((entry) => relative(root, join(entry.parentPath, entry.name)));
const sources = new Map(
  files.map((file) => [
    file,
    readFileSync(join(root, file), "utf8")
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .replace(/^\s*\/\/.*$/gm, ""),
  ]),
);

interface Defined {
  readonly file: string;
  readonly code: string;
  /** What it is called there. */
  readonly name: string;
}

const making = /(\w+)(?: =|:)\s+(?:issueMessage|findingMessage|phraseMessage)\(\s*"([^"]+)"/g;
const caution = /(\w+): Caution = \{[^{}]*?code: "([^"]+)"/g;
const defined: readonly Defined[] = [...sources].flatMap(([file, text]) =>
  [...text.matchAll(making), ...text.matchAll(caution)].map(([, name, code]) => ({
    file,
    name: name!,
    code: code!,
  })),
);
const codes = [...allMessages.map(({ code }) => code), ...allCautions.map(({ code }) => code)];

test("every message and caution of the source is in the list (add its file to lib/catalogue/messages.ts, and export it)", () => {
  expect(defined.length).toBeGreaterThan(600);
  const listed = new Set(codes);
  expect(defined.filter(({ code }) => !listed.has(code)).map(({ file, code }) => `${file}: ${code}`)).toEqual(
    [],
  );
  expect(codes.length).toBe(defined.length);
});

test("a message is made by its function only: no object is given a code by hand", () => {
  const byHand = [...sources].flatMap(([file, text]) =>
    [...text.matchAll(/\bcode: (?:"([a-z]+\/[^"]+)"|`[a-z]+\/)/g)]
      .filter(([, code]) => code === undefined || !(code.startsWith("caution/") || code === "own/finding"))
      .map(([whole]) => `${file}: ${whole}`),
  );
  expect(byHand).toEqual([]);
});

test("a code is a folder or subject and a short name, and nobody else's", () => {
  expect(codes.filter((code) => !/^[a-z]+\/[a-z0-9]+(?:-[a-z0-9]+)*$/.test(code))).toEqual([]);
  const twice = codes.filter((code, k) => codes.indexOf(code) !== k);
  expect(twice).toEqual([]);
});

test("every message is said somewhere", () => {
  const whole = [...sources.entries()];
  const unsaid = defined.filter(({ file, name }) => {
    const word = new RegExp(`\\b${name}\\b`, "g");
    const own = sources.get(file)!.match(word)?.length ?? 0;
    return own < 2 && !whole.some(([other, text]) => other !== file && word.test(text));
  });
  expect(unsaid.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
});

test("who looks for a code that there is not is told", () => {
  expect(messageNamed("log/no-pan").code).toBe("log/no-pan");
  expect(() => messageNamed("log/no-such")).toThrow(Misuse);
});
