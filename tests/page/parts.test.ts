import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { colours } from "../../lib/chart/theme.ts";
import { Misuse } from "../../lib/issue.ts";
import type { Log } from "../../lib/log/types.ts";
import type { PageSpec } from "../../lib/page/blocks.ts";
import { chartTableParts } from "../../lib/page/chart-table.ts";
import { cutAtDecimalMark, padAfterMark } from "../../lib/page/decimal-mark.ts";
import { fileStem, pageStem, stemGiver } from "../../lib/page/file-name.ts";
import { writeHtml } from "../../lib/page/html.ts";
import { writeJson } from "../../lib/page/json.ts";
import { layOut } from "../../lib/page/lay-out.ts";
import { writeMarkdown } from "../../lib/page/markdown.ts";
import { notebook } from "../../lib/page/notebook.ts";
import { darkColours } from "../../lib/page/palette.ts";
import { visible } from "../../lib/page/visible.ts";
import { promisesIn } from "../forbidden-words.ts";
import { samplePage } from "./sample-page.ts";

describe("the decimal mark", () => {
  test.each([
    ["12.4 ± 0.1", ["12", ".4", " ± 0.1"]],
    ["-3", ["-3", "", ""]],
    ["−0.25 g", ["−0", ".25", " g"]],
    ["< 0.05", ["< 0", ".05", ""]],
    ["12 400.5", ["12 400", ".5", ""]],
    ["68 to 71", ["68", "", " to 71"]],
    ["–", ["–", "", ""]],
    ["", ["", "", ""]],
  ])("cuts %j", (text, [whole, fraction, rest]) => {
    expect(cutAtDecimalMark(text)).toEqual({ whole, fraction, rest });
  });

  test.each(["none", "about 3", "1.2.3", "No. 40"])("does not cut %j", (text) => {
    expect(cutAtDecimalMark(text)).toBeUndefined();
  });

  test("the parts joined give the text", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[-−<]?\d{1,4}(\.\d{1,4})?( ± \d\.\d)?$/), (text) => {
        const cut = cutAtDecimalMark(text);
        expect(cut && cut.whole + cut.fraction + cut.rest).toBe(text);
      }),
      { seed: 7 },
    );
  });

  test("a padded column set flush right has its marks under each other", () => {
    const padded = padAfterMark(["9.5", "151.25", "150", "4.10 ± 0.08", "–"]);
    const widest = Math.max(...padded.map((text) => text.length));
    const marks = padded.map((text) => text.padStart(widest).search(/[.\u2008]/));
    expect(new Set(marks).size).toBe(1);
  });
});

test.each([
  ["a\u0000b\u001b", "a⟨U+0000⟩b⟨U+001B⟩"],
  ["\u2066x\u2069\u200f", "⟨U+2066⟩x⟨U+2069⟩⟨U+200F⟩"],
  ["\u{e0041}", "⟨U+E0041⟩"],
  ["\ufeff\u00ad", "⟨U+FEFF⟩⟨U+00AD⟩"],
  ["\ud83d", "\ufffd"],
  ["Ø ± µ \u{1f525} שלום\ttab\n", "Ø ± µ \u{1f525} שלום\ttab\n"],
])("%j is shown as %j", (text, shown) => {
  expect(visible(text)).toBe(shown);
});

test("names of files are stems only, and given once", () => {
  const names = ["../../etc/passwd", "Øst / pit: No. 2", "", "CON", "-rf", "a".repeat(99)];
  const scripts = ["Песок: йод", "砂 2", "रेत", "\u{1f525}", "é\u0301", `a\u{10348}${"砂".repeat(99)}`];
  expect([...names, ...scripts].map(fileStem)).toEqual([
    "etc-passwd",
    "ost-pit-no-2",
    "unnamed",
    "con-page",
    "rf",
    "a".repeat(60),
    "песок-йод",
    "砂-2",
    "रेत",
    "unnamed",
    "e",
    `a\u{10348}${"砂".repeat(58)}`,
  ]);
  const stem = stemGiver();
  expect([stem("a"), stem("A"), stem("a-2"), stem("a")]).toEqual(["a", "a-2", "a-2-2", "a-3"]);
});

test("pages are called what their log is called, and no two logs of a folder share a name", () => {
  const kept = ["my-sands", "My sands", "my_sands", "my.sands", "песок", "глина", "砂", "con", "it's 3 %"];
  expect(kept.map(pageStem)).toEqual(kept);
  // Each changed or cut, and marked, since another may come to the same.
  const changed = [
    "a?b",
    "a:b",
    "a-b\u202e",
    "-rf",
    "rf\u0000",
    ".rf",
    "",
    "..",
    "a\n",
    "x".repeat(240),
    "x".repeat(239),
  ];
  const stems = changed.map(pageStem);
  for (const stem of stems) {
    expect(stem).toMatch(/^[\p{L}\d][\p{L}\d+-]*-[\da-f]{4}$/u);
    expect(Buffer.byteLength(stem)).toBeLessThan(170);
  }
  expect(new Set([...kept, ...stems]).size).toBe(kept.length + changed.length);
  expect(pageStem("砂".repeat(80))).toMatch(/^砂{53}-[\da-f]{4}$/);
});

