// One value written: its bytes and no others, in quotes only where YAML or CSV wants them.

import { expect, test } from "vitest";
import type { Place } from "../../lib/issue.ts";
import { editLog } from "../../lib/log/edit.ts";
import { logOutline } from "../../lib/log/outline.ts";
import type { OutlineNode } from "../../lib/log/outline-node.ts";
import { placeIn, sourceOf } from "../../lib/log/source.ts";

const name = "log.yaml";
const at = (text: string, part: string, from = 0) =>
  placeIn(sourceOf(name, text), text.indexOf(part, from), part.length);

/** The text with one part of it written anew; the issues' codes where that is refused. */
function write(text: string, part: string, to: string): string {
  const { texts, issues, changed } = editLog([{ name, text }], {
    kind: "write",
    at: at(text, part),
    text: to,
  });
  if (!texts) return issues.map(({ code, severity }) => `${severity} ${code}`).join();
  const now = texts[0]!.text;
  expect(changed).toEqual(
    placeIn(sourceOf(name, now), changed!.offset!, now.length - text.length + part.length),
  );
  return now;
}
/** The text filled in at each value that has nothing in it. */
function filled(text: string): string[] {
  const values = (nodes: readonly OutlineNode[]): Place[] =>
    nodes.flatMap((node) =>
      node.kind === "value"
        ? node.text === ""
          ? [node.place]
          : []
        : node.kind === "group"
          ? values(node.parts)
          : [],
    );
  return values(logOutline([{ name, text }])).map(
    (place) =>
      editLog([{ name, text }], { kind: "write", at: place, text: "5" }).texts?.[0]?.text ?? "refused",
  );
}

test("a figure between comments, in odd spacing, with any line end", () => {
  for (const eol of ["\n", "\r\n", "\r"]) {
    const text = `\uFEFF# top${eol}heap:   { mass: 120 kg ,shape:heap }  # weighed${eol}${eol}title:  "A"${eol}# end`;
    expect(write(text, "120 kg", "118.50 kg ± 2 kg")).toBe(text.replace("120 kg", "118.50 kg ± 2 kg"));
  }
});

test.each([
  ["12.4 ± 0.1 g", "12.4 ± 0.1 g"],
  ["3.20", "3.20"],
  ["yes", "yes"],
  ["2026-07-11", "2026-07-11"],
  ["a:b", "a:b"],
  ["-5", "-5"],
  ["50 %", "50 %"],
  ["text: with colon", '"text: with colon"'],
  ["ends:", '"ends:"'],
  ["# 40", '"# 40"'],
  ["a # 40", '"a # 40"'],
  [" a", '" a"'],
  ["a ", '"a "'],
  ["null", '"null"'],
  ["~", '"~"'],
  ["- a", '"- a"'],
  ["*a", '"*a"'],
  ["%", '"%"'],
  ["---", '"---"'],
  ['"a" b', `'"a" b'`],
  [`it's "x"`, `it's "x"`],
  [`"it's"`, '"\\"it\'s\\""'],
  ["\\", "\\"],
  ["“a”", '"“a”"'],
  ["two\nlines\t", '"two\\nlines\\t"'],
  ["\u202E", '"\\u202E"'],
  ["\uD800", '"\\uD800"'],
  ["\0", '"\\u0000"'],
])("%j in a block is written %s", (to, spelt) => {
  expect(write("a: 1\nb: 22   # c\n", "22", to)).toBe(`a: 1\nb: ${spelt}   # c\n`);
});

test.each([
  ["a, b", '"a, b"'],
  ["0,15", '"0,15"'],
  ["[x", '"[x"'],
  ["a}", '"a}"'],
  ["max(a, b)", "max(a, b)"],
  ['lookUp("p", bag, "q") * 2', 'lookUp("p", bag, "q") * 2'],
  ["max(a, b", '"max(a, b"'],
])("%j in brackets is written %s", (to, spelt) => {
  expect(write("a: { b: 22, c: 1 }\n", "22", to)).toBe(`a: { b: ${spelt}, c: 1 }\n`);
});

