// How a figure was found, in one sentence.

import type { TestName, TestReading } from "./batch.ts";

const tested: { readonly [test in TestName]: string } = {
  moisture: "Weighed damp and dry",
  compactability: "Filled, struck off and rammed",
  "green compression": "Loaded end to end with dead weight until it broke",
  "green shear": "Loaded across its axis until it sheared",
  splitting: "Laid on its side and loaded along a line until it split",
  permeability: "Air let through the specimen",
  density: "Weighed and measured",
  "clay by wash": "Washed, siphoned, dried and weighed",
  squeeze: "Squeezed in the fist, opened and broken",
};
const by: { readonly [method: string]: string } = {
  oven: "dried in the oven",
  pan: "dried in a pan",
  microwave: "dried in a microwave",
  height: "by the height that was lost",
  "two weighings": "by weighing the same tube filled loose and rammed",
  pressed: "pressed at 100 N/cm² instead of rammed",
  "constant head": "at a steady pressure",
  aspirator: "by water that drains from a closed bottle",
  "falling column": "by a falling column of water",
  "bleeding vessel": "by a closed vessel that bleeds down",
};

export function howTested({ test, method, rig, scale, worked, raw }: TestReading): string {
  if (worked && Object.keys(raw).length === 0 && method === undefined && !rig) {
    const named = `${test.charAt(0).toUpperCase()}${test.slice(1)}`;
    return test === "squeeze" ? `${tested.squeeze}.` : `${named}: a number worked out elsewhere.`;
  }
  const parts = [
    method === undefined ? undefined : (by[method] ?? method),
    rig ? `with the ${rig.name}` : undefined,
    scale ? `weighed on the ${scale.name}` : undefined,
    raw.driedAtC ? `at ${raw.driedAtC.value} °C` : undefined,
  ].filter((part) => part !== undefined);
  return `${[tested[test], ...parts].join(", ")}.`;
}
