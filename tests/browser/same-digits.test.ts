// The same log gives the same digits in node, in Chromium, and in an engine whose logarithms end in other bits.

import { execFileSync } from "node:child_process";
import { expect, test } from "vitest";
import { type Bundle, bundle, globalName } from "./bundle.ts";
import { openBrowser, withoutBrowser } from "./chromium.ts";
import { demoLogs } from "./demo-pages.ts";
import { digits } from "./digits.ts";

const logs = demoLogs()
  .filter(({ notebook }) => notebook === "grain-fineness")
  .map(({ name, text }) => ({ name, text }));
const here = digits(logs);
const figures: Bundle = await bundle("tests/browser/digits.ts");

test("there is much to compare", () => {
  expect(logs.length).toBeGreaterThanOrEqual(3);
  expect(here.length).toBeGreaterThan(400);
  expect(here.filter((line) => /\d\.\d{8}/.test(line)).length).toBeGreaterThan(150);
});

test.skipIf(withoutBrowser)(
  "the bundle gives the same lines in Chromium",
  async () => {
    const tab = await (await openBrowser()).newPage();
    try {
      await tab.addScriptTag({ content: figures.script });
      const there = await tab.evaluate(`${globalName}.digits(${JSON.stringify(logs)})`);
      expect(there).toEqual(here);
    } finally {
      await tab.close();
    }
  },
  60_000,
);

// ECMA-262 leaves these functions to the engine ("implementation-approximated", section 21.3.2); it fixes sqrt.
const approximated =
  "acos asin atan atan2 cbrt cos cosh exp expm1 hypot log log10 log1p log2 pow sin sinh tan tanh";

/** Moves what each of them gives by one unit in the last place; whole results stay, as log(1) is 0 anywhere. */
const otherBits = `
  const float = new Float64Array(1);
  const low = new Int32Array(float.buffer);
  for (const name of "${approximated}".split(" ")) {
    const exact = Math[name];
    Math[name] = (a, b) => {
      float[0] = b === undefined ? exact(a) : exact(a, b);
      if (Number.isFinite(float[0]) && float[0] % 1 !== 0) low[0] += ((low[0] ^ (low[0] >> 7)) & 1) * 2 - 1;
      return float[0];
    };
  }`;

test("an engine whose Math ends in other bits gives the same digits", () => {
  const results = `JSON.stringify({ e: Math.exp(1), lines: ${globalName}.digits(${JSON.stringify(logs)}) })`;
  const program = `${otherBits}\n${figures.script}\nconsole.log(${results});`;
  const printed = execFileSync(process.execPath, ["-"], { input: program, maxBuffer: 2 ** 26 });
  const there = JSON.parse(printed.toString()) as { readonly e: number; readonly lines: readonly string[] };
  expect(there.e).not.toBe(Math.exp(1));
  expect(there.lines).toEqual(here);
}, 60_000);

test("the public door reaches nothing of node", async () => {
  const { metafile, script } = await bundle("lib/index.ts");
  const imported = Object.values(metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  expect(imported.filter((path) => !["vega", "vega-lite"].includes(path))).toEqual([]);
  expect(Object.keys(metafile.inputs).filter((file) => file.startsWith("lib/disk/"))).toEqual([]);
  expect(script).not.toMatch(/\brequire\(|"node:/);
  console.info(`lib/index.ts for a browser, minified, without vega: ${(script.length / 1000).toFixed(0)} kB`);
});