test("quotes that stood there are kept", () => {
  expect(write('a: "x"\n', '"x"', "y")).toBe('a: "y"\n');
  expect(write("a: 'x' # c\n", "'x'", "it's")).toBe("a: 'it''s' # c\n");
  expect(write("a: 'x'\n", "'x'", "two\nlines")).toBe('a: "two\\nlines"\n');
  expect(write('a: "x"\n', '"x"', "")).toBe('a: ""\n');
  expect(write("a: “x”\n", "“x”", "y")).toBe('a: "y"\n');
});

test("quotes that only the old text needed go with it", () => {
  const mended = write("a: { b: 151,2 g, c: 1 }\n".replace("151,2 g", '"151,2 g"'), '"151,2 g"', "151.2 g");
  expect(mended).toBe("a: { b: 151.2 g, c: 1 }\n");
  expect(write("a: '# 40'\n", "'# 40'", "No. 40")).toBe("a: No. 40\n");
  expect(write("a: '# 40'\n", "'# 40'", "# 50")).toBe("a: '# 50'\n");
  // Without brackets a comma wants none: somebody chose them.
  expect(write('a: "151,2 g"\n', '"151,2 g"', "151.2 g")).toBe('a: "151.2 g"\n');
});

test("emptied, and filled again", () => {
  expect(write("a: 12 # c\nb: 2\n", "12", "")).toBe("a:  # c\nb: 2\n");
  expect(write("a: { b: 12, c: 2 }\n", "12", "")).toBe("a: { b: , c: 2 }\n");
  expect(write("a: [ 12, 13 ]\n", "12", "")).toBe('a: [ "", 13 ]\n');
  const empty = "No. 40:\nNo. 50: \nc: {d:,e: ,f}\nlist:\n  -\n  - \n";
  expect(filled(empty)).toEqual([
    empty.replace("40:", "40: 5"),
    empty.replace("50: ", "50: 5"),
    empty.replace("d:", "d: 5"),
    empty.replace("e: ", "e: 5"),
    empty.replace("f}", "f: 5}"),
    empty.replace("  -\n", "  - 5\n"),
    empty.replace("- \n", "- 5\n"),
  ]);
});

test("filled before a comment: a blank stays on either side, and the comment stays one", () => {
  const empty =
    "a:   # said\nb: # said\nc: {d: # said\n  , e:\t# said\n  }\nlist:\n  -  # said\n  - # said\n";
  expect(filled(empty)).toEqual([
    empty.replace("a:   #", "a: 5  #"),
    empty.replace("b: #", "b: 5 #"),
    empty.replace("d: #", "d: 5 #"),
    empty.replace("e:\t#", "e: 5\t#"),
    empty.replace("-  #", "- 5 #"),
    empty.replace("- # said\n", "- 5 # said\n"),
  ]);
});

test("texts of several lines keep their form where it can hold the new one", () => {
  const text = "note: |  # said\n    one\n    two\n\nb: >\n  a\n  b\nc: 1\n";
  const literal = text.slice(6, text.indexOf("\nb:"));
  expect(write(text, literal, "three\n\n# four\n")).toBe(
    text.replace("    one\n    two\n", "    three\n\n    # four\n"),
  );
  expect(write(text, literal, "three")).toBe(
    text.replace("|  # said\n    one\n    two\n", "|-  # said\n    three\n"),
  );
  expect(write(text, ">\n  a\n  b\n", "x\ny\n")).toBe(text.replace("  a\n  b\n", "  x\n\n  y\n"));
  expect(write(text, literal, "")).toBe(text.replace("|  # said\n    one\n    two\n", "\n"));
  expect(write("a: one\n  two\nb: 1\n", "one\n  two", "x")).toBe("a: x\nb: 1\n");
});

