// What stays on one line, is said once, and is printed only where there is something to print.

import { expect, test } from "vitest";
import { flowHtml } from "../../lib/page/html-text.ts";
import { layOut } from "../../lib/page/lay-out.ts";
import { notebook } from "../../lib/page/notebook.ts";
import { pageStyle } from "../../lib/page/style.ts";
import { withoutSpare } from "../../lib/page/table-parts.ts";
import { pageWords } from "../../lib/page/words.ts";

test("a figure stays with the units on both sides of its ±, a p with its number, a reference with its word", () => {
  expect(flowHtml("8.4 kg ± 0.3 kg each")).toBe('<span class="u">8.4 kg ± 0.3 kg</span> each');
  expect(flowHtml("so p = 0.083, and")).toBe('so <span class="u">p = 0.083</span>, and');
  expect(flowHtml("no batch between. [4]")).toBe('no batch <span class="u">between. [4]</span>');
  expect(flowHtml("a [4] b")).toBe("a [4] b");
});

test("an explanation is said once a page; the founder's own words as often as they stand", () => {
  const once = { kind: "prose", text: "What a foot is.", once: true } as const;
  const own = { kind: "prose", text: "Dried at 105 °C." } as const;
  const section = (title: string) => ({ role: "result" as const, title, blocks: [own, once] });
  const make = notebook("N", () => ({
    question: "Which?",
    answer: [],
    sections: [section("A"), section("B")],
  }));
  const log = { file: "a.yaml", fingerprint: "00", invented: false } as Parameters<typeof make.run>[0];
  const said = layOut(make.run(log)).sections.map(({ blocks }) => blocks);
  expect(said).toEqual([[own, once], [own]]);
});

test("a spare column that no row and no foot has anything in is not printed; any other is", () => {
  const columns = [
    { head: "Sand", align: "text" },
    { head: "Order", align: "number", spare: true },
    { head: "Portion", align: "text" },
  ] as const;
  const heads = (rows: string[][], foot?: string[][]) =>
    withoutSpare({ columns, rows, ...(foot ? { foot } : {}) }).columns.map(({ head }) => head);
  expect(heads([["a", "", ""]])).toEqual(["Sand", "Portion"]);
  expect(heads([["a", "", ""]], [["", "3", ""]])).toEqual(["Sand", "Order", "Portion"]);
  expect(withoutSpare({ columns, rows: [["a", "", "x"]] }).rows).toEqual([["a", "x"]]);
});

test("a word of another language cannot leave its place in the style sheet", () => {
  const words = pageWords({ "page/table-scrolls": () => '"}</style>\\' });
  const style = pageStyle(words);
  expect(style).not.toContain("</style>");
  expect(style).toContain("\\22 }\\3c /style>\\5c ");
});
