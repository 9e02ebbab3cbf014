import { expect, test } from "vitest";
import type { Block } from "../../lib/page/blocks.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { htmlTable, withoutIdleEnds } from "../../lib/page/html-table.ts";
import { samples } from "../chart/samples.ts";
import { HOSTILE, samplePage, trialChart } from "./sample-page.ts";

const html = await writeHtml(samplePage());
const hostile = await writeHtml(samplePage({ hostile: true }));

/** Where each of these stands in the text; each must be there. */
function places(text: string, parts: readonly string[]): number[] {
  return parts.map((part) => {
    const at = text.indexOf(part);
    expect(at, part).toBeGreaterThan(-1);
    return at;
  });
}

test("sections stand in the fixed order, whatever order they were given in", () => {
  const order = places(html, [
    "<h1>Water for the Tern Lane heap</h1>",
    'class="question"',
    'href="#what-went-wrong"',
    'class="answer"',
    'id="what-went-wrong"',
    'id="cautions"',
    'id="data"',
    'id="result"',
    'id="findings"',
    'id="next"',
    'id="sources"',
    'id="notes"',
    "<footer>",
  ]);
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test("a caution stands before the figures of its section, also one that was given within a fold", () => {
  const result = html.slice(html.indexOf('id="result"'), html.indexOf('id="findings"'));
  const [caution, figures, fold] = places(result, ["A turning muller", 'class="figures"', 'class="fold"']);
  expect(caution).toBeLessThan(figures!);
  expect(caution).toBeLessThan(fold!);
  expect(result.split("A turning muller")).toHaveLength(2);
});

test("an empty section is left out, and so are notice, sources and colophon without content", async () => {
  expect(html).not.toContain("Never shown");
  const bare = await writeHtml({ ...samplePage(), sections: [], sources: [], colophon: [], issues: [] });
  const body = bare.slice(bare.indexOf("<body>"));
  for (const part of ["<section", "notice", "<footer"]) expect(body).not.toContain(part);
});

test("errors come before notes, each with place and remedy", () => {
  const list = html.slice(html.indexOf("<main>"));
  const order = places(list, [
    "<strong>Error</strong>",
    "batch T6:",
    "Write it as load: ",
    "tern-lane.yaml:48:7",
    "<strong>Note</strong>",
    "tern-lane.yaml:61:3",
  ]);
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test("an issue that stands both in a block and in the page's list is told once", async () => {
  const page = samplePage();
  const twice = await writeHtml({
    ...page,
    sections: [
      ...page.sections,
      { role: "data", title: "Faults", blocks: [{ kind: "issues", issues: page.issues }] },
    ],
  });
  expect(twice).toContain("One error was found");
  const [, wrong] = /id="what-went-wrong"([\s\S]*?)<\/section>/.exec(twice)!;
  expect(wrong!.split("The load that broke")).toHaveLength(2);
});

test("the page asks for nothing from outside and allows no script", () => {
  for (const page of [html, hostile]) {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(page).toMatch(
      /Content-Security-Policy" content="default-src 'none'; style-src 'sha256-[\w+/]{43}='/,
    );
    // No tag that loads or runs, and no attribute that does: all of the rest is text.
    expect(page).not.toMatch(/<(?:script|iframe|object|embed|link|img|base|form|a\s+(?!href="#))/i);
    const tags = page.match(/<[a-z][^>]*>/gi)!;
    for (const tag of tags)
      expect(tag).not.toMatch(/\s(?:on\w+|style|src|xlink:href|srcset|action)\s*=(?![^"]*" )/i);
  }
});

test("hostile text is shown as text, hidden characters as codes", () => {
  expect(hostile).not.toContain("\u202e");
  expect(hostile).toContain("⟨U+202E⟩gnp.exe⟨U+202C⟩");
  expect(hostile).toContain(
    "<title>Water &lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;two&#39; ]]&gt;",
  );
  // Title, heading, question, description, note, cell, reason, source, message and place.
  expect(hostile.split("&lt;script&gt;alert").length - 1).toBeGreaterThanOrEqual(10);
});

test("hostile text in a drawing's words, names and numbers does not become markup", async () => {
  const chart = {
    ...trialChart("x", "strength", "Strength, kPa", [1, 2]),
    name: HOSTILE,
    alt: HOSTILE,
    caption: HOSTILE,
  };
  const page = {
    ...samplePage(),
    sections: [{ role: "result" as const, title: "R", blocks: [{ kind: "chart" as const, chart }] }],
  };
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" onload="alert(1)"><title>t</title><script>alert(2)</script><a href="javascript:alert(3)"><text>\u202Eab &lt;b&gt;</text></a><rect width="1" height="1" fill="url(https://e.example/x)" style="fill:red"/><foreignObject><div>in</div></foreignObject><image href="https://e.example/y"/></svg>`;
  const out = await writeHtml(page, { draw: async () => svg });
  const figure = out.slice(out.indexOf("<figure"), out.indexOf("</figure>"));
  expect(figure).not.toMatch(/<script|<a |<image|foreign|onload|style=|e\.example\/[xy]|\u202e/i);
  expect(figure).toContain('<rect width="1" height="1"/>');
});

test("log text in a real drawing comes through as text", async () => {
  const base = trialChart("x", "strength", "Strength, kPa", [1, 2]);
  const chart = {
    ...base,
    spec: (width: number) => ({
      width,
      height: 50,
      data: { values: [{ t: HOSTILE }] },
      mark: "text",
      encoding: { text: { field: "t" } },
    }),
  };
  const out = await writeHtml({
    ...samplePage(),
    sections: [{ role: "result", title: "R", blocks: [{ kind: "chart", chart }] }],
  });
  const figure = out.slice(out.indexOf('class="wide"'), out.indexOf("</figure>"));
  expect(figure).toContain('&lt;script&gt;alert("1")&lt;/script&gt; &amp;');
  expect(figure).toContain("⟨U+202E⟩");
  expect(figure).not.toContain("<script");
});

test("each chart is drawn twice, with its colours as custom properties and ids of its own", () => {
  expect(html.match(/<div class="wide"><svg/g)).toHaveLength(2);
  expect(html.match(/<div class="narrow"><svg/g)).toHaveLength(2);
  expect(html).toContain('fill="var(--band)"');
  const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
  expect(new Set(ids).size).toBe(ids.length);
  const wanted = [...html.matchAll(/url\(#([\w-]+)\)/g)].map((match) => match[1]);
  expect(wanted.length).toBeGreaterThan(4);
  for (const id of wanted) expect(ids).toContain(id);
});

test("every open tag is closed", () => {
  for (const page of [html, hostile]) {
    const open: string[] = [];
    const body = page.slice(page.indexOf("<body>"), page.indexOf("</html>"));
    for (const [, slash, name, , empty] of body.matchAll(
      /<(\/?)([a-zA-Z0-9]+)((?:\s+[\w:-]+(?:=(?:"[^"]*"|\w+))?)*)\s*(\/?)>/g,
    )) {
      // The ends that HTML lets out: of a cell before the next or the row's, of a row before the next or its group's.
      if (/^t[dh]$/.test(name!) && slash !== "/" && /^t[dh]$/.test(open.at(-1)!)) open.pop();
      if (/^(tr|thead|tbody|tfoot)$/.test(name!) && /^t[dh]$/.test(open.at(-1)!)) open.pop();
      if (open.at(-1) === "tr" && (slash === "/" ? /^t(head|body|foot)$/ : /^tr$/).test(name!)) open.pop();
      // And of an item before the next or its list's.
      if (open.at(-1) === "li" && (slash === "/" ? /^[uo]l$/ : /^li$/).test(name!)) open.pop();
      if (slash === "/") expect(open.pop()).toBe(name);
      else if (empty !== "/") open.push(name!);
    }
    expect(open).toEqual([]);
  }
});

test("tables say what heads what, and a figure that must not be relied on is not bold", () => {
  expect(html).toContain("<th scope=col>Water<span class=unit>% of damp mass</span>");
  expect(html).toMatch(/<th scope=row>T1(?=<t[dh]|<\/t)/);
  expect(html).toContain('<table class="n2 n3 n4 n5">');
  expect(html).toContain(
    "<caption><span><b>Table 1.</b> The six trials as the log has them</span></caption>",
  );
  expect(html).toContain(
    'role="region" aria-label="Table 1. The six trials as the log has them" tabindex="0"',
  );
  expect(html).toContain('<div class="weak"><dt>Live clay</dt>');
  expect(html).toContain("<span class=fault>the load was not written down</span>");
});

test("a page of four real charts with all else stays within 150 KB", async () => {
  const page = samplePage();
  const [curve, bars, strip, trial] = [
    samples.find((chart) => chart.name === "curve-three")!,
    samples.find((chart) => chart.name === "bars-three")!,
    samples.find((chart) => chart.name === "strip")!,
    trialChart("trial", "strength", "Green strength, kPa", [65, 80]),
  ];
  const kept = page.sections.filter((section) => section.role !== "result");
  const blocks = [curve, bars, strip, trial].map((chart) => ({ kind: "chart" as const, chart }));
  const four = await writeHtml({ ...page, sections: [...kept, { role: "result", title: "Result", blocks }] });
  expect(four.match(/<figure/g)).toHaveLength(4);
  expect(new TextEncoder().encode(four).length).toBeLessThan(150_000);
  // Every colour can be swapped for the dark: none is left bare in a drawing.
  const drawings = four.slice(four.indexOf("<figure"), four.lastIndexOf("</figure>"));
  expect(drawings.match(/(?:fill|stroke)="(?!none|var\(--|url\(#)[^"]*"/g)).toBeNull();
});

test("a log that is invented has it said under the title and before the question", async () => {
  const page = await writeHtml({ ...samplePage(), invented: true });
  const order = places(page, ["</h1>", '<p class="invented">The founder', 'class="question"']);
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(html).not.toContain('class="invented"');
});

test("without an error nothing went wrong: warnings and notes stand at the end", async () => {
  const issues = (["warning", "note"] as const).map((severity) => ({
    code: "log/x",
    severity,
    message: `A ${severity}.`,
  }));
  const page = await writeHtml({ ...samplePage(), issues });
  expect(page).not.toContain("what-went-wrong");
  const order = places(page, ['id="sources"', "Warnings and notes on the log", "A warning.", "A note."]);
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test("many errors do not bury the page: eight stand, the others are folded", async () => {
  const issues = Array.from({ length: 20 }, (_, i) => ({
    code: "log/x",
    severity: "error" as const,
    message: `Fault ${i}: write \`pan:\` last.`,
  }));
  const page = await writeHtml({ ...samplePage(), issues });
  const [, wrong] = /id="what-went-wrong"([\s\S]*?)<\/section>/.exec(page)!;
  expect(wrong!.split("<details")[0]!.split("Fault ")).toHaveLength(9);
  expect(wrong).toContain("<summary>12 more errors</summary>");
  expect(wrong).toContain("Fault 19: write <code>pan:</code> last.");
});

test("a table too wide for a sheet is cut into groups of columns, each with the names of its rows", async () => {
  const sands = Array.from({ length: 30 }, (_, i) => `Lot ${i + 1}`);
  const table = {
    kind: "table" as const,
    name: "shares",
    caption: "What each sieve held",
    columns: [
      { head: "Sieve", align: "text" as const },
      ...sands.map((head) => ({ head, unit: "% of sum retained", align: "number" as const })),
    ],
    rows: ["No. 50", "No. 100"].map((label) => [label, ...sands.map((_, i) => (i + 0.5).toFixed(1))]),
  };
  const page = await writeHtml({
    ...samplePage(),
    sections: [{ role: "data", title: "D", blocks: [table] }],
  });
  const parts = [...page.matchAll(/<table[\s\S]*?<\/table>/g)].map(([part]) => part);
  expect(parts.length).toBeGreaterThan(3);
  const counts = parts.map((part) => part.match(/<th scope=col/g)!.length - 1);
  expect(counts.reduce((sum, count) => sum + count, 0)).toBe(30);
  expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
  for (const [i, part] of parts.entries()) {
    expect(part).toContain(`Table 1, part ${i + 1} of ${parts.length}.`);
    expect(part.match(/<th scope=row>No\. 50(?=<td)/g)).toHaveLength(1);
  }
});

test("a long text in a chart's data is told once under the table, not in a column one word wide", async () => {
  const long = "An invented handbook of many pages, table 4, on the uses of sand";
  const chart = {
    ...trialChart("x", "strength", "Strength, kPa", [1, 2]),
    table: {
      columns: [{ name: "what" }, { name: "from" }, { name: "source" }],
      rows: [
        ["a", 1.5, long],
        ["b", 20.25, long],
        ["c", null, "measured"],
      ],
    },
  };
  const page = await writeHtml({
    ...samplePage(),
    sections: [{ role: "result", title: "R", blocks: [{ kind: "chart", chart }] }],
  });
  expect(page.split(long)).toHaveLength(2);
  // The end tags of cells are left out here.
  expect(page).toMatch(/<td>note 1\n?<(tr|\/tbody)>/);
  expect(page).toContain(`<p class="table-note">Note 1: ${long}</p>`);
  expect(page).toMatch(/<td>1\.50<td>[\s\S]*<td>20\.25<td>/);
});

test("a sieve stays with its number, in a sentence and in a table", async () => {
  const blocks = [{ kind: "prose" as const, text: "What No. 30 held." }];
  const page = await writeHtml({ ...samplePage(), sections: [{ role: "data", title: "D", blocks }] });
  expect(page).toContain('What <span class="u">No. 30</span> held.');
  expect(page).toMatch(/tbody :is\(th,td\),tfoot :is\(th,td\)\{white-space:nowrap\}/);
});

test("a table without the end tags that HTML lets out has the same cells", () => {
  const parts = {
    label: "Data",
    columns: [
      { head: "name", align: "text" as const },
      { head: "mass", unit: "g", align: "number" as const },
    ],
    rows: [
      ["</td></tr>", "1.50"],
      ["b", ""],
    ],
    foot: [["sum", "1.50"]],
  };
  const whole = htmlTable(parts);
  const short = withoutIdleEnds(whole);
  expect(short).not.toMatch(/<\/t[dhr]>/);
  expect(short.length).toBeLessThan(whole.length);
  const tokens = (html: string) =>
    html.split(/(<t[dhr]|<\/t(?:head|body|foot)>)/).map((part) => part.replace(/<\/t[dhr]>|\n|"/g, ""));
  expect(tokens(short)).toEqual(tokens(whole));
  expect(short).toContain("&lt;/td&gt;&lt;/tr&gt;");
});

test("what is kept to the screen is lettered, so that paper counts without a gap", async () => {
  const table = (name: string): Block => ({
    kind: "table",
    name,
    caption: `The ${name}`,
    columns: [{ head: "What", align: "text" }],
    rows: [["one"]],
  });
  const chart = trialChart("trial", "strength", "Green strength, kPa", [65, 80]);
  const html = await writeHtml({
    ...samplePage(),
    sections: [
      {
        role: "result",
        title: "Result",
        blocks: [
          { kind: "chart", chart, screenOnly: true },
          table("first"),
          { kind: "fold", summary: "More", screenOnly: true, blocks: [table("second"), table("third")] },
          table("fourth"),
          { kind: "chart", chart },
        ],
      },
    ],
  });
  const called = [...html.matchAll(/<b>((?:Table|Figure) \w+)\.<\/b>/g)].map(([, name]) => name);
  expect(called).toEqual(["Figure A", "Table 1", "Table A", "Table B", "Table 2", "Figure 1"]);
  expect([...html.matchAll(/<figure id="?(figure-\d)/g)].map(([, id]) => id)).toEqual([
    "figure-1",
    "figure-2",
  ]);
});

test("a page without a card to print has no rules for one", async () => {
  const page = samplePage();
  const card: Block = {
    kind: "fold",
    summary: "Card",
    ownSheet: true,
    blocks: [{ kind: "prose", text: "One." }],
  };
  const [without, withOne] = [
    await writeHtml(page),
    await writeHtml({
      ...page,
      sections: [...page.sections, { role: "next", title: "Card", blocks: [card] }],
    }),
  ];
  expect(without).not.toContain("own-sheet");
  expect(withOne.match(/\.own-sheet/g)!.length).toBeGreaterThan(4);
});
