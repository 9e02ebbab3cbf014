// What the form for one more batch asks for.

import { expect, test } from "vitest";
import { logOutline, type OutlineNode } from "../../lib/index.ts";
import { entryFields } from "../../lib/live/panel-entry.ts";

/** Invented. */
const log = (batches: string): string => `format: 1\nbatches:\n${batches}`;
const W1 = `  W1:
    date: 2026-07-11
    left out: the jar fell
    made of: { sand: 5.00 kg, bentonite: 0.455 kg, water: 0.107 kg }
    moisture: { method: oven, damp: 152.6 g, dry: 148.5 g, scale: kitchen scale }
    green compression: [ { load: 14.7 kg }, { load: 14.2 kg } ]
    squeeze: crumbles
`;
const W2 = W1.replace("W1", "W2").replace("0.107", "0.125").replace("152.6 g", "153.1 g");
/** Tests alone: a table of named rows. */
const W3 = "  W3:\n    moisture: { method: pan, damp: 151.0 g }\n    made of: { sand: 5.00 kg }\n";

function fieldsOf(text: string) {
  const [batches] = logOutline([{ name: "log.yaml", text }]).filter(({ label }) => label === "batches");
  const parts = (batches as Extract<OutlineNode, { kind: "group" }>).parts;
  return new Map(entryFields(parts).map((field) => [field.name, field]));
}

test("figures are asked for, names are taken over, and what is said of one batch alone is not", () => {
  const fields = fieldsOf(log(W1 + W2));
  expect([...fields.keys()]).toEqual([
    "date",
    "left out",
    "made of/sand",
    "made of/bentonite",
    "made of/water",
    "moisture/method",
    "moisture/damp",
    "moisture/dry",
    "moisture/scale",
    "green compression/load",
    "squeeze",
  ]);
  const preset = [...fields.values()].flatMap(({ name, preset }) => (preset === "" ? [] : [name]));
  expect(preset).toEqual(["moisture/method", "moisture/scale"]);
  expect(fields.get("moisture/damp")).toMatchObject({ last: "153.1 g", from: "W2", reading: true });
  expect(fields.get("moisture/scale")).toMatchObject({ last: "kitchen scale", reading: false });
  expect(fields.get("squeeze")).toMatchObject({ last: "crumbles", reading: true, repeated: false });
});

test("what two batches running have alike can be repeated, what one has cannot", () => {
  const repeated = (text: string) =>
    [...fieldsOf(text).values()].flatMap(({ name, repeated }) => (repeated ? [name] : []));
  expect(repeated(log(W1))).toEqual([]);
  expect(repeated(log(W1 + W2))).toContain("made of/sand");
  expect(repeated(log(W1 + W2))).not.toContain("made of/water");
  expect(repeated(log(W1 + W2))).not.toContain("left out");
});

test("a batch that is cut short does not cut the form short", () => {
  const whole = fieldsOf(log(W1 + W2));
  const fields = fieldsOf(log(W1 + W2 + W3));
  expect([...fields.keys()]).toEqual([...whole.keys()]);
  expect(fields.get("moisture/damp")).toMatchObject({ last: "151.0 g", from: "W3" });
  expect(fields.get("made of/water")).toMatchObject({ last: "0.125 kg", from: "W2" });
  // Two methods: the founder says which.
  expect(fields.get("moisture/method")!.preset).toBe("");
});
