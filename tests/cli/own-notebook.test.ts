// A founder's own notebook, in a folder that knows nothing of this package.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { EXAMPLE_NOTEBOOK } from "../../lib/disk/example-notebook.ts";
import { logWith, soundRows } from "./logs.ts";
import { built, mullbookProcess, temporaryFolder } from "./mullbook.ts";

beforeAll(built, 180_000);

function folderWith(scripts: Readonly<Record<string, string>>): string {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "log.yaml"), logWith(...soundRows));
  for (const [name, text] of Object.entries(scripts)) {
    mkdirSync(join(cwd, name, ".."), { recursive: true });
    writeFileSync(join(cwd, name), text);
  }
  return cwd;
}

test("the one that help shows runs as it stands, under every ending and kind of folder", () => {
  const names = [
    "own.ts",
    "own.js",
    "own.mjs",
    "module/own.ts",
    "module/own.js",
    "common/own.ts",
    "common/own.js",
  ];
  const cwd = folderWith({
    ...Object.fromEntries(names.map((name) => [name, EXAMPLE_NOTEBOOK])),
    "module/package.json": '{ "type": "module" }',
    "common/package.json": '{ "type": "commonjs" }',
  });
  for (const name of names) {
    const to = `out-${name.replace(/\W/g, "-")}`;
    expect(mullbookProcess(["write", name, "log.yaml", "--to", to], { cwd })).toMatchObject({
      code: 0,
      out: `${to}/log-sands-that-i-sieved.html\n`,
      // That it names neither metal and bond nor a sieve set is worth no more than a number here.
      err: "log.yaml: 2 notes; all of them with: mullbook check log.yaml\n",
    });
    expect(readFileSync(join(cwd, to, "log-sands-that-i-sieved.html"), "utf8")).toContain("Dune sand: 1</p>");
  }
});

test("a script has types, helpers of its own, and the library's own objects", () => {
  const cwd = folderWith({
    "own.ts": `import { type Log, grainFineness, notebook } from "mullbook";
import { twice } from "./parts/twice.ts";

const stack = "No. 6, No. 12, No. 20, No. 30, No. 40, No. 50, No. 70, No. 100, No. 140, No. 200, No. 270";
const none = Object.fromEntries(stack.split(", ").map((sieve) => [sieve, 0]));
const gfn: number = grainFineness({ retained: { ...none, "No. 50": 50, "No. 70": 40, pan: 10 } }).gfn!;
export default notebook("Own", (log: Log) => ({
  question: "What?",
  answer: [\`\${twice(log.sands.length)} and \${gfn.toFixed(1)}\`],
  sections: [],
}));
`,
    "parts/twice.ts": "export const twice = (x: number): number => 2 * x;\n",
  });
  const { code, out } = mullbookProcess(["write", "own.ts", "log.yaml", "--as", "json"], { cwd });
  expect(code).toBe(0);
  // The multipliers of tests/reference/fineness-schemes: No. 50 takes 40, No. 70 takes 50, the pan 300: (50·40 + 40·50 + 10·300) / 100 = 70.
  expect(JSON.parse(readFileSync(join(cwd, out.trim()), "utf8")).answer).toEqual(["2 and 70.0"]);
});

test("a fault in a script is shown at its line in the script, with a hint", () => {
  const open = 'import { notebook } from "mullbook";\n\n';
  const cases: readonly (readonly [name: string, text: string, says: RegExp])[] = [
    [
      "syntax.ts",
      `${open}export default notebook("x", (log) => ({\n  question: "a?"\n  answer: [],\n}));\n`,
      /syntax\.ts:5:3: .*answer[\s\S]*comma/,
    ],
    [
      "syntax.mjs",
      `${open}export default notebook("x", (log) => ({\n  question: "a?"\n  answer: [],\n}));\n`,
      /syntax\.mjs:5: .*answer[\s\S]*comma/,
    ],
    [
      "thrown.ts",
      `${open}const x: { y?: { z: 1 } } = {};\nconsole.error(x.y.z);\n`,
      /thrown\.ts:4:\d+: TypeError: .*'z'[\s\S]*not there/,
    ],
    ["thrown.js", `${open}\nthrow new Error("not today");\n`, /thrown\.js:4:\d+: not today/],
    [
      "run.ts",
      `${open}export default notebook("x", (log: any) => {\n  return { question: "a?", answer: [log.nothing.length], sections: [] };\n});\n`,
      /run\.ts:4:\d+: TypeError: .*'length'/,
    ],
    [
      "misuse.ts",
      `import { grainFineness, notebook } from "mullbook";\nexport default notebook("x", () => {\n  grainFineness({ retained: 3 as any });\n  return { question: "a?", answer: [], sections: [] };\n});\n`,
      /misuse\.ts:3:\d+: retained must be/,
    ],
    [
      "name.ts",
      `${open.replace("notebook", "notebok")}`.concat("export default notebok;\n"),
      /name\.ts:1: .*notebok[\s\S]*Did you mean notebook\?/,
    ],
    [
      "helper.ts",
      'import { x } from "./absent.ts";\nexport default x;\n',
      /helper\.ts:1: Cannot find module[\s\S]*files of its own/,
    ],
    [
      "package.ts",
      '\nimport { x } from "no-such-package-anywhere";\nexport default x;\n',
      /package\.ts:2: Cannot find package/,
    ],
    [
      "none.ts",
      "export const a = 1;\n",
      /none\.ts runs, but exports no notebook[\s\S]*export default notebook\(/,
    ],
    [
      "mark.ts",
      `${open}export default notebook("x", () => ({ question: "no", answer: [], sections: [] }));\n`,
      /mark\.ts: .*question mark/,
    ],
    [
      "nothing.ts",
      `${open}export default notebook("x", () => null as any);\n`,
      /nothing\.ts: the notebook "x" gave no page; its function returns \{ question/,
    ],
    ["word.ts", 'throw "just a word";\nexport {};\n', /word\.ts: just a word/],
    ["absent.ts", "", /no file absent\.ts/],
  ];
  const cwd = folderWith(Object.fromEntries(cases.slice(0, -1).map(([name, text]) => [name, text])));
  for (const [name, , says] of cases) {
    const { code, out, err } = mullbookProcess(["write", name, "log.yaml"], { cwd });
    expect({ name, code, out }).toEqual({ name, code: 2, out: "" });
    expect(err).toMatch(says);
    expect(err).not.toMatch(/node_modules|dist\/|file:\/\/|namespace=/);
  }
});
