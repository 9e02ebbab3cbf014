// What is kept of draws never changes a figure, and names nothing twice.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { combine } from "../../lib/quantity/combine.ts";
import { contentOfCall, contentOfNumber } from "../../lib/quantity/content.ts";
import { kept } from "../../lib/quantity/kept.ts";
import { spread } from "../../lib/quantity/spread-of.ts";

const weighed = (text: string, id: string) => spread({ ...reading(text), source: id });
const reading = (text: string) => ({ mean: Number(text), halfWidth: 0.1, kind: "rectangular" as const });

test("a store gives back what was put in, and lets go of what was not asked for longest", () => {
  const store = kept<number>(20);
  store.set("first", 1);
  store.set("second", 2);
  expect([store.get("first"), store.get("second")]).toEqual([1, 2]);
  for (let i = 0; i < 20; i++) {
    store.set(`other ${i}`, i);
    expect(store.get("first")).toBe(1);
  }
  expect(store.get("other 1")).toBeUndefined();
});

test("a value as large as the store does not stay for ever", () => {
  const store = kept<string>(100, (value) => value.length);
  store.set("large", "x".repeat(1000));
  store.set("small", "y");
  store.set("larger", "z".repeat(1000));
  expect(store.get("large")).toBeUndefined();
});

test("figures of one content are one in all digits, whatever was asked for in between", () => {
  const plain = (wet: string, dry: string) =>
    combine((v) => (100 * (v[0]! - v[1]!)) / v[0]!, [weighed(wet, "wet"), weighed(dry, "dry")]);
  const named = (wet: string, dry: string) =>
    combine((v) => (100 * (v[0]! - v[1]!)) / v[0]!, [weighed(wet, "wet"), weighed(dry, "dry")], {
      as: "moisture of the test",
    });
  for (const [wet, dry] of [
    ["52.4", "50.6"],
    ["52.5", "50.6"],
    ["52.4", "50.6"],
  ] as const) {
    const [a, b] = [plain(wet, dry), named(wet, dry)];
    expect([b.value, b.sd, b.low, b.high]).toEqual([a.value, a.sd, a.low, a.high]);
  }
});

test("0 and −0 are two, a source without an id is like no other, and names and order count", () => {
  expect(contentOfNumber(-0)).toBeUndefined();
  expect(contentOfNumber(0)).toBe("0");
  const one = weighed("5", "one");
  const nameless = spread({ mean: 5, halfWidth: 0.1, kind: "rectangular" });
  const of = (as: string, inputs: Parameters<typeof contentOfCall>[2], names?: readonly string[]) =>
    contentOfCall(as, names, inputs);
  expect(of("a", [one, 2])).not.toBe(of("a", [2, one]));
  expect(of("a", [one, 2])).not.toBe(of("b", [one, 2]));
  expect(of("a", [one, 2], ["x", "y"])).not.toBe(of("a", [one, 2], ["y", "x"]));
  expect(of("a", [one, 2])).not.toBe(of("a", [one, 3]));
  if (nameless.sources[0]?.id === undefined) expect(of("a", [nameless])).toBeUndefined();
});

test("every name of a kept function stands at one place of the source", () => {
  const root = join(import.meta.dirname, "../../lib");
  const names = readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.startsWith("disk"))
    .flatMap((file) =>
      [...readFileSync(join(root, file), "utf8").matchAll(/\bas: ("[^"]+"|`[^`]+`)\s*[,}\n]/g)].map(
        ([, name]) => name!,
      ),
    );
  expect(names.length).toBeGreaterThan(6);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test("so does every name that lift is told, or it stands for the same function again", () => {
  const known = new Map<string, string>();
  for (const [fn, name] of lifted()) {
    const parameter = /^\(?(\w+)\)? =>/.exec(fn)?.[1];
    const told = parameter
      ? fn.replaceAll(new RegExp(`\\b${parameter}\\b`, "g"), "v")
      : `${fn} ${known.size}`;
    expect(known.get(name) ?? told, name).toBe(told);
    known.set(name, told);
  }
  expect(known.size).toBeGreaterThan(10);
});

/** First and third argument of each call of lift that has three. */
function lifted(): [string, string][] {
  const root = join(import.meta.dirname, "../../lib");
  const files = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".ts"),
  );
  return files.flatMap((file) => {
    const text = readFileSync(join(root, file), "utf8");
    return [...text.matchAll(/\blift\(/g)].flatMap(({ index }): [string, string][] => {
      const [fn, , name] = argumentsFrom(text, index + "lift(".length);
      return fn && name && /^["`]/.test(name) ? [[fn, name]] : [];
    });
  });
}

/** Split at the commas that stand in no bracket and no string. */
function argumentsFrom(text: string, start: number): string[] {
  const found = [""];
  let depth = 0;
  for (const [part] of text.slice(start).matchAll(/"[^"\n]*"|`[^`]*`|=>|[\s\S]/g)) {
    if (depth === 0 && part === ")") break;
    if (/[([{]/.test(part) && part.length === 1) depth++;
    if (/[)\]}]/.test(part) && part.length === 1) depth--;
    if (depth === 0 && part === ",") found.push("");
    else found[found.length - 1] += part;
  }
  return found.map((one) => one.replace(/\s+/g, " ").trim());
}
