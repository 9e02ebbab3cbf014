// What is kept of an aim by its curves is what is worked out of them anew.

import { expect, test } from "vitest";
import type { Spread } from "../../lib/quantity/spread.ts";
import { shifted } from "../../lib/quantity/spread-of.ts";
import { aimFor, aimPlace } from "../../lib/trial/aim.ts";
import type { AimedCurve } from "../../lib/trial/best-place.ts";
import { drawCurves } from "../../lib/trial/curve-draws.ts";
import { nextTrial } from "../../lib/trial/next-trial.ts";
import { responseCurve } from "../../lib/trial/response-curve.ts";

const x = [2, 2.5, 3, 3.5, 4, 4.5];
const rig = shifted(0, 0.5, { id: "rig of the kept aims", kind: "rig", shape: { kind: "normal" } });

function strength(changed: Partial<AimedCurve>, last = 36): AimedCurve {
  const curve = responseCurve({ x, y: [30, 38, 44, 45, 41, last] }, { peaked: true });
  return { name: "green compression", curve, low: 35, high: 60, bias: rig, ...changed };
}

const told = (curve: AimedCurve) =>
  JSON.stringify([
    aimFor([curve]),
    nextTrial([curve], { hit: 0.1 }),
    aimPlace([curve], drawCurves([curve], 256)),
  ]);

test("another range, figure, name, bias: another aim, each that of curves that nobody can tell by a text", () => {
  const wider = shifted(0, 2, { id: "rig of the kept aims", kind: "rig", shape: { kind: "normal" } });
  const edits: [Partial<AimedCurve>, number?][] = [
    [{}],
    [{ low: 40 }],
    [{ high: 46 }],
    [{}, 36.1],
    [{ name: "splitting" }],
    [{ bias: wider }],
    [{}],
  ];
  const kept = edits.map(([changed, last]) => told(strength(changed, last)));
  const anew = edits.map(([changed, last]) => {
    const of = changed.bias ?? rig;
    const bias: Spread = {
      value: of.value,
      sources: of.sources,
      fill: (out, start, drawing) => of.fill(out, start, drawing),
    };
    return told(strength({ ...changed, bias }, last));
  });
  expect(kept).toEqual(anew);
  expect(new Set(kept).size).toBe(edits.length - 1);
});
