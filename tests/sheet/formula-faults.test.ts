// What is wrong with a formula, and where.

import { expect, test } from "vitest";
import { namesIn, readFormula } from "../../lib/sheet/formula.ts";
import { faults, formula, names, read, worked } from "./formula-scope.ts";

test.each([
  ["", " | There is no formula here."],
  ["3.2 % + 1", "% | % does not stand in a formula: it could mean a hundredth, or a remainder."],
  ["wet % dry", "% | % does not stand in a formula"],
  ["3,2 * wet", '3,2 | "3,2" has a comma'],
  ["(3, 2)", ", | A comma stands outside the brackets of a function."],
  ["wet = dry", "= | A single = gives a name to something"],
  ["dry mas", 'dry mas | There is no "dry mas" here.'],
  ["wet dry", 'wet dry | Between "wet" and "dry" there is no sign.'],
  ["2 wet", '2 wet | Between "2" and "wet" there is no sign.'],
  ["2 (wet)", '2 ( | Between "2" and "(" there is no sign.'],
  ["(wet)(dry)", ')( | Between ")" and "(" there is no sign.'],
  ["wet (3)", 'wet | "wet" is a figure here, not a function.'],
  ["5 gal", '5 gal | "gal" after a number is not a unit that is known here.'],
  ["5 furlongs", '5 furlongs | "furlongs" after a number is not a unit'],
  ["(wet", "( | A bracket is opened and not closed."],
  ["wet)", ") | A bracket is closed that was not opened."],
  ["wet +", " | Something is missing at the end."],
  ["wet * / dry", '/ | Something is missing before "/".'],
  ["1:3", ": | Something is missing"],
  ["wet[1]", '[ | "[" means nothing in a formula.'],
  ["n && n", '&& | "&&" means nothing in a formula.'],
  ['bag == "Alder', '"Alder | ""Alder" has no closing quotation mark.'],
  ['"Alder"', '"Alder" | A text in quotation marks can only be compared'],
  ['n == "Alder"', '"Alder" | This comparison needs a plain number, and this is a text.'],
  ["bag < bag", "bag < bag | a text and a text cannot be put in order."],
  ["bag + 1", "bag | + needs figures, and this is a text."],
  ["not n > 2", "n | not needs a condition"],
  ["log(n)", "log | There are several logarithms"],
  ["sqr(n)", 'sqr | There is no function "sqr" that a formula may use.'],
  ["sqrt", 'sqrt | There is no "sqrt" here.'],
  ["sqrt(n, 2)", "sqrt(n, 2) | There are 2 arguments here, which sqrt(x) does not take."],
  ["sum(mean(n))", "mean(n) | mean(n) stands inside another figure over the rows."],
  ["sum(5 kg + basis)", "sum(5 kg + basis) | There is no column in sum."],
  ["quantile(n, 90)", "90 | The second figure of quantile is the share below it"],
  ["round(n, 1.5)", "1.5 | The second figure of round is how many decimals to keep"],
  ['lookUp("maker", bag, "mass")', '"maker" | There is no other sheet "maker".'],
  ['lookUp("makers", bag, "mas")', '"mas" | The sheet "makers" has no column "mas".'],
  ['lookUp("makers", wet, "mass")', "wet | The key of lookUp needs a column of text"],
  ["lookUp(makers, bag, mass)", 'makers | There is no "makers" here.'],
  ["1e999", '1e999 | "1e999" is too large to work with.'],
  ["n + n²²²²²²", ""],
])("%s → %s", (text, fault) => {
  if (fault === "") expect(read(text).issues).toEqual([]);
  else expect(faults(text)[0]).toContain(fault);
});

test("a remedy says what to write", () => {
  const remedy = (text: string): string | undefined => read(text).issues[0]?.remedy;
  expect(remedy("3.2 % + 1")).toBe("Write 3.2 for a percentage, 3.2 / 100 for the share that it is.");
  expect(remedy("3,2 * wet")).toContain("3.2");
  expect(remedy("wet = dry")).toContain("==");
  expect(remedy("dry mas")).toBe("Write dry mass if that is what is meant.");
  expect(remedy("ln(wet)")).toContain("ln(wet / (1 g))");
  expect(remedy("n <> 2")).toBe("Write !=.");
  expect(remedy("inside + 5")).toContain("5 °C difference");
  expect(remedy('lookUp("maker", bag, "mass")')).toBe('Write "makers" if that is meant.');
});

test("several faults are told at once, each with its place", () => {
  expect(faults("foo + wet * baar")).toEqual([
    'foo | There is no "foo" here.',
    'baar | There is no "baar" here.',
  ]);
  expect(faults("(wet + height) * (wet + moisture)")).toHaveLength(2);
});

test("a column that is called as a unit is goes before the unit, and a number beside it is a fault", () => {
  const g = { kind: "number", per: "row" } as const;
  const own = new Map(names).set("g", g).set("t", g).set("min", g);
  expect(faults("5 g", { names: own })).toEqual([
    '5 g | "g" is a name here, so "5 g" cannot be read as a quantity.',
  ]);
  expect(formula("5 * g", { names: own }).rows).toEqual(["g"]);
  expect(formula("2 kg/t", { names: own })).toMatchObject({ rows: ["t"], unit: { text: "kg" } });
  expect(formula("min + max(g, min)", { names: own }).rows).toEqual(["min", "g"]);
});

