// Files that travel with a page: whole in every format, under names that stay in their folder.

import { expect, test } from "vitest";
import { fingerprint } from "../../lib/log/fingerprint.ts";
import { attachedFiles } from "../../lib/page/attachments.ts";
import type { Page } from "../../lib/page/blocks.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { writeJson } from "../../lib/page/json.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";

/** A byte order mark, CR LF, bidirectional and tag characters, markup: what must come back as it went in. */
const hostile = "\ufefftitle: \"<script>alert(1)</script>\"\r\nnote: 'a\u202eb \u{e0041} µ ± </pre>'\r\n";
const page = (...names: string[]): Page => ({
  title: "Files",
  question: "What travels?",
  answer: [],
  sections: [],
  sources: ["One", "Two"],
  numberedSources: true,
  colophon: [],
  issues: [],
  figures: {},
  attachments: names.map((name) => ({ name, text: hostile, says: "what was typed" })),
});

test("HTML: the link holds the bytes, and says name, size and fingerprint", async () => {
  const html = await writeHtml(page("yard <b>.yaml"));
  const [, name, address] = /<a download="([^"]*)" href="data:text\/plain;charset=utf-8,([^"]*)">/.exec(
    html,
  )!;
  expect(name).toBe("yard -b-.yaml");
  expect(decodeURIComponent(address!)).toBe(hostile);
  expect(html).toContain(`${Buffer.byteLength(hostile)} bytes, fingerprint ${fingerprint(hostile)}`);
  expect(html).not.toContain("<script");
});

test("a large file is put in whole", async () => {
  const text = `${"± 12.4 g\n".repeat(60_000)}  # 100 % "a" <b> + & 'c'?  `;
  const html = await writeHtml({ ...page(), attachments: [{ name: "big.csv", text, says: "rows" }] });
  const [, address] = /charset=utf-8,([^"]*)"/.exec(html)!;
  expect(decodeURIComponent(address!)).toBe(text);
});

test("JSON: the text comes back byte for byte, and nothing in the file is hidden", () => {
  const json = writeJson(page("yard.yaml"));
  expect(JSON.parse(json).attachments).toEqual([
    { name: "yard.yaml", text: hostile, says: "what was typed" },
  ]);
  expect(json).not.toMatch(/[\u202e\ufeff]|[\u{e0000}-\u{e007f}]/u);
  expect(JSON.parse(writeJson(page())).attachments).toBeUndefined();
});

test("Markdown: files in a folder beside the page, and a link to each", async () => {
  const { markdown, files } = await writeMarkdown(page("my (best) yard.yaml"));
  expect(files["data/my (best) yard.yaml"]).toBe(hostile);
  expect(markdown).toContain("[my (best) yard.yaml](data/my%20%28best%29%20yard.yaml): what was typed; ");
  expect(markdown).toContain("1. One\n2. Two");
});

test("names keep to their folder and to themselves", () => {
  const names = (...given: string[]) =>
    attachedFiles(given.map((name) => ({ name, text: "", says: "" }))).map(({ name }) => name);
  expect(names("../../etc/passwd", "C:\\yard.csv", "..", "", "a.csv", "A.csv")).toEqual([
    "passwd",
    "yard.csv",
    "unnamed.txt",
    "2-unnamed.txt",
    "a.csv",
    "2-A.csv",
  ]);
});
