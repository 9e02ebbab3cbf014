// The reference of the public names: all of them, each with its declaration, as a page and one by one.

import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { declarationIn } from "../../lib/disk/declaration.ts";
import { commentParts } from "../../lib/disk/reference-comment.ts";
import { type ReferenceEntry, referenceEntries, stages } from "../../lib/disk/reference-entries.ts";
import { referenceHtml } from "../../lib/disk/reference-html.ts";
import * as door from "../../lib/index.ts";
import { built, mullbook, root } from "../cli/mullbook.ts";

let entries: readonly ReferenceEntry[];
beforeAll(async () => {
  await built();
  entries = referenceEntries(join(root, "dist/types"))!;
}, 180_000);

test("every public name is there once, with its declaration", () => {
  const exported = [
    ...readFileSync(join(root, "lib/index.ts"), "utf8").matchAll(/export (type )?\{([^}]*)\}/g),
  ]
    .flatMap(([, , names]) => names!.split(","))
    .map((name) => name.trim().replace(/^type /, ""))
    .filter((name) => name !== "");
  expect(entries.map(({ name }) => name).sort()).toEqual(exported.sort());
  // A folder of lib that is new to the public door needs a title there.
  expect(Object.keys(stages)).toEqual(expect.arrayContaining(entries.map(({ stage }) => stage)));
  for (const { name, signature } of entries) expect(signature).toMatch(new RegExp(`\\b${name}\\b`));
  const runs = entries.filter(({ kind }) => kind !== "type").map(({ name }) => name);
  expect(runs.sort()).toEqual(Object.keys(door).sort());
});

test("a declaration ends where it ends, whatever stands in it", () => {
  const text = `/** A text; with "}" in it. */
export declare const word: { readonly a: "};" /* } */ };
/**
 * First line,
 *     code
 *
 * @example f(1) // 2
 */
export declare function f(x: { a: number; }): number;
export declare function f(x: string): string;
export interface Box {
    /** The founder's; not "closed */
    open(a: () => void): { b: string };
}
export type Either = "a" | { b: [1, 2] };
declare function hidden(): void;
`;
  expect(declarationIn(text, "word")).toEqual({
    kind: "value",
    signature: 'const word: { readonly a: "};" /* } */ };',
    comment: 'A text; with "}" in it.',
  });
  expect(declarationIn(text, "f")).toEqual({
    kind: "function",
    signature: "function f(x: { a: number; }): number;\nfunction f(x: string): string;",
    comment: "First line,\n    code\n\n@example f(1) // 2",
  });
  expect(declarationIn(text, "Box")).toMatchObject({ kind: "type", comment: "" });
  expect(declarationIn(text, "Box")!.signature).toMatch(/^interface Box \{[\s\S]*\n\}$/);
  expect(declarationIn(text, "Either")!.signature).toBe('type Either = "a" | { b: [1, 2] };');
  expect(declarationIn(text, "hidden")).toBeUndefined();
});

test("a comment falls into what it computes, arguments, source and examples", () => {
  const parts = commentParts(
    "Half of it: x / 2,\nfor any x.\nx: mm, > 0.\nSource: algebra. Example: half(2) is 1.\n@example half(3) // 1.5",
  );
  expect(parts).toEqual([
    { kind: "lead", text: "Half of it: x / 2, for any x." },
    { kind: "prose", text: "x: mm, > 0." },
    { kind: "source", text: "Source: algebra." },
    { kind: "example", text: "Example: half(2) is 1." },
    { kind: "example", text: "half(3) // 1.5" },
  ]);
});

test("the page has an anchor for every name, a link to each, no script, and nothing that is markup by accident", async () => {
  const html = await referenceHtml(entries, "0.0.0");
  const anchors = [...html.matchAll(/<article id="([^"]+)">/g)].map(([, id]) => id);
  expect(new Set(anchors).size).toBe(entries.length);
  const links = [...html.matchAll(/<a href="#([^"]+)">/g)].map(([, id]) => id);
  expect(links.toSorted()).toEqual(anchors.toSorted());
  expect(html).not.toMatch(/<script/);
  expect(html).toContain("default-src 'none'");
  expect(html).toContain("Promise&lt;string&gt;");
});

test("bare it writes the page; a name is told on the terminal; a slip is answered", async () => {
  const cwd = mkdtempSync(join(tmpdir(), "mullbook-test-"));
  expect(await mullbook(["reference", "--to", "ref"], { cwd })).toMatchObject({
    code: 0,
    out: "ref/reference.html\n",
  });
  expect(readFileSync(join(cwd, "ref/reference.html"), "utf8")).toContain('id="grainFineness"');
  const one = await mullbook(["reference", "compactabilityPercent"], { cwd });
  expect(one.code).toBe(0);
  expect(one.out).toMatch(/^function compactabilityPercent\(/);
  expect(one.out).toContain("Source: AFS 2220");
  expect((await mullbook(["reference", "Grainfineness"], { cwd })).out).toMatch(/^function grainFineness/);
  expect(await mullbook(["reference", "compactabilityPercnt"], { cwd })).toMatchObject({
    code: 2,
    out: "",
    err: expect.stringContaining("Did you mean: mullbook reference compactabilityPercent"),
  });
  expect((await mullbook(["reference", "muller"], { cwd })).err).toContain("mullerLoads");
});
