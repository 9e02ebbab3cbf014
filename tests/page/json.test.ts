import { expect, test } from "vitest";
import { Misuse } from "../../lib/issue.ts";
import { writeJson } from "../../lib/page/json.ts";
import { samplePage } from "./sample-page.ts";

test("keys stand in a fixed order and numbers carry ten digits", () => {
  const read = JSON.parse(writeJson(samplePage()));
  expect(Object.keys(read)).toEqual(
    "format title invented question answer cautions figures findings tables charts issues sources colophon".split(
      " ",
    ),
  );
  expect(read.format).toBe("mullbook-page/1");
  expect(read.figures).toEqual({
    "compactability aim %": [43, 47],
    "live clay %": null,
    "water to add kg": { high: 0.43, low: 0.19, mean: 0.3123456789 },
  });
  expect(read.tables[0].rows[5]).toEqual([
    "T6",
    4.1,
    58,
    { text: "–", fault: "the load was not written down" },
    9.5,
  ]);
  expect(read.issues.map((issue: { severity: string }) => issue.severity)).toEqual(["error", "note"]);
  expect(read.cautions).toHaveLength(2);
});

test("the order in which figures were worked out changes nothing", () => {
  const page = samplePage();
  const turned = Object.fromEntries(Object.entries(page.figures).reverse());
  expect(writeJson({ ...page, figures: turned })).toBe(writeJson(page));
});

test("typed arrays and maps are data, functions are not, and a circle is our own mistake", () => {
  const circle: { [key: string]: unknown } = {};
  circle.self = circle;
  const figures = { a: Float64Array.of(1, 1 / 3), m: new Map([["k", -0]]), f: () => 1 };
  const read = JSON.parse(writeJson({ ...samplePage(), figures }));
  expect(read.figures).toEqual({ a: [1, 0.3333333333], m: { k: 0 } });
  expect(() => writeJson({ ...samplePage(), figures: circle })).toThrow(Misuse);
});

test("hostile text can close no script element and turns no line", () => {
  const text = writeJson(samplePage({ hostile: true }));
  expect(text).not.toMatch(/<\/|<!|\u202e/);
  expect(JSON.parse(text).title).toContain('<script>alert("1")</script>');
});