test("names may hold spaces, digits, any letters, and words of the grammar", () => {
  const plain = { kind: "number", per: "row" } as const;
  const own = new Map(
    ["green compression", "sand and clay", "mix 3", "Größe", "насыпь", "ψ", "mean"].map((name) => [
      name,
      plain,
    ]),
  );
  expect(formula("green compression + green_compression", { names: own }).rows).toEqual([
    "green compression",
  ]);
  expect(formula("sand and clay * 2 + mix 3 - Größe / насыпь + ψ", { names: own }).rows).toEqual([
    "sand and clay",
    "mix 3",
    "Größe",
    "насыпь",
    "ψ",
  ]);
  expect(formula("mean - mean(ψ)", { names: own })).toMatchObject({
    rows: ["mean"],
    aggregates: [{ fn: "mean" }],
  });
});

test("a foot takes figures over the rows, not columns", () => {
  expect(faults("moisture", { in: "foot" })[0]).toContain('"moisture" has a figure in every row');
  expect(faults('lookUp("makers", bag, "mass")', { in: "foot" })[0]).toContain(
    '"bag" has a figure in every row',
  );
  const foot = formula("mean(moisture) + 2 * sd(moisture) + mean(moisture)", { in: "foot" });
  expect(foot.aggregates.map(({ fn, of }) => `${fn} ${of.text}`)).toEqual(["mean moisture", "sd moisture"]);
  expect(foot.unit?.text).toBe("% of damp mass");
  expect(formula('lookUp("makers", "Alder", "mass")', { in: "foot" })).toMatchObject({
    unit: { text: "kg" },
  });
});

test("figures over the rows may stand in a column, of any expression", () => {
  const share = formula("clay / sum(clay)");
  expect(share).toMatchObject({
    rows: ["clay"],
    aggregates: [{ fn: "sum", of: { text: "clay", rows: ["clay"] } }],
  });
  const [aggregate] = formula("quantile(wet - dry, 0.9)", { in: "foot" }).aggregates;
  expect(aggregate).toMatchObject({
    fn: "quantile",
    p: 0.9,
    of: { rows: ["wet", "dry"], unit: { text: "g" } },
  });
  expect(formula("sd(inside)", { in: "foot" }).unit?.text).toBe("°C difference");
  const counted = formula("count(moisture > 4)", { in: "foot" }).aggregates[0]!;
  expect(counted.fn).toBe("sum");
  const out = new Float64Array(3);
  counted.of.run([Float64Array.of(3, 5, Number.NaN)], out);
  expect([...out]).toEqual([0, 1, Number.NaN]);
});

test("two figures with a comma between them and no space are told where a function would take both", () => {
  expect(faults("max(n, 3,2)")).toEqual(['3,2 | "3,2" was read as two figures.']);
  expect(read("max(n, 3,2)").value).toBeDefined();
  expect(read("max(n, 3, 2)").issues).toEqual([]);
});

test("the names that a formula needs are known before their kinds are", () => {
  const known = ["wet", "dry mass", "sum", "bag", "spare"];
  expect(namesIn('= sum(wet) / dry_mass + lookUp("wet", bag, "spare")', known)).toEqual({
    value: ["wet", "dry mass", "bag"],
    issues: [],
  });
  expect(namesIn("wet + dry mas", known).value).toEqual(["wet"]);
  expect(namesIn("wet + dry mas", known).issues[0]?.message).toBe('There is no "dry mas" here.');
  expect(namesIn("x".repeat(2001), known).value).toBeUndefined();
});

test("what is given in one order is asked for in that order", () => {
  const text = 'if(wet > basis, sum(dry), lookUp("makers", bag, "mass")) + n / n * wet';
  const made = formula(text);
  expect([made.rows, made.sheet, made.aggregates.length, made.lookUps]).toEqual([
    ["wet", "n"],
    ["basis"],
    1,
    [{ sheet: "makers", column: "mass", key: { name: "bag" } }],
  ]);
  // rows wet and n, then basis in kg, then the sum in g, then the look-up in kg.
  expect(worked(text, { wet: 3000, n: 1, basis: 2 }, { sheet: [7, 1] }).value).toBe(3007);
  expect(worked(text, { wet: 1000, n: 1, basis: 2 }, { sheet: [7, 1] }).value).toBe(2000);
});

test("a formula with no scope of other sheets says so", () => {
  const { issues } = readFormula('lookUp("makers", bag, "mass")', { names, in: "column" });
  expect(issues[0]?.message).toBe("There is no other sheet to look anything up in.");
});

test("a unit with a sign after it that belongs to none: what to do is said", () => {
  const { issues } = read("3m°");
  expect(issues[0]).toMatchObject({
    code: "sheet/formula-no-such-unit",
    remedy: expect.stringMatching(/after m\.$/),
  });
});
