import { expect, test } from "vitest";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import { escapeMarkdown, markdownCode, markdownLines, markdownText } from "../../lib/page/markdown-text.ts";
import { samplePage } from "./sample-page.ts";

test("the sample page reads as its golden file", async () => {
  const { markdown, files } = await writeMarkdown(samplePage());
  await expect(markdown).toMatchFileSnapshot("../golden/sample-page.md");
  expect(Object.keys(files)).toEqual(["compactability.svg", "green-strength.svg"]);
  for (const name of Object.keys(files)) expect(markdown).toContain(`](${name})`);
  expect(files["compactability.svg"]).toMatch(
    /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="[^"]+" role="img"/,
  );
});

test.each([
  // The escapes are those of CommonMark 0.31.2, section 2.4, and of GFM's tables, strikethrough and autolinks.
  [
    "*a* _b_ `c` [d](e) <f> g|h ~i~ $j$ \\k",
    "\\*a\\* \\_b\\_ \\`c\\` \\[d\\](e) \\<f\\> g\\|h \\~i\\~ \\$j\\$ \\\\k",
  ],
  ["# head", "\\# head"],
  ["- item", "\\- item"],
  ["--- ", "\\---"],
  ["-3.2 to 1", "-3.2 to 1"],
  ["+ item", "\\+ item"],
  ["12. item", "12\\. item"],
  ["3) item", "3\\) item"],
  ["69.1 ± 0.4", "69.1 ± 0.4"],
  ["&lt;script&gt; AT&T", "\\&lt;script\\&gt; AT&T"],
  ["https://e.example javascript:x", "https\\://e.example javascript\\:x"],
  ["www.e.example a@e.example", "www\\.e.example a\\@e.example"],
  ["Water: 3 kg", "Water: 3 kg"],
  ['Write "note:" last', 'Write "note:" last'],
  ["    code\n\n# not a head\ttab", "code # not a head tab"],
  ["\u202ereversed\u0007", "⟨U+202E⟩reversed⟨U+0007⟩"],
  ["\ud800 alone", "\ufffd alone"],
])("%j is text", (text, escaped) => {
  expect(escapeMarkdown(text)).toBe(escaped);
});

test("emphasis keeps its spaces outside and its signs inside as text", () => {
  expect(markdownText([{ strong: "0.3* kg" }, " of ", { em: " water " }, { strong: "" }, "now"])).toBe(
    "**0.3\\* kg** of  *water* now",
  );
  expect(markdownText([{ em: "a" }])).toBe("*a*");
});

test("code is fenced by more backticks than it holds", () => {
  expect(markdownCode("a = b * c")).toBe("`a = b * c`");
  expect(markdownCode("a ``b`` c")).toBe("``` a ``b`` c ```");
});

test("hostile text makes no line that begins a block, no link, no tag and no path", async () => {
  const { markdown, files } = await writeMarkdown(samplePage({ hostile: true }));
  const plain = markdown.replace(/(?<![\\`])(`+)(?!`)[^\n]*?(?<!`)\1(?!`)/g, "");
  expect(plain).not.toMatch(/(?<!\\)<|(?<![\\!])\[|[^\\]:\/\/|\u202e/);
  expect(markdown.match(/^#{1,6} /gm)).toHaveLength(9);
  for (const name of Object.keys(files)) expect(name).toMatch(/^[a-z0-9-]+\.svg$/);
});

test("what a message writes between back-ticks is code as it stands", async () => {
  const issue = { code: "log/x", severity: "error" as const };
  const message = "The key `wether: wet_*` is not known; *that* stays.";
  const { markdown } = await writeMarkdown({
    ...samplePage(),
    issues: [{ ...issue, message, remedy: "Write `pan:` last." }],
  });
  expect(markdown).toContain(
    "- **Error** The key `wether: wet_*` is not known; \\*that\\* stays. Write `pan:` last.",
  );
  expect(markdown.indexOf("## What went wrong")).toBeLessThan(markdown.indexOf("## Before you begin"));
});

test("a log that is invented has it said under the title", async () => {
  const { markdown } = await writeMarkdown({ ...samplePage(), invented: true });
  expect(markdown.split("\n\n")[1]).toBe("The founder, the sands and the figures of this log are invented.");
});

test("lines to copy stand as they are, between fences that nothing in them can end", () => {
  expect(markdownLines("a: 1\n  b: <i>*2*")).toBe("```text\na: 1\n  b: <i>*2*\n```");
  expect(markdownLines("````\n# out")).toBe("`````text\n````\n# out\n`````");
  // A form feed is no line end in CommonMark 0.31.2, section 2.1; a carriage return is.
  expect(markdownLines("a\r```\rb")).toBe("````text\na\n```\nb\n````");
});