test("at an anchor all repeats follow, and a note says so; at the repeat it is refused", () => {
  const text = "a: &x 12\nb: *x\nc: { d: *x }\n";
  const result = editLog([{ name, text }], { kind: "write", at: at(text, "12"), text: "13" });
  expect(result.texts?.[0]?.text).toBe(text.replace("12", "13"));
  expect(result.issues.map(({ code, severity }) => [code, severity])).toEqual([
    ["log/edit-repeated", "note"],
  ]);
  expect(result.issues[0]?.message).toMatch(/2 other places/);
  expect(write(text, "*x", "13")).toBe("error log/edit-no-value");
});

test("names are written as well, never empty and never twice", () => {
  const text = "batches:\n  W1: { a: 1 }\n  W2: { a: 2 }\n";
  expect(write(text, "W1", "W1: wet")).toBe(text.replace("W1", '"W1: wet"'));
  expect(write(text, "W1", "w2")).toBe("error log/edit-name-taken");
  expect(write(text, "W1", " ")).toBe("error log/edit-no-name");
});

test("what is no single value, or not there, is refused with its place", () => {
  const text = "a: { b: 1 }\n";
  expect(write(text, "{ b: 1 }", "2")).toBe("error log/edit-no-value");
  const gone = editLog([{ name, text }], { kind: "write", at: { file: name, offset: 99 }, text: "2" });
  expect(gone.issues[0]).toMatchObject({ code: "log/edit-no-value", place: { offset: 99 } });
  const other = editLog([{ name, text }], { kind: "write", at: { file: "b.csv", offset: 0 }, text: "2" });
  expect(other.issues[0]).toMatchObject({ code: "log/edit-no-file" });
});

test("beside a broken line everything else can be edited, and the broken part stays", () => {
  const text =
    'sands:\n  A:\n    state: new\n    note: "never closed\n    x y z\n  B:\n    state: used\nheap: { mass: 120 kg }\n';
  expect(write(text, "used", "new")).toBe(text.replace("used", "new"));
  expect(write(text, "120 kg", "a: b")).toBe(text.replace("120 kg", '"a: b"'));
  expect(write(text, '"never closed', "closed")).toBe("error log/edit-no-value");
});

test("in a log with tabs, hard spaces and curly quotes places are as typed", () => {
  const text = "heap:\n\tmass:\t120 kg\n\tshape: “heap”\nscales:\n\u00A0 s: { reads to: 0.1 g }\n";
  for (const part of ["120 kg", "0.1 g"]) expect(write(text, part, "7 kg")).toBe(text.replace(part, "7 kg"));
  expect(write(text, "“heap”", "bin")).toBe(text.replace("“heap”", '"bin"'));
});

test("a cell of a CSV file", () => {
  const csv = 'bag;damp;note\r\nAlder; 12,5 ;"a ""b"""\r\nBirch;;\r\n';
  const texts = [
    { name, text: "a: 1\n" },
    { name: "b.csv", text: csv },
  ];
  const cell = (part: string, to: string) => {
    const offset = csv.indexOf(part);
    const place = { file: "b.csv", offset, length: part.length };
    const result = editLog(texts, { kind: "write", at: place, text: to });
    return result.texts?.[1]?.text ?? result.issues[0]?.code;
  };
  expect(cell(" 12,5 ", "13,25")).toBe(csv.replace("12,5", "13,25"));
  expect(cell('"a ""b"""', 'c "d"')).toBe(csv.replace('a ""b""', 'c ""d""'));
  expect(cell("Birch", "Birch; north")).toBe(csv.replace("Birch", '"Birch; north"'));
  expect(cell("Birch", "")).toBe("log/edit-changes-more");
  expect(cell("Birch", "a\0")).toBe("log/edit-sign");
  expect(cell("Bir", "x")).toBe("log/edit-no-value");
});
