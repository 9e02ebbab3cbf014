// A formula from a stranger's log can do nothing but arithmetic. The ways out below are those known of mathjs
// expressions (its own security tests and advisories, from memory) and of JavaScript sandboxes.

import fc from "fast-check";
import { expect, test } from "vitest";
import { namesIn } from "../../lib/sheet/formula.ts";
import { parseTokens } from "../../lib/sheet/formula-parser.ts";
import type { NameKind } from "../../lib/sheet/formula-type.ts";
import { formulaFunctions } from "../../lib/sheet/functions.ts";
import { names, read } from "./formula-scope.ts";

const waysOut = [
  'constructor.constructor("return process")()',
  'cos.constructor("return 1")()',
  'sqrt.constructor("return process.env")()',
  "sqrt.call(0, 4)",
  '"".constructor.constructor("return 1")()',
  '"".sub.constructor("return 1")()',
  '[].map.constructor("return 1")()',
  "[1,2].map(f(x) = x)",
  "[].constructor",
  "{}.constructor",
  '{a: 1}["constructor"]',
  'n["constructor"]',
  'n["const\\u0072uctor"]',
  "n.\\u0063onstructor",
  "c\\u006fnstructor",
  "n?.constructor",
  "n?.(1)",
  "__proto__",
  "n.__proto__.polluted = 1",
  '{"__proto__": {"polluted": 1}}',
  "f(x) = x ^ 2",
  "f(x) = f(x); f(1)",
  "x = 5",
  "n = 5",
  "sqrt(n) = 5",
  'import("fs")',
  "import({sqrt: 1}, {override: true})",
  'createUnit("foo")',
  'createUnit("g", {override: true})',
  'simplify("x")',
  'derivative("x^2", "x")',
  'parse("1 + 1")',
  'evaluate("1 + 1")',
  'compile("1")',
  'parser().evaluate("1")',
  'help("sqrt")',
  "config({number: 1})",
  "chain(3).done()",
  'typed({"number": 1})',
  'print("$a", n)',
  "format(n, {})",
  'resolve("x")',
  "expr.transform",
  "unit(5)",
  "matrix([1])",
  "ones(1e9)",
  "zeros(1e9, 1e9)",
  "1:1e12",
  "range(1, 1e12)",
  "factorial(170)",
  "170!",
  "n'",
  "n; n",
  "n\n;n",
  "this",
  "globalThis",
  "process",
  "require('fs')",
  "eval('1')",
  "Function('return 1')()",
  "new Date()",
  "() => 1",
  "function(){}",
  "`$n`",
  "n || n",
  "n ?? n",
  "~n",
  "n | 1",
  "n << 40",
  "true",
  "null",
  "undefined",
  "NaN",
  "Infinity",
  "i",
  "end",
  "_1",
  "_0(_0)",
  "a.b.c",
  "n..n",
  "0x10",
  "0b11",
  "n to g",
  "5 g to kg",
  "mod(n, 2)",
  "n mod 2",
  "n xor n",
  "# a comment",
  "n # a comment",
  'lookUp("makers", "x", "constructor")',
  'lookUp("__proto__", "x", "toString")',
  "toString(n)",
  "valueOf()",
  "hasOwnProperty(n)",
  "constructor(n)",
];

test.each(waysOut)("%s is refused, with its place", (text) => {
  const { value, issues } = read(text);
  expect(value).toBeUndefined();
  expect(issues.length).toBeGreaterThan(0);
  for (const { at, message, remedy } of issues) {
    expect(at.from).toBeGreaterThanOrEqual(0);
    expect(at.to).toBeGreaterThanOrEqual(at.from);
    expect(at.to).toBeLessThanOrEqual(text.length);
    expect(message).toMatch(/\.$/);
    expect(remedy).not.toBe("");
  }
});

test("a column may be called as a part of every object is called, and is a column", () => {
  const strange = ["constructor", "__proto__", "hasOwnProperty", "valueOf", "toString", "prototype", "_0"];
  const own = new Map<string, NameKind>(strange.map((name) => [name, { kind: "number", per: "row" }]));
  const { value } = read(strange.join(" + "), { names: own });
  expect(value?.rows).toEqual(strange);
  const out = new Float64Array(1);
  value!.run([1, 2, 3, 4, 5, 6, 7], out);
  expect(out[0]).toBe(28);
  expect(namesIn("sum(constructor) / __proto__", strange).value).toEqual(["constructor", "__proto__"]);
  expect(read("valueOf(constructor)", { names: own }).value).toBeUndefined();
});

test("nothing that the parser gives can be run, and the parser sees no words", () => {
  const parsed = parseTokens([undefined, "+", "(", undefined, ")"]);
  const functions: string[] = [];
  const walk = (value: unknown, path: string): void => {
    if (typeof value === "function") functions.push(path);
    if (typeof value === "object" && value !== null)
      for (const [key, inside] of Object.entries(value)) walk(inside, `${path}.${key}`);
  };
  walk(parsed, "parsed");
  expect(functions).toEqual([]);
  expect(JSON.stringify(parsed)).not.toContain("_0");
  expect(Object.getPrototypeOf((parsed as { tree: object }).tree)).toBe(Object.prototype);
});

test("nothing is left behind on what all objects share", () => {
  const before = Object.getOwnPropertyNames(Object.prototype).join();
  for (const text of waysOut) read(text);
  expect(Object.getOwnPropertyNames(Object.prototype).join()).toBe(before);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
});

const long = (part: string, end = "1"): string =>
  `${part.repeat(Math.floor((2000 - end.length) / part.length))}${end}`;