describe("promises", () => {
  test.each([
    ["The sand is safe.", ["safe"]],
    ["It is ready to pour.", ["ready to pour"]],
    ["There is no danger in it.", ["no danger"]],
    ["Not checked. The mould is safe.", ["safe"]],
    ["Nothing here says that it is safe, or ready to pour.", []],
    ["This is never a safe time to open a mould.", []],
    ["Wear safety glasses; unsafe footing.", []],
  ])("%s", (text, found) => {
    expect(promisesIn(text)).toEqual(found);
  });

  test("the sample page makes none in any format", async () => {
    const page = samplePage();
    const { markdown } = await writeMarkdown(page);
    for (const text of [await writeHtml(page), markdown, writeJson(page)])
      expect(promisesIn(text)).toEqual([]);
  });
});

describe("a notebook", () => {
  const log = {
    format: 1,
    file: "a.yaml",
    invented: true,
    scales: [],
    sets: [],
    sands: [],
    rigs: [],
    aims: [],
    batches: [],
    sheets: [],
    measured: [],
    events: [],
    castings: [],
    questions: [],
    mulling: [],
    fingerprint: "00",
    texts: [],
  } as Log;
  const spec: PageSpec = { question: "How fine?", answer: ["Fine."], sections: [] };

  test("fills in what its function leaves out and says that the log is invented", () => {
    const fineness = notebook("How Fine", () => spec, { question: "How fine are the sands?" });
    expect([fineness.name, fineness.title, fineness.question]).toEqual([
      "how-fine",
      "How Fine",
      "How fine are the sands?",
    ]);
    const page = fineness.run(log);
    expect(page).toMatchObject({ title: "How Fine", sources: [], issues: [], figures: {} });
    expect(page.invented).toBe(true);
    expect(page.colophon).toEqual([
      "Log a.yaml, fingerprint 00.",
      "The founder, the sands and the figures of this log are invented.",
    ]);
    const own = fineness.run({ ...log, invented: false });
    expect([own.invented, own.colophon]).toEqual([false, ["Log a.yaml, fingerprint 00."]]);
  });

  test("says that a log is invented whatever words the page's own foot holds", () => {
    const colophon = ["Log a.yaml, fingerprint 00.", "Kept by Ann Roe (invented)."];
    const page = notebook("N", () => ({ ...spec, colophon })).run(log);
    expect(page.colophon).toEqual([
      ...colophon,
      "The founder, the sands and the figures of this log are invented.",
    ]);
  });

  test("names log and founder unless the page does; a name that was never filled in is none", () => {
    const asks = notebook("N", ({ founder }) => ({ ...spec, answer: [founder ?? "nobody"] }));
    const foot = (founder: string) => asks.run({ ...log, invented: false, founder });
    expect(foot("Ann Roe").colophon).toEqual(["Log a.yaml, fingerprint 00.", "Kept by Ann Roe."]);
    expect(foot("(your name)")).toMatchObject({
      answer: ["nobody"],
      colophon: ["Log a.yaml, fingerprint 00."],
    });
  });

  test("a question without its mark, a promise, or an unknown role is misuse", () => {
    expect(() => notebook("N", () => ({ ...spec, question: "Fine." })).run(log)).toThrow(Misuse);
    expect(() => notebook("N", (async () => spec) as never).run(log)).toThrow(Misuse);
    const page = notebook("N", () => ({
      ...spec,
      sections: [{ role: "end" as "next", title: "E", blocks: [] }],
    })).run(log);
    expect(() => layOut(page)).toThrow(Misuse);
  });
});

/** Contrast ratio of WCAG 2.2 (definitions "contrast ratio" and "relative luminance"). */
function contrast(a: string, b: string): number {
  const luminance = (hex: string) => {
    const [r, g, blue] = [1, 3, 5].map((i) => {
      const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * blue!;
  };
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

test("words stand out from their ground by 4.5 : 1 on paper and in the dark, lines and marks by 3 : 1", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  for (const palette of [colours, darkColours]) {
    for (const ground of [palette.paper, palette.band]) {
      expect(contrast(palette.ink, ground)).toBeGreaterThan(4.5);
      expect(contrast(palette.quiet, ground)).toBeGreaterThan(4.5);
      for (const mark of [palette.measured, palette.fitted, palette.secondSand, palette.thirdSand]) {
        expect(contrast(mark, ground)).toBeGreaterThan(3);
      }
    }
  }
});

test("a share that is nearly all or none is not printed as all or none", () => {
  const shown = (values: readonly number[], unit?: string) =>
    chartTableParts({
      columns: [{ name: "what" }, { name: "chance", ...(unit === undefined ? {} : { unit }) }],
      rows: values.map((value) => ["x", value]),
    }).rows.map((row) => (row[1] as { text: string }).text);
  const nearly = [99.97, 100, 62.31, 0];
  expect(shown(nearly, "% of new batches")).toEqual(["> 99.9", "100.0", "62.3", "0.0"]);
  expect(shown(nearly)).toEqual(["100.0", "100.0", "62.3", "0.0"]);
  expect(shown([4e-8, 0, 62.31], "% of new batches")).toEqual(["< 0.000001", "0.000000", "62.310000"]);
});