test.each([
  ["a very long text", "n + ".repeat(1e6)],
  ["brackets 1,000 deep", `${"(".repeat(999)}1${")".repeat(999)}`],
  ["open brackets", "(".repeat(2000)],
  ["functions within functions", `${"sqrt(".repeat(250)}1${")".repeat(250)}`],
  ["signs", long("-")],
  ["nots", long("not ", "n > 1")],
  ["a tower of powers", long("2^")],
  ["sums", long("1+")],
  ["quotients of numbers", long("1/")],
  ["quotients of numbers before a unit", `${long("1/", "1 g")}`.slice(0, 2000)],
  ["questions", long("1>2?1:")],
  ["questions in questions", `${"1>2?".repeat(200)}1${":1".repeat(200)}`],
  ["comparisons", long("1<")],
  ["units", `5 ${"m/".repeat(900)}m`],
  ["words", "word ".repeat(399)],
  ["letters", "x".repeat(2000)],
  ["digits", "9".repeat(2000)],
  ["decimals", `0.${"9".repeat(1990)}`],
  ["quotation marks", '"'.repeat(1999)],
  ["raised digits", `2${"⁹".repeat(1900)}`],
  ["an exponent", "1e-99999999999999999999"],
  ["commas", `max(${"1,".repeat(900)}1)`],
  ["spaces", " ".repeat(2000)],
  ["nothing but marks", "\u0301".repeat(2000)],
  ["half a character", "\ud835".repeat(2000)],
])("%s: answered at once", (_, text) => {
  const before = process.cpuUsage();
  const { value, issues } = read(text);
  const { user, system } = process.cpuUsage(before);
  expect(value !== undefined || issues.length > 0).toBe(true);
  expect(issues.length).toBeLessThanOrEqual(10);
  // Far above what it takes (a few ms), far below what would hang a page.
  expect((user + system) / 1000).toBeLessThan(500);
});

test("huge exponents give no figure rather than a wrong one", () => {
  for (const text of [
    "9^9^9^9",
    "10^400",
    "1e308 * 10",
    "exp(exp(exp(9)))",
    "height^1000 * 2",
    "(1 kg)^300",
  ]) {
    const { value, issues } = read(text);
    if (!value) expect(issues).not.toEqual([]);
    else {
      const out = new Float64Array(1);
      value.run(
        value.rows.map(() => 1e9),
        out,
      );
      expect(out[0], text).toSatisfy((x: number) => Number.isNaN(x) || Number.isFinite(x));
    }
  }
});

const answered = (text: string): void => void sound(text);

/** True for a formula. Never throws, never leaves a fault without a place, never gives both an error and a formula. */
function sound(text: string): boolean {
  const { value, issues } = read(text);
  const errors = issues.filter(({ severity }) => severity === "error");
  expect(value === undefined, text).toBe(errors.length > 0);
  for (const { at } of issues)
    expect(0 <= at.from && at.from <= at.to && at.to <= text.length, text).toBe(true);
  namesIn(text, names.keys());
  if (!value) return false;
  const inputs = [...value.rows, ...value.sheet, ...value.aggregates, ...value.lookUps].map((_, k) => k - 1);
  const out = new Float64Array(2);
  value.run(inputs, out);
  expect(out[0] === out[1] || (Number.isNaN(out[0]) && Number.isNaN(out[1]))).toBe(true);
  expect(Number.isNaN(out[0]) || Number.isFinite(out[0]), text).toBe(true);
  expect(value.why(inputs) === undefined, text).toBe(Number.isFinite(out[0]));
  return true;
}

test("any text is answered", () => {
  fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 60 }), answered), { numRuns: 80, seed: 1 });
  fc.assert(fc.property(fc.string({ unit: "grapheme-ascii", maxLength: 60 }), answered), {
    numRuns: 80,
    seed: 2,
  });
});

const words = fc.constantFrom(
  ...names.keys(),
  ...formulaFunctions.map(({ name }) => `${name}(`),
  ..."+ - * / ^ ( ) ( ) , , ? : < > <= == != = % and or not ² √ . ; [ ] { } \" ' # & | !".split(" "),
  ...'0 1 2.5 1e3 5 g 3 mm 2 in 20 °C 1/2 in 4 kPa pi "Alder" "2026-05-02" "makers" "mass"'.split(" "),
);

test("any words of formulas in any order are answered", () => {
  const texts = fc.array(words, { maxLength: 25 }).map((list) => list.join(" "));
  fc.assert(fc.property(texts, answered), { numRuns: 300, seed: 3 });
});

const { whole } = fc.letrec<{ whole: string }>((tie) => ({
  whole: fc.oneof(
    { depthSize: "medium" },
    fc.constantFrom(...names.keys(), "1", "2", "0", "5 g", "3 mm", "20 °C", "100", '"Alder"'),
    fc
      .tuple(tie("whole"), fc.constantFrom("+", "-", "*", "/", "^", "<", "==", " and "), tie("whole"))
      .map((p) => p.join("")),
    tie("whole").map((inner) => `(${inner})`),
    tie("whole").map((inner) => `-${inner}`),
    fc
      .tuple(fc.constantFrom(...formulaFunctions), fc.array(tie("whole"), { minLength: 1, maxLength: 3 }))
      .map(([{ name }, args]) => `${name}(${args.join(", ")})`),
  ),
}));

test("any tree of parts is answered", () => {
  let formulas = 0;
  const counted = (text: string): void => {
    if (sound(text)) formulas++;
  };
  fc.assert(fc.property(whole, counted), { numRuns: 300, seed: 4 });
  expect(formulas).toBeGreaterThan(60);
});
